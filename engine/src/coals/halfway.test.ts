import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type Change, coalRequest } from '../../validation/coals/requests.ts';
import { isRefusal, type Notice, type OrRefusal } from '../notice/notice.ts';
import { fromFahrenheit, kelvin, metresPerSecond, minutes } from '../quantity/unit.ts';
import { withAshOff } from './ash.ts';
import { coalsCodes } from './codes.ts';
import { type FireState, fireNow, type LyingCoals, runOn } from './fire-state.ts';
import { ovenBody } from './geometry.ts';
import { judgeLayout, type LayoutQuestion } from './judge-layout.ts';
import { rescue, type Symptom } from './rescue.ts';
import { sideEffect, sideSight } from './rescue-side.ts';
import { coalWidth, roomFor } from './room.ts';
import { simpleLoad } from './simple-load.ts';
import { type CoalsLeft, whatCanIDoWith } from './with-these-coals.ts';

const SEED = 20265;
const SYMPTOMS: readonly Symptom[] = [
  'bottom-dark',
  'top-pale',
  'one-side-hot',
  'coals-dying',
  'raw-middle',
  'late',
];

const lying = (above: number, below: number, lit: number): readonly LyingCoals[] => [
  { place: 'above', pieces: above, litMinutesAgo: minutes(lit) },
  { place: 'below', pieces: below, litMinutesAgo: minutes(lit) },
];

const stateOf = (coals: readonly LyingCoals[], change: Change = {}): FireState => {
  const { oven, air, place, screened, fuel, load, wish } = coalRequest(change);
  return { oven, air, place, screened, fuel, load, method: wish.method, coals };
};

const held = <Answer>(answer: OrRefusal<Answer>): Answer => {
  if (isRefusal(answer)) throw new Error(answer.code);
  return answer;
};

const judged = (question: Partial<LayoutQuestion>, above = 17, below = 8, lit = 15) =>
  held(
    judgeLayout({
      ...stateOf(lying(above, below, lit)),
      wanted: fromFahrenheit(350),
      minutes: minutes(45),
      loadInMinute: minutes(20),
      ...question,
    }),
  );

const codes = (answer: { readonly notices: readonly { readonly code: string }[] }) =>
  answer.notices.map((each) => each.code);

describe('a fire as it stands', () => {
  it('has iron as hot as 17 above and 8 below make an empty 12 inch oven in 20 min, 340 to 365 F (coalsOvenModelNotes 5.5: 354)', () => {
    const now = held(fireNow(stateOf(lying(17, 8, 35))));
    expect(now.moment.ovenKelvin).toBeGreaterThan(fromFahrenheit(335));
    expect(now.moment.ovenKelvin).toBeLessThan(fromFahrenheit(370));
  });

  it('takes the cook’s word for the iron', () => {
    const now = held(fireNow({ ...stateOf(lying(17, 8, 35)), ironNow: kelvin(420) }));
    expect(now.moment.ovenKelvin).toBe(420);
  });

  it('has food in it that is the warmer the longer it is in', () => {
    const mean = (ago: number) => {
      const state = { ...stateOf(lying(17, 8, 60)), loadInMinutesAgo: minutes(ago) };
      const { moment, request } = held(fireNow(state));
      return request.load.temperature(moment.load ?? []);
    };
    expect(mean(5)).toBeLessThan(mean(15));
    expect(mean(15)).toBeLessThan(mean(30));
  });

  it('is refused for counts and ages that can not be', () => {
    const code = (state: FireState) => {
      const answer = fireNow(state);
      return isRefusal(answer) ? answer.code : 'taken';
    };
    expect(code(stateOf(lying(17.5, 8, 20)))).toBe('COALS_PIN_IMPOSSIBLE');
    expect(code(stateOf(lying(17, 8, -5)))).toBe('COALS_AGE_IMPOSSIBLE');
    expect(code(stateOf(lying(17, 8, Number.NaN)))).toBe('COALS_AGE_IMPOSSIBLE');
    expect(code(stateOf(lying(17, 8, 20), { wind: 40 }))).toBe('COALS_WIND_OUTSIDE_RANGE');
    expect(code(stateOf(lying(17, 8, 20), { inches: 30 }))).toBe('COALS_OVEN_OUTSIDE_RANGE');
  });
});

describe('a layout of one’s own', () => {
  it('is hotter with more coals, each step of them', () => {
    const means = [8, 12, 16, 20, 24].map((above) => judged({}, above, above / 2).mean as number);
    for (let step = 1; step < means.length; step++)
      expect(means[step]!).toBeGreaterThan(means[step - 1]!);
  });

  it('is told hot, cool, or fading when its one set is to last past its life (coalLife: 45 to 60 min)', () => {
    expect(codes(judged({}, 34, 16))[0]).toBe('COALS_LAYOUT_HOT');
    expect(codes(judged({}, 8, 4))[0]).toBe('COALS_LAYOUT_COOL');
    expect(codes(judged({ minutes: minutes(90) }))[0]).toBe('COALS_LAYOUT_FADES');
  });

  it('does where the most reprinted chart lays it for 350 F, read as charts.ts reads a chart (chartReprinted)', () => {
    const { oven } = coalRequest();
    // The chart's load: a full floor of dough, for the hour from a quarter past lighting.
    const load = simpleLoad({
      massGrams: 3000,
      heatCapacityJoulesPerGramKelvin: 2.8,
      startKelvin: 294,
      boilKelvin: 373.12,
      planAreaSquareMetres: ovenBody(oven).mouthArea,
    });
    const hour = { minutes: minutes(45), loadInMinute: minutes(0), ironNow: fromFahrenheit(350) };
    const { mean } = judged({ load, ...hour }, 17, 8);
    expect(Math.abs(mean - fromFahrenheit(350))).toBeLessThan(25 / 1.8);
    const half = judged({ load, ...hour, minutes: minutes(30) }, 17, 8);
    expect(codes(half)[0]).toBe('COALS_LAYOUT_DOES'); // later its one set fades
  });

  it('is warned of a bread with half its coals below, and not of a third (splitByMethod)', () => {
    expect(codes(judged({}, 12, 13))).toContain('COALS_LAYOUT_BOTTOM_HEAVY');
    expect(codes(judged({}, 17, 8))).not.toContain('COALS_LAYOUT_BOTTOM_HEAVY');
  });

  it('has coals past their life counted as ash, with a word', () => {
    expect(codes(judged({}, 17, 8, 120))).toContain('COALS_SPENT');
  });

  it('is always finite, banded and said in listed codes, from any state', () => {
    fc.assert(
      fc.property(
        fc.record({
          above: fc.integer({ min: 0, max: 60 }),
          below: fc.integer({ min: 0, max: 40 }),
          lit: fc.integer({ min: 0, max: 240 }),
          wind: fc.double({ min: 0, max: 6, noNaN: true }),
          inches: fc.constantFrom(8, 10, 12, 14, 16),
          wood: fc.boolean(),
          ago: fc.option(fc.integer({ min: 0, max: 60 }), { nil: undefined }),
        }),
        ({ above, below, lit, ago, ...change }) => {
          const state = stateOf(lying(above, below, lit), change);
          const answer = held(
            judgeLayout({
              ...state,
              ...(ago === undefined ? {} : { loadInMinutesAgo: minutes(ago) }),
              wanted: fromFahrenheit(350),
              minutes: minutes(40),
            }),
          );
          for (const point of answer.curve) {
            expect(Number.isFinite(point.oven + point.low + point.high)).toBe(true);
            expect(point.low <= point.oven && point.oven <= point.high).toBe(true);
            expect(point.oven).toBeLessThan(900);
          }
          for (const code of codes(answer)) expect(coalsCodes).toHaveProperty(code);
        },
      ),
      { seed: SEED, numRuns: 40 },
    );
  });
});

describe('the coals that are left', () => {
  const left = (pieces: number, lit = 15, wind = 0) => {
    const { oven, air, place, screened, fuel } = coalRequest({ wind });
    const asked: CoalsLeft = {
      ...{ oven, air, place, screened, fuel, pieces },
      litMinutesAgo: minutes(lit),
    };
    return held(whatCanIDoWith(asked));
  };

  it('do more the more there are, and less the older', () => {
    const hottest = (answer: ReturnType<typeof left>) => answer.ways[0]!.hottest as number;
    expect(hottest(left(30))).toBeGreaterThan(hottest(left(22)));
    expect(hottest(left(22))).toBeGreaterThan(hottest(left(22, 45)));
  });

  it('are shared as each method wants, every coal once (splitByMethod)', () => {
    for (const way of left(22).ways) expect(way.above + way.below + way.leftOver).toBe(22);
    expect(left(24).ways.find((way) => way.method === 'bake')?.above).toBe(16);
  });

  it('bake bread with a good set, and nothing once they are ash', () => {
    expect(left(40).ways.flatMap((way) => way.kinds)).toContain('yeast-bread');
    expect(codes(left(22, 120))).toEqual(['COALS_NO_FIRE']);
  });

  it('are left over where more would burn the food or do not lie flat (hot is 450 F on the charts)', () => {
    const step = 14; // one step of the charts
    for (const [pieces, inches] of [
      [30, 10],
      [40, 12],
      [22, 8],
      [60, 12],
    ] as const) {
      const { oven, air, place, screened, fuel } = coalRequest({ inches, wind: 0 });
      const site = { oven, air, place, screened, fuel, pieces, litMinutesAgo: minutes(15) };
      for (const ironNow of [undefined, fromFahrenheit(350)]) {
        const iron = ironNow === undefined ? {} : { ironNow };
        const { ways } = held(whatCanIDoWith({ ...site, ...iron }));
        const room = roomFor(ovenBody(oven), oven.diameter, coalWidth(fuel));
        for (const way of ways) {
          expect(way.above + way.below + way.leftOver).toBe(pieces);
          expect(way.above).toBeLessThanOrEqual(room.lidAll);
          expect(way.below).toBeLessThanOrEqual(room.floorAll);
          expect(way.why === undefined).toBe(way.leftOver === 0);
          if (way.method !== 'keep-warm')
            expect(way.hottest).toBeLessThanOrEqual(fromFahrenheit(450) + step);
          if (way.kinds.includes('yeast-bread') && !way.kinds.includes('biscuit'))
            expect(way.hottest).toBeLessThanOrEqual(fromFahrenheit(400) + step);
          for (const { oven: heat } of way.heats)
            expect(way.hottest).toBeGreaterThanOrEqual(heat - step);
        }
        const warm = ways.find((way) => way.method === 'keep-warm');
        if (ironNow === undefined)
          expect(warm?.hottest).toBeLessThanOrEqual(fromFahrenheit(200) + step);
        // Common practice, no source: three or four on the lid keep a dish warm; never thirty.
        else expect(warm?.above).toBeLessThan(pieces / 2);
      }
    }
  });

  it('hold a lower heat for longer than a higher one', () => {
    for (const { heats } of left(36).ways)
      for (let step = 1; step < heats.length; step++)
        expect(heats[step]!.minutes).toBeGreaterThanOrEqual(heats[step - 1]!.minutes);
  });
});

describe('a rescue', () => {
  const saved = (symptom: Symptom, change: Change = {}, lit = 35) =>
    held(
      rescue({
        symptom,
        state: { ...stateOf(lying(17, 8, lit), change), loadInMinutesAgo: minutes(12) },
      }),
    );

  it.each(SYMPTOMS.filter((symptom) => symptom !== 'one-side-hot'))(
    'of %s is three moves, each with an effect that is felt and a wait',
    (symptom) => {
      const { moves } = saved(symptom, { wind: 0.8 });
      expect(moves).toHaveLength(3);
      for (const move of moves) {
        expect(Math.abs(move.effect)).toBeGreaterThanOrEqual(2.8);
        expect(move.after).toBeGreaterThanOrEqual(1);
        expect(move.after).toBeLessThanOrEqual(20);
      }
    },
  );

  it('cools the floor for a dark bottom, and warms the lid for a pale top: different moves (AT-THE-FIRE rule)', () => {
    for (const move of saved('bottom-dark').moves) {
      expect(move.feels).toBe('floor');
      expect(move.effect).toBeLessThan(0);
    }
    for (const move of saved('top-pale').moves) {
      expect(move.feels).toBe('lid');
      expect(move.effect).toBeGreaterThan(0);
    }
  });

  it('never takes more than a third of what glows in one place', () => {
    for (const symptom of SYMPTOMS)
      for (const move of saved(symptom).moves) {
        if (move.do === 'take-below' || move.do === 'below-to-above')
          expect(move.coals).toBeLessThanOrEqual(8 / 3);
        if (move.do === 'take-above') expect(move.coals).toBeLessThanOrEqual(17 / 3);
      }
  });

  it('of one hot side offers only what can be noticed at the food: 5 K, or a minute of colour in 20 (ours)', () => {
    for (const inches of [8, 10, 12, 14, 16])
      for (const wind of [0, 0.8, 1.5, 3]) {
        const { moves: all } = saved('one-side-hot', { wind, inches });
        const moves = all.filter(({ evens }) => evens !== false); // a screen for the heat alone
        expect(moves.map((move) => move.feels)).toEqual(moves.map(() => 'side'));
        for (const move of moves) expect(-move.effect >= 5 || (move.browning ?? 0) >= 1).toBe(true);
      }
  });

  it('turns first for one hot side; a half turn hands it to the other side (coalsOvenModelNotes 5.6)', () => {
    for (const inches of [10, 12, 14]) {
      const state = {
        ...stateOf(lying(17, 8, 35), { inches, wind: 1.5 }),
        loadInMinutesAgo: minutes(12),
      };
      expect(held(rescue({ symptom: 'one-side-hot', state })).moves[0]?.do).toBe('turn');
      const now = held(fireNow(state));
      const usual = runOn(now.setting, now.moment, { minutes: 20 });
      const sight = sideSight(state, now, usual);
      const top = { ...sight, worse: 'above' as const };
      const turned = sideEffect(top, { do: 'turn' });
      expect(turned.kelvins / (-2 * sight.lid.swing)).toBeCloseTo(1, 1);
    }
  });

  it('of one hot side screens no oven that is screened, and tells no wait past what is watched', () => {
    const { moves } = saved('one-side-hot', { wind: 1.5, screened: true });
    expect(moves.map((move) => move.do)).not.toContain('screen-wind');
    for (const { after } of moves) {
      expect(after).toBeGreaterThanOrEqual(1);
      expect(after).toBeLessThanOrEqual(20);
    }
  });

  it('of one hot side takes or shifts no more coals than leave the sides more alike', () => {
    for (const wind of [0, 0.8, 1.5, 3]) {
      const state = { ...stateOf(lying(17, 8, 35), { wind }), loadInMinutesAgo: minutes(12) };
      const now = held(fireNow(state));
      const sight = sideSight(state, now, runOn(now.setting, now.moment, { minutes: 20 }));
      const was = Math.max(sight.lid.swing, sight.floor.swing);
      const { moves } = held(rescue({ symptom: 'one-side-hot', state }));
      for (const move of moves.filter((each) => /^(shift|thin)/.test(each.do)))
        expect(Math.abs(was + move.effect)).toBeLessThan(was);
    }
  });

  it('is told in shovels for wood coals', () => {
    const adding = saved('coals-dying', { wood: true }, 25).moves.find((move) => move.coals > 0);
    expect(adding?.shovels).toBeGreaterThan(0);
  });

  it('never adds coals to a full lid', () => {
    const full = stateOf(lying(36, 8, 15));
    const { moves } = held(rescue({ symptom: 'late', state: full }));
    expect(moves.map((move) => move.do)).not.toContain('add-above');
  });

  it('is the same each time and works without wind, food or coals', () => {
    for (const symptom of SYMPTOMS) {
      const bare = { ...stateOf([]), air: { ...stateOf([]).air, wind: metresPerSecond(0) } };
      const answer = held(rescue({ symptom, state: bare }));
      for (const move of answer.moves) expect(Number.isFinite(move.effect)).toBe(true);
      expect(held(rescue({ symptom, state: bare }))).toEqual(answer);
    }
  });
});

describe('a fire that is out', () => {
  const bare = (change: Change = {}, lit = 120): FireState => ({
    ...stateOf(lying(17, 8, lit), change),
    loadInMinutesAgo: minutes(30),
  });
  const noticeOf = (answer: { readonly notices?: readonly Notice[] }) => answer.notices?.[0];

  it('is said plainly for every trouble, with no move: light so many, ashed over after 15 to 25 min (chimneyMinutes)', () => {
    for (const symptom of SYMPTOMS) {
      const answer = held(rescue({ symptom, state: bare() }));
      expect(answer.moves).toEqual([]);
      const notice = noticeOf(answer);
      expect(notice?.code).toBe('COALS_NO_FIRE');
      expect(Number(notice?.values.minutes)).toBeGreaterThanOrEqual(15);
      expect(Number(notice?.values.minutes)).toBeLessThanOrEqual(25);
      expect(Number(notice?.values.coals)).toBeGreaterThan(15);
    }
  });

  it('loses heat till the new coals are there, more in wind, and never below the air', () => {
    const falls = (wind: number) => {
      const iron = fromFahrenheit(350);
      const values = noticeOf(
        held(rescue({ symptom: 'late', state: { ...bare({ wind }), ironNow: iron } })),
      )?.values;
      return [Number(values?.ovenKelvin), Number(values?.thenKelvin)] as const;
    };
    const [still, windy] = [falls(0), falls(3)];
    expect(still[1]).toBeLessThan(still[0] - 50);
    expect(windy[1]).toBeLessThan(still[1]);
    expect(windy[1]).toBeGreaterThan(290);
  });

  it('is told of a layout and of coals left too, and of a feeder fire by its own lead', () => {
    expect(codes(judged({}, 17, 8, 200))[0]).toBe('COALS_NO_FIRE');
    const { oven, air, place, screened, fuel } = coalRequest({ wood: true });
    const spot = { oven, air, place, screened, fuel };
    const left = held(whatCanIDoWith({ ...spot, pieces: 0, litMinutesAgo: minutes(30) }));
    expect(left.ways).toEqual([]);
    expect(noticeOf(left)?.values.minutes).toBe(45);
  });
});

describe('ash knocked off', () => {
  const moveOf = (symptom: Symptom, lit: number) =>
    held(
      rescue({ symptom, state: { ...stateOf(lying(17, 8, lit)), loadInMinutesAgo: minutes(12) } }),
    ).moves.find((move) => move.do === 'knock-ash');

  it('is offered with what one report makes of it, and at most a few times that (ashKnocked: 21 F in two minutes)', () => {
    const move = moveOf('coals-dying', 40);
    expect(move?.effect).toBeGreaterThan(0);
    expect(move?.effect).toBeLessThan(21 / 1.8);
    expect(move?.most).toBeGreaterThan(move?.effect ?? 0);
  });

  it('is not offered of coals that have just ashed over, nor where they would be gone the sooner', () => {
    expect(moveOf('coals-dying', 18)).toBeUndefined();
    expect(moveOf('coals-dying', 78)).toBeUndefined();
  });

  it('makes no heat: a coal gives as much as before, only sooner', () => {
    const { setting } = held(fireNow(stateOf(lying(17, 8, 40))));
    const bared = withAshOff(setting);
    const heat = (of: typeof setting) => of.strengthAbove * of.burnoutMinutes;
    expect(heat(bared)).toBeCloseTo(heat(setting), 9);
  });
});
