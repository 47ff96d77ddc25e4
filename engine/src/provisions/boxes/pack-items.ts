// Everything that is carried, with its weight and what it must be kept apart from. Water is not among
// it: most of it is drawn where the camp is.

import table from '../../../data/carriers.json' with { type: 'json' };
import type { Camp } from '../../camp/camp.ts';
import { type Grams, grams } from '../../quantity/unit.ts';
import type { IcePlan } from '../ice/ice-plan.ts';
import { isOwned, ownsThermometer } from '../kit.ts';
import type { Bag, FuelNeed, KitLine, ShoppingLine } from '../provisions.ts';
import type { BoxKind, GearThing, PackItem } from './packing.ts';

export interface ToPack {
  readonly camp: Camp;
  readonly shopping: readonly ShoppingLine[];
  readonly bags: readonly Bag[];
  /** By key of the shopping line: what of it has gone into bags and the dry tin. */
  readonly bagged: ReadonlyMap<string, number>;
  readonly kit: readonly KitLine[];
  readonly fuel: FuelNeed;
  readonly ice: IcePlan | undefined;
}

export function packItems(asked: ToPack): readonly PackItem[] {
  return [
    ...bagItems(asked.bags),
    ...looseFood(asked),
    ...iceItems(asked.ice),
    ...asked.camp.ovens.map(
      ({ id, mass }): PackItem => ({
        what: { thing: 'oven', oven: id },
        kind: 'oven',
        mass,
        divides: false,
      }),
    ),
    ...kitItems(asked),
    ...fuelItems(asked.fuel),
  ];
}

/** A mix that is kept free of something has a box of its own, its leavening with it. */
function bagItems(bags: readonly Bag[]): readonly PackItem[] {
  return bags.flatMap((bag): readonly PackItem[] => {
    const isFree = bag.freeFrom.length > 0;
    const what = { thing: 'bag', dish: bag.dish, bag: bag.id } as const;
    return [
      { what, kind: isFree ? 'free-from' : 'dry', mass: bag.total, divides: true },
      ...(bag.fromTin ?? []).map(
        (line): PackItem => ({
          what: { thing: 'leavening', dish: bag.dish, name: line.name },
          kind: isFree ? 'free-from' : 'dry-tin',
          mass: line.grams,
          divides: false,
        }),
      ),
    ];
  });
}

/** As bought: peel and all; what is in a bag already is not carried twice. */
function looseFood({ shopping, bagged }: ToPack): readonly PackItem[] {
  return shopping.flatMap((line): readonly PackItem[] => {
    const inBags = line.key === undefined ? 0 : (bagged.get(line.key) ?? 0);
    const loose = Math.max(0, line.grams - inBags);
    const mass = line.grams > 0 ? (loose / line.grams) * (line.asBought ?? line.grams) : 0;
    if (mass < LEAST_GRAMS) return [];
    const what = { thing: 'food', name: line.name } as const;
    return [{ what, kind: kindOf(line), mass: grams(mass), divides: true }];
  });
}

const LEAST_GRAMS = 0.5;

function kindOf({ keep, shelf }: ShoppingLine): BoxKind {
  if (keep === 'cold' || keep === 'frozen') return shelf === 'meat' ? 'raw-meat' : 'ready';
  return shelf === 'produce' ? 'produce' : 'dry';
}

const iceItems = (ice: IcePlan | undefined): readonly PackItem[] =>
  (ice?.boxes ?? []).map(({ holds, cooler, iceNeeded }) => ({
    what: { thing: 'ice' },
    kind: holds === 'raw-meat' ? 'raw-meat' : 'ready',
    mass: grams(Math.max(iceNeeded, cooler.ice ?? 0)),
    divides: true,
  }));

function kitItems({ camp: { gear }, kit }: ToPack): readonly PackItem[] {
  const counted: readonly (readonly [GearThing, number])[] = [
    ['chimney', gear.chimneys],
    ['lid-stand', gear.lidStands],
    ['table', gear.tables],
    ['wind-screen', gear.windScreens],
    ['thermometer', gear.thermometer && !ownsThermometer(gear.others) ? 1 : 0],
  ];
  const tools = kit
    .filter(({ tool }) => tool !== 'lid-stand' || gear.lidStands === 0)
    .filter(({ tool }) => !isOwned(tool, gear.others));
  return [
    ...counted.flatMap(([thing, count]) =>
      count === 0 ? [] : [thingItem({ thing, count }, count * weightOf(thing))],
    ),
    ...tools.map(({ tool, count }) =>
      thingItem({ thing: 'tool', tool, count }, count * weightOf(tool)),
    ),
    ...gear.others.map((name) => thingItem({ thing: 'own', name }, weightOf('own'))),
  ];
}

const thingItem = (what: PackItem['what'], mass: number): PackItem => ({
  what,
  kind: 'kit',
  mass: grams(mass),
  divides: what.thing !== 'own' && 'count' in what && what.count > 1,
});

/** A mean tool where the table has none; the table is judged too. */
const weightOf = (thing: string): number =>
  table.things.find((each) => each.thing === thing)?.grams ?? 300;

const fuelItems = (fuel: FuelNeed): readonly PackItem[] =>
  fuel.kind === 'wood-coals' || fuel.massWithSpare <= 0
    ? [] // wood is cut where the camp is, as far as it is allowed
    : [{ what: { thing: 'fuel' }, kind: 'fuel', mass: fuel.massWithSpare, divides: true }];

/** What one of this kind carries, where the camp does not say. */
export const usualLimit = (kind: string): Grams => {
  const row = table.limits.find((each) => each.kind === kind);
  if (row === undefined) throw new RangeError(`no usual load of a ${kind}`);
  return grams(row.limitGrams);
};

export const usualBox = { limit: grams(table.box.limitGrams), mass: grams(table.box.grams) };
export const usualTin = { limit: grams(table.tin.limitGrams), mass: grams(table.tin.grams) };
/** Nothing around it: an oven is its own box. */
export const noBox = { limit: grams(Number.MAX_SAFE_INTEGER), mass: grams(0) };
