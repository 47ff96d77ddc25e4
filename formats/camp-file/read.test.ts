import { describe, expect, it } from 'vitest';
import harrowSaddle from '../demo/harrow-saddle.camp.json' with { type: 'json' };
import pilcrowCreek from '../demo/pilcrow-creek.camp.json' with { type: 'json' };
import draft from '../samples/camp-version-0.json' with { type: 'json' };
import { fromEngine } from './from-engine.ts';
import { type CampRead, readCampFile } from './read.ts';

type Edit = (file: typeof pilcrowCreek) => void;

function edited(edit: Edit): unknown {
  const file = structuredClone(pilcrowCreek);
  edit(file);
  return file;
}

function troublesOf(source: unknown) {
  const read = readCampFile(source);
  return read.ok ? [] : read.troubles;
}

const any = (value: unknown) => value as Record<string, never>;
const set = (target: unknown, key: string, value: unknown) => {
  (target as Record<string, unknown>)[key] = value;
};

describe('what is wrong with a camp file', () => {
  it.each<[string, Edit, object]>([
    [
      'an unknown key, with the key that was meant',
      (file) => set(file.ovens[0], 'diametre', '10 in'),
      { code: 'FILE_KEY_UNKNOWN', path: 'ovens[0].diametre', found: 'the key "diametre"' },
    ],
    [
      'a missing key',
      (file) => delete any(file.ovens[0]).diameter,
      { code: 'FILE_KEY_MISSING', path: 'ovens[0].diameter', found: 'nothing' },
    ],
    [
      'a bare number where a unit belongs',
      (file) => set(file.weather[1], 'air', 12),
      { code: 'FILE_KIND_WRONG', path: 'weather[1].air', found: '12' },
    ],
    [
      'a quantity without unit',
      (file) => set(file.ovens[0], 'diameter', '10'),
      { code: 'FILE_QUANTITY_UNREADABLE', path: 'ovens[0].diameter', found: '"10"' },
    ],
    [
      'an oven a mile wide',
      (file) => set(file.ovens[0], 'diameter', '1609 m'),
      {
        code: 'FILE_QUANTITY_OUTSIDE',
        path: 'ovens[0].diameter',
        wanted: 'a length between 10.2 cm and 1.02 m',
      },
    ],
    [
      'a negative weight',
      (file) => set(file.recipes[0]!.ingredients[0], 'weight', '-450 g'),
      {
        code: 'FILE_QUANTITY_OUTSIDE',
        path: 'recipes[0].ingredients[0].weight',
        found: '"-450 g"',
      },
    ],
    [
      'minus three mouths',
      (file) => set(file.mouths[0], 'count', -3),
      { code: 'FILE_NUMBER_OUTSIDE', path: 'mouths[0].count', found: '-3' },
    ],
    [
      'half a mouth',
      (file) => set(file.mouths[0], 'count', 1.5),
      {
        code: 'FILE_NUMBER_OUTSIDE',
        path: 'mouths[0].count',
        wanted: 'a whole number from 1 to 5000',
      },
    ],
    [
      'a word that is not one of the words',
      (file) => set(file.place, 'ground', 'gras'),
      { code: 'FILE_WORD_UNKNOWN', path: 'place.ground', next: 'Did you mean "grass"?' },
    ],
    [
      'a fuel that is none',
      (file) => set(file.fuel, 'kind', 'gas'),
      { code: 'FILE_WORD_UNKNOWN', path: 'fuel.kind', found: '"gas"' },
    ],
    [
      'an hour that is none',
      (file) => set(file.menu[0], 'serve', '25:00'),
      { code: 'FILE_TIME_UNREADABLE', path: 'menu[0].serve', found: '"25:00"' },
    ],
    [
      'a wind from nowhere',
      (file) => set(file.weather[0], 'windFrom', 'up'),
      { code: 'FILE_DIRECTION_UNREADABLE', path: 'weather[0].windFrom' },
    ],
    [
      'a day that is none',
      (file) => set(file, 'date', '2026-02-30'),
      { code: 'FILE_DATE_UNREADABLE', path: 'date', found: '"2026-02-30"' },
    ],
    [
      'an empty menu',
      (file) => set(file, 'menu', []),
      { code: 'FILE_LIST_LENGTH', path: 'menu', found: 'an empty list' },
    ],
    [
      'a title as long as a book',
      (file) => set(file, 'title', 'x'.repeat(5000)),
      { code: 'FILE_TEXT_LENGTH', path: 'title' },
    ],
    [
      'an id with a space',
      (file) => set(file, 'id', 'my camp'),
      { code: 'FILE_TEXT_SHAPE', path: 'id' },
    ],
    [
      'two dishes of one id',
      (file) => set(file.menu[1], 'id', 'loaf'),
      { code: 'FILE_ID_TWICE', path: 'menu[1].id' },
    ],
    [
      'a recipe that is not there',
      (file) => set(file.menu[0], 'recipe', 'medow-loaf'),
      {
        code: 'FILE_REFERENCE_UNKNOWN',
        path: 'menu[0].recipe',
        next: 'Did you mean "meadow-loaf"?',
      },
    ],
    [
      'a pinned oven that is not there',
      (file) => set(file.menu[0], 'pins', { oven: 'Z' }),
      { code: 'FILE_REFERENCE_UNKNOWN', path: 'menu[0].pins.oven' },
    ],
    [
      'steps that wait for each other',
      (file) => set(file.recipes[0]!.steps[0], 'after', [{ step: 'cut' }]),
      { code: 'FILE_STEPS_CIRCLE', path: 'recipes[0].steps' },
    ],
    [
      'hands that leave before they come',
      (file) => set(file.hands[0], 'to', '08:00'),
      { code: 'FILE_ORDER_WRONG', path: 'hands[0].to' },
    ],
    [
      'gusts below the wind',
      (file) => set(file.weather[0], 'gust', '0 m/s'),
      { code: 'FILE_ORDER_WRONG', path: 'weather[0].gust' },
    ],
    [
      'weather that runs backwards',
      (file) => set(file.weather[1], 'at', '08:00'),
      { code: 'FILE_ORDER_WRONG', path: 'weather[1].at' },
    ],
    [
      'pieces that the dough is not divided into',
      (file) => set(file.menu[0], 'pieces', ['roll']),
      { code: 'FILE_PIECES_UNKNOWN', path: 'menu[0].pieces[0]' },
    ],
    [
      'an ingredient without any weight',
      (file) => {
        set(file.recipes[0]!.ingredients[0], 'measure', 'a good handful');
        delete any(file.recipes[0]!.ingredients[0]).weight;
      },
      { code: 'FILE_WEIGHT_MISSING', path: 'recipes[0].ingredients[0].weight' },
    ],
    [
      'a file of another kind',
      (file) => delete any(file).emberwright,
      { code: 'FILE_NOT_A_CAMP', path: 'emberwright' },
    ],
    [
      'a file of a newer Emberwright',
      (file) => set(file, 'version', 2),
      { code: 'FILE_NEWER', path: 'version', found: 'version 2, made by a newer Emberwright' },
    ],
    [
      'a version that is none',
      (file) => set(file, 'version', '1'),
      { code: 'FILE_VERSION_UNKNOWN', path: 'version', found: '"1"' },
    ],
  ])('names %s', (_, edit, wanted) => {
    expect(troublesOf(edited(edit))).toContainEqual(expect.objectContaining(wanted));
  });

  it('tells everything at once, in the order in which it was found', () => {
    const troubles = troublesOf(
      edited((file) => {
        set(file.place, 'ground', 'gras');
        set(file.ovens[0], 'diameter', '10');
        set(file.menu[0], 'serve', 'noon');
      }),
    );
    expect(troubles.map(({ path }) => path)).toEqual([
      'place.ground',
      'ovens[0].diameter',
      'menu[0].serve',
    ]);
  });

  it('suggests no key that is already there', () => {
    const troubles = troublesOf(edited((file) => set(file.fuel, 'knd', 'x')));
    expect(troubles[0]?.next).not.toContain('Did you mean');
  });

  it.each([undefined, null, 0, '', '   ', [], {}, () => 1, Symbol('camp'), Number.NaN, 10n])(
    'never throws, whatever it is handed: %s',
    (source) => expect(readCampFile(source).ok).toBe(false),
  );

  it('never throws at objects that fight back', () => {
    const circle: Record<string, unknown> = { emberwright: 'camp', version: 1 };
    circle.place = circle;
    const trap = {
      get emberwright(): string {
        throw new Error('no');
      },
    };
    expect(readCampFile(circle).ok).toBe(false);
    expect(readCampFile(trap).ok).toBe(false);
    expect(troublesOf({ ...pilcrowCreek, title: new Date(0) })[0]?.code).toBe('FILE_NOT_PLAIN');
    expect(troublesOf({ ...pilcrowCreek, mouths: Number.NaN })[0]?.found).toBe('NaN');
  });
});

describe('what can be saved from a broken camp file', () => {
  it('keeps every part that is right in itself', () => {
    const read = readCampFile(edited((file) => set(file.ovens[0], 'diameter', '10')));
    expect(read.ok).toBe(false);
    if (read.ok) return;
    expect(read.readable).toContain('recipes');
    expect(read.readable).not.toContain('ovens');
    expect(read.salvaged?.recipes).toEqual(pilcrowCreek.recipes);
  });

  it('keeps what stood before a torn edge', () => {
    const text = JSON.stringify(pilcrowCreek);
    const read = readCampFile(text.slice(0, text.indexOf('"menu"')));
    expect(read.ok).toBe(false);
    if (read.ok) return;
    expect(read.troubles[0]?.code).toBe('FILE_NOT_JSON');
    expect(read.salvaged?.ovens).toEqual(pilcrowCreek.ovens);
    expect(read.readable).not.toContain('menu');
  });
});

function whole(source: unknown): CampRead {
  const read = readCampFile(source, { date: '2026-09-12' });
  if (!read.ok) throw new Error(JSON.stringify(read.troubles[0]));
  return read;
}

describe('a camp file in the engine and back', () => {
  it.each([
    ['pilcrow-creek', pilcrowCreek],
    ['harrow-saddle', harrowSaddle],
    ['first-draft', draft],
  ])('is the same camp and menu after file, engine, file, engine: %s', (_, file) => {
    const once = whole(file);
    const again = whole(JSON.stringify(fromEngine(once.camp, once.menu)));
    expect(again.camp).toEqual(once.camp);
    expect(again.menu).toEqual(once.menu);
  });

  it('keeps every pin and a cold start on the way there and back', () => {
    const file = edited((camp) => {
      set(camp.menu[0], 'pins', {
        oven: 'A',
        coalsAbove: 12,
        coalsBelow: 0,
        coalsOn: '12:05',
        bake: '40 min',
        preheat: false,
        hand: 'cook',
      });
      set(camp.recipes[0]!.target, 'coldOven', true);
    });
    const once = whole(file);
    expect(once.menu.dishes[0]?.pins).toEqual({
      oven: 'A',
      coalsAbove: 12,
      coalsBelow: 0,
      coalsOnAt: 725,
      bakeMinutes: 40,
      preheat: false,
      hand: 'cook',
    });
    expect(once.menu.recipes[0]?.target.coldOven).toBe(true);
    expect(whole(fromEngine(once.camp, once.menu)).menu).toEqual(once.menu);
  });

  it('takes the same weights and sizes from US and metric text', () => {
    const us = whole(pilcrowCreek);
    const metric = whole(
      edited((file) => {
        set(file.ovens[0], 'diameter', '25.4 cm');
        set(file.place, 'elevation', '310,000 mm');
        set(file.weather[0], 'air', '48.2 °F');
      }),
    );
    expect(metric.camp.ovens[0]?.diameter).toBeCloseTo(us.camp.ovens[0]!.diameter, 9);
    expect(metric.camp.place.elevation).toBeCloseTo(us.camp.place.elevation, 9);
    expect(metric.camp.weather[0]?.air).toBeCloseTo(us.camp.weather[0]!.air, 9);
  });

  it('counts an oven out where there are several of it', () => {
    const { camp } = whole(edited((file) => set(file.ovens[0], 'count', 3)));
    expect(camp.ovens.map(({ id }) => id)).toEqual(['A-1', 'A-2', 'A-3']);
  });

  it('finds allergens by the larder and never lets a file talk them away', () => {
    const { menu } = whole(
      edited((file) => set(file.recipes[0]!.ingredients[0], 'labelSaysFree', ['wheat', 'gluten'])),
    );
    expect(menu.recipes[0]?.ingredients[0]?.allergens).toContain('wheat');
  });

  it('reckons a weight from a spoon, and says so', () => {
    const read = whole(edited((file) => delete any(file.recipes[0]!.ingredients[2]).weight));
    expect(read.notices.map(({ code }) => code)).toContain('FILE_WEIGHT_RECKONED');
    // 1 1/2 tsp of table salt: sr28 NDB 02047 weighs a teaspoon at 6 g.
    expect(read.menu.recipes[0]?.ingredients[2]?.grams).toBeCloseTo(9, 6);
  });

  it('takes a step without "after" to come after the one above it', () => {
    const { menu } = whole(pilcrowCreek);
    expect(menu.recipes[0]?.steps[0]?.after).toEqual([]);
    expect(menu.recipes[0]?.steps[1]?.after).toEqual([{ step: 'mix', least: 0 }]);
  });
});

describe('files of older versions', () => {
  it('carries the first draft over: mouths as a number, inches and metres as bare numbers', () => {
    const { camp, notices, file } = whole(draft);
    expect(camp.mouths).toEqual([{ count: 24, appetite: 'ordinary' }]);
    expect(camp.ovens.map(({ diameter }) => diameter)).toEqual([0.3048, 0.254]);
    expect(camp.place.elevation).toBe(310);
    expect(file.version).toBe(1);
    expect(notices[0]).toMatchObject({ code: 'FILE_MIGRATED', values: { from: 0, to: 1 } });
  });

  it('leaves what the draft could not say to be complained of in the new words', () => {
    expect(troublesOf({ ...draft, mouths: -4 })).toContainEqual(
      expect.objectContaining({ code: 'FILE_NUMBER_OUTSIDE', path: 'mouths[0].count' }),
    );
  });
});
