// Properties of every sheet over every plan we have. The one snapshot at the end guards change, not
// truth: it is read and accepted by a person.

import { describe, expect, it } from 'vitest';
import type { CoalPlan } from '../coals/coal-plan.ts';
import type { MealPlan } from '../meal.ts';
import { readyRecipes } from '../menu/ready-recipes.ts';
import { campForTonight } from '../menu/tonight.ts';
import { isRefusal } from '../notice/notice.ts';
import { planMeal } from '../plan-meal.ts';
import { clockMinutes, minutes } from '../quantity/unit.ts';
import type { Block, SheetDocument } from './document.ts';
import { malformed, textsOutside } from './drawing/svg-check.ts';
import { fixturePlan } from './fixture.ts';
import { gathered } from './render/gather.ts';
import { printBook, renderHtml } from './render/html.ts';
import { renderText } from './render/text.ts';
import type { Say } from './say.ts';
import { allergenCards } from './sheet/allergen-cards.ts';
import { bagLabels } from './sheet/bag-labels.ts';
import { boxesSheet } from './sheet/boxes-sheet.ts';
import { daySheet } from './sheet/day-sheet.ts';
import { dishCard } from './sheet/dish-card.ts';
import { fireAndCareSheet } from './sheet/fire-and-care.ts';
import { fireCard } from './sheet/fire-card.ts';
import { fireChiefSheet } from './sheet/fire-chief.ts';
import { fuelWaterIceSheet } from './sheet/fuel-water-ice.ts';
import { handColumns } from './sheet/hand-columns.ts';
import { handSheet } from './sheet/hand-sheet.ts';
import { ironAndAshSheet } from './sheet/iron-and-ash.ts';
import { labelGrid } from './sheet/label-grid.ts';
import { mealSummary } from './sheet/meal-summary.ts';
import { mouthsSheet } from './sheet/mouths-sheet.ts';
import { pocketCards } from './sheet/pocket-cards.ts';
import { provisionsSheet } from './sheet/provisions-sheet.ts';
import { safetyLogSheet } from './sheet/safety-log.ts';
import { shoppingSheet } from './sheet/shopping-sheet.ts';
import { wallList } from './sheet/wall-list.ts';
import { waterAndWashSheet } from './sheet/water-and-wash.ts';
import { sayFor } from './speak.ts';

/** A busy camp of six dishes, four ovens and three pairs of hands, so that a day needs strips. */
function busyCamp(): MealPlan {
  const asked = ['rolls', 'beef-stew', 'bean-pot', 'corn-bread', 'peach-cobbler', 'soda-bread'].map(
    (what, index) => {
      const one = campForTonight({
        what,
        oven: { diameterMetres: 0.3048, style: index % 2 === 0 ? 'regular' : 'deep' },
        when: { serveAt: clockMinutes(1110 + 15 * index) },
        date: '2026-09-01',
        timeZone: 'Etc/UTC',
        now: clockMinutes(600),
        hands: 3,
        weather: { windMetresPerSecond: 3 },
      });
      if (isRefusal(one)) throw new Error(one.code);
      return one;
    },
  );
  const [first] = asked;
  if (first === undefined) throw new Error('no camp');
  const camp = {
    ...first.camp,
    title: 'A busy camp with a title that is rather long for a single line',
    gear: { ...first.camp.gear, chimneys: 3, windScreens: 2 },
    needs: [{ who: 'a guest', kind: 'milk', strictness: 'strict' } as const],
    ovens: asked.slice(0, 4).map(({ camp: { ovens } }, index) => ({
      ...ovens[0]!,
      id: `oven-${index}`,
      name: `the ${['red', 'blue', 'green', 'long-handled and much-travelled'][index]} oven`,
    })),
  };
  const menu = {
    dishes: asked.flatMap(({ menu: { dishes } }) => dishes),
    recipes: asked.flatMap(({ menu: { recipes } }) => recipes),
  };
  return planMeal(camp, menu, { assumed: first.assumed });
}

/** Real plans: every ready recipe, at noon and for half past six, on both fuels. */
const tonights = readyRecipes.flatMap(({ id }, index) =>
  (['briquettes', 'wood-coals'] as const).map((fuel): [string, MealPlan] => {
    const asked = campForTonight({
      what: id,
      oven: { diameterMetres: 0.0254 * (10 + 2 * (index % 3)) },
      when: index % 2 === 0 ? { serveAt: clockMinutes(1110) } : {},
      date: '2026-09-01',
      timeZone: 'Etc/UTC',
      now: clockMinutes(720),
      weather: {
        windMetresPerSecond: index,
        airKelvin: 275 + 2 * index,
        windFromDegrees: 37 * index,
      },
      windScreens: index % 2,
      ...(fuel === 'wood-coals' ? { fuel: { kind: fuel, lead: minutes(60) } } : {}),
    });
    if (isRefusal(asked)) throw new Error(`${id}: ${asked.code}`);
    return [`${id}, ${fuel}`, planMeal(asked.camp, asked.menu, { assumed: asked.assumed })];
  }),
);
const plans: readonly (readonly [string, MealPlan])[] = [
  ['fixture', fixturePlan()],
  ['fixture on wood', fixturePlan('wood-coals')],
  ['a busy camp', busyCamp()],
  ...tonights,
];

function sheetsOf(plan: MealPlan, say: Say): readonly SheetDocument[] {
  return [
    mealSummary(plan, say),
    daySheet(plan, say),
    ...plan.menu.dishes.map(({ id }) => dishCard(plan, id, say)),
    ...plan.camp.hands.map(({ id }) => handSheet(plan, id, say)),
    fireAndCareSheet(plan, say),
    fireChiefSheet(plan, say),
    wallList(plan, say),
    handColumns(plan, say),
    pocketCards(plan, say),
    provisionsSheet(plan, say),
    bagLabels(plan, say),
    mouthsSheet(plan, say),
    shoppingSheet(plan, say),
    labelGrid(plan, say),
    boxesSheet(plan, say),
    fuelWaterIceSheet(plan, say),
    fireCard(plan, say),
    safetyLogSheet(plan, say),
    allergenCards(plan, say),
    waterAndWashSheet(plan, say),
    ironAndAshSheet(plan, say),
  ];
}

const voices = (plan: MealPlan) => [
  sayFor({ measures: 'us', clock: '12', plan }),
  sayFor({ measures: 'metric', clock: '24', plan }),
];

const flat = (blocks: readonly Block[]): readonly Block[] =>
  blocks.flatMap((block) => ('blocks' in block ? [block, ...flat(block.blocks)] : [block]));

const drawings = (document: SheetDocument) =>
  flat(document.blocks).flatMap((block) => (block.type === 'drawing' ? [block] : []));

describe.each(plans)('every sheet of %s', (_name, plan) => {
  it('says nothing that is not a number, not defined or not known, in both measures', () => {
    for (const say of voices(plan)) {
      for (const document of sheetsOf(plan, say)) {
        const text = renderText(document, { width: 90 });
        const html = renderHtml(document);
        for (const written of [text, html]) {
          expect(written).not.toMatch(/NaN|undefined|Infinity|\[object|not known|no words yet/);
        }
      }
    }
  });

  it('has well-formed drawings with all text inside, and words for those who can not see them', () => {
    for (const say of voices(plan)) {
      for (const { svg, phone = svg, alt } of sheetsOf(plan, say).flatMap(drawings)) {
        for (const drawn of [svg, phone]) {
          expect(malformed(drawn)).toEqual([]);
          expect(textsOutside(drawn)).toEqual([]);
          expect(drawn).toMatch(/<title>[^<]+<\/title><desc>[^<]+<\/desc>/);
        }
        expect(alt.length).toBeGreaterThan(20);
      }
    }
  });

  it('has for a phone of 360 px no word under 11 px, where 292 px are left for a drawing', () => {
    for (const say of voices(plan)) {
      const drawn = sheetsOf(plan, say).flatMap(drawings);
      const phones = drawn.flatMap(({ phone }) => (phone === undefined ? [] : [phone]));
      for (const svg of phones) {
        const width = Number(/viewBox="0 0 ([\d.]+)/.exec(svg)?.[1]);
        const sizes = [...svg.matchAll(/font-size="([\d.]+)"/g)].map(([, size]) => Number(size));
        expect(sizes.length).toBeGreaterThan(0);
        expect((Math.min(...sizes) * 292) / width).toBeGreaterThanOrEqual(11);
      }
    }
  });

  it('keeps terminal lines within the width, except a word that is longer', () => {
    const [say] = voices(plan);
    for (const document of sheetsOf(plan, say!)) {
      for (const line of renderText(document, { width: 80 }).split('\n')) {
        expect(line.length <= 82 || !line.trim().includes('  ')).toBe(true);
      }
    }
  });

  it('has a check beside every count, on the card itself', () => {
    const [say] = voices(plan);
    for (const dish of plan.dishes) {
      const text = renderText(dishCard(plan, dish.dish.id, say!), { width: 100 });
      for (const { coals } of dish.loads) expect(coals.checks.length).toBeGreaterThan(0);
      if (dish.loads.length > 0) expect(text).toMatch(/Checks: every count is only a start/);
    }
  });
});

const briquettePlans = plans.filter(([, plan]) => plan.camp.fuel.kind === 'briquettes');
const woodPlans = plans.filter(([, plan]) => plan.camp.fuel.kind === 'wood-coals');

describe.each(briquettePlans)('counts on the cards of %s', (_name, plan) => {
  it('are those of the plan: figures, placement line, drawn coals and the sum of the reasons', () => {
    const [say] = voices(plan);
    for (const dish of plan.dishes) {
      const card = dishCard(plan, dish.dish.id, say!);
      const blocks = flat(card.blocks);
      const figures = blocks.flatMap((block) => (block.type === 'figures' ? block.figures : []));
      const told = new Set(figures.map(({ figure, label }) => `${figure} ${label}`));
      for (const { coals } of dish.loads) {
        const lid = coals.browning?.thenAbove ?? coals.above;
        expect(told).toContain(`${lid.pieces} above`);
        expect(told).toContain(`${coals.below.pieces} below`);
        expect(drawnCoals(card, 'lid')).toContain(lid.places.length);
        expect(drawnCoals(card, 'floor')).toContain(coals.below.places.length);
        expect(lid.places.length).toBe(lid.pieces);
      }
    }
  });
});

function drawnCoals(card: SheetDocument, kind: 'lid' | 'floor'): readonly number[] {
  return drawings(card)
    .filter(({ svg }) => svg.includes(`drawing-${kind}`))
    .map(
      ({ svg }) =>
        /<g class="coals">(.*?)<g class="(?:leg|wind|cook)"|<g class="coals">(.*)/s.exec(
          svg,
        )?.[0] ?? '',
    )
    .map((coals) => (coals.match(/<rect [^>]*rx/g) ?? []).length - (kind === 'lid' ? 1 : 0));
}

describe.each(woodPlans)('sheets of %s, on wood coals', (_name, plan) => {
  it('never name or count briquettes, chimneys or pieces (AT-THE-FIRE 13)', () => {
    for (const say of voices(plan)) {
      const book = printBook('wood', sheetsOf(plan, say)).replace(/<style>.*<\/style>/s, '');
      expect(book).not.toMatch(/briquette|chimneyful|charcoal/i);
      expect(book).not.toMatch(/\b\d+ coals\b/);
      for (const dish of plan.dishes) {
        for (const { coals } of dish.loads)
          expect(pieceCountsTold(plan, dish.dish.id, coals, say)).toEqual([]);
      }
    }
  });
});

/** "N above" with the piece-equivalents of the physics would be a briquette count in disguise. */
function pieceCountsTold(plan: MealPlan, dishId: string, coals: CoalPlan, say: Say) {
  const text = renderText(dishCard(plan, dishId, say), { width: 200 });
  const { above, below } = coals;
  return [`${above.pieces} above`, `${below.pieces} below`].filter(
    (count) =>
      new RegExp(`(^|[^/\\d])${count}`).test(text) &&
      !text.includes(`${count.replace(/ .*/, '')} shovel`),
  );
}

describe.each(plans)('sheets of %s, laid out for paper', (_name, plan) => {
  it('keep every block once and in its order', () => {
    const [say] = voices(plan);
    for (const { blocks } of sheetsOf(plan, say!)) {
      expect(gathered(blocks).flatMap(({ parts }) => parts.flat())).toEqual(blocks);
    }
  });
});

describe.each(briquettePlans)('the reasons of %s', (_name, plan) => {
  it('add up from the first row to the count of the plan', () => {
    const [say] = voices(plan);
    for (const { dish } of plan.dishes) {
      const whys = dishCard(plan, dish.id, say!).blocks.filter((block) => block.type === 'why');
      for (const { blocks } of whys) {
        const [table] = blocks;
        if (table?.type !== 'table') throw new Error('a why without its table');
        const numbers = table.rows.map((row) => Number(row[1]?.replace('−', '-')));
        const reasons = numbers.slice(0, -1).reduce((sum, each) => sum + each, 0);
        expect(reasons).toBe(numbers.at(-1));
      }
    }
  });
});

describe('text from a camp', () => {
  it('is escaped on the page and in the drawings', () => {
    const plan = fixturePlan();
    const nasty = '<script>alert("x")</script> & \u0007 Söhne';
    const changed: MealPlan = {
      ...plan,
      camp: {
        ...plan.camp,
        title: nasty,
        hands: plan.camp.hands.map((hand) => ({ ...hand, name: nasty })),
        ovens: plan.camp.ovens.map((oven) => ({ ...oven, name: nasty })),
      },
    };
    const [say] = voices(changed);
    const book = printBook(nasty, sheetsOf(changed, say!));
    expect(book).not.toContain('<script');
    expect(book).not.toContain('\u0007</');
    expect(book).toContain('&lt;script&gt;');
    for (const { svg } of sheetsOf(changed, say!).flatMap(drawings))
      expect(malformed(svg)).toEqual([]);
  });
});

describe('a dish that could not be planned', () => {
  it('has a card that says so, and a dish nobody asked for is a mistake', () => {
    const plan = { ...fixturePlan(), dishes: [] };
    const [say] = voices(plan);
    expect(renderText(dishCard(plan, 'rolls', say!), { width: 80 })).toContain(
      'can not be planned',
    );
    expect(() => dishCard(plan, 'nothing', say!)).toThrow(RangeError);
  });
});

describe('the tree of the dish card', () => {
  it('stays as it was accepted (guards change, proves nothing)', () => {
    const plan = fixturePlan();
    const say = sayFor({ measures: 'us', clock: '24', plan });
    const card = dishCard(plan, 'rolls', say);
    const withoutDrawings = flat(card.blocks).map((block) =>
      block.type === 'drawing' ? { type: 'drawing', alt: block.alt } : block,
    );
    expect({ title: card.title, flag: card.flag, blocks: withoutDrawings }).toMatchSnapshot();
  });
});
