// Targets as a cook types them: "62 % water", "540 g", and what is held.

import {
  type FigureName,
  type FormulaTargets,
  grams,
  type HeldLine,
  type Ratio,
  ratio,
  type WeighedIngredient,
} from '#engine';
import { wrongUse } from './exit.ts';
import { quantityOf } from './reading.ts';

interface TargetOptions {
  readonly target?: readonly string[];
  readonly mass: number | undefined;
  readonly hold?: readonly string[];
}

/** Undefined where nothing is wished. */
export function targetsOf(
  { target = [], mass, hold = [] }: TargetOptions,
  lines: readonly WeighedIngredient[],
): FormulaTargets | undefined {
  if (target.length === 0 && mass === undefined && hold.length === 0) return undefined;
  const figures: Partial<Record<FigureName, Ratio>> = {};
  for (const text of target) {
    const [figure, share] = figureWish(text);
    if (figures[figure] !== undefined)
      throw wrongUse(
        '--target',
        `"${text}" after another for it`,
        'one wish for each share',
        'Leave one out.',
      );
    figures[figure] = ratio(share);
  }
  return {
    ...(mass === undefined ? {} : { batch: grams(mass) }),
    figures,
    held: heldOnce(hold, lines),
  };
}

/** Each line is held at one weight: said twice alike it counts once, said otherwise it is named. */
function heldOnce(
  hold: readonly string[],
  lines: readonly WeighedIngredient[],
): readonly HeldLine[] {
  const held: HeldLine[] = [];
  for (const text of hold) {
    for (const wish of heldLines(text, lines)) {
      const before = held.find(({ line }) => line === wish.line);
      if (before === undefined) held.push(wish);
      else if (before.grams !== wish.grams) {
        const name = lines[wish.line]!.ingredient.name;
        throw wrongUse(
          '--hold',
          `${name} held at ${before.grams} g and, by "${text}", at ${wish.grams} g`,
          'one weight for each food',
          'Leave one out.',
        );
      }
    }
  }
  return held;
}

const FIGURES: Readonly<Record<string, FigureName>> = {
  water: 'hydration',
  hydration: 'hydration',
  fat: 'fat',
  salt: 'salt',
  sugar: 'sugar',
  powder: 'powder',
  'baking powder': 'powder',
  soda: 'soda',
  'baking soda': 'soda',
  yeast: 'yeast',
};

function figureWish(text: string): readonly [FigureName, number] {
  const [, number, word = ''] = /^(-?\d+(?:\.\d+)?) ?%? ?([a-z ]+)$/i.exec(text.trim()) ?? [];
  const figure = FIGURES[word.trim().toLowerCase()];
  if (number === undefined || figure === undefined) {
    throw wrongUse(
      '--target',
      `"${text}"`,
      'a percentage of the flour and what of: water, fat, salt, sugar, powder, soda or yeast',
      'Write --target "62 % water".',
    );
  }
  return [figure, Number(number) / 100];
}

/** "lard" stays as it is; "flour=400 g" becomes so much and stays; "flour" is every flour. */
function heldLines(text: string, lines: readonly WeighedIngredient[]): readonly HeldLine[] {
  const [word = '', weight] = text.split('=').map((part) => part.trim());
  const named = word === '' ? [] : linesCalled(word, lines);
  const [first, second] = named;
  if (first === undefined) {
    const names = lines.map(({ ingredient }) => ingredient.name).join(', ');
    throw wrongUse('--hold', `"${text}"`, `one of ${names}`, 'Write --hold lard.');
  }
  if (weight === undefined) return named.map((line) => ({ line, grams: lines[line]!.grams }));
  if (second !== undefined) {
    const names = named.map((line) => lines[line]!.ingredient.name);
    throw wrongUse(
      '--hold',
      `"${text}", which may be ${names.join(' or ')}`,
      'the whole name of one of them',
      `Write --hold "${names[0]}=${weight}".`,
    );
  }
  return [{ line: first, grams: grams(quantityOf('--hold', weight, 'mass', '400 g')) }];
}

/** Lines of this name; else those that the word is part of. */
function linesCalled(word: string, lines: readonly WeighedIngredient[]): readonly number[] {
  const names = lines.map(({ ingredient }) => ingredient.name.toLowerCase());
  const wanted = word.toLowerCase();
  const whole = names.flatMap((name, line) => (name === wanted ? [line] : []));
  return 0 < whole.length
    ? whole
    : names.flatMap((name, line) => (name.includes(wanted) ? [line] : []));
}
