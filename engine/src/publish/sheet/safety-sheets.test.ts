// The sheets that keep people safe, as they are read: figures of published rules in both measures.

import { describe, expect, it } from 'vitest';
import type { Camp } from '../../camp/camp.ts';
import type { MealPlan } from '../../meal.ts';
import { campForTonight } from '../../menu/tonight.ts';
import { isRefusal } from '../../notice/notice.ts';
import { planMeal } from '../../plan-meal.ts';
import { clockMinutes, fromCelsius, metresPerSecond, ratio } from '../../quantity/unit.ts';
import type { SheetDocument } from '../document.ts';
import { sayFor } from '../index.ts';
import { renderText } from '../render/text.ts';
import { allergenCards } from './allergen-cards.ts';
import { fireCard } from './fire-card.ts';
import { ironAndAshSheet } from './iron-and-ash.ts';
import { safetyLogSheet } from './safety-log.ts';
import { waterAndWashSheet } from './water-and-wash.ts';

function planned(what: string, own: Partial<Camp> = {}): MealPlan {
  const asked = campForTonight({
    what,
    oven: { diameterMetres: 0.3048 },
    when: { serveAt: clockMinutes(1110) },
    date: '2026-09-01',
    timeZone: 'Etc/UTC',
    now: clockMinutes(480),
    weather: { windMetresPerSecond: 2, airKelvin: fromCelsius(20) },
  });
  if (isRefusal(asked)) throw new Error(asked.code);
  return planMeal({ ...asked.camp, ...own }, asked.menu, { advice: 'later' });
}

const told = (
  sheet: (plan: MealPlan, say: ReturnType<typeof sayFor>) => SheetDocument,
  plan: MealPlan,
  measures: 'us' | 'metric' = 'us',
) =>
  renderText(sheet(plan, sayFor({ measures, clock: '24', plan })), { width: 200 }).replaceAll(
    '\u00a0',
    ' ',
  );

describe('the fire card', () => {
  it('has 10, 15 and 30 ft, a pan of 12 in with a lip of 3, and lines for who said yes (usfs-campfire, river-fire-pan)', () => {
    const card = told(fireCard, planned('rolls'));
    expect(card).toContain('Bare ground 10 ft across');
    expect(card).toContain('15 ft from tents and gear, 30 ft from anything built');
    expect(card).toContain('at least 12 in by 12 in, lip 3 in');
    expect(card).toMatch(/Who said yes\s+_{10,}/);
    expect(card).toMatch(/Good until\s+_{10,}/);
    expect(card).toContain('local order overrides');
    expect(told(fireCard, planned('rolls'), 'metric')).toContain('Bare ground 3 m across');
  });

  it('marks the stage and gives the menu without fire, honestly, at stage 2 (fire-stages, fda-flour)', () => {
    const card = told(fireCard, planned('rolls', { restriction: 'stage-2' }));
    expect(card).toMatch(/2, says the camp\s+no\s+yes, 3 ft cleared/);
    expect(card).toContain('not at all');
    expect(card).toContain('No dish of this menu can be eaten without heat');
    const pot = told(fireCard, planned('beef-stew', { restriction: 'stage-2' }));
    expect(pot).toContain('only on a stove with a valve');
  });

  it('stops in the hour of Red Flag weather and says whose figures they are (red-flag-example)', () => {
    const plan = planned('rolls');
    const [hour] = plan.camp.weather;
    const windy = {
      ...hour!,
      wind: metresPerSecond(8),
      gust: metresPerSecond(10),
      humidity: ratio(0.2),
      air: fromCelsius(30),
    };
    const card = told(fireCard, { ...plan, camp: { ...plan.camp, weather: [windy] } });
    expect(card).toContain('STOP: Red Flag weather');
    expect(card).toContain('15 mph or more');
    expect(card).toContain('humidity 25 % or less');
    expect(card).toContain('the local office decides');
  });
});

describe('the safety log', () => {
  it('has a line for the core of a stew at 165 F, hot until served at 140 F, cooling in two stages (foodsafety-chart, food-code-3-501-14)', () => {
    const log = told(safetyLogSheet, planned('beef-stew'));
    expect(log).toMatch(/middle, at least\s+165 °F\s+\d\d:\d\d\s+_{6,}/);
    expect(log).toMatch(/kept hot until served, at least\s+140 °F/);
    expect(log).toContain('70 °F within 2 h, 40 °F within 6 h');
    expect(log).toContain('heat it to 165 °F');
    const metric = told(safetyLogSheet, planned('beef-stew'), 'metric');
    expect(metric).toMatch(/middle, at least\s+74 °C/);
    expect(metric).toContain('21 °C within 2 h, 4 °C within 6 h');
  });

  it('asks a public event for a hand-wash line and fresh spoons (public-event-rules)', () => {
    const log = told(safetyLogSheet, planned('beef-stew', { event: 'public' }));
    expect(log).toContain('needs a hand-wash line and none is listed');
    expect(log).toContain('Fresh spoons and ladles');
    expect(log).toMatch(
      /asks 135 °F hot and 41 °F cold; this plan keeps the stricter 140 °F and 40 °F/,
    );
    expect(told(safetyLogSheet, planned('beef-stew'))).not.toContain('hand-wash line and none');
  });
});

describe('the allergen cards', () => {
  it('say wheat with its gluten, and traces for a dish that is not kept apart (eu-1169-2011)', () => {
    const cards = told(allergenCards, planned('rolls'));
    expect(cards).toMatch(/Contains: .*gluten.*wheat/);
    expect(cards).toContain('traces of the other dishes');
    expect(cards).toMatch(/wheat\s+wheat\s+cereals containing gluten/);
  });

  it('keep the names of people off the cards that stand on the line', () => {
    const needs = [{ who: 'a camper of table four', kind: 'wheat', strictness: 'avoid' }] as const;
    const cards = told(allergenCards, planned('rolls', { needs }));
    const [line = '', crew = ''] = cards.split('For the crew');
    expect(line).not.toContain('table four');
    expect(crew).toMatch(/table four/i);
  });
});

describe('water and wash', () => {
  it('boils 3 min on a mountain and doses by the label (epa-p100sp1s, kdhe-bleach)', () => {
    const plan = planned('rolls');
    const place = { ...plan.camp.place, elevation: 2100 as typeof plan.camp.place.elevation };
    const gear = { ...plan.camp.gear, bleach: ratio(0.0825) };
    const card = told(waterAndWashSheet, {
      ...plan,
      assumed: [],
      camp: { ...plan.camp, place, gear },
    });
    expect(card).toContain('3 min rolling boil (at 6,890 ft)');
    expect(card).toContain('30 drops of 8.25 % bleach in 5 gal');
    expect(card).toContain('2 3/4 tsp of 8.25 % bleach in 3 gal'); // 3 times 4.59 ml
    expect(told(waterAndWashSheet, plan)).toContain('Read the per cent');
  });
});

describe('iron and ash', () => {
  it('drowns, stirs and feels, keeps ash four days, and never in a tent, car, cave or room (usfs-campfire, fire-departments, cpsc-5012)', () => {
    const sheet = told(ironAndAshSheet, planned('rolls'));
    for (const word of ['Drown', 'Stir', 'Feel']) expect(sheet).toContain(word);
    expect(sheet).toContain('Live for 4 days: until 2026-09-05');
    expect(sheet).toMatch(/never in a tent, vehicle, cave or room/);
  });

  it('has a clock for each oven that was hot: hot water before the bare hand', () => {
    const sheet = told(ironAndAshSheet, planned('rolls'));
    const [, emptied, hot, touch] =
      /(\d\d:\d\d)\s+\d+ °F\s+(\d\d:\d\d)\s+(\d\d:\d\d)/.exec(sheet) ?? [];
    expect(emptied! < hot!).toBe(true);
    expect(hot! < touch!).toBe(true);
  });
});
