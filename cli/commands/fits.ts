// `emberwright fits`: what goes into an oven, over several of them, or which oven for so much.

import {
  type CampOven,
  FIT_KINDS,
  type FitAsk,
  FLOOR_CONTACTS,
  fitSheet,
  fromUnit,
  grams,
  isKnownSize,
  isRefusal,
  metres,
  nominalOven,
  type OrRefusal,
  refusal,
  refusalText,
  renderText,
  type Say,
  type SheetDocument,
  sayFor,
  sizesFor,
  sizesSheet,
  spreadBatch,
  spreadSheet,
  whatFits,
} from '#engine';
import { EXIT, type ExitCode, wrongUse } from '../exit.ts';
import { countOf, oneOf, quantityOf, readerOf } from '../reading.ts';
import type { Shell } from '../shell.ts';

export interface FitsOptions {
  readonly what: string;
  readonly oven?: readonly string[];
  readonly deep?: true;
  readonly floor?: string;
  readonly depth?: string;
  readonly thick?: string;
  readonly cutter?: string;
  readonly each?: string;
  readonly wedges?: string;
  readonly amount?: string;
  readonly on?: string;
  readonly touching?: true;
  readonly measures?: string;
}

export function fits(options: FitsOptions, shell: Shell): ExitCode {
  const ask = askOf(options);
  const say = sayTo(options);
  const ovens = ovensOf(options);
  const sheet = isRefusal(ovens) ? ovens : sheetOf(options, { ask, ovens, say });
  if (isRefusal(sheet)) {
    shell.error(`Stop: ${refusalText(sheet, say)}\n`);
    return EXIT.stopped;
  }
  shell.out(renderText(sheet, { width: shell.columns }));
  return EXIT.fine;
}

interface Asked {
  readonly ask: FitAsk;
  readonly ovens: readonly CampOven[];
  readonly say: Say;
}

function sheetOf({ amount }: FitsOptions, asked: Asked): OrRefusal<SheetDocument> {
  const { ask, ovens, say } = asked;
  if (amount === undefined) return mostSheet(asked);
  const wanted = grams(
    positive('--amount', amount, quantityOf('--amount', amount, 'mass', '1 kg')),
  );
  if (ovens.length === 0) {
    return sizesSheet({ what: ask.what, wanted, sizes: sizesFor(wanted, ask) }, say);
  }
  const spread = spreadBatch(wanted, ovens, ask);
  return isRefusal(spread) ? spread : spreadSheet({ what: ask.what, wanted, spread }, say);
}

function mostSheet({ ask, ovens, say }: Asked): OrRefusal<SheetDocument> {
  const [oven, ...others] = ovens;
  if (oven === undefined) {
    throw wrongUse('--oven', 'nothing', 'an oven or an amount', 'Write --oven "12 in".');
  }
  if (others.length > 0) {
    const next = 'Write --amount "3 kg", or ask of one oven.';
    throw wrongUse('--oven', `${ovens.length} ovens`, 'an amount to share over them', next);
  }
  const fit = whatFits(oven, ask);
  return isRefusal(fit) ? fit : fitSheet({ fit }, say);
}

function askOf(options: FitsOptions): FitAsk {
  const length = (where: string, text: string, example: string) =>
    metres(positive(where, text, quantityOf(where, text, 'length', example)));
  const { thick, cutter, each, wedges, on, touching } = options;
  return {
    what: oneOf('--what', options.what, FIT_KINDS),
    ...(thick === undefined ? {} : { thickness: length('--thick', thick, '1/2 in') }),
    ...(cutter === undefined ? {} : { cutter: length('--cutter', cutter, '2 1/2 in') }),
    ...(each === undefined
      ? {}
      : { pieceMass: grams(positive('--each', each, quantityOf('--each', each, 'mass', '60 g'))) }),
    ...(wedges === undefined
      ? {}
      : { wedges: positive('--wedges', wedges, countOf('--wedges', wedges)) }),
    inOven: {
      ...(on === undefined ? {} : { contact: oneOf('--on', on, FLOOR_CONTACTS) }),
      ...(touching ? { pieces: 'touching' as const } : {}),
    },
  };
}

function positive(where: string, text: string, value: number): number {
  if (value > 0) return value;
  throw wrongUse(where, `"${text}"`, 'more than nothing', `Leave ${where} out, or write more.`);
}

/** Ovens as usually made, with what the owner measured of a single one. */
function ovensOf(options: FitsOptions): OrRefusal<readonly CampOven[]> {
  const { oven: sizes = [], floor, depth, deep } = options;
  if (sizes.length !== 1 && (floor !== undefined || depth !== undefined)) {
    const next = 'Ask of one oven, or leave the measurement out.';
    throw wrongUse('--floor', `${sizes.length} ovens`, 'measurements of one oven', next);
  }
  const ovens: CampOven[] = [];
  for (const [index, text] of sizes.entries()) {
    const diameter = metres(quantityOf('--oven', text, 'length', '12 in'));
    if (!isKnownSize(diameter)) {
      return refusal('MENU_OVEN_SIZE_UNKNOWN', ['oven'], {}, { diameterMetres: diameter });
    }
    const made = nominalOven(diameter, deep ? 'deep' : 'regular');
    ovens.push({ ...made, id: String.fromCharCode(65 + index), ...measuredOf(made, options) });
  }
  return ovens;
}

/** A depth that was measured makes the oven hold so much more or less. */
function measuredOf(made: CampOven, { floor, depth }: FitsOptions): Partial<CampOven> {
  const floorDiameter =
    floor === undefined ? undefined : metres(quantityOf('--floor', floor, 'length', '10 in'));
  const inside =
    depth === undefined ? undefined : metres(quantityOf('--depth', depth, 'length', '4 in'));
  for (const [where, text, size] of [
    ['--floor', floor, floorDiameter],
    ['--depth', depth, inside],
  ] as const) {
    const most = where === '--floor' ? made.diameter : LARGEST_DEPTH;
    if (size === undefined || (LEAST_SIZE <= size && size <= most)) continue;
    throw wrongUse(where, `"${text}"`, 'a size that an oven can have', `Measure again.`);
  }
  return {
    ...(floorDiameter === undefined ? {} : { floorDiameter }),
    ...(inside === undefined
      ? {}
      : {
          depth: inside,
          capacity: ((made.capacity * inside) / made.depth) as CampOven['capacity'],
        }),
  };
}

const LEAST_SIZE = fromUnit(1, 'inch');
const LARGEST_DEPTH = fromUnit(12, 'inch');

/** Speaks as the sizes were written, unless told otherwise. */
function sayTo(options: FitsOptions): Say {
  const { oven = [], thick = '', cutter = '', amount = '' } = options;
  const written = [...oven, thick, cutter, amount].join(' ');
  const usual = /\b(in|inch(es)?|lb|oz)\b|"/i.test(written) ? 'us' : 'metric';
  const reader = readerOf(options, usual);
  return sayFor({ ...reader, plan: { camp: { ovens: [], hands: [] }, menu: { dishes: [] } } });
}
