// Is the powder still good? Half a teaspoon in a quarter cup of hot water tells; a date does not:
// eight powders up to 29 years old, kept dry, had lost nothing (lloyd2004), and damp spoils one in
// weeks. No law of loss with damp is published, so a weak fizz widens the doubt and no more.
// Sources: fizzTest, lloyd2004, legalPowder.

import { type Grams, grams } from '../../quantity/unit.ts';
import { leaveningAcid } from './table.ts';

export type FizzTest = 'hard' | 'weak' | 'none';

export const fizzTests: readonly FizzTest[] = ['hard', 'weak', 'none'];

/** Share of its strength that the powder has for sure, and may have; a weak one is judged. */
export function fizzStrength(test: FizzTest | undefined): readonly [least: number, most: number] {
  if (test === 'none') return [0, 0];
  return test === 'weak' ? [0.3, 0.7] : [1, 1];
}

/** An opened tin keeps 3 to 18 months, by the damp (fizzTest, grade D): past that, ask for a test. */
export const OPENED_DOUBT_MONTHS = { least: 3, most: 18 } as const;

/** Soda and cream of tartar that make the sure gas of so much powder, and leave nothing over. */
export function insteadOfPowder(powder: Grams): { readonly soda: Grams; readonly tartar: Grams } {
  const soda = (powder * 0.12) / 0.5239; // legalPowder over sodaChemistry
  const value = leaveningAcid('cream-of-tartar')!.neutralisingValue;
  return { soda: grams(soda), tartar: grams((soda * 100) / value) };
}
