import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import cores from '../../data/safety-cores.json' with { type: 'json' };
import { madeCamp, madeFormula, madeIngredient, madeRecipe } from '../../validation/bake/made.ts';
import cooling from '../../validation/safety/cooling.json' with { type: 'json' };
import published from '../../validation/safety/lethality-table.json' with { type: 'json' };
import { isRefusal } from '../notice/notice.ts';
import { fromFahrenheit, kelvin, minutes } from '../quantity/unit.ts';
import { campSafety } from './camp-safety.ts';
import { foodLimits, outLimitIn } from './food-limits.ts';
import { cooledIn, coreRun, minutesOut } from './food-run.ts';
import { heldSeconds } from './low-hold.ts';
import { classesOf, safeCoreOf } from './safe-core.ts';

const run = (pairs: readonly (readonly [number, number])[]) =>
  pairs.map(([minute, fahrenheit]) => ({
    minute: minutes(minute),
    core: fromFahrenheit(fahrenheit),
  }));

describe('limits of food', () => {
  it('are 140/40 F for consumers (foodsafety-chart), 135/41 F by the code (food-code-3-501)', () => {
    const home = foodLimits('home', 'own');
    const code = foodLimits('public', 'own');
    expect(home.hotHold).toBeCloseTo(fromFahrenheit(140), 9);
    expect(home.coldHold).toBeCloseTo(fromFahrenheit(40), 9);
    expect(code.hotHold).toBeCloseTo(fromFahrenheit(135), 9);
    expect(code.coldHold).toBeCloseTo(fromFahrenheit(41), 9);
  });

  it('are the stricter of both unless one is asked for alone', () => {
    for (const event of ['home', 'public'] as const) {
      const kept = foodLimits(event);
      for (const other of ['home', 'public'] as const) {
        const own = foodLimits(other, 'own');
        expect(kept.hotHold).toBeGreaterThanOrEqual(own.hotHold);
        expect(kept.coldHold).toBeLessThanOrEqual(own.coldHold);
      }
    }
  });

  it('cool to 70 F in 2 h and cold by 6, reheat to 165 F (food-code-3-501-14, food-code-3-403)', () => {
    const { cooling: stages, reheat } = foodLimits('public');
    expect(stages.between).toBeCloseTo(fromFahrenheit(70), 9);
    expect([stages.toBetween, stages.inAll]).toEqual([120, 360]);
    expect(reheat.core).toBeCloseTo(fromFahrenheit(165), 9);
    expect([reheat.seconds, reheat.within]).toEqual([15, 120]);
  });

  it('let food stand out 2 h, 1 h above 90 F, and no longer where the air is not known (fsis-two-hours)', () => {
    expect(outLimitIn(fromFahrenheit(90))).toBe(120);
    expect(outLimitIn(fromFahrenheit(91))).toBe(60);
    expect(outLimitIn(kelvin(Number.NaN))).toBe(60);
  });
});

describe('a run of readings', () => {
  const rows = cooling.rows as unknown as readonly [readonly [number, number][], string, number][];

  it('is judged by the two stages of food-code-3-501-14, row by row', () => {
    expect(rows).toHaveLength(8);
    for (const [pairs, verdict] of rows.slice(0, -1)) {
      expect(cooledIn(run(pairs), foodLimits('home')), JSON.stringify(pairs)).toBe(verdict);
    }
  });

  it('counts the minutes between 40 and 140 F (fsis-two-hours)', () => {
    for (const [pairs, , out] of rows) {
      expect(minutesOut(run(pairs), foodLimits('home')), JSON.stringify(pairs)).toBeCloseTo(out, 6);
    }
  });

  it('is out for no longer than it lasts, hot or cold at its ends or not', () => {
    const reading = fc.tuple(
      fc.integer({ min: 0, max: 90 }),
      fc.double({ min: 0, max: 220, noNaN: true }),
    );
    fc.assert(
      fc.property(fc.array(reading, { minLength: 1, maxLength: 12 }), (steps) => {
        let minute = 0;
        const pairs = steps.map(([step, fahrenheit]) => {
          minute += step;
          return [minute, fahrenheit] as const;
        });
        const out = minutesOut(run(pairs), foodLimits('home'));
        expect(out).toBeGreaterThanOrEqual(0);
        expect(out).toBeLessThanOrEqual(minute - pairs[0]![0] + 1e-6);
      }),
      { seed: 62, numRuns: 200 },
    );
  });

  it('refuses readings that run backwards', () => {
    expect(() =>
      minutesOut(
        run([
          [10, 100],
          [5, 90],
        ]),
        foodLimits('home'),
      ),
    ).toThrow(RangeError);
  });

  it('never makes a low core safe by its logs: an hour at 140 F is 200 logs and not done (foodsafety-chart)', () => {
    const least = safeCoreOf('whole-meat');
    const held = coreRun(
      run([
        [0, 140],
        [60, 140],
      ]),
      least,
    );
    expect(held?.isSafe).toBe(false);
    expect(held?.logReduction).toBeCloseTo((60 * 0.1) / 0.172, 6); // lethality-worksheet
    expect(coreRun(run([[0, 145]]), least)?.isSafe).toBe(true);
    expect(coreRun([], least)).toBeUndefined();
  });
});

describe('holding times', () => {
  it('are those of fsis-appendix-a from 140 F up, row by row', () => {
    const rows = published.rows as unknown as readonly (readonly [number, number])[];
    const trusted = rows.filter(([core]) => core >= 140);
    expect(trusted.length).toBeGreaterThan(10);
    for (const [core, seconds] of trusted) {
      const found = heldSeconds({
        core: fromFahrenheit(core),
        food: 'whole-meat',
        isAnyoneAtRisk: false,
      });
      expect(found, `${core} F`).toBe(seconds);
    }
  });

  it('are refused from 130 to 139 F (mcminn-appendix-a), for poultry, and for people at risk', () => {
    const ask = (fahrenheit: number, food: 'whole-meat' | 'poultry' = 'whole-meat', risk = false) =>
      heldSeconds({ core: fromFahrenheit(fahrenheit), food, isAnyoneAtRisk: risk });
    for (let core = 130; core < 140; core += 1) expect(isRefusal(ask(core))).toBe(true);
    expect(isRefusal(ask(150, 'poultry'))).toBe(true);
    expect(isRefusal(ask(150, 'whole-meat', true))).toBe(true);
    expect(isRefusal(ask(Number.NaN))).toBe(true);
  });
});

describe('least cores', () => {
  it('are the hotter of chart and code in every class (foodsafety-chart, food-code-3-401)', () => {
    expect(cores.rows).toHaveLength(10);
    for (const { id, fahrenheit, chart, code } of cores.rows) {
      expect(fahrenheit, id).toBe(Math.max(chart ?? 0, code ?? 0));
    }
  });

  it('know wild game at 165 F and shellfish at 145 F (food-code-3-401), and no apple, sauce or mushroom for it', () => {
    const classes = (name: string, part: 'meat' | 'other' | 'fruit' | 'vegetable' = 'meat') => {
      const food = madeIngredient(name, 500, { part });
      return classesOf(madeRecipe({ kind: 'roast', method: 'roast' }), madeFormula([food]));
    };
    for (const game of ['venison haunch', 'elk steaks', 'wild boar shoulder', 'rabbit, jointed']) {
      expect(classes(game), game).toEqual(['wild-game']);
    }
    expect(safeCoreOf('wild-game').core).toBeCloseTo(fromFahrenheit(165), 9);
    expect(classes('shrimp, peeled', 'other')).toEqual(['shellfish']);
    expect(safeCoreOf('shellfish').core).toBeCloseTo(fromFahrenheit(145), 9);
    expect(classes('crab apples', 'fruit')).toEqual([]);
    expect(classes('oyster sauce', 'other')).toEqual([]);
    expect(classes('oyster mushrooms', 'vegetable')).toEqual([]);
  });
});

describe('a public event', () => {
  const camp = madeCamp({ event: 'public' });
  const codes = (own: typeof camp) =>
    campSafety({ camp: own, menu: { dishes: [], recipes: [] } }).cautions.map(({ code }) => code);
  const withGear = (more: Partial<typeof camp.gear>) => ({
    ...camp,
    gear: { ...camp.gear, ...more },
  });

  it('without a hand-wash line is named (public-event-rules, sf-handwash)', () => {
    expect(codes(camp)).toContain('SAFETY_PUBLIC_NO_HAND_WASH');
    expect(codes(withGear({ handWash: true }))).not.toContain('SAFETY_PUBLIC_NO_HAND_WASH');
    const listed = withGear({ others: ['hand-wash can with tap'] });
    expect(codes(listed)).not.toContain('SAFETY_PUBLIC_NO_HAND_WASH');
    const denied = withGear({ handWash: false, others: ['hand-wash can with tap'] });
    expect(codes(denied)).toContain('SAFETY_PUBLIC_NO_HAND_WASH');
  });

  it('without a thermometer is named; friends round a fire are not asked (public-event-rules)', () => {
    expect(codes(withGear({ thermometer: false }))).toContain('SAFETY_PUBLIC_NO_THERMOMETER');
    expect(codes(madeCamp()).filter((code) => code.includes('PUBLIC'))).toEqual([]);
  });
});
