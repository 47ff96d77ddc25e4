// A check that can be done: which way, in an empty or a full oven, where the lid goes, what it costs.

import type { DoneSign } from '../../bake/bake-plan.ts';
import type { Check, CheckWay, Move } from '../../coals/coal-plan.ts';
import type { Block } from '../document.ts';
import type { Say } from '../say.ts';
import { movePhrase, sentenceCase } from './phrases.ts';

export function wayPhrase(way: CheckWay, say: Say): string {
  switch (way.by) {
    case 'thermometer':
      return `Thermometer inside, lid down a minute: ${say.oven(way.low)} to ${say.oven(way.high)}`;
    case 'hand-inside':
      return `Bare hand a span above the floor, out of the wind: you pull it away after ${say.count(way.leastSeconds)} to ${say.count(way.mostSeconds)} seconds`;
    case 'flour':
      return `A teaspoon of flour in a tin on the floor, lid on, five minutes: it turns ${way.colour}`;
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

/** Ways and moves of one check as blocks. */
export function checkBlocks(check: Check, wood: boolean, noun: string, say: Say): readonly Block[] {
  const row = (label: string, moves: readonly Move[]) =>
    moves.length === 0
      ? []
      : [
          {
            label,
            value: sentenceCase(moves.map((move) => movePhrase(move, wood, say)).join('; or ')),
          },
        ];
  const moves = [...row('Too hot', check.ifHot), ...row('Too cool', check.ifCool)];
  return [
    {
      type: 'paragraph',
      parts: [
        { text: `At ${say.minutes(check.minute)}, `, strong: true },
        { text: check.oven === 'empty' ? 'oven still empty. ' : `${noun} in. `, strong: true },
        { text: costPhrase(check, say) },
      ],
    },
    { type: 'list', tick: false, items: check.ways.map((way) => wayPhrase(way, say)) },
    ...(moves.length === 0 ? [] : [{ type: 'facts', rows: moves } as const]),
  ];
}

function costPhrase({ costs, ways }: Check, say: Say): string {
  const isOnlyNose = ways.every(({ by }) => by === 'nose');
  if (isOnlyNose) return 'The lid stays on; it costs nothing.';
  const heat = Math.abs(costs.heat);
  const cost =
    heat < 0.5
      ? 'The look costs next to nothing.'
      : `The look costs about ${say.difference(heat)} and ${say.minutes(Math.max(1, costs.minutes))}.`;
  return `Lid level on the lid stand, coals still on it, back at once. ${cost}`;
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
