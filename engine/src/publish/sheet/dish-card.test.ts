// The card against the day sheet of the same plan, and against what the issues ask of it. No number
// here proves the plan right; that is for the stages' own tests.

import { describe, expect, it } from 'vitest';
import { colourWord } from '../../bake/inside/index.ts';
import type { DishPlan, LoadPlan, MealPlan } from '../../meal.ts';
import { readyRecipes } from '../../menu/ready-recipes.ts';
import { campForTonight } from '../../menu/tonight.ts';
import { isRefusal, notice } from '../../notice/notice.ts';
import { planMeal } from '../../plan-meal.ts';
import { clockMinutes, minutes } from '../../quantity/unit.ts';
import type { Block, StepRow } from '../document.ts';
import { fixturePlan } from '../fixture.ts';
import { noticeBox } from '../notice-text.ts';
import { renderText } from '../render/text.ts';
import { sayFor } from '../speak.ts';
import { asDone } from './check-colours.ts';
import { dishCard } from './dish-card.ts';
import { fireAndCareSheet } from './fire-and-care.ts';

type Change = Partial<Parameters<typeof campForTonight>[0]>;

function tonight(what: string, change: Change = {}): MealPlan {
  const asked = campForTonight({
    what,
    oven: { diameterMetres: 0.3048 },
    when: { serveAt: clockMinutes(1140) },
    date: '2026-09-01',
    timeZone: 'Etc/UTC',
    now: clockMinutes(600),
    ...change,
  });
  if (isRefusal(asked)) throw new Error(asked.code);
  return planMeal(asked.camp, asked.menu);
}

const wood: Change = { fuel: { kind: 'wood-coals', lead: minutes(60) } };
const plans = readyRecipes.flatMap(({ id }): [string, MealPlan][] => [
  [`${id} on briquettes`, tonight(id)],
  [`${id} on wood coals`, tonight(id, wood)],
]);

const voice = (plan: MealPlan) => sayFor({ measures: 'us', clock: '24', plan });
const cardOf = (plan: MealPlan) => dishCard(plan, plan.dishes[0]!.dish.id, voice(plan));

const stepsOf = (blocks: readonly Block[]): readonly StepRow[] =>
  blocks.flatMap((block) => (block.type === 'steps' ? block.rows : []));

const loadsOf = (plan: MealPlan): readonly (readonly [DishPlan, LoadPlan])[] =>
  plan.dishes.flatMap((dish) => dish.loads.map((part) => [dish, part] as const));

const AT_THE_FIRE: Readonly<Record<string, RegExp>> = {
  turn: /turn/i,
  'add-coals': /\badd\b/i,
  check: /check the heat/i,
  'take-out': /^Out/,
  brown: /brown/i,
};

describe.each(plans)('the card of %s', (_name, plan) => {
  const say = voice(plan);
  const rows = stepsOf(cardOf(plan).blocks);

  it('has every job at the oven at the clock of the day sheet (AT-THE-FIRE 5)', () => {
    for (const [, part] of loadsOf(plan).slice(0, 1)) {
      for (const job of plan.daySheet.jobs.filter(({ load }) => load === part.load.id)) {
        const word = AT_THE_FIRE[job.kind];
        if (word === undefined) continue;
        const found = rows.filter(
          ({ clock, what }) => clock === say.clock(job.start) && word.test(what),
        );
        expect([job.kind, say.clock(job.start), found.length > 0]).toEqual([
          job.kind,
          say.clock(job.start),
          true,
        ]);
      }
    }
  });

  it('counts its minutes from the moment that the coals lie', () => {
    const laid = plan.daySheet.jobs.find(({ kind }) => kind === 'lay-coals');
    const zero = rows.find(({ what }) => what.startsWith('Coals on'));
    expect(zero?.clock).toBe(say.clock(laid!.end));
    expect(zero?.when).toBe(say.minutes(0));
  });

  it('says when to mix and what to light, as the day sheet does', () => {
    for (const job of plan.daySheet.jobs.filter(({ kind }) => kind === 'mix')) {
      expect(rows.map(({ clock, what }) => `${clock} ${what}`)).toContain(
        `${say.clock(job.start)} Mix`,
      );
    }
    const lit = rows.filter(({ what }) => what.startsWith('Light '));
    expect(lit.map(({ clock }) => clock)).toEqual(
      plan.daySheet.lightings.map(({ at }) => say.clock(at)),
    );
    if (plan.camp.fuel.kind === 'briquettes') {
      for (const [index, { coals }] of plan.daySheet.lightings.entries()) {
        expect(lit[index]?.what).toContain(String(coals));
      }
    }
  });

  it('moves six coals at most, and no more than a quarter of the set', () => {
    if (plan.camp.fuel.kind !== 'briquettes') return;
    const text = renderText(cardOf(plan), { width: 400 });
    const [, part] = loadsOf(plan)[0]!;
    const lid = part.coals.browning?.thenAbove ?? part.coals.above;
    const all = lid.pieces + part.coals.below.pieces;
    const moved = text
      .split('\n')
      .filter((line) => /Too (hot|cool)|^\s*(Bottom|Top|Middle)/.test(line));
    const counts = moved.flatMap((line) =>
      [...line.matchAll(/\b(?:add|take|move) (\d+)\b/gi)].map((found) => Number(found[1])),
    );
    expect(counts.length).toBeGreaterThan(0);
    expect(Math.max(0, ...counts)).toBeLessThanOrEqual(Math.max(2, Math.min(6, all / 4)));
  });

  it('keeps a bread in as long as it says that it bakes, added coals or not', () => {
    for (const [, { coals, bake }] of loadsOf(plan)) {
      if (bake.inside === undefined) continue;
      const stay = coals.outMinute - coals.loadInMinute;
      expect(Math.abs(stay - bake.minutes)).toBeLessThan(3.5);
    }
  });

  it('asks at each look for the colours of the cut at its minute, none past "done when"', () => {
    const [, load] = loadsOf(plan)[0]!;
    const { inside, done } = load.bake;
    const shades = ['pale', 'straw', 'brown', 'dark', 'burnt'];
    for (const { minute, ways } of asDone(load))
      for (const way of ways) {
        if (way.by !== 'top-colour' && way.by !== 'bottom-corner') continue;
        const face = way.by === 'top-colour' ? 'top' : 'bottom';
        const wanted = done[face];
        if (wanted === undefined) continue;
        expect(shades.indexOf(way.colour)).toBeLessThanOrEqual(shades.indexOf(wanted));
        const now = inside?.moments[Math.round(minute - load.coals.loadInMinute)];
        if (now === undefined) continue;
        const seen = colourWord(face === 'top' ? now.topColour : now.bottomColour);
        if (shades.indexOf(seen) <= shades.indexOf(wanted)) expect(way.colour).toBe(seen);
        else expect(way.colour).toBe(wanted);
      }
  });

  it('asks for grease or for paper, never for both on one floor', () => {
    const text = renderText(cardOf(plan), { width: 400 });
    if (/circle of baking paper/.test(text)) expect(text).not.toMatch(/greased floor|Grease floor/);
    expect(text).not.toMatch(/film of fat/);
  });

  it('begins every sentence of a notice with a capital', () => {
    for (const block of cardOf(plan).blocks) {
      if (block.type === 'notice') expect(block.text).not.toMatch(/^[a-z]|[a-z]\. [a-z]|\.\./);
    }
  });
});

describe('an oven kept free of wheat', () => {
  const plan = fixturePlan();
  const withFree = (allergen: 'milk' | 'wheat'): MealPlan => ({
    ...plan,
    camp: {
      ...plan.camp,
      ovens: plan.camp.ovens.map((oven) => ({ ...oven, keptFreeOf: [allergen] })),
    },
  });

  it('is never tested with flour', () => {
    const text = renderText(cardOf(withFree('wheat')), { width: 400 });
    expect(text).toMatch(/teaspoon of cornmeal or rice flour/);
    expect(text).not.toMatch(/teaspoon of flour/);
    expect(renderText(cardOf(withFree('milk')), { width: 400 })).toMatch(/teaspoon of flour/);
  });
});

describe('the middle on a card', () => {
  it('is a sign, not a number, for who has no thermometer', () => {
    const row = (thermometer: boolean) => {
      const facts = cardOf(tonight('corn-bread', { thermometer })).blocks.flatMap((block) =>
        block.type === 'facts' ? block.rows : [],
      );
      return facts.filter(({ label }) => label === 'Middle');
    };
    for (const { value } of row(false)) expect(value).not.toMatch(/°F/);
    expect(row(true).length).toBeLessThanOrEqual(1);
  });
});

describe('the table of hot and cold', () => {
  it('leaves plain bread out: it is kept dry', () => {
    const plan = tonight('rolls');
    const kept = (isKeptDry: boolean): MealPlan => ({
      ...plan,
      dishes: plan.dishes.map((dish) => ({ ...dish, safety: { ...dish.safety, isKeptDry } })),
    });
    const text = (isKeptDry: boolean) =>
      renderText(fireAndCareSheet(kept(isKeptDry), voice(plan)), { width: 200 });
    expect(text(true)).not.toMatch(/kept hot above/);
    expect(text(false)).toMatch(/kept hot above/);
  });
});

describe('several notices in one box', () => {
  it('keep their codes', () => {
    const say = voice(fixturePlan());
    const [box] = noticeBox(
      [
        notice('COALS_HEIGHT_UNSURE', 'doubt'),
        notice('COALS_PIN_OVERFILLS', 'stop', { oven: 'B' }),
      ],
      say,
    );
    expect(box).toMatchObject({
      type: 'notice',
      codes: ['COALS_HEIGHT_UNSURE', 'COALS_PIN_OVERFILLS'],
    });
  });
});
