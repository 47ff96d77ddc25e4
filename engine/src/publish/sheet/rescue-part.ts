// What goes wrong and what to do: at most three moves in order, with their simulated effect and wait
// where the plan has them. Which move helps which trouble is common practice, no source.

import type { CoalPlan, Move } from '../../coals/coal-plan.ts';
import type { DishPlan } from '../../meal.ts';
import type { Block } from '../document.ts';
import type { Say } from '../say.ts';
import { isBread, loadNoun } from './moments.ts';
import { isWood, movePhrase, moveWords, sentenceCase } from './phrases.ts';

interface Trouble {
  readonly looks: string;
  /** Moves of the plan, or words for what the plan has no figures for. */
  readonly moves: readonly (Move['do'] | { readonly say: string })[];
}

const BAKED: readonly Trouble[] = [
  {
    looks: 'Bottom dark',
    moves: ['take-below', 'below-to-above', { say: 'a riser under the oven' }],
  },
  { looks: 'Top dark', moves: ['take-above', { say: 'spread what is left to the rim' }] },
  { looks: 'Top pale', moves: ['knock-ash', 'below-to-above', 'add-above'] },
  { looks: 'One side dark', moves: [{ say: 'turn now' }, 'screen-wind'] },
  { looks: 'Coals dying', moves: ['knock-ash', 'add-above', 'add-below'] },
  {
    looks: 'Middle raw, crust done',
    moves: ['take-above', 'take-below', { say: 'lid on, try again in 10 minutes' }],
  },
];

const SIMMERED: readonly Trouble[] = [
  {
    looks: 'Boils too hard',
    moves: ['take-below', 'take-above', { say: 'a riser under the oven' }],
  },
  { looks: 'Does not simmer', moves: ['knock-ash', 'add-below', 'screen-wind'] },
  {
    looks: 'Catches on the floor',
    moves: [
      { say: 'off the coals, do not scrape' },
      'take-below',
      { say: 'stir in a little hot water' },
    ],
  },
  { looks: 'Coals dying', moves: ['knock-ash', 'add-below', 'add-above'] },
];

export function rescueBlocks(dish: DishPlan, coals: CoalPlan, say: Say): readonly Block[] {
  const isBaked = isBread(dish) || loadNoun(dish) !== 'pot';
  const known = knownMoves(coals);
  // The checks above told these with their effect; each other move tells it once.
  const said = new Set(
    coals.checks.flatMap(({ ifHot, ifCool }) => [...ifHot, ...ifCool]).map(({ do: move }) => move),
  );
  const rows = (isBaked ? BAKED : SIMMERED).map(({ looks, moves }) => ({
    label: looks,
    value: sentenceCase(
      moves
        .flatMap((move) =>
          typeof move === 'string' ? told(move, { known, said, coals }, say) : [move.say],
        )
        .join('; then '),
    ),
  }));
  return [
    { type: 'heading', text: 'If it goes wrong', half: true },
    { type: 'facts', rows: rows.filter(({ value }) => value !== '') },
  ];
}

/** The figures of the latest check count: they are those of an oven that is full. */
function knownMoves(coals: CoalPlan): ReadonlyMap<Move['do'], Move> {
  const all = [
    ...coals.moves,
    ...coals.checks.flatMap(({ ifHot, ifCool }) => [...ifHot, ...ifCool]),
  ];
  return new Map(all.map((move) => [move.do, move]));
}

interface Telling {
  readonly known: ReadonlyMap<Move['do'], Move>;
  /** Moves whose effect stands on the card already. */
  readonly said: Set<Move['do']>;
  readonly coals: CoalPlan;
}

function told(wanted: Move['do'], { known, said, coals }: Telling, say: Say): readonly string[] {
  const move = known.get(wanted);
  // Ash can always be knocked off; a move that the plan can't make here is left out.
  if (move === undefined) return wanted === 'knock-ash' ? ['knock the ash off the coals'] : [];
  if (said.has(wanted)) return [moveWords(move, isWood(coals))];
  said.add(wanted);
  return [movePhrase(move, isWood(coals), say)];
}
