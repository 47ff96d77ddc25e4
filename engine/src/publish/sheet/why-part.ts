// Why this many coals: the chart's count, ours, one line for everything that moved it, zeros kept.

import type { ChartCount, CoalPlan, CountReason } from '../../coals/coal-plan.ts';
import type { Block } from '../document.ts';
import type { Say } from '../say.ts';
import { fraction } from '../speak-number.ts';
import { isWood, shovelsWord } from './phrases.ts';

export function whyBlocks(coals: CoalPlan, say: Say): readonly Block[] {
  return [isWood(coals) ? whyWood(coals) : whyCounts(coals, say)];
}

/** Beside the counts: what the chart says, what we say, and what moved it most; wood is on no chart. */
export function chartBlocks(coals: CoalPlan, say: Say): readonly Block[] {
  const { chart, above, below, because } = coals.reckoning;
  if (chart === undefined || isWood(coals)) return [];
  const most = because
    .filter((reason) => reason.coals !== 0 && reason.cause !== 'rounding')
    .toSorted((one, other) => Math.abs(other.coals) - Math.abs(one.coals))
    .slice(0, MOST_REASONS)
    .map((reason) => `${causeWord(reason, coals)} ${signed(reason.coals, String)}`);
  const ours = above + below;
  const whose = coals.isPinned ? 'you say' : 'we say';
  const why = most.length === 0 ? '' : ` because: ${most.join('; ')}`;
  const text = `The most reprinted chart says ${chart.above + chart.below} (${chartPhrase(chart, say)}); ${whose} ${ours}${why}.`;
  return [{ type: 'paragraph', parts: [{ text: `${text}${fewBelow(coals)}` }] }];
}

/** A cook doubts a small ring, and is told what the usual one would do. */
function fewBelow({ asCounted, below }: CoalPlan): string {
  if (asCounted === undefined || asCounted.below <= below.pieces) return '';
  const { darkMinute, doneMinute } = asCounted;
  const early = Math.round(doneMinute - darkMinute);
  return ` Why so few below: over ${asCounted.below} the bottom, which lies on iron, would be dark ${early} min before the bread is done.`;
}

const MOST_REASONS = 3;

const CAUSE: Readonly<Record<CountReason['cause'], string>> = {
  'our-oven-model': 'our sum for this oven in mild, still air',
  wind: 'wind',
  cold: 'cold',
  height: 'height above the sea',
  depth: 'depth of the oven',
  ground: 'what the coals lie on',
  rain: 'rain on the lid',
  sun: 'sun on the lid',
  riser: 'the riser under the oven',
  'own-measures': 'your oven as you measured it',
  charcoal: 'your charcoal',
  load: 'what is in the oven',
  'first-set': 'coals fade and are added to later',
  'hot-oven': 'oven still hot from before',
  rounding: 'rounding to whole coals',
  'lid-full': 'no more room on the lid',
  bake: "the dough's own heat and colour",
  pin: 'your own count, kept',
};

function whyCounts(coals: CoalPlan, say: Say): Block {
  const { reckoning, isPinned } = coals;
  const { chart, above, below, because, others } = reckoning;
  const first =
    chart === undefined
      ? [BASE[baseWork(coals)], String(baseOf(reckoning))]
      : [`the most reprinted chart: ${chartPhrase(chart, say)}`, String(chart.above + chart.below)];
  const rows = [
    first,
    ...because.map((reason) => [causeWord(reason, coals), signed(reason.coals, String)]),
    [
      `${isPinned ? 'as you pinned it' : 'this plan'}: ${above} above, ${below} below`,
      String(above + below),
    ],
  ];
  return {
    type: 'why',
    half: true,
    question: `Why ${above} and ${below}?`,
    blocks: [
      { type: 'table', caption: '', head: ['', 'coals'], rows, numeric: [false, true] },
      ...othersBlock(others, { isFirst: chart === undefined }, say),
    ],
  };
}

/** Where no chart speaks, the sum begins with what keeps this oven going in mild, still air. */
const BASE = {
  simmer: 'to hold the simmer in mild, still air',
  boil: 'to hold the boil in mild, still air',
  bake: 'to hold the heat of this oven in mild, still air',
} as const;

const baseWork = ({ method }: CoalPlan) =>
  method === 'simmer' || method === 'boil' ? method : 'bake';

const workOf = ({ method }: CoalPlan) =>
  method === 'simmer' || method === 'boil' ? 'pot' : 'bake';

/** What is left of the plan's count once every reason is taken off. */
const baseOf = ({
  above,
  below,
  because,
}: Pick<CoalPlan['reckoning'], 'above' | 'below' | 'because'>) =>
  above + below - because.reduce((sum, { coals }) => sum + coals, 0);

function causeWord({ cause, coals }: CountReason, plan: CoalPlan): string {
  const isPot = workOf(plan) === 'pot';
  if (isWood(plan) && !isPot && cause === 'load') return coals < 0 ? LESS_IN : MORE_IN;
  if (isWood(plan) && cause === 'rounding') return 'rounding to half shovels';
  if (cause === 'load') return isPot ? TO_BOIL : coals < 0 ? LESS_THAN_CHART : MORE_THAN_CHART;
  if (cause === 'bake') return coals < 0 ? BAKE_FEWER : BAKE_MORE;
  if (cause === 'first-set')
    return coals < 0 ? FIRST_FEWER : `coals fade while ${WHILE[plan.method]}`;
  if (cause === 'cold' && coals < 0) return 'warm air';
  return CAUSE[cause];
}

const TO_BOIL = 'to bring the pot to the boil in its time';
// A printed count is read as one for a floor full of dough: see coals/charts.ts.
const LESS_THAN_CHART = 'less in the oven than the full floor that a chart counts on';
const MORE_THAN_CHART = 'more in the oven than a chart counts on';
// Wood coals are on no chart: the same line without one.
const LESS_IN = 'less in the oven than a full floor of dough';
const MORE_IN = 'more in the oven than a full floor of dough';
const BAKE_MORE = "the dough's own heat, and colour on both faces by the time it is done";
const BAKE_FEWER = 'core and both colours are done together with fewer';
const FIRST_FEWER = 'young coals are stronger, and more come later';
const WHILE: Readonly<Record<CoalPlan['method'], string>> = {
  bake: 'it bakes',
  roast: 'it roasts',
  simmer: 'it simmers',
  boil: 'it boils',
  fry: 'it fries',
  'keep-warm': 'it is kept warm',
  none: 'it stands',
};

const chartPhrase = ({ above, below, oven }: ChartCount, say: Say) =>
  `${above} above, ${below} below at ${say.oven(oven)}`;

function othersBlock(
  others: readonly ChartCount[],
  { isFirst }: { readonly isFirst: boolean },
  say: Say,
): readonly Block[] {
  if (others.length === 0) return [];
  const charts = isFirst ? 'Printed charts' : 'Other printed charts';
  const said = others.map((chart) => chartPhrase(chart, say)).join('; ');
  return [
    {
      type: 'paragraph',
      parts: [{ text: `${charts} for this size: ${said}. None names air, wind or height.` }],
    },
  ];
}

const signed = (number: number, write: (number: number) => string) => {
  if (number === 0) return '0';
  return `${number > 0 ? '+' : '−'}${write(Math.abs(number))}`;
};

/** Each line is what the sum so far, in half shovels, grows by: small ones show where they tell. */
function inHalves(
  { above, below, because }: CoalPlan['reckoning'],
  half: (pieces: number) => number,
): readonly { readonly reason: CountReason; readonly shovels: number }[] {
  let pieces = baseOf({ above, below, because });
  return because.map((reason) => {
    const before = half(pieces);
    pieces += reason.coals;
    return { reason, shovels: half(pieces) - before };
  });
}

/** Shovels stand for coals in proportion; halves are as fine as a shovel is. */
function whyWood(coals: CoalPlan): Block {
  const shovels = (coals.above.shovels ?? 0) + (coals.below.shovels ?? 0);
  const perCoal = shovels / Math.max(1, coals.above.pieces + coals.below.pieces);
  const half = (pieces: number) => Math.round(pieces * perCoal * 2) / 2;
  const because = inHalves(coals.reckoning, half);
  return {
    type: 'why',
    half: true,
    question: 'Why this much?',
    blocks: [
      {
        type: 'table',
        caption: '',
        head: ['', 'shovels'],
        rows: [
          [BASE[baseWork(coals)], fraction(half(baseOf(coals.reckoning)), 2)],
          ...because.map(({ reason, shovels }) => [
            causeWord(reason, coals),
            signed(shovels, (number) => fraction(number, 2)),
          ]),
          ['this plan', shovelsWord(shovels)],
        ],
        numeric: [false, true],
      },
      {
        type: 'paragraph',
        parts: [
          {
            text: 'Nothing printed speaks of wood coals, and no two shovels are alike: the band is wider, so the hand test decides.',
          },
        ],
      },
    ],
  };
}
