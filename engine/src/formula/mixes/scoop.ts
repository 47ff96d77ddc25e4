// A mix by the spoon: what a level cup of it weighs, for a cook without scales.
// Sources: measures of sr28 in the larder, volumes added up; doubt of a tenth by how it is scooped
// (herr41: sifted 116, unsifted 126 g a cup) and of another for the small filling the gaps
// between the large (judged). A level cup weighed at home takes the doubt away.

import type { Food } from '../../larder/food.ts';
import { foodOf } from '../../menu/needs.ts';
import { fromUnit } from '../../quantity/convert.ts';
import { type CookMeasure, cookMeasureFor } from '../../quantity/cook-measure.ts';
import {
  type CubicMetres,
  cubicMetres,
  type Grams,
  grams,
  type Ratio,
  ratio,
} from '../../quantity/unit.ts';
import type { WeighedIngredient } from '../dough.ts';

export interface Scoop {
  /** A level cup of the mix; likely, least, most. */
  readonly cup: Grams;
  readonly cupLeast: Grams;
  readonly cupMost: Grams;
  /** The whole mix, in cups and spoons and as room. */
  readonly measure?: CookMeasure;
  readonly room: CubicMetres;
  /** How far a scooped amount may be off, one way or the other. */
  readonly doubt: Ratio;
}

const CUP = fromUnit(1, 'us-cup');
const DOUBT = { loose: 0.1, packed: 0.15 }; // see above; finer falls between coarser

/** Undefined where a part of the mix has no household measure: it is weighed. */
export function scoopOf(mix: readonly WeighedIngredient[]): Scoop | undefined {
  const parts = mix.map((line) => roomOf(line));
  if (parts.length === 0 || parts.includes(undefined)) return undefined;
  const room = (parts as readonly number[]).reduce((sum, each) => sum + each, 0);
  const mass = mix.reduce((sum, line) => sum + line.grams, 0);
  if (!(0 < room) || !(0 < mass)) return undefined;
  const cup = (mass / room) * CUP;
  const measure = cookMeasureFor(grams(mass), {
    cup: grams(cup),
    tbsp: grams(cup / 16),
    tsp: grams(cup / 48),
  });
  return {
    cup: grams(cup),
    cupLeast: grams(cup * (1 - DOUBT.loose)),
    cupMost: grams(cup * (1 + DOUBT.packed)),
    ...(measure === undefined ? {} : { measure }),
    room: cubicMetres(room),
    doubt: ratio(DOUBT.packed),
  };
}

function roomOf(line: WeighedIngredient): number | undefined {
  const food = foodOf(line.ingredient);
  const density = food === undefined ? undefined : gramsPerCup(food);
  return density === undefined ? undefined : (line.grams / density) * CUP;
}

const gramsPerCup = ({ measures: { cup, tbsp, tsp } }: Food): number | undefined =>
  cup ?? (tbsp === undefined ? undefined : tbsp * 16) ?? (tsp === undefined ? undefined : tsp * 48);
