// The leavening tables, typed: acids, sour foods, powders, legal floors.
// Sources: neutralisingValues, sodaChemistry, legalPowder, selfRisingFlour; grades in each row.

import table from '../../../data/leavening.json' with { type: 'json' };
import { type Ratio, ratio } from '../../quantity/unit.ts';

export interface LeaveningAcid {
  readonly key: string;
  readonly name: string;
  /** Grams of soda that 100 g neutralise. */
  readonly neutralisingValue: number;
  /** When it frees its gas: while mixing, slowly, or only in the oven. */
  readonly when: 'at once' | 'slowly' | 'in the heat';
  readonly source: string;
}

/** A food with acid in it: its acid, and that acid's share of its mass. */
export interface SourFood {
  readonly acid: LeaveningAcid;
  readonly least: Ratio;
  readonly usual: Ratio;
  readonly most: Ratio;
}

/** Gas that a powder is sure to give and may give, over its mass. */
export interface PowderStrength {
  readonly name: string;
  readonly least: Ratio;
  readonly most: Ratio;
}

export const leaveningAcids: readonly LeaveningAcid[] = table.acids.map((row) => ({
  key: row.key,
  name: row.name,
  neutralisingValue: row.value,
  when: row.when as LeaveningAcid['when'],
  source: row.source,
}));

/** The acid of this key, `sapp`, `cream-of-tartar`, `lactic`. */
export const leaveningAcid = (key: string): LeaveningAcid | undefined =>
  leaveningAcids.find((acid) => acid.key === key);

const sourFoods: ReadonlyMap<string, SourFood> = new Map(
  table.sourFoods.map(({ food, acid, share }) => [
    food,
    {
      acid: leaveningAcid(acid)!,
      least: ratio(share[0]!),
      usual: ratio(share[1]!),
      most: ratio(share[2]!),
    },
  ]),
);

/** What is sour in this food of the larder; undefined for a food that neutralises no soda. */
export const sourFood = (food: string): SourFood | undefined => sourFoods.get(food);

/** Soda that one gram of this food neutralises, usual; 0 for a food that is not sour. */
export function sodaPerGram(food: string): number {
  const sour = sourFoods.get(food);
  return sour === undefined ? 0 : (sour.usual * sour.acid.neutralisingValue) / 100;
}

const USUAL: PowderStrength = { name: 'double-acting', least: ratio(0.12), most: ratio(0.15) };

/** Strength of a powder of the larder; any other powder counts as double-acting. */
export function powderStrength(food: string | undefined): PowderStrength {
  const row = table.powders.find((each) => each.food === food);
  if (row === undefined) return USUAL;
  return { name: row.name, least: ratio(row.least), most: ratio(row.most) };
}
