// What a load rests on in its oven: between the camp file and the engine's terms.

import { type InOvenWish, type Metres, metres, type Tin } from '#engine';
import { given } from './given.ts';
import { readQuantity, writeQuantity } from './quantity-text.ts';
import type { FileInOven } from './v1.ts';

export function inOvenFromFile(file: FileInOven | undefined): InOvenWish | undefined {
  if (file === undefined) return undefined;
  return given<InOvenWish>({
    contact: file.on,
    lid: file.lid,
    oven: file.oven,
    pieces: file.pieces,
    tin: tinFromFile(file.tin),
  });
}

export function inOvenToFile(wish: InOvenWish | undefined): FileInOven | undefined {
  if (wish === undefined || Object.keys(wish).length === 0) return undefined;
  return given<FileInOven>({
    on: wish.contact,
    lid: wish.lid,
    oven: wish.oven,
    pieces: wish.pieces,
    tin: tinToFile(wish.tin),
  });
}

const lengthOf = (text: string): Metres => metres(readQuantity('length', text)!);

function tinFromFile(tin: FileInOven['tin']): Tin | undefined {
  if (tin === undefined) return undefined;
  return {
    length: lengthOf(tin.length),
    width: lengthOf(tin.width),
    height: lengthOf(tin.height),
    ...given<Partial<Tin>>({ isRound: tin.round }),
  };
}

function tinToFile(tin: Tin | undefined): FileInOven['tin'] {
  if (tin === undefined) return undefined;
  return {
    length: writeQuantity('length', tin.length),
    width: writeQuantity('length', tin.width),
    height: writeQuantity('length', tin.height),
    ...given<{ round?: boolean }>({ round: tin.isRound }),
  };
}
