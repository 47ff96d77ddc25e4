// Buying, packing and carrying: from a camp file to the engine and back.

import {
  type Carrier,
  type Cooler,
  type CoolerInside,
  clockMinutes,
  cubicMetres,
  grams,
  insideOf,
  metres,
  type Pack,
  ratio,
  type StoreFood,
  type Stores,
} from '#engine';
import { readClock, writeClock } from './clock-text.ts';
import { given } from './given.ts';
import { readQuantity, writeQuantity } from './quantity-text.ts';
import type { FileStores } from './stores-schema.ts';

type FileCooler = NonNullable<FileStores['coolers']>[number];

export function storesFromFile(file: FileStores): Stores {
  return {
    foods: (file.foods ?? []).map(foodFromFile),
    carriers: (file.carriers ?? []).map(({ kind, name, count: many = 1, limit }) => ({
      kind,
      name: name ?? kind,
      count: many,
      ...(limit === undefined ? {} : { limit: massOf(limit) }),
    })),
    coolers: (file.coolers ?? []).map(coolerFromFile),
    ...given<Partial<Stores>>({
      money: file.money,
      box: file.box && {
        limit: massOf(file.box.limit),
        mass: file.box.weight === undefined ? USUAL_BOX : massOf(file.box.weight),
      },
      packedAt: file.packedAt === undefined ? undefined : clockMinutes(readClock(file.packedAt)!),
    }),
  };
}

const massOf = (written: string) => grams(readQuantity('mass', written)!);
const lengthOf = (written: string) => metres(readQuantity('length', written)!);

const USUAL_BOX = grams(1500); // a lidded plastic box of 40 l; common practice, no source

const foodFromFile = (row: NonNullable<FileStores['foods']>[number]): StoreFood => ({
  name: row.food,
  packs: (row.packs ?? []).map(
    ({ size, price }): Pack => ({ size: massOf(size), ...given({ price }) }),
  ),
  ...given<Partial<StoreFood>>({
    shop: row.shop,
    have: row.have === undefined ? undefined : massOf(row.have),
    usable: row.usable === undefined ? undefined : ratio(readQuantity('share', row.usable)!),
  }),
});

const USUAL_WALL = metres(0.03); // a plain hard cooler; the chest of the textbook has 3 cm
const USUAL_ROOM = cubicMetres(0.034); // 36 US quarts, the cooler of the published opening test

const coolerFromFile = (file: FileCooler, index: number): Cooler => ({
  name: file.name ?? `cooler ${index + 1}`,
  inside: insideFromFile(file),
  wall: file.wall === undefined ? USUAL_WALL : lengthOf(file.wall),
  ...given<Partial<Cooler>>({
    openings: file.openings,
    ice: file.ice === undefined ? undefined : massOf(file.ice),
  }),
});

function insideFromFile({ length, width, height, volume }: FileCooler): CoolerInside {
  if (length !== undefined && width !== undefined && height !== undefined)
    return { length: lengthOf(length), width: lengthOf(width), height: lengthOf(height) };
  return insideOf(volume === undefined ? USUAL_ROOM : cubicMetres(readQuantity('volume', volume)!));
}

/** Coolers go back with their three measures: the room alone does not say its shape. */
export function storesToFile(all: Stores): FileStores {
  return {
    ...given<FileStores>({
      foods: all.foods.length === 0 ? undefined : all.foods.map(foodToFile),
      money: all.money,
      box: all.box && {
        limit: writeQuantity('mass', all.box.limit),
        weight: writeQuantity('mass', all.box.mass),
      },
      carriers: all.carriers.length === 0 ? undefined : all.carriers.map(carrierToFile),
      coolers: all.coolers.length === 0 ? undefined : all.coolers.map(coolerToFile),
      packedAt: all.packedAt === undefined ? undefined : writeClock(all.packedAt),
    }),
  };
}

const carrierToFile = ({ limit, ...carrierPlain }: Carrier) => ({
  ...carrierPlain,
  ...(limit === undefined ? {} : { limit: writeQuantity('mass', limit) }),
});

const foodToFile = ({ name, packs, shop, have, usable }: StoreFood) => ({
  food: name,
  ...given({
    packs:
      packs.length === 0
        ? undefined
        : packs.map(({ size, price }) => ({
            size: writeQuantity('mass', size),
            ...given({ price }),
          })),
    shop,
    have: have === undefined ? undefined : writeQuantity('mass', have),
    usable: usable === undefined ? undefined : writeQuantity('share', usable),
  }),
});

const coolerToFile = ({ name, inside, wall, openings, ice }: Cooler): FileCooler => ({
  name,
  length: writeQuantity('length', inside.length),
  width: writeQuantity('length', inside.width),
  height: writeQuantity('length', inside.height),
  wall: writeQuantity('length', wall),
  ...given({ openings, ice: ice === undefined ? undefined : writeQuantity('mass', ice) }),
});
