import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import scipy from '../../validation/coals/oven-scipy.json' with { type: 'json' };
import { type Change, coalRequest } from '../../validation/coals/requests.ts';
import { scipyCooks, scipyCourse } from '../../validation/coals/scipy-cases.ts';
import { LAID_BURNT } from './burn.ts';
import { laid } from './coals-ahead.ts';
import { type Act, type OvenCourse, ovenCourse } from './oven-course.ts';
import { fourth, STEFAN_BOLTZMANN } from './parameters.ts';
import {
  type CoalGroup,
  minuteLater,
  type OvenMoment,
  startMoment,
  withCoals,
  withLoadIn,
} from './run.ts';
import { siteFor } from './site.ts';

const SEED = 20263;
const minutesTo = (end: number) => Array.from({ length: end + 1 }, (_, minute) => minute);

interface Cook {
  readonly change: Change;
  readonly coals: readonly CoalGroup[];
  readonly loadIn: number;
  readonly addAt?: number;
  readonly end: number;
}

const settingOf = ({ change }: Cook) => siteFor(coalRequest(change));
const startOf = (cook: Cook) =>
  startMoment({ ironKelvin: settingOf(cook).outside.airKelvin, coals: cook.coals });

const more = laid({ above: 6, below: 3 });

const courseOf = (cook: Cook): OvenCourse => {
  const acts: Act[] = [{ minute: cook.loadIn, do: 'load-in' }];
  if (cook.addAt !== undefined) acts.push({ minute: cook.addAt, do: 'add', coals: more });
  return ovenCourse({
    setting: settingOf(cook),
    start: startOf(cook),
    acts,
    at: minutesTo(cook.end),
  });
};

const steppedOf = (cook: Cook): readonly OvenMoment[] => {
  const setting = settingOf(cook);
  const acted = (moment: OvenMoment) => {
    const loaded = moment.minute === cook.loadIn ? withLoadIn(moment, setting.load) : moment;
    return moment.minute === cook.addAt ? withCoals(loaded, more) : loaded;
  };
  const moments = [acted(startOf(cook))];
  for (let minute = 1; minute <= cook.end; minute += 1)
    moments.push(acted(minuteLater(setting, moments.at(-1) as OvenMoment)));
  return moments;
};

const imbalance = (cook: Cook, last: OvenMoment): number => {
  const { body, outside } = settingOf(cook);
  const warmed = (kelvin: number) => kelvin - outside.airKelvin;
  const iron =
    body.lidCapacity * warmed(last.iron.lid) +
    body.wallCapacity * warmed(last.iron.wall) +
    body.floorCapacity * warmed(last.iron.floor);
  return (last.givenJoules - iron - last.loadJoules - last.lossJoules) / last.givenJoules;
};

/** The whole valid range: oven, air, wind, height, fuel, load from a bun to a full pot. */
const cooks = fc.record({
  change: fc.record({
    inches: fc.constantFrom(8, 10, 12, 14, 16),
    airKelvin: fc.double({ min: 253.15, max: 318.15, noNaN: true }),
    wind: fc.double({ min: 0, max: 15, noNaN: true }),
    pressure: fc.double({ min: 57_700, max: 106_300, noNaN: true }),
    loadGrams: fc.double({ min: 200, max: 6000, noNaN: true }),
    pieceGrams: fc.double({ min: 10, max: 60, noNaN: true }),
    wood: fc.boolean(),
  }),
  coals: fc
    .tuple(fc.integer({ min: 4, max: 30 }), fc.integer({ min: 2, max: 15 }))
    .map(([above, below]) => laid({ above, below })),
  loadIn: fc.integer({ min: 0, max: 25 }),
  addAt: fc.integer({ min: 26, max: 45 }),
  end: fc.constant(75),
});

describe('the oven under error control', () => {
  it.each(Object.keys(scipyCooks))(
    'of %s agrees with SciPy within 0.02 K and 20 J (scipy-ivp)',
    (name) => {
      const { moments } = scipyCourse(name);
      const rows = scipy.rows.filter((row) => row[0] === name);
      expect(rows.length).toBe(10);
      for (const [, minute, lid, wall, floor, joules] of rows) {
        const moment = moments[Number(minute)] as OvenMoment;
        expect(Math.abs(moment.iron.lid - Number(lid))).toBeLessThan(0.02);
        expect(Math.abs(moment.iron.wall - Number(wall))).toBeLessThan(0.02);
        expect(Math.abs(moment.iron.floor - Number(floor))).toBeLessThan(0.02);
        expect(Math.abs(moment.loadJoules - Number(joules))).toBeLessThan(20);
      }
    },
  );

  it('is what the minute steps of the plans keep to within 0.15 K of iron, over the whole valid range', () => {
    fc.assert(
      fc.property(cooks, (cook) => {
        const course = courseOf(cook);
        expect(course.status).toBe('done');
        const stepped = steppedOf(cook);
        const apart = course.moments.flatMap(({ iron }, minute) => {
          const beside = (stepped[minute] as OvenMoment).iron;
          return [iron.lid - beside.lid, iron.wall - beside.wall, iron.floor - beside.floor];
        });
        expect(apart.length).toBe(3 * 76);
        expect(Math.max(...apart.map(Math.abs))).toBeLessThan(0.15);
      }),
      { seed: SEED, numRuns: 120 },
    );
  });

  it('loses no heat, nor do the minute steps: given = iron + load + losses within 0.1 %', () => {
    fc.assert(
      fc.property(cooks, (cook) => {
        const course = courseOf(cook).moments.at(-1) as OvenMoment;
        expect(Math.abs(imbalance(cook, course))).toBeLessThan(1e-3);
        expect(Math.abs(imbalance(cook, steppedOf(cook).at(-1) as OvenMoment))).toBeLessThan(1e-3);
      }),
      { seed: SEED, numRuns: 60 },
    );
  });

  it('cools without coals as its areas say: first slope is loss over heat capacity, within 1 %', () => {
    const setting = siteFor(coalRequest());
    const hot = { ...startMoment({ ironKelvin: 450, coals: [] }) };
    const { moments } = ovenCourse({ setting, start: hot, acts: [], at: [0, 0.05] });
    const { body, outside } = setting;
    const lost = (moments[1] as OvenMoment).lossJoules / 3;
    const ironLost =
      (body.lidCapacity * (450 - (moments[1] as OvenMoment).iron.lid) +
        body.wallCapacity * (450 - (moments[1] as OvenMoment).iron.wall) +
        body.floorCapacity * (450 - (moments[1] as OvenMoment).iron.floor)) /
      3;
    expect(Math.abs(ironLost / lost - 1)).toBeLessThan(0.01);
    const bare = body.lidArea + body.rimArea + body.wallArea + body.extraArea;
    const radiated = bare * 0.9 * STEFAN_BOLTZMANN * (fourth(450) - fourth(outside.airKelvin));
    expect(lost).toBeGreaterThan(radiated); // radiation is part of it, natural convection the rest
    expect(lost).toBeLessThan(2.5 * radiated);
  });
});

describe('what a hand does at an odd minute', () => {
  const setting = siteFor(coalRequest());
  const start = startMoment({ ironKelvin: 294.26, coals: laid({ above: 17, below: 8 }) });
  const at = [10, 20, 30, 40, 50];
  const heats = (acts: readonly Act[]) => {
    const course = ovenCourse({ setting, start, acts, at });
    expect(course.status).toBe('done');
    return course.moments.map((moment) => moment.ovenKelvin);
  };
  const usual = heats([]);
  const effect = (acts: readonly Act[], index = 3) => heats(acts)[index]! - usual[index]!;

  it('shows from that minute on and not before: half a ring added at 12.4', () => {
    const half: CoalGroup = { place: 'above', count: 8.5, burnt: LAID_BURNT };
    const changed = heats([{ minute: 12.4, do: 'add', coals: [half] }]);
    expect(Math.abs(changed[0]! - usual[0]!)).toBeLessThan(1e-3);
    expect(changed[1]! - usual[1]!).toBeGreaterThan(5);
  });

  it('is the same whether half a ring comes twice or a whole one once', () => {
    const part = (count: number): Act => ({
      minute: 12.4,
      do: 'add',
      coals: [{ place: 'above', count, burnt: LAID_BURNT }],
    });
    const twice = heats([part(8.5), part(8.5)]);
    heats([part(17)]).forEach((kelvin, index) => {
      expect(Math.abs(kelvin - twice[index]!)).toBeLessThan(1e-3);
    });
  });

  it('cools when coals are taken or the lid is lifted, and a look costs less the shorter it is', () => {
    expect(effect([{ minute: 22.5, do: 'take', place: 'above', count: 4 }])).toBeLessThan(-3);
    const look = (seconds: number) => effect([{ minute: 29.5, do: 'lift-lid', seconds }], 2);
    expect(look(30)).toBeLessThan(-1);
    expect(look(60)).toBeLessThan(look(30));
  });

  it('keeps the coals when they are moved: none are lost, the lid gains', () => {
    const move: Act = { minute: 25.25, do: 'move', place: 'below', count: 3 };
    const { moments } = ovenCourse({ setting, start, acts: [move], at: [50] });
    const last = moments.at(-1) as OvenMoment;
    const count = (place: CoalGroup['place']) =>
      last.coals
        .filter((group) => group.place === place)
        .reduce((sum, { count }) => sum + count, 0);
    expect(count('above')).toBeCloseTo(20, 9);
    expect(count('below')).toBeCloseTo(5, 9);
    const plain = ovenCourse({ setting, start, acts: [], at: [50] }).moments.at(-1) as OvenMoment;
    expect(last.iron.lid).toBeGreaterThan(plain.iron.lid);
    expect(last.iron.floor).toBeLessThan(plain.iron.floor);
  });

  it('claims nothing for knocked ash: no page says what it brings; a factor below 1 would show', () => {
    const knock: Act = { minute: 30, do: 'knock-ash' };
    expect(effect([knock])).toBeCloseTo(0, 4);
    const ashy = { ...setting, ashStrength: 0.9 };
    const end = (acts: readonly Act[]) =>
      ovenCourse({ setting: ashy, start, acts, at: [50] }).moments.at(-1)!.ovenKelvin;
    expect(end([knock])).toBeGreaterThan(end([]) + 1);
  });

  it('answers a change of wind in mid-bake', () => {
    const windy = siteFor(coalRequest({ wind: 4 }));
    const change: Act = {
      minute: 20,
      do: 'change',
      setting: { outside: windy.outside, burnoutMinutes: windy.burnoutMinutes },
    };
    expect(effect([change])).toBeLessThan(-20);
  });
});

describe('a course that can not be', () => {
  const setting = siteFor(coalRequest());
  const start = startMoment({ ironKelvin: 294.26, coals: laid({ above: 17, below: 8 }) });

  it('stops when its steps run out and hands over the finite state at the stop', () => {
    const run = ovenCourse({ setting, start, acts: [], at: [45, 90], mostSteps: 7 });
    expect(run.status).toBe('too-many-steps');
    const last = run.moments.at(-1) as OvenMoment;
    expect(last.minute).toBeLessThan(45);
    expect(Object.values(last.iron).every(Number.isFinite)).toBe(true);
  });

  it('counts coals that are ash already, and they give nothing', () => {
    const spent = { ...start, coals: [{ place: 'above', count: 9, burnt: 1.4 } as const] };
    const run = ovenCourse({ setting, start: spent, acts: [], at: [60] });
    expect(run.spentAtStart).toBe(9);
    expect(run.moments[0]!.ovenKelvin).toBeCloseTo(294.26, 2);
  });

  it('stays finite far outside the valid range: a gale of 40 m/s, air as at 9,000 m, hard frost', () => {
    for (const change of [
      { wind: 40 },
      { pressure: 30_800 },
      { airKelvin: 200 },
      { wind: 40, wood: true },
    ]) {
      const cook: Cook = { change, coals: laid({ above: 20, below: 10 }), loadIn: 10, end: 60 };
      for (const moments of [courseOf(cook).moments, steppedOf(cook)]) {
        expect(moments.length).toBe(61);
        expect(moments.every((moment) => Number.isFinite(moment.ovenKelvin))).toBe(true);
      }
    }
  });

  it('throws for acts before the start, minutes that fall, and a run without an end', () => {
    const plain = { setting, start, acts: [], at: [10] };
    const early: Act = { minute: -1, do: 'load-in' };
    expect(() => ovenCourse({ ...plain, acts: [early] })).toThrow(RangeError);
    expect(() => ovenCourse({ ...plain, at: [10, 5] })).toThrow(RangeError);
    expect(() => ovenCourse({ ...plain, at: [] })).toThrow(RangeError);
    expect(() => ovenCourse({ ...plain, at: [Number.NaN] })).toThrow(RangeError);
  });
});
