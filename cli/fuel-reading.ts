// Fuel and how much of it, as a cook says it: briquettes weighed, coals counted, wood in shovels.

import { coalsOnShovels, type Fuel, grams, minutes, readNumber } from '#engine';
import { wrongUse } from './exit.ts';
import { countOf, oneOf, quantityOf } from './reading.ts';

/** Minutes from lighting a feeder fire to its first shovel (common practice, no source). */
export const FEEDER_LEAD_MINUTES = 60;

export interface FuelOptions {
  readonly fuel?: string;
  readonly coalMass?: string;
}

/** Briquettes are what is assumed anyway: saying them only takes the doubt about kind away. */
export function fuelOf({ fuel, coalMass }: FuelOptions): { readonly fuel?: Fuel } {
  const kind =
    fuel === undefined ? undefined : oneOf('--fuel', fuel, ['briquettes', 'wood'] as const);
  if (kind === 'wood') {
    if (coalMass === undefined)
      return { fuel: { kind: 'wood-coals', lead: minutes(FEEDER_LEAD_MINUTES) } };
    const next = 'Leave one of the two out.';
    throw wrongUse('--coal-mass', 'briquettes weighed beside --fuel wood', 'one fuel', next);
  }
  if (coalMass === undefined) return {};
  return { fuel: { kind: 'briquettes', pieceMass: grams(pieceOf(coalMass)), isMeasured: true } };
}

/** `ten weigh 240 g`, or the weight of one. */
function pieceOf(text: string): number {
  const ten = /^(?:ten|10)\s+weigh\s+(.+)$/i.exec(text.trim())?.[1];
  const read = quantityOf('--coal-mass', ten ?? text, 'mass', 'ten weigh 240 g');
  const each = ten === undefined ? read : read / 10;
  if (each < LIGHTEST_GRAMS || HEAVIEST_GRAMS < each) {
    const wanted = `one briquette between ${LIGHTEST_GRAMS} and ${HEAVIEST_GRAMS} g`;
    throw wrongUse('--coal-mass', `"${text}"`, wanted, 'Write --coal-mass "ten weigh 240 g".');
  }
  return each;
}

const LIGHTEST_GRAMS = 5; // as in a camp file
const HEAVIEST_GRAMS = 150;

/** `17` briquettes, or `2 1/2 shovels` of wood coals, which are never counted. */
export function coalsOf(where: string, text: string, fuel: Fuel['kind']): number {
  const [, amount, shovels] = /^(.*?)\s*(shovels?)?$/i.exec(text.trim()) ?? [];
  if (fuel !== 'wood-coals') {
    if (shovels === undefined) return countOf(where, text);
    const next = `Write ${where} 17, or add --fuel wood.`;
    throw wrongUse(where, `"${text}"`, 'a whole number of briquettes', next);
  }
  const read = readNumber(amount ?? '');
  if (read === undefined || read < 0 || MOST_SHOVELS < read) {
    const wanted = `shovels of wood coals, up to ${MOST_SHOVELS}`;
    throw wrongUse(where, `"${text}"`, wanted, `Write ${where} "2 1/2 shovels".`);
  }
  return coalsOnShovels(read);
}

const MOST_SHOVELS = 25;
