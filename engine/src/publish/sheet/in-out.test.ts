// Into and out of the oven, as the card says it. Truth: what the cook asked for is on the card; no
// number here proves the plan right.

import { describe, expect, it } from 'vitest';
import type { MealPlan } from '../../meal.ts';
import type { InOvenWish } from '../../menu/in-oven.ts';
import { readyRecipes } from '../../menu/ready-recipes.ts';
import { campForTonight } from '../../menu/tonight.ts';
import type { TonightAnswers } from '../../menu/tonight-answers.ts';
import { isRefusal } from '../../notice/notice.ts';
import { planMeal } from '../../plan-meal.ts';
import { clockMinutes, metres } from '../../quantity/unit.ts';
import { malformed } from '../drawing/svg-check.ts';
import { renderText } from '../render/text.ts';
import { sayFor } from '../speak.ts';
import { dishCard } from './dish-card.ts';
import { provisionsSheet } from './provisions-sheet.ts';

const BREADS = ['yeast-bread', 'quick-bread', 'biscuit', 'corn-bread'];

function planned(
  what: string,
  inOven: InOvenWish = {},
  more: Partial<TonightAnswers> = {},
): MealPlan {
  const asked = campForTonight({
    what,
    ...more,
    oven: { diameterMetres: 0.3048, style: 'deep' },
    when: { serveAt: clockMinutes(1140) },
    date: '2026-09-01',
    timeZone: 'Etc/UTC',
    now: clockMinutes(600),
  });
  if (isRefusal(asked)) throw new Error(asked.code);
  const dishes = asked.menu.dishes.map((dish) => ({ ...dish, inOven }));
  return planMeal(asked.camp, { ...asked.menu, dishes });
}

const say = (plan: MealPlan, measures: 'us' | 'metric') => sayFor({ measures, clock: '24', plan });
const cardOf = (plan: MealPlan, measures: 'us' | 'metric' = 'us') =>
  dishCard(plan, plan.dishes[0]!.dish.id, say(plan, measures));
const textOf = (plan: MealPlan, measures: 'us' | 'metric' = 'us') =>
  renderText(cardOf(plan, measures), { width: 100 }).replace(/\s+/g, ' ');

describe('the card, into and out of the oven', () => {
  it('has the bottom crust as a sign equal to the core on every bread there is', () => {
    const breads = readyRecipes.filter(({ kind }) => BREADS.includes(kind));
    expect(breads.length).toBeGreaterThan(4);
    for (const { id } of breads) {
      for (const contact of ['iron', 'rack'] as const) {
        const text = textOf(planned(id, { contact }));
        expect(text, id).toMatch(/Bottom crust/);
        expect(text, id).toMatch(/counts as much as the middle/);
      }
    }
  });

  it('says to a cook without a thermometer that the boil caps the crumb, and what to look for', () => {
    // At 3,200 m the air has 68.4 kPa (ussa1976), where water boils at 89.4 °C, 193 °F (iapws-if97).
    const high = { elevation: metres(3200) };
    for (const { id } of readyRecipes.filter(({ kind }) => BREADS.includes(kind))) {
      const text = textOf(planned(id, {}, high));
      expect(text, id).toMatch(/Crumb gets no hotter than about 18\d °F up here/);
      expect(text, id).toMatch(/water boils at 19[34] °F/);
      expect(text, id).toMatch(/longer only dries it/);
      expect(textOf(planned(id)), id).not.toMatch(/no hotter than/);
    }
    const probed = textOf(planned('round-loaf', {}, { ...high, thermometer: true }));
    expect(probed).toMatch(/water boils lower here, so it never gets there/);
    expect(probed).not.toMatch(/Crumb gets no hotter/);
  });

  it('tells of the rack, the meal and the tin that were asked for, in both measures', () => {
    const said = {
      rack: /rack .* high on the floor/i,
      meal: /coarse meal over the floor/i,
      tin: /grease the tin/i,
    };
    for (const [contact, words] of Object.entries(said)) {
      const plan = planned('soda-bread', { contact: contact as keyof typeof said });
      for (const measures of ['us', 'metric'] as const)
        expect(textOf(plan, measures), contact).toMatch(words);
    }
  });

  it('puts rack and tin into the kit and nothing of the kind where they are not used', () => {
    const kitOf = (plan: MealPlan) =>
      renderText(provisionsSheet(plan, say(plan, 'us')), { width: 100 });
    expect(kitOf(planned('soda-bread', { contact: 'tin' }))).toMatch(/rack that fits on the floor/);
    expect(kitOf(planned('soda-bread'))).not.toMatch(/rack that fits on the floor/);
    expect(kitOf(planned('soda-bread'))).toMatch(/baking paper/);
  });

  it('says how to cut a round in eight, and a batter by its portions', () => {
    expect(textOf(planned('soda-bread'))).toMatch(/in 8: 4 cuts across the middle/);
    expect(textOf(planned('corn-bread'))).toMatch(/Cut it in \d+/);
  });

  it('has the cutting on the day sheet, after the rest and before serving', () => {
    const plan = planned('soda-bread');
    const { jobs, servings } = plan.daySheet;
    const cut = jobs.find(({ kind }) => kind === 'cut')!;
    const rest = jobs.find(({ kind }) => kind === 'rest')!;
    expect(cut.end - cut.start).toBe(2); // a minute, and one for every eight pieces
    expect(cut.hands).toHaveLength(1);
    expect(rest.end).toBeLessThanOrEqual(cut.start);
    expect(cut.end).toBeLessThanOrEqual(servings[0]!.served);
    expect(planned('biscuits').daySheet.jobs.some(({ kind }) => kind === 'cut')).toBe(false);
  });

  it('gives the greasing a minute more for a rack, and all of it to a tin', () => {
    const greases = (inOven: InOvenWish) => {
      const job = planned('soda-bread', inOven).daySheet.jobs.find(
        ({ kind }) => kind === 'grease',
      )!;
      return job.end - job.start;
    };
    expect([greases({}), greases({ contact: 'rack' }), greases({ contact: 'tin' })]).toEqual([
      2, 3, 3,
    ]);
  });

  it('draws the food as high above the floor as its rack is, well formed', () => {
    for (const contact of ['iron', 'rack', 'tin', 'meal'] as const) {
      const drawings = cardOf(planned('soda-bread', { contact })).blocks.flatMap((block) =>
        block.type === 'drawing' ? [block.svg] : [],
      );
      expect(drawings.length).toBeGreaterThan(0);
      for (const svg of drawings) expect(malformed(svg)).toEqual([]);
      const isRacked = drawings.some((svg) => svg.includes('class="rack"'));
      expect(isRacked, contact).toBe(contact === 'rack' || contact === 'tin');
    }
  });

  it('keeps what goes in under the lid on a rack too: headroom shrinks by its height', () => {
    const on = (inOven: InOvenWish) => planned('soda-bread', inOven).dishes[0]!.loads[0]!.load;
    const lost = on({ contact: 'iron' }).headroom - on({ contact: 'rack' }).headroom;
    expect(lost).toBeCloseTo(metres(0.0127), 6);
  });
});
