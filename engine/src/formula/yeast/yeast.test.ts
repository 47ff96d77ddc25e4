import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import ice from '../../../validation/formula/dough-ice.json' with { type: 'json' };
import sourdough from '../../../validation/formula/sourdough-growth.json' with { type: 'json' };
import chart from '../../../validation/formula/starter-chart.json' with { type: 'json' };
import rates from '../../../validation/formula/yeast-rate.json' with { type: 'json' };
import { ingredientMade } from '../../../validation/menu/made.ts';
import {
  fromCelsius,
  fromFahrenheit,
  grams,
  type Kelvin,
  kelvinDifference,
  metres,
  minutes,
  toCelsius,
} from '../../quantity/unit.ts';
import { doughTemperatureFrom, doughWater, iceFor } from '../water-temperature.ts';
import { doughOver, followMinutes, placeFrom, steadily } from './history.ts';
import {
  bakersYeastRate,
  fastestCelsius,
  lactobacilliRate,
  leavenRate,
  wildYeastRate,
} from './rate.ts';
import { riseAlong, workWithin } from './rise-along.ts';
import { risePlan } from './rise-plan.ts';
import { type Feed, ripeAfter, starterDays, starterFeed } from './starter.ts';
import { leavenIn, shareForWork, workToDouble } from './work.ts';

type Numbers = readonly number[];
const SEA = metres(0);
const lines = (amounts: Readonly<Record<string, number>>) =>
  Object.entries(amounts).map(([name, mass]) => ({
    ingredient: ingredientMade(name, mass),
    grams: grams(mass),
  }));
const YEASTED = lines({ 'bread flour': 500, water: 310, salt: 10, 'instant yeast': 5 });
const SOUR = lines({ 'bread flour': 450, water: 275, salt: 10, 'sourdough starter': 100 });
const planIn = (of: ReturnType<typeof lines>, place: (minute: number) => Kelvin, mixed = 25) =>
  risePlan(of, { mixed: fromCelsius(mixed), mass: grams(825), place, elevation: SEA })!;
const still = (celsius: number) => steadily(fromCelsius(celsius));

describe('speed of yeast', () => {
  it.each(sourdough.rows as unknown as readonly (readonly [string, number, number])[])(
    'of sourdough is that of gaenzle1998: %s at %d °C is %d of its best',
    (organism, celsius, rate) => {
      const of = organism === 'yeast' ? wildYeastRate : lactobacilliRate;
      expect(of(fromCelsius(celsius))).toBeCloseTo(rate, 9);
    },
  );

  it('of baker’s yeast keeps the ratios of yeastRate: twice for 17 °F up to 95 °F, half below', () => {
    for (const [fahrenheit, hours] of rates.rows as readonly Numbers[]) {
      const width = fahrenheit === 97 ? 0.1 : 0.03; // 97 °F lies past the end of the law
      const found = 2 / bakersYeastRate(fromFahrenheit(fahrenheit!));
      expect(Math.abs(found / hours! - 1)).toBeLessThan(width);
    }
  });

  it('of baker’s yeast is next to nothing at 40 °F, nothing at 34 and at 140 (yeastHandout)', () => {
    expect(bakersYeastRate(fromFahrenheit(40))).toBeLessThan(0.12);
    expect(bakersYeastRate(fromFahrenheit(34))).toBeCloseTo(0, 3);
    expect(bakersYeastRate(fromFahrenheit(140))).toBe(0);
  });

  it('never falls as it gets warmer, below its best, and is never negative', () => {
    const celsius = () => fc.double({ min: -20, max: 80, noNaN: true });
    fc.assert(
      fc.property(fc.constantFrom('yeast', 'sourdough'), celsius(), celsius(), (leaven, a, b) => {
        const [low, high] = [Math.min(a, b), Math.max(a, b)];
        const [slow, fast] = [low, high].map((each) => leavenRate(leaven, fromCelsius(each)));
        expect(slow).toBeGreaterThanOrEqual(0);
        if (high <= fastestCelsius(leaven)) expect(fast!).toBeGreaterThanOrEqual(slow! - 1e-12);
      }),
      { seed: 21, numRuns: 400 },
    );
  });

  it('lets lactobacilli outgrow the yeast in the heat: at 34 °C yes, at 20 °C both at half (gaenzle1998)', () => {
    expect(lactobacilliRate(fromCelsius(34))).toBeGreaterThan(3 * wildYeastRate(fromCelsius(34)));
    expect(lactobacilliRate(fromCelsius(20))).toBeCloseTo(wildYeastRate(fromCelsius(20)), 9);
  });
});

describe('a rise along the day', () => {
  it('at one temperature is the closed form, work over speed', () => {
    fc.assert(
      fc.property(
        fc.constantFrom('yeast', 'sourdough'),
        fc.double({ min: 12, max: 33, noNaN: true }),
        fc.double({ min: 5, max: 300, noNaN: true }),
        (leaven, celsius, work) => {
          const mixed = fromCelsius(celsius);
          const start = { mixed, mass: grams(800), place: steadily(mixed) };
          const rise = riseAlong({ leaven, work, start });
          const closed = work / leavenRate(leaven, mixed);
          if (closed > 24 * 60) return;
          expect(Math.abs(rise.minutes! / closed - 1)).toBeLessThan(1e-9);
        },
      ),
      { seed: 22, numRuns: 300 },
    );
  });

  it('in two places is the sum of both: an hour at 17 °F less does half an hour (yeastRate)', () => {
    const [warm, cool] = [fromFahrenheit(80), fromFahrenheit(63)];
    // A crumb of dough follows its place at once, so the sum can be done by hand.
    const place = placeFrom([
      { minutes: minutes(60), place: cool },
      { minutes: minutes(0), place: warm },
    ]);
    const rise = riseAlong({
      leaven: 'yeast',
      work: 75,
      start: { mixed: cool, mass: grams(1e-3), place },
    });
    expect(Math.abs(rise.minutes! - 105)).toBeLessThan(3);
  });

  it('cools towards its place as Newton says: 63 % of the way in its own time (closed form)', () => {
    const mass = grams(900);
    const time = followMinutes(mass);
    const [mixed, place] = [fromCelsius(25), fromCelsius(5)];
    for (const at of doughOver({ mixed, mass, place: steadily(place) })) {
      if (at.minute < time - 5) continue;
      const closed = place + (mixed - place) * Math.exp(-at.minute / time);
      expect(at.dough).toBeCloseTo(closed, 9);
      break;
    }
  });

  it('of a small dough follows faster than of a large one', () => {
    expect(followMinutes(grams(300))).toBeLessThan(followMinutes(grams(2000)));
  });

  it('never ends later for a warmer place, while that is below the best', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 5, max: 27, noNaN: true }),
        fc.double({ min: 0.1, max: 6, noNaN: true }),
        (celsius, more) => {
          for (const of of [YEASTED, SOUR]) {
            const cool = planIn(of, still(celsius), 24).estimate?.first ?? Number.POSITIVE_INFINITY;
            const warm = planIn(of, still(Math.min(28, celsius + more)), 24).estimate?.first;
            expect(warm ?? Number.POSITIVE_INFINITY).toBeLessThanOrEqual(cool + 1e-9);
          }
        },
      ),
      { seed: 23, numRuns: 60 },
    );
  });

  it('never has a shorter second rise, nor a nearer late end, in a colder place', () => {
    const never = Number.POSITIVE_INFINITY;
    const plans = [25, 20, 15, 10, 6, 4, 2, 1, 0, -3, -5].map((at) => planIn(YEASTED, still(at)));
    for (const of of ['second', 'most'] as const) {
      const found = plans.map(({ estimate }) => estimate?.[of] ?? never);
      expect(found).toEqual(found.toSorted((one, other) => one - other));
    }
    expect(plans.at(-1)!.estimate).toBeUndefined();
    expect(plans.at(-1)!.done).toBeLessThan(1);
  });

  it('keeps its own likely time between its least and its most', () => {
    const { first, least, most } = planIn(YEASTED, still(15)).estimate!;
    expect(least).toBeLessThan(first);
    expect(first).toBeLessThan(most);
  });
});

describe('hurry up and slow down', () => {
  it('each move goes its own way in mild air', () => {
    for (const of of [YEASTED, SOUR]) {
      const { options } = planIn(of, still(18));
      const later = Object.fromEntries(options.map((each) => [each.do, each.later ?? 1e9]));
      for (const sooner of ['more-leaven', 'warmer-dough', 'warm-box']) {
        expect(later[sooner], sooner).toBeLessThan(0);
      }
      for (const slower of ['less-leaven', 'colder-dough', 'cold-night']) {
        expect(later[slower], slower).toBeGreaterThan(0);
      }
    }
  });

  it('less than double the yeast is less than half the time saved: share goes straight (judged)', () => {
    const { estimate, options } = planIn(YEASTED, still(25), 25);
    const more = options.find((each) => each.do === 'more-leaven')!;
    expect(more.first! / estimate!.first).toBeCloseTo(1 / 1.5, 2);
  });

  it('half the starter takes less than twice as long, since it grows all the while', () => {
    const { estimate, options } = planIn(SOUR, still(25), 25);
    const less = options.find((each) => each.do === 'less-leaven')!;
    expect(less.first! / estimate!.first).toBeGreaterThan(1.1);
    expect(less.first! / estimate!.first).toBeLessThan(2);
  });
});

describe('a night in the cold', () => {
  it('of 12 to 24 h at 4 °C takes 0.2 to 0.5 % of yeast (coldFerment), to a tenth of a percent', () => {
    const start = { mixed: fromCelsius(25), mass: grams(850), place: still(4) };
    const of = (hours: number) => shareForWork('yeast', workWithin('yeast', start, hours * 60), 1)!;
    expect(of(12)).toBeLessThan(0.006);
    expect(of(12)).toBeGreaterThan(of(24));
    expect(of(24)).toBeGreaterThan(0.002);
    expect(of(24)).toBeLessThan(0.005);
  });

  it('with the leaven that is told is risen at the end of it: both laws read both ways', () => {
    for (const of of [YEASTED, SOUR]) {
      const night = planIn(of, still(20)).options.find((each) => each.do === 'cold-night')!;
      if (night.share === undefined) continue;
      const work = workToDouble({ leaven: leavenIn(of)!.leaven, share: night.share }, 1);
      const start = { mixed: fromCelsius(25), mass: grams(825), place: steadily(night.kelvin!) };
      const done = riseAlong({ leaven: leavenIn(of)!.leaven, work, start });
      expect(done.minutes!).toBeCloseTo(night.first!, 6);
    }
  });
});

describe('a second rise after a night in the cold', () => {
  const MASS = grams(825);
  const night = { place: fromCelsius(4), minutes: minutes(600), isFirstRise: false };
  const rising = (celsius: number, cold?: typeof night) =>
    risePlan(YEASTED, {
      mixed: fromCelsius(25),
      mass: MASS,
      place: still(celsius),
      elevation: SEA,
      ...(cold === undefined ? {} : { cold }),
    })!;
  const secondOf = (celsius: number, cold?: typeof night) =>
    rising(celsius, cold).estimate?.second ?? Number.POSITIVE_INFINITY;

  it('starts cold: speed of yeastRate summed by tenths of a minute along Newton’s closed form', () => {
    for (const celsius of [16, 20, 26]) {
      const plan = rising(celsius, night);
      const place = fromCelsius(celsius);
      const half = workToDouble(leavenIn(YEASTED)!, 1) / 2; // half a first rise, common practice
      const follow = followMinutes(grams(MASS / 2));
      let [done, minute] = [0, 0];
      for (; done < half; minute += 0.1) {
        const dough = place + (plan.cold!.dough - place) * Math.exp(-minute / follow);
        done += 0.1 * bakersYeastRate(dough as Kelvin);
      }
      expect(Math.abs(plan.estimate!.second / minute - 1), `${celsius} °C`).toBeLessThan(0.01);
    }
  });

  it('comes out as cold as Newton’s cooling leaves it, after an hour still far above the cold', () => {
    const short = rising(20, { ...night, minutes: minutes(60) }).cold!.dough;
    const warm = rising(20).along.at(-1)!.dough;
    expect(short).toBeGreaterThan(fromCelsius(4) + 5);
    expect(short).toBeLessThan(warm);
    expect(toCelsius(rising(20, night).cold!.dough)).toBeCloseTo(4, 0);
  });

  it('takes longer than from warm dough, the longer and colder the night the more', () => {
    for (const celsius of [14, 18, 22, 28]) {
      const seconds = [undefined, 60, 180, 600].map((long) =>
        secondOf(celsius, long === undefined ? undefined : { ...night, minutes: minutes(long) }),
      );
      expect(seconds).toEqual(seconds.toSorted((one, other) => one - other));
      expect(seconds.at(-1)).toBeGreaterThan(seconds[0]! + 15);
      const milder = secondOf(celsius, { ...night, place: fromCelsius(9) });
      expect(milder).toBeLessThan(secondOf(celsius, night));
    }
  });

  it('keeps the writer’s night where it is the only rise, and makes up for what it left undone', () => {
    const only = { ...night, isFirstRise: true };
    const { estimate, cold } = rising(20, only);
    expect([estimate!.least, estimate!.first, estimate!.most]).toEqual([600, 600, 600]);
    expect(toCelsius(cold!.dough)).toBeLessThan(6);
    const start = { mixed: fromCelsius(25), mass: MASS, place: still(4) };
    const left = 1 - workWithin('yeast', start, 120) / workToDouble(leavenIn(YEASTED)!, 1);
    expect(left).toBeGreaterThan(0);
    const short = { ...only, minutes: minutes(120) };
    const after = rising(20, { ...short, isFirstRise: false }).cold!.dough;
    expect(Math.abs(after - rising(20, short).cold!.dough)).toBeLessThan(6);
    expect(secondOf(20, short)).toBeGreaterThan(secondOf(20, only) / 2);
  });
});

describe('a dough in the frost', () => {
  it('at 2 °C does not rise, and a warm box makes it (yeastHandout: nearly stops at 40 °F)', () => {
    const plan = planIn(YEASTED, still(2), 2);
    expect(plan.estimate).toBeUndefined();
    expect(plan.done).toBeLessThan(1);
    const box = plan.options.find((each) => each.do === 'warm-box')!;
    expect(box.first).toBeLessThan(6 * 60);
  });

  it('of sourdough at 8 °C stands still, of baker’s yeast still creeps (gaenzle1998, yeastHandout)', () => {
    expect(planIn(SOUR, still(8), 8).done).toBe(0);
    expect(planIn(YEASTED, still(8), 8).done).toBeGreaterThan(0.2);
  });
});

describe('a starter', () => {
  it.each(chart.rows as readonly Numbers[])(
    'fed 1:%d:%d is ripe at 20 °C within the hours of starterChart (least %d)',
    (parts, least, most) => {
      const hours = ripeAfter(parts as Feed, fromCelsius(20))! / 60;
      expect(hours).toBeGreaterThan(least! - 0.05);
      expect(hours).toBeLessThan(most! + 0.05);
    },
  );

  it('at 22 °C is ripe after about 3.5 h fed 1:1:1 and 12 h fed 1:10:10 (starterAt22), within a quarter', () => {
    for (const [feed, hours] of [
      [1, 3.5],
      [10, 12],
    ] as const) {
      expect(Math.abs(ripeAfter(feed, fromCelsius(22))! / 60 / hours - 1)).toBeLessThan(0.25);
    }
  });

  it('fed the evening before is given the largest feed that is ripe by the morning', () => {
    const wish = { wanted: grams(100), minutes: minutes(12 * 60) };
    const mild = starterFeed({ ...wish, place: still(20) });
    const cool = starterFeed({ ...wish, place: still(16) });
    expect(mild.ripeAfter).toBeLessThanOrEqual(12 * 60);
    expect(mild.needsWarmth).toBe(false);
    expect(cool.feed).toBeLessThan(mild.feed);
    expect(mild.starter + mild.flour + mild.water).toBeGreaterThanOrEqual(100);
  });

  it('on a frosty night is told to be kept warm', () => {
    const cold = starterFeed({ wanted: grams(100), minutes: minutes(720), place: still(3) });
    expect(cold.needsWarmth).toBe(true);
    expect(cold.ripeAfter).toBeUndefined();
  });

  it('has its upkeep in order: wake, feed, mix', () => {
    const days = starterDays(grams(100), { place: still(18) });
    expect(days.map((each) => each.do)).toEqual(['wake', 'feed', 'mix']);
    expect(days[0]!.feed!.flour).toBeGreaterThan(0);
  });

  it('is known by name, and yeast beside it wins', () => {
    expect(leavenIn(SOUR)).toEqual({ leaven: 'sourdough', share: 0.1 });
    expect(leavenIn([...SOUR, ...lines({ 'instant yeast': 2 })])!.leaven).toBe('yeast');
  });
});

describe('ice and hot water', () => {
  it.each(ice.rows as readonly Numbers[])(
    'ice for water of %d °F from a tap of %d °F is %d of the water (iceTable, its own scatter 0.008)',
    (wanted, tap, share) => {
      const found = iceFor({
        water: grams(1),
        tap: fromFahrenheit(tap!),
        wanted: fromFahrenheit(wanted!),
      });
      expect(Math.abs(found - share!)).toBeLessThan(0.008);
      const rule = (tap! - wanted!) / (tap! + 112); // bakers' rule, 144 BTU to melt a pound
      expect(Math.abs(found - rule)).toBeLessThan(0.003);
    },
  );

  const mix = { flour: grams(500), water: grams(300), friction: kelvinDifference(2.8) };

  it('cools a hot flour to the wanted dough, by ice where the water would be below the tap', () => {
    const dough = {
      ...mix,
      wanted: fromCelsius(24),
      flourTemperature: fromCelsius(38),
      tap: fromCelsius(28),
    };
    const found = doughWater(dough)!;
    expect(found.ice).toBeGreaterThan(0);
    expect(found.dough).toBe(dough.wanted);
    // The books of heat: ice melts and warms, tap water cools, flour cools, hands warm.
    const [iced, rest] = [found.ice!, mix.water - found.ice!];
    const cold = iced * (333.55 + 4.19 * 24);
    const warm =
      rest * 4.19 * (28 - 24) +
      mix.flour * 1.7 * (38 - 24) +
      2.8 * (mix.flour * 1.7 + mix.water * 4.19);
    expect(Math.abs(cold / warm - 1)).toBeLessThan(0.02);
  });

  it('is never hotter than yeast bears, and then names the dough that comes of it', () => {
    const frost = doughWater({
      ...mix,
      water: grams(275),
      wanted: fromCelsius(30),
      flourTemperature: fromCelsius(-10),
      tap: fromCelsius(5),
    })!;
    expect(frost.limit).toBe('too hot for yeast');
    expect(toCelsius(frost.water)).toBeLessThan(60); // killed at 140 °F, yeastHandout
    expect(frost.dough).toBeLessThan(fromCelsius(30));
    const back = doughTemperatureFrom({
      ...mix,
      water: grams(275),
      flourTemperature: fromCelsius(-10),
      waterTemperature: frost.water,
    });
    expect(frost.dough).toBeCloseTo(back, 9);
  });
});
