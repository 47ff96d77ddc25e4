// A check that can be done: which way, in an empty or a full oven, where the lid goes, what it costs.

import type { DoneSign } from '../../bake/bake-plan.ts';
import type { Check, CheckWay, Move } from '../../coals/coal-plan.ts';
import type { Block, FactRow } from '../document.ts';
import type { Say } from '../say.ts';
import { movePhrase, sentenceCase } from './phrases.ts';

export interface CheckKit {
  /** What is browned in a tin: flour, unless the oven is kept free of it. */
  readonly flour: string;
  readonly hasThermometer: boolean;
}

export function wayPhrase(way: CheckWay, { flour, hasThermometer }: CheckKit, say: Say): string {
  switch (way.by) {
    case 'thermometer':
      return `${hasThermometer ? 'Thermometer' : 'With a thermometer, if you have one,'} inside, lid down a minute: ${say.oven(way.low)} to ${say.oven(way.high)}`;
    case 'hand-inside':
      return `Bare hand a span above the floor, out of the wind: you pull it away after ${say.count(way.leastSeconds)} to ${say.count(way.mostSeconds)} seconds`;
    case 'flour':
      return `A teaspoon of ${flour} in a tin on the floor, lid on, five minutes: it turns ${way.colour}`;
    case 'nose':
      return 'Nose over the lid: it smells of baking, nothing sharp, no scorch';
    case 'top-colour':
      return `Lift the lid three seconds: the top is ${way.colour}`;
    case 'bottom-corner':
      return `Lift an edge with a thin knife: the bottom is ${way.colour}`;
    case 'probe':
      return `Probe in the thickest middle: ${say.degrees(way.core)}`;
    case 'simmer':
      return `Look at the pot: ${SIMMER[way.looks]}`;
  }
}

const SIMMER = {
  still: 'no movement yet',
  shivering: 'the top shivers, a bubble now and then',
  bubbling: 'small bubbles all over, none bursting',
  rolling: 'a full rolling boil',
} as const;

/** Where a usual dough stands for the cook's own: its top is reckoned, its bottom is not. */
export const BOTTOM_LOOK =
  'The top is looked for as a usual dough would be. At the last look lift an edge with a thin knife ' +
  'too: the bottom no darker than the top. Its colour by the minute hangs on your dough.';

/**
 * All checks of one oven, soonest first; moves that are the same for checks that follow each other
 * are said once, after the last of them.
 */
export function checksBlocks(
  checks: readonly Check[],
  words: CheckWords,
  say: Say,
): readonly Block[] {
  const { wood } = words;
  const manner = mannerPhrase(checks);
  return [
    ...(manner === '' ? [] : [{ type: 'paragraph', parts: [{ text: manner }] } as const]),
    ...checks.flatMap((check, index): readonly Block[] => {
      const rows = moveRows(check, wood, say);
      const next = checks[index + 1];
      const isSaidLater =
        next !== undefined && JSON.stringify(moveRows(next, wood, say)) === JSON.stringify(rows);
      return [
        checkLine(check, words, say),
        { type: 'list', tick: false, items: check.ways.map((way) => wayPhrase(way, words, say)) },
        ...(rows.length === 0 || isSaidLater ? [] : [{ type: 'facts', rows } as const]),
      ];
    }),
  ];
}

export interface CheckWords extends CheckKit {
  readonly wood: boolean;
  /** What is in the oven: dough, batter, pot. */
  readonly noun: string;
  /** The day sheet's minute since coals on, and the clock beside it; empty where it has none. */
  readonly whenOf: (check: Check) => { readonly minute: number; readonly clock: string };
}

function checkLine(check: Check, { noun, whenOf }: CheckWords, say: Say): Block {
  const { minute, clock } = whenOf(check);
  const when = `At ${say.minutes(minute)}${clock === '' ? '' : ` (${clock})`}, `;
  const cost = costPhrase(check, say);
  return {
    type: 'paragraph',
    parts: [
      {
        text: `${when}${check.oven === 'empty' ? 'oven still empty' : `${noun} in`}.`,
        strong: true,
      },
      ...(cost === '' ? [] : [{ text: ` ${cost}` }]),
      ...(isRising(check)
        ? [{ text: ' Still rising: it will be hotter when the load goes in.' }]
        : []),
    ],
  };
}

/** A rise that a thermometer shows. */
const isRising = ({ rises }: Check) => rises !== undefined && rises >= 3;

function moveRows({ ifHot, ifCool }: Check, wood: boolean, say: Say): readonly FactRow[] {
  const row = (label: string, moves: readonly Move[]) =>
    moves.length === 0
      ? []
      : [
          {
            label,
            value: sentenceCase(moves.map((move) => movePhrase(move, wood, say)).join('; or ')),
          },
        ];
  return [...row('Too hot', ifHot), ...row('Too cool', ifCool)];
}

const isOnlyNose = ({ ways }: Check) => ways.every(({ by }) => by === 'nose');
const isDear = ({ costs }: Check) => Math.abs(costs.heat) >= 0.5;

/** How every look is made, once; what all of them cost, where that is next to nothing. */
function mannerPhrase(checks: readonly Check[]): string {
  const looks = checks.filter((check) => !isOnlyNose(check));
  if (looks.length === 0) return '';
  const free = looks.some(isDear) ? '' : ' A look costs next to nothing.';
  return `Each look: lid level on the lid stand, coals still on it, back at once.${free}`;
}

function costPhrase(check: Check, say: Say): string {
  if (isOnlyNose(check)) return 'The lid stays on; it costs nothing.';
  if (!isDear(check)) return '';
  const heat = say.difference(Math.abs(check.costs.heat));
  return `The look costs about ${heat} and ${say.minutes(Math.max(1, check.costs.minutes))}.`;
}

const SIGN: Readonly<Record<DoneSign, string>> = {
  core: 'the middle reads it',
  'hollow-tap': 'sounds hollow when the bottom is tapped',
  'springs-back': 'springs back when pressed',
  'clean-probe': 'a splinter of wood comes out clean',
  'fork-tender': 'a fork turns in the meat',
  'bottom-crust': 'the bottom crust is firm and coloured',
  'knife-slides': 'a knife slides in',
};

export const signPhrase = (sign: DoneSign) => SIGN[sign];
