// Water to drink, hands, dishes: on one card for the wash line. Needs no camp.
// Sources: epa-p100sp1s, cdc-water, kdhe-bleach, river-permit, food-code-4-501, sf-handwash, nc-dph.

import type { MealDay } from '../../meal.ts';
import { isRefusal } from '../../notice/notice.ts';
import { type CubicMetres, cubicMetres, type Metres, metres } from '../../quantity/unit.ts';
import {
  boilMinutes,
  CLEAN_UP_PPM,
  drinkingDose,
  HAND_WASH,
  NO_RINSE_PPM,
  sanitisingBucket,
  THREE_BUCKETS,
  USUAL_PPM,
} from '../../safety/index.ts';
import type { Block, FactRow, SheetDocument } from '../document.ts';
import { noticeBlocks, refusalBlocks } from '../notice-text.ts';
import type { Say } from '../say.ts';
import { paragraph } from './door.ts';
import { doseWord } from './dose-word.ts';

export interface WashAsked {
  /** Title of the camp, where there is one. */
  readonly camp?: string;
  /** Undefined where nobody said how high: then the longer boil. */
  readonly elevation?: Metres;
  /** Water in the last bucket. */
  readonly bucket: CubicMetres;
  /** Water to make fit to drink at a time. */
  readonly drinking: CubicMetres;
  /** On the label; undefined where nobody read it. */
  readonly percent?: number;
  readonly partsPerMillion?: number;
  readonly isCloudyOrCold?: boolean;
  readonly event?: 'home' | 'public';
}

const US_GALLON = 0.003785411784; // exact

/** The camp's own card: buckets of twelve litres, or three gallons, and a can to drink from. */
export function waterAndWashSheet({ camp, assumed }: MealDay, say: Say): SheetDocument {
  const { bleach } = camp.gear;
  const isHeightSaid = !assumed.some(({ what }) => what === 'elevation');
  return washSheet(
    {
      camp: camp.title,
      ...(isHeightSaid ? { elevation: camp.place.elevation } : {}),
      bucket: usualBucket(say),
      drinking: usualCan(say),
      ...(bleach === undefined ? {} : { percent: bleach * 100 }),
      ...(camp.event === undefined ? {} : { event: camp.event }),
    },
    say,
  );
}

/** Common practice, no source; round in the reader's own measure. */
export const usualBucket = ({ measures }: Say) =>
  cubicMetres(measures === 'us' ? 3 * US_GALLON : 0.012);
export const usualCan = ({ measures }: Say) =>
  cubicMetres(measures === 'us' ? 5 * US_GALLON : 0.02);

export function washSheet(asked: WashAsked, say: Say): SheetDocument {
  return {
    kind: 'water-and-wash',
    title: 'Water and wash',
    ...(asked.camp === undefined ? {} : { camp: asked.camp }),
    blocks: [
      ...drinkingBlocks(asked, say),
      ...handBlocks(asked, say),
      ...bucketBlocks(asked, say),
      ...sickBlocks(asked, say),
    ],
  };
}

function drinkingBlocks(asked: WashAsked, say: Say): readonly Block[] {
  const { elevation } = asked;
  const boil = boilMinutes(elevation ?? metres(Number.POSITIVE_INFINITY));
  const dose = drinkingDose({ ...asked, water: asked.drinking });
  const where = elevation === undefined ? 'height not said' : `at ${say.height(elevation)}`;
  return [
    { type: 'heading', text: 'Water to drink' },
    {
      type: 'figures',
      figures: [
        { figure: say.minutes(boil), label: 'rolling boil', note: where },
        ...(isRefusal(dose)
          ? []
          : [
              {
                figure: `${dose.drops} drops`,
                label: `of ${percentWord(asked)} bleach in ${say.volume(asked.drinking)}`,
                note: `then wait ${say.minutes(dose.wait)}`,
              },
            ]),
      ],
    },
    ...(isRefusal(dose)
      ? [...refusalBlocks([dose], say), ...labelDrops(asked, say)]
      : noticeBlocks(dose.notices, say)),
    paragraph(
      `Boil, or bleach. One minute at a rolling boil; three above ${say.height(1524)}, the stricter of ` +
        `two agencies (the other says ${say.height(1981.2)}). Let cloudy water settle and filter it first. ` +
        `${asked.isCloudyOrCold ? 'The drops are doubled for cloudy or cold water. ' : 'Cloudy or very cold: twice the drops. '}` +
        'Plain, unscented bleach under a year old. Neither takes out fuel, metals or sprays: fetch other water.',
    ),
  ];
}

/** Nobody read the label: both printed rows, none of them chosen. */
function labelDrops({ drinking, isCloudyOrCold }: WashAsked, say: Say): readonly Block[] {
  const rows = [6, 8.25].flatMap((percent) => {
    const dose = drinkingDose({ water: drinking, percent, ...cloudy(isCloudyOrCold) });
    return isRefusal(dose) ? [] : [[`${percent} %`, `${dose.drops} drops`]];
  });
  return [
    {
      type: 'table',
      caption: `For ${say.volume(drinking)}, if the label says:`,
      head: ['label', 'bleach'],
      rows,
      numeric: [],
    },
  ];
}

const cloudy = (isCloudyOrCold: boolean | undefined) =>
  isCloudyOrCold === undefined ? {} : { isCloudyOrCold };

function handBlocks({ event }: WashAsked, say: Say): readonly Block[] {
  const { water, can, seconds } = HAND_WASH;
  return [
    { type: 'heading', text: event === 'public' ? 'Hand-wash line (must stand)' : 'Hands' },
    {
      type: 'list',
      tick: true,
      items: [
        `Can of ${say.volume(can)} with a tap that stays open, water of ${span(water, say)}; a bucket as big under it.`,
        'Soap that pours, paper towels, a bag for them.',
        `${seconds} seconds: before food; after meat, egg, flour, ash, coals, nose and latrine. Sanitiser takes no allergen off.`,
      ],
    },
  ];
}

function bucketBlocks(asked: WashAsked, say: Say): readonly Block[] {
  const { wash, rinse } = THREE_BUCKETS;
  return [
    { type: 'heading', text: 'Three buckets, after scraping' },
    {
      type: 'facts',
      rows: [
        { label: '1 Wash', value: `${span(wash, say)}, soap` },
        { label: '2 Rinse', value: `clean, hot: ${span(rinse, say)}`, note: 'heat as the wash' },
        ...sanitiseRows(asked, say),
      ],
    },
    ...sanitiseMore(asked, say),
    paragraph(
      'Then dry in the air, no towel. New water when it is cool, greasy or cloudy; a test strip tells what ' +
        'strength is left. Dishes that met an allergen go last, or into water of their own. Oven iron never goes ' +
        'into the buckets.',
    ),
  ];
}

function sanitiseRows(asked: WashAsked, say: Say): readonly FactRow[] {
  const found = bucketOf(asked, asked.percent);
  const label = '3 Sanitise';
  if (isRefusal(found)) return [{ label, value: 'by the label: see below' }];
  return [
    {
      label,
      value: `${doseWord(found.bleach, say)} of ${percentWord(asked)} bleach in ${say.volume(asked.bucket)}`,
      note: `${found.partsPerMillion} ppm`,
    },
    { label: '', value: `${span(found.heat, say)}, dishes under it for ${say.minutes(found.dip)}` },
  ];
}

function sanitiseMore(asked: WashAsked, say: Say): readonly Block[] {
  const ppm = asked.partsPerMillion ?? USUAL_PPM;
  const found = bucketOf(asked, asked.percent);
  if (!isRefusal(found)) return ppm > NO_RINSE_PPM ? [overStrong()] : [];
  return [
    {
      type: 'table',
      caption: `${ppm} ppm in ${say.volume(asked.bucket)}, if the label says:`,
      head: ['label', 'bleach'],
      rows: LABELS.flatMap((percent) => {
        const dose = bucketOf(asked, percent);
        return isRefusal(dose) ? [] : [[`${percent} %`, doseWord(dose.bleach, say)]];
      }),
      numeric: [],
    },
  ];
}

/** Labels that are sold. */
const LABELS = [5.25, 6, 7.5, 8.25] as const;

const overStrong = (): Block => ({
  type: 'notice',
  level: 'doubt',
  text: `Over ${NO_RINSE_PPM} ppm: rinse the dishes once more in clean water (limit from memory).`,
});

const bucketOf = ({ bucket, partsPerMillion }: WashAsked, percent = Number.NaN) =>
  sanitisingBucket({
    water: bucket,
    percent,
    ...(partsPerMillion === undefined ? {} : { partsPerMillion }),
  });

/** Floor and table after somebody was sick; never dishes. */
function sickBlocks({ percent }: WashAsked, say: Say): readonly Block[] {
  const water = cubicMetres(say.measures === 'us' ? US_GALLON : 0.004);
  const dose = sanitisingBucket({
    water,
    percent: percent ?? Number.NaN,
    partsPerMillion: CLEAN_UP_PPM.least,
  });
  const how = isRefusal(dose)
    ? `${CLEAN_UP_PPM.least} ppm, by the label`
    : `${doseWord(dose.bleach, say)} of bleach in ${say.volume(water)}`;
  return [
    { type: 'heading', text: 'Somebody was sick' },
    paragraph(
      `Hands off the food until 48 hours after the last of it. Table and floor: ${how}, up to five times as ` +
        'much on what is rough. Food that stood near it is thrown away. Never mix bleach with another cleaner.',
    ),
  ];
}

const percentWord = ({ percent }: WashAsked) => `${Number((percent ?? 0).toFixed(2))} %`;

const span = ({ least, most }: { readonly least: number; readonly most: number }, say: Say) =>
  `${say.degrees(least)} to ${say.degrees(most)}`;
