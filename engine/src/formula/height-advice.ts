// What published tables change at this height, side by side: they do not agree, and that is shown.
// Sources: uwAltitude, purdyAltitude, coloradoCakes, coloradoWheat, coloradoYeast, nmsuCakes,
// serviceAltitude. Between printed heights a table is read along a straight line; never past its ends.

import published from '../../data/altitude.json' with { type: 'json' };
import { fromUnit, inUnit } from '../quantity/convert.ts';
import { type KelvinDifference, kelvinDifference, type Metres } from '../quantity/unit.ts';
import { leaveningCutAt } from './height.ts';

/** From the least to the most that a table prints. */
export type Span = readonly [least: number, most: number];

export interface HeightAdvice {
  /** How the table is called on a sheet. */
  readonly who: string;
  readonly source: string;
  readonly product: string;
  /** Share of powder, soda or yeast that it leaves out. */
  readonly leavening: Span;
  /** Liquid more, over the liquid of the recipe; sugar and fat less, flour more, likewise. */
  readonly liquid?: Span;
  readonly sugar?: Span;
  readonly fat?: Span;
  readonly flour?: Span;
  readonly ovenHotter?: readonly [KelvinDifference, KelvinDifference];
  /** The place is above the table's last row, which is what stands here. */
  readonly isAboveTable: boolean;
}

export interface HeightCompared {
  /** By the law that is used: equal gas. */
  readonly law: number;
  readonly advice: readonly HeightAdvice[];
  /** Least and most that any table says. */
  readonly spread: Span;
  /** How much more than the law the largest table cuts: 2 = twice; undefined where the law cuts none. */
  readonly largestOverLaw?: number;
}

/**
 * The law beside every published table that reaches this height.
 *
 * @param leavens   what raises the dough: tables for yeast bread speak of yeast only
 * @param teaspoonsForTwoCups  powder in the recipe, for the table that cuts by the flour
 * @returns undefined below the lowest printed height
 */
export function heightCompared(
  elevation: Metres,
  { leavens, teaspoonsForTwoCups }: { leavens: 'powder' | 'yeast'; teaspoonsForTwoCups?: number },
): HeightCompared | undefined {
  const feet = inUnit(elevation, 'foot');
  const tables = published.tables.filter(
    ({ product }) => (product === 'yeast bread') === (leavens === 'yeast'),
  );
  const advice = [
    ...tables.flatMap((table) => adviceOf(table as PublishedTable, feet)),
    ...(leavens === 'powder' ? byTheFlour(feet, teaspoonsForTwoCups) : []),
  ];
  if (advice.length === 0) return undefined;
  const law = leaveningCutAt(elevation);
  const most = Math.max(...advice.map(({ leavening }) => leavening[1]));
  return {
    law,
    advice,
    spread: [Math.min(...advice.map(({ leavening }) => leavening[0])), most],
    ...(0 < law ? { largestOverLaw: most / law } : {}),
  };
}

interface PublishedRow {
  readonly feet: number;
  readonly leavening: readonly number[];
  readonly liquid?: readonly number[];
  readonly sugar?: readonly number[];
  readonly fat?: readonly number[];
  readonly flour?: readonly number[];
}

interface PublishedTable {
  readonly who: string;
  readonly source: string;
  readonly product: string;
  readonly ovenFahrenheit: readonly number[] | null;
  readonly rows: readonly PublishedRow[];
}

const TABLESPOONS_IN_CUP = 16;
const EXTRA = ['liquid', 'sugar', 'fat', 'flour'] as const;

function adviceOf(table: PublishedTable, feet: number): readonly HeightAdvice[] {
  const first = table.rows[0]!;
  // A table with one row speaks of the heights round it: half a step of the others, 1,000 ft.
  const reach = table.rows.length === 1 ? 1000 : 0;
  if (feet < first.feet - reach - 0.5) return [];
  const last = table.rows.at(-1)!;
  const oven = table.ovenFahrenheit;
  const extras = EXTRA.flatMap((what) => {
    const span = spanAt(table.rows, feet, what);
    const isNothing = span === undefined || span[1] === 0;
    return isNothing
      ? []
      : [[what, [span[0] / TABLESPOONS_IN_CUP, span[1] / TABLESPOONS_IN_CUP]] as const];
  });
  return [
    {
      who: table.who,
      source: table.source,
      product: table.product,
      leavening: spanAt(table.rows, feet, 'leavening')!,
      ...(Object.fromEntries(extras) as Pick<HeightAdvice, (typeof EXTRA)[number]>),
      ...(oven === null || oven[1] === 0
        ? {}
        : { ovenHotter: [fahrenheitSteps(oven[0]!), fahrenheitSteps(oven[1]!)] as const }),
      isAboveTable: last.feet + reach + 0.5 < feet,
    },
  ];
}

const fahrenheitSteps = (degrees: number) => kelvinDifference(degrees / 1.8);

function spanAt(
  rows: readonly PublishedRow[],
  feet: number,
  what: 'leavening' | (typeof EXTRA)[number],
): Span | undefined {
  const above = rows.find((row) => feet <= row.feet) ?? rows.at(-1)!;
  const below = rows.findLast((row) => row.feet <= feet) ?? rows[0]!;
  const [low, high] = [below[what], above[what]];
  if (low === undefined || high === undefined) return undefined;
  const along = above.feet === below.feet ? 0 : (feet - below.feet) / (above.feet - below.feet);
  const at = (end: 0 | 1) => low[end]! + along * (high[end]! - low[end]!);
  return [at(0), at(1)];
}

/** So many teaspoons less for each 2,500 ft and two cups of flour, nmsuCakes. */
function byTheFlour(feet: number, teaspoons: number | undefined): readonly HeightAdvice[] {
  const { who, everyFeet, teaspoonsForTwoCups, source } = published.perFlour;
  if (teaspoons === undefined || !(0 < teaspoons) || feet < everyFeet) return [];
  const steps = Math.floor(feet / everyFeet);
  const share = (each: number) => Math.min(1, (each * steps) / teaspoons);
  return [
    {
      who,
      source,
      product: 'cake',
      leavening: [share(teaspoonsForTwoCups[0]!), share(teaspoonsForTwoCups[1]!)],
      isAboveTable: false,
    },
  ];
}

/** What the extension service that prints cake tables says of quick breads, beside its table. */
export const quickBreadAdvice = published.quickBreads;

/** A height that a table is printed for. */
export const feetToMetres = (feet: number): Metres => fromUnit(feet, 'foot');
