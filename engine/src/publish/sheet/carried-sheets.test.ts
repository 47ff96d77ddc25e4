// Shopping, labels, boxes, fuel, water and ice, mouths, as they are printed. Sizes of label paper are
// from memory; that they close on their paper is arithmetic.

import { beforeAll, describe, expect, it } from 'vitest';
import type { Stores } from '../../camp/stores.ts';
import type { MealPlan } from '../../meal.ts';
import { campForTonight } from '../../menu/tonight.ts';
import { isRefusal } from '../../notice/notice.ts';
import { planMeal } from '../../plan-meal.ts';
import { clockMinutes, fromCelsius, grams, metres, minutes, ratio } from '../../quantity/unit.ts';
import type { Block, SheetDocument } from '../document.ts';
import { renderHtml } from '../render/html.ts';
import { SHEET_STYLE } from '../render/style.ts';
import { renderText } from '../render/text.ts';
import { sayFor } from '../speak.ts';
import { boxesSheet } from './boxes-sheet.ts';
import { fuelWaterIceSheet } from './fuel-water-ice.ts';
import { LABEL_LETTERS, labelGrid } from './label-grid.ts';
import { mouthsSheet } from './mouths-sheet.ts';
import { shoppingSheet } from './shopping-sheet.ts';

const cooler = {
  name: 'the blue cooler',
  inside: { length: metres(0.4), width: metres(0.3), height: metres(0.3) },
  wall: metres(0.03),
  ice: grams(500),
};
const stores: Stores = {
  foods: [
    {
      name: 'bread flour',
      packs: [{ size: grams(1000), price: 2.5 }],
      shop: 'the mill',
      have: grams(100),
    },
    { name: 'beef chuck', packs: [{ size: grams(0) }] },
    { name: 'carrots', packs: [], usable: ratio(1.22) },
  ],
  money: '€',
  carriers: [{ name: 'the grey', kind: 'mule', count: 1, limit: grams(12_000) }],
  coolers: [cooler],
  packedAt: clockMinutes(-240),
};

function planned(): MealPlan {
  const asked = ['rolls', 'beef-stew', 'peach-cobbler'].map((what, index) => {
    const one = campForTonight({
      what,
      oven: { diameterMetres: 0.3048 },
      when: { serveAt: clockMinutes(1110 + 20 * index) },
      date: '2026-09-01',
      timeZone: 'Etc/UTC',
      now: clockMinutes(480),
      hands: 3,
      weather: { windMetresPerSecond: 2, airKelvin: fromCelsius(20) },
    });
    if (isRefusal(one)) throw new Error(one.code);
    return one;
  });
  const [first] = asked;
  const camp = {
    ...first!.camp,
    stores,
    gear: { ...first!.camp.gear, chimneys: 3, tables: 2 },
    mouths: [
      { count: 8, appetite: 'ordinary' as const },
      { count: 4, appetite: 'child' as const },
      { count: 2, appetite: 'hard-work' as const, late: minutes(30) },
    ],
    ovens: asked.map(({ camp: { ovens } }, index) => ({
      ...ovens[0]!,
      id: `oven-${index}`,
      name: `oven ${index}`,
    })),
  };
  const menu = {
    dishes: asked.flatMap(({ menu: { dishes } }) =>
      dishes.map(({ portions: _own, ...dish }) => dish),
    ),
    recipes: asked.flatMap(({ menu: { recipes } }) => recipes),
  };
  return planMeal(camp, menu, { advice: 'later' });
}

let plan: MealPlan;
beforeAll(() => {
  plan = planned();
}, 60_000);

const voices = () =>
  (['us', 'metric'] as const).map((measures) => sayFor({ measures, clock: '24', plan }));
const plain = (told: string) => told.replaceAll('\u00a0', ' ');
const text = (document: SheetDocument) => plain(renderText(document, { width: 200 }));
const cardsIn = ({ blocks }: SheetDocument) =>
  blocks.filter((block): block is Extract<Block, { type: 'card' }> => block.type === 'card');

describe('the shopping sheet', () => {
  it('buys by shop in packs, larder off, with its price, and names what the stores say wrongly', () => {
    const [, say] = voices();
    const told = text(shoppingSheet(plan, say!));
    expect(told).toContain('The mill');
    expect(told).toMatch(/bread flour\s+\d+ of 1\s*kg/i);
    expect(told).toContain('€');
    expect(told).toMatch(/found a pack of 0 g, wanted more than 0/);
    expect(told).toMatch(/usable share of 122 %, wanted more than 0 and at most 100 %/);
    expect(told).toMatch(/Cold, into the cooler at once/);
  });

  it('counts as many packs as leave less than one over', () => {
    const flour = plan.provisions.shopping.find(({ shop }) => shop === 'the mill');
    const needed = (flour?.grams ?? 0) - 100;
    expect(flour?.bought).toBe(1000 * Math.ceil(needed / 1000));
    expect(flour?.cost).toBeCloseTo((2.5 * (flour?.bought ?? 0)) / 1000, 9);
  });
});

describe('labels', () => {
  it('are all within the letters that their paper holds, with grams, what is added and until when', () => {
    for (const say of voices()) {
      const document = labelGrid(plan, say);
      const paper = document.kind.endsWith('a4') ? 'a4' : 'letter';
      expect(cardsIn(document).length).toBeGreaterThan(2);
      for (const card of cardsIn(document)) {
        const letters = card.blocks.flatMap((block) =>
          block.type === 'paragraph' ? block.parts : [],
        );
        const all = letters.map((part) => part.text).join('');
        expect(all.length).toBeLessThanOrEqual(LABEL_LETTERS[paper]);
        expect(all).not.toContain('undefined');
      }
      // Boxes are closed on the evening before the first of September; a plain mix is carried 30 days.
      expect(text(document)).toContain('Keep until 2026-09-30 if weighed on 2026-08-31');
      expect(text(document)).toContain('From the dry tin: Instant yeast');
    }
  });

  it('close on their paper: 2 x 4 inches ten times on Letter, 99.1 x 67.7 mm eight times on A4', () => {
    expect(5 * 2 + 2 * 0.5).toBe(11); // inches, label paper from memory
    expect(2 * 4 + 0.19).toBeLessThan(8.5);
    expect(4 * 67.7).toBeLessThan(297);
    expect(2 * 99.1 + 2.5).toBeLessThan(210);
    const page = renderHtml(labelGrid(plan, voices()[0]!));
    expect(page).toContain('label-grid-letter');
    expect(SHEET_STYLE).toContain('grid-auto-rows: 2in');
    expect(SHEET_STYLE).toContain('grid-auto-rows: 67.7mm');
  });
});

describe('boxes, fuel, water, ice and mouths', () => {
  it('say how much is too much for the mule, and what stays behind weighs so much', () => {
    for (const say of voices()) {
      const told = text(boxesSheet(plan, say));
      const over = say.mass(plan.provisions.packing?.leftMass ?? 0);
      expect(told).toContain(`Too heavy by ${plain(over)}`);
      expect(told).toMatch(/Dry tin 1/);
      expect(told).toMatch(/Nobody/);
    }
  });

  it('tell fuel by its parts, and the parts are the whole', () => {
    const { parts, massWithSpare, mass } = plan.provisions.fuel;
    const sum =
      (parts?.sets ?? 0) + (parts?.additions ?? 0) + (parts?.lighting ?? 0) + (parts?.weather ?? 0);
    expect(sum).toBeCloseTo(massWithSpare, 6);
    expect((parts?.sets ?? 0) + (parts?.additions ?? 0)).toBeCloseTo(mass, 6);
    expect(text(fuelWaterIceSheet(plan, voices()[0]!))).toContain('First sets');
  });

  it('say when the ice is gone, and that raw meat shares its cooler', () => {
    const told = text(fuelWaterIceSheet(plan, voices()[1]!));
    expect(told).toMatch(/The ice in the blue cooler lasts/);
    expect(told).toMatch(/holds raw meat and food that is eaten as it is/);
  });

  it('tell mouths by appetite, who comes late, and the ladle of the stew', () => {
    const told = text(mouthsSheet(plan, voices()[0]!));
    expect(told).toMatch(/Children\s+4/);
    expect(told).toMatch(/Of these late\s+2/);
    expect(told).toMatch(/level ladle of/);
    expect(told).toMatch(/beef in a stew, raw/);
  });
});
