// What raises a dough without yeast: its gas, the room it takes here, and what stays over.
// Sources: sodaChemistry, neutralisingValues, legalPowder, selfRisingFlour. Weak spot: how sour milk
// is (grade D), and how much gas a dough holds; the room is what could be, not what will be.

import { boilingPointAt } from '../../camp/air.ts';
import { foodOf } from '../../menu/needs.ts';
import type { Ingredient } from '../../menu/recipe.ts';
import {
  type CubicMetres,
  type Grams,
  grams,
  type Kelvin,
  kelvin,
  type Pascals,
  pascals,
} from '../../quantity/unit.ts';
import { flourIn, type WeighedIngredient } from '../dough.ts';
import { gasOfSoda, gasOfSodaHeated, gasVolume } from '../gas.ts';
import { type FizzTest, fizzStrength } from './fizz.ts';
import { leaveningAcids, powderStrength, sourFood } from './table.ts';

export interface GasWish {
  readonly dough: Kelvin;
  readonly pressure: Pascals;
  readonly fizz?: FizzTest;
}

export interface GasReport {
  /** Carbon dioxide: what is sure, and what may be. */
  readonly least: Grams;
  readonly most: Grams;
  /** Room of the sure gas in the bowl, and in the crumb as it sets, 5 K below the local boil. */
  readonly inDough: CubicMetres;
  readonly inCrumb: CubicMetres;
  readonly crumb: Kelvin;
  /** The same gas in the same crumb at sea level: what the recipe counted on. */
  readonly inCrumbAtSea: CubicMetres;
  /** Soda that finds no acid; it leaves half its gas and washing soda. */
  readonly sodaLeft: Grams;
  /** Acid that finds no soda, as the soda it could still take. */
  readonly acidLeft: Grams;
  /** Left soda over flour. */
  readonly sodaLeftOfFlour: number;
  /** Gas as level teaspoons of powder for a cup of flour, so that recipes can be compared. */
  readonly asTeaspoonsOfPowder?: number;
}

/**
 * Gas of powder, soda and self-rising flour; undefined where there is none of them.
 *
 * @param lines      a batch, after any cut for height                [g]
 * @param wish       temperature of the dough [K], local pressure [Pa], result of a fizz test
 * @source           sodaChemistry (A), neutralisingValues (A), legalPowder (B), sour foods (D)
 */
export function gasReport(
  lines: readonly WeighedIngredient[],
  wish: GasWish,
): GasReport | undefined {
  const powder = powderGas(lines, wish.fizz);
  const soda = sodaGas(lines);
  const least = powder.least + soda.gas;
  const most = powder.most + soda.gas;
  const hasAny = powder.hasAny || soda.soda > 0;
  if (!hasAny) return undefined;
  const crumb = crumbSetsAt(wish.pressure);
  const crumbAtSea = crumbSetsAt(SEA_LEVEL);
  const flour = flourIn(lines);
  const cups = flour / CUP_OF_FLOUR_GRAMS;
  const sure = grams(least);
  return {
    least: sure,
    most: grams(most),
    inDough: gasVolume(sure, wish.dough, wish.pressure),
    inCrumb: gasVolume(sure, crumb, wish.pressure),
    crumb,
    inCrumbAtSea: gasVolume(sure, crumbAtSea, SEA_LEVEL),
    sodaLeft: grams(soda.left),
    acidLeft: grams(soda.acidLeft),
    sodaLeftOfFlour: 0 < flour ? soda.left / flour : 0,
    ...(0 < cups ? { asTeaspoonsOfPowder: least / GAS_OF_TEASPOON_GRAMS / cups } : {}),
  };
}

const SEA_LEVEL = pascals(101325);
const CUP_OF_FLOUR_GRAMS = 125; // sr28 NDB 20081
const GAS_OF_TEASPOON_GRAMS = 4.6 * 0.12; // sr28 NDB 18369, legalPowder
/** Crumb at the end of a bake stays about 5 K below the boil (bakery-cores, grade D). */
const BELOW_BOIL_KELVIN = 5;

const crumbSetsAt = (pressure: Pascals) => kelvin(boilingPointAt(pressure) - BELOW_BOIL_KELVIN);

/** Self-rising flour: 0.5 % by law (selfRisingFlour); half as much again may be in it (judged). */
const SELF_RISING = { least: 0.005, most: 0.0075 };

function powderGas(lines: readonly WeighedIngredient[], fizz: FizzTest | undefined) {
  const strength = fizzStrength(fizz);
  let [least, most, hasAny] = [0, 0, false];
  for (const line of lines) {
    const key = foodOf(line.ingredient)?.key;
    const isSelfRising = key?.startsWith('self-rising') || key?.includes('selfrising');
    if (line.ingredient.part !== 'powder' && !isSelfRising) continue;
    const of = isSelfRising ? SELF_RISING : powderStrength(key);
    least += line.grams * of.least * (isSelfRising ? 1 : strength[0]);
    most += line.grams * of.most * (isSelfRising ? 1 : strength[1]);
    hasAny ||= line.grams > 0;
  }
  return { least, most, hasAny };
}

/** Soda meets acid first; what is left is broken by heat alone. */
function sodaGas(lines: readonly WeighedIngredient[]) {
  const soda = lines
    .filter(({ ingredient }) => ingredient.part === 'soda')
    .reduce((sum, line) => sum + line.grams, 0);
  const room = lines.reduce((sum, line) => sum + line.grams * sodaTakenByGram(line.ingredient), 0);
  const met = Math.min(soda, room);
  const left = soda - met;
  return {
    soda,
    left,
    // Sour milk with powder alone is there for its taste.
    acidLeft: 0 < soda ? room - met : 0,
    gas: gasOfSoda(grams(met)) + gasOfSodaHeated(grams(left)),
  };
}

/** Soda that one gram of this neutralises: by the larder, else by the name of a pure acid. */
export function sodaTakenByGram(ingredient: Ingredient): number {
  const sour = sourFood(foodOf(ingredient)?.key ?? '');
  if (sour !== undefined) return (sour.usual * sour.acid.neutralisingValue) / 100;
  const name = ingredient.name.toLowerCase();
  const acid = leaveningAcids.find((each) => name === each.name || name === each.key);
  return (acid?.neutralisingValue ?? 0) / 100;
}
