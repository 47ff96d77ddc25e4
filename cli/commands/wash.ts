// `emberwright wash`: boil by height, bleach by the label, hands, three buckets.

import {
  cubicMetres,
  renderText,
  type Say,
  sayFor,
  usualBucket,
  usualCan,
  washSheet,
} from '#engine';
import { EXIT, type ExitCode, wrongUse } from '../exit.ts';
import { heightOf, quantityOf, readerOf } from '../reading.ts';
import type { Shell } from '../shell.ts';

interface WashOptions {
  readonly height?: string;
  readonly bleach?: string;
  readonly water?: string;
  readonly ppm?: string;
  readonly drinking?: string;
  readonly cloudy?: true;
  readonly measures?: string;
}

export function wash(options: WashOptions, shell: Shell): ExitCode {
  const say = sayFor({
    ...readerOf({ ...options, clock: '24' }, 'us'),
    plan: { camp: { ovens: [], hands: [] }, menu: { dishes: [] } },
  });
  shell.out(renderText(sheetOf(options, say), { width: shell.columns }));
  return EXIT.fine;
}

function sheetOf(options: WashOptions, say: Say) {
  const { height, bleach, water, ppm, drinking, cloudy } = options;
  return washSheet(
    {
      ...(height === undefined ? {} : { elevation: heightOf(height) }),
      bucket: water === undefined ? usualBucket(say) : volumeOf('--water', water),
      drinking: drinking === undefined ? usualCan(say) : volumeOf('--drinking', drinking),
      ...(bleach === undefined ? {} : { percent: percentOf(bleach) }),
      ...(ppm === undefined ? {} : { partsPerMillion: ppmOf(ppm) }),
      ...(cloudy ? { isCloudyOrCold: true } : {}),
    },
    say,
  );
}

function volumeOf(where: string, text: string) {
  const volume = quantityOf(where, text, 'volume', '5 gal');
  if (volume > 0 && volume <= MOST_WATER) return cubicMetres(volume);
  throw wrongUse(where, `"${text}"`, 'more than none, at most 10,000 l', `Write ${where} "5 gal".`);
}

const MOST_WATER = 10;

/** `8.25 %`, or `8.25` alone: a label says nothing but per cent. */
function percentOf(text: string): number {
  const plain = /^\d+(\.\d+)?$/.test(text.trim()) ? `${text} %` : text;
  const percent = quantityOf('--bleach', plain, 'share', '8.25 %') * 100;
  if (1 <= percent && percent <= 15) return percent;
  throw wrongUse(
    '--bleach',
    `"${text}"`,
    'the per cent of sodium hypochlorite on the label, 1 to 15',
    'Write --bleach "8.25 %".',
  );
}

function ppmOf(text: string): number {
  const ppm = Number(text.trim().replace(/\s*(ppm|mg\/l)$/i, ''));
  if (25 <= ppm && ppm <= 5000) return ppm;
  throw wrongUse('--ppm', `"${text}"`, 'a strength from 25 to 5000', 'Write --ppm 100.');
}
