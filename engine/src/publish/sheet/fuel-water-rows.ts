// Fuel by what it is for, water by use, each figure with what it was reckoned by.

import type { FuelNeed, WaterNeed } from '../../provisions/provisions.ts';
import type { FactRow } from '../document.ts';
import type { Say } from '../say.ts';
import { shovelsWord } from './phrases.ts';

export const fuelName = (fuel: FuelNeed) => (fuel.kind === 'wood-coals' ? 'dry wood' : 'charcoal');

export function fuelRows(fuel: FuelNeed, say: Say): readonly FactRow[] {
  const plan = [
    fuel.pieces === undefined ? undefined : `${say.count(fuel.pieces)} briquettes`,
    fuel.shovels === undefined ? undefined : `${shovelsWord(fuel.shovels)} of coals`,
    say.mass(fuel.mass),
  ].filter((part) => part !== undefined);
  return [
    { label: 'The plan burns', value: plan.join(', ') },
    ...partRows(fuel, say),
    {
      label: 'With spare',
      value: say.mass(fuel.massWithSpare),
      note: `${say.percent(fuel.spare)} more`,
    },
    {
      label: 'On hand',
      value:
        fuel.onHand === undefined
          ? 'not said: weigh or count what you have'
          : say.mass(fuel.onHand),
      ...(fuel.short > 0 ? { note: `short by ${say.mass(fuel.short)}` } : {}),
    },
  ];
}

function partRows({ parts }: FuelNeed, say: Say): readonly FactRow[] {
  if (parts === undefined) return [];
  const rows: readonly (readonly [string, number, string | undefined])[] = [
    ['First sets', parts.sets, undefined],
    ['Added later', parts.additions, undefined],
    ['Lost in lighting', parts.lighting, chimneysNote(parts.chimneyfuls)],
    ['For worse weather', parts.weather, undefined],
  ];
  return rows.flatMap(([label, mass, note]) =>
    mass < 0.5 ? [] : [{ label, value: say.mass(mass), ...(note === undefined ? {} : { note }) }],
  );
}

/** One sheet a chimney: more paper chokes it (common practice). */
const chimneysNote = (fills: number | undefined) =>
  fills === undefined
    ? undefined
    : `${fills} chimney${fills === 1 ? '' : 's'} to fill, a sheet of paper each`;

const WATER = {
  dough: 'In the dough',
  pots: 'In the pots',
  drinking: 'To drink',
  hands: 'To wash hands',
  wash: 'To wash up',
  ash: 'To drown ash',
} as const;

const PER = { mouth: 'mouth', hand: 'pair of hands', camp: 'camp' } as const;

/** `4 l a mouth`: what a cook strikes or raises. */
export const waterRows = (water: readonly WaterNeed[], say: Say): readonly FactRow[] =>
  water.map(({ use, volume, by }) => ({
    label: WATER[use],
    value: say.volume(volume),
    ...(by === undefined || by.many === 0
      ? {}
      : { note: `${say.volume(by.each)} a ${PER[by.per]}` }),
  }));
