// What can't be asked, through every question about coals: a typed refusal, or a value with its notice.

import { describe, expect, it } from 'vitest';
import { type Change, coalRequest } from '../../validation/coals/requests.ts';
import { isRefusal, type OrRefusal } from '../notice/notice.ts';
import { fromFahrenheit, metres, minutes } from '../quantity/unit.ts';
import type { CoalRequest } from './coal-plan.ts';
import { coalsCodes } from './codes.ts';
import type { FireState } from './fire-state.ts';
import { judgeLayout } from './judge-layout.ts';
import { draftCoals, layCoals } from './lay-coals.ts';
import { rescue } from './rescue.ts';
import { whatCanIDoWith } from './with-these-coals.ts';

const AT_9000_METRES = 30_742; // Pa, standard air (ussa1976)

interface Asked {
  readonly request: CoalRequest;
  readonly lit?: number;
  readonly above?: number;
}

/** The same trouble through every door: its code, or the codes of the notices beside a value. */
const answersTo = ({ request, lit = 30, above = 17 }: Asked): readonly (readonly string[])[] => {
  const { oven, air, place, screened, fuel, load, wish } = request;
  const litMinutesAgo = minutes(lit);
  const coals = [{ place: 'above', pieces: above, litMinutesAgo }] as const;
  const state: FireState = { oven, air, place, screened, fuel, load, method: wish.method, coals };
  const question = { ...state, wanted: fromFahrenheit(350), minutes: minutes(40) };
  const left = { oven, air, place, screened, fuel, pieces: above, litMinutesAgo };
  return [
    layCoals(request),
    judgeLayout(question),
    rescue({ symptom: 'late', state }),
    whatCanIDoWith(left),
  ].map(codesOf);
};

interface Said {
  readonly notices?: readonly { readonly code: string }[];
}

const codesOf = (answer: OrRefusal<Said>): readonly string[] =>
  isRefusal(answer) ? [answer.code] : (answer.notices ?? []).map(({ code }) => code);

const site = (change: Change): Asked => ({ request: coalRequest(change) });
const measured = (change: Partial<CoalRequest['oven']>): Asked => {
  const request = coalRequest();
  return { request: { ...request, oven: { ...request.oven, ...change } } };
};

describe('a question that can not be answered', () => {
  it.each<[string, Asked, string]>([
    ['wind of 40 m/s', site({ wind: 40 }), 'COALS_WIND_OUTSIDE_RANGE'],
    ['wind that is no number', site({ wind: Number.NaN }), 'COALS_WIND_OUTSIDE_RANGE'],
    ['an oven of no size', measured({ diameter: metres(0) }), 'COALS_OVEN_OUTSIDE_RANGE'],
    [
      'an oven of unknown size',
      measured({ diameter: metres(Number.NaN) }),
      'COALS_OVEN_OUTSIDE_RANGE',
    ],
    ['an oven of no depth', measured({ depth: metres(0) }), 'COALS_OVEN_OUTSIDE_RANGE'],
    [
      'a floor wider than its oven',
      measured({ floorDiameter: metres(0.5) }),
      'COALS_OVEN_OUTSIDE_RANGE',
    ],
    ['an oven of 30 inch', site({ inches: 30 }), 'COALS_OVEN_OUTSIDE_RANGE'],
    ['briquettes of a pound', site({ pieceGrams: 450 }), 'COALS_FUEL_IMPOSSIBLE'],
  ])('is refused with one code by all that ask about coals: %s', (_, asked, code) => {
    for (const codes of answersTo(asked)) expect(codes).toEqual([code]);
  });

  it.each<[string, Partial<Asked>, string]>([
    ['coals lit eleven hours ago', { lit: 660 }, 'COALS_AGE_IMPOSSIBLE'],
    ['coals lit tomorrow', { lit: -5 }, 'COALS_AGE_IMPOSSIBLE'],
    ['five hundred coals', { above: 500 }, 'COALS_PIN_IMPOSSIBLE'],
    ['half a coal', { above: 2.5 }, 'COALS_PIN_IMPOSSIBLE'],
  ])('is refused where it is about coals that lie there: %s', (_, change, code) => {
    const [, ...states] = answersTo({ request: coalRequest(), ...change });
    for (const codes of states) expect(codes).toEqual([code]);
  });

  it('for a draft is refused as for the plan', () => {
    const { request } = site({ wind: 40 });
    expect(draftCoals(request)).toEqual(layCoals(request));
  });
});

describe('a question at the edge', () => {
  it('at 9,000 m is answered with a word, finite, and refused by the camp before', () => {
    const plan = layCoals(coalRequest({ pressure: AT_9000_METRES }));
    if (isRefusal(plan)) expect(plan.code).toBe('COALS_HEAT_OUT_OF_REACH');
    else {
      expect(codesOf(plan)).toContain('COALS_AIR_OUTSIDE_RANGE');
      for (const { oven, low, high } of plan.curve)
        expect(Number.isFinite(oven + low + high)).toBe(true);
    }
    const cooler = layCoals(coalRequest({ pressure: AT_9000_METRES, heatFahrenheit: 275 }));
    expect(codesOf(cooler)).toContain('COALS_AIR_OUTSIDE_RANGE');
  });

  it('about coals past their life is answered: count them as ash (coalLife)', () => {
    const [, layout, moves, left] = answersTo({ request: coalRequest(), lit: 200 });
    expect(layout).toContain('COALS_NO_FIRE');
    expect(layout).toContain('COALS_SPENT');
    expect(moves).toEqual(['COALS_NO_FIRE']);
    expect(left).toEqual(['COALS_NO_FIRE']);
  });

  it('about more coals than lie on the lid is simulated, with a word', () => {
    const [, layout] = answersTo({ request: coalRequest(), above: 60 });
    expect(layout).toContain('COALS_PIN_OVERFILLS');
    const pinned = layCoals(coalRequest({ pins: { above: 60, below: 8 } }));
    expect(codesOf(pinned)).toContain('COALS_PIN_OVERFILLS');
  });

  it('never speaks in a code that is in no list', () => {
    for (const wind of [0, 3, 14.9, 15.1])
      for (const codes of answersTo(site({ wind })))
        for (const code of codes) expect(coalsCodes).toHaveProperty(code);
  });
});
