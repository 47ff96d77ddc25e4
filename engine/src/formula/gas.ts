// How much gas powder and soda make, and how much room it takes.
// Sources: stoichiometry; neutralisingValues for acids; legalPowder for the floor of 12 %.

import type { Grams, Kelvin, Pascals } from '../quantity/unit.ts';
import { type CubicMetres, cubicMetres, grams } from '../quantity/unit.ts';

const SODA_GRAMS_PER_MOLE = 84.0066;
const GAS_GRAMS_PER_MOLE = 44.0095;
const GAS_CONSTANT = 8.314462618; // J/(mol K), CODATA 2018

/** Carbon dioxide of soda with enough acid: NaHCO3 + H⁺ → Na⁺ + H2O + CO2. */
export const gasOfSoda = (soda: Grams): Grams =>
  grams((soda * GAS_GRAMS_PER_MOLE) / SODA_GRAMS_PER_MOLE);

/** Carbon dioxide of soda by heat alone, half of it; leaves washing soda, which tastes of soap. */
export const gasOfSodaHeated = (soda: Grams): Grams => grams(gasOfSoda(soda) / 2);

export const POWDER_GAS_SHARE = 0.12; // least available CO2 in the USA, legalPowder (grade B)

/** Carbon dioxide that powder is sure to give; 12 … 15 % by the tin, so this is the low end. */
export const gasOfPowder = (powder: Grams): Grams => grams(powder * POWDER_GAS_SHARE);

/** Room that this much carbon dioxide takes, as an ideal gas. */
export const gasVolume = (gas: Grams, temperature: Kelvin, pressure: Pascals): CubicMetres =>
  cubicMetres((gas / GAS_GRAMS_PER_MOLE) * ((GAS_CONSTANT * temperature) / pressure));

/** Soda that this much acid neutralises; neutralising value in g of soda per 100 g of acid. */
export const sodaNeutralised = (acid: Grams, neutralisingValue: number): Grams =>
  grams((acid * neutralisingValue) / 100);
