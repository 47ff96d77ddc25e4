// Trouble at the fire: never a dead end without its reason; a screen is offered for what it does.

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type Change, coalRequest } from '../../validation/coals/requests.ts';
import { isRefusal } from '../notice/notice.ts';
import { minutes } from '../quantity/unit.ts';
import { rescue, type Symptom } from './rescue.ts';

const found = (
  symptom: Symptom,
  [above, below]: readonly [number, number],
  change: Change = {},
) => {
  const { oven, air, place, screened, fuel, load, wish } = coalRequest(change);
  const answer = rescue({
    symptom,
    state: {
      ...{ oven, air, place, screened, fuel, load, method: wish.method },
      coals: [
        { place: 'above', pieces: above, litMinutesAgo: minutes(40) },
        { place: 'below', pieces: below, litMinutesAgo: minutes(40) },
      ],
      loadInMinutesAgo: minutes(10),
    },
  });
  if (isRefusal(answer)) throw new Error(answer.code);
  return answer;
};

describe('what can be done now', () => {
  it('is three moves, or fewer with the reason for each that is left out', () => {
    fc.assert(
      fc.property(
        fc.constantFrom<Symptom>(
          ...(['bottom-dark', 'top-pale', 'one-side-hot', 'coals-dying', 'raw-middle'] as const),
          'late',
        ),
        fc.tuple(fc.integer({ min: 0, max: 25 }), fc.integer({ min: 0, max: 12 })),
        fc.double({ min: 0, max: 1.5, noNaN: true }),
        fc.boolean(),
        (symptom, laid, wind, screened) => {
          const { moves, leftOut = [], notices = [] } = found(symptom, laid, { wind, screened });
          if (notices.length > 0) return;
          expect(moves.length).toBeLessThanOrEqual(3);
          if (moves.length < 3) expect(leftOut.length).toBeGreaterThan(0);
        },
      ),
      { seed: 20268, numRuns: 40 },
    );
  });

  it('says of a dark bottom with no coals below that none lie there', () => {
    const { moves, leftOut } = found('bottom-dark', [17, 0]);
    expect(leftOut).toContainEqual({ do: 'take-below', why: 'too-few-below' });
    for (const { do: move } of moves) expect(move).not.toMatch(/below/);
  });

  it('offers a screen in wind for the heat that it brings, and none in calm or behind one (windAtOven)', () => {
    const windy = found('one-side-hot', [17, 8], { wind: 1 });
    const screen = windy.moves.find((move) => move.do === 'screen-wind');
    expect(screen?.effect).toBeGreaterThan(2.8);
    expect(screen?.feels === 'side' || screen?.evens === false).toBe(true);
    const calm = found('one-side-hot', [17, 8], { wind: 0 });
    expect(calm.leftOut).toContainEqual({ do: 'screen-wind', why: 'calm' });
    const behind = found('one-side-hot', [17, 8], { wind: 1, screened: true });
    expect(behind.leftOut).toContainEqual({ do: 'screen-wind', why: 'screened' });
  });
});

describe('a hot side', () => {
  it('is told by how far the sides differ before and after, a turn only changing them over (geometry)', () => {
    for (const wind of [0, 1]) {
      const { moves } = found('one-side-hot', [17, 8], { wind });
      for (const { sides, effect, feels, do: move } of moves) {
        expect(sides === undefined).toBe(feels !== 'side');
        if (sides === undefined) continue;
        expect(sides.before).toBeGreaterThan(0);
        expect(sides.after - sides.before).toBeCloseTo(effect, 6);
        // The mean after a half turn is never further apart than the mirror of what was.
        if (move === 'turn') expect(sides.after).toBeGreaterThan(-sides.before - 1);
      }
    }
  });
});
