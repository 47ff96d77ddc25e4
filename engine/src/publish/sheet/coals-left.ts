// I have so many coals left: what can I do? Each way to lay them, how hot, how long, enough for what.

import type { Possibilities, Possibility } from '../../coals/with-these-coals.ts';
import type { Block, SheetDocument } from '../document.ts';
import type { Say } from '../say.ts';
import { coalsWord, type Door, doorSheet, laidPhrase, paragraph } from './door.ts';
import { listed, sentenceCase } from './phrases.ts';

export interface CoalsLeftAsked {
  readonly door: Door;
  readonly pieces: number;
  readonly possibilities: Possibilities;
  /** The oven is hot already, as was said. */
  readonly isHot?: boolean;
}

export function coalsLeftSheet(asked: CoalsLeftAsked, say: Say): SheetDocument {
  const { door, pieces, possibilities } = asked;
  const much = pieces === 0 ? 'no' : coalsWord(pieces, door.fuel);
  const isCounted = pieces === 0 || door.fuel !== 'wood-coals';
  const title = `With ${much}${isCounted ? ' coals' : ''} left`;
  const [oven, wait] = asked.isHot ? ['the oven as hot as it is', 5] : ['a cold oven', 15];
  const from = `From now; each way starts with ${oven}, baked food goes in after ${say.minutes(wait)}.`;
  const blocks = [
    ...(possibilities.ways.length > 0 ? [paragraph(from)] : []),
    ...possibilities.ways.flatMap((way) => wayBlocks(way, door, say)),
  ];
  const { notices } = possibilities;
  return doorSheet(door, { kind: 'coals-left', title, blocks, notices }, say);
}

function wayBlocks(way: Possibility, { fuel }: Door, say: Say): readonly Block[] {
  return [
    {
      type: 'heading',
      text: (way.heat ? HEAT_OF[way.heat] : WAY[way.method]) ?? sentenceCase(way.method),
    },
    {
      type: 'facts',
      rows: [
        { label: 'Lay', value: laidPhrase(way, fuel) },
        { label: 'Hottest', value: say.oven(way.hottest) },
        { label: 'Within a step of', value: heldPhrase(way, say) },
        { label: 'Enough for', value: kindsPhrase(way) },
        ...(way.leftOver === 0 ? [] : [{ label: 'Left over', value: overPhrase(way, fuel) }]),
      ],
    },
  ];
}

const HEAT_OF = { hot: 'To bake hot', medium: 'To bake' } as const;

const WAY: Readonly<Partial<Record<Possibility['method'], string>>> = {
  bake: 'To bake',
  roast: 'To roast',
  simmer: 'To simmer a pot',
  'keep-warm': 'To keep food warm',
};

const overPhrase = ({ leftOver, why }: Possibility, fuel: Door['fuel']) =>
  `${coalsWord(leftOver, fuel)}: ${WHY_NOT[why ?? 'burns']}`;

const WHY_NOT = {
  burns: 'with more it gets too hot; keep them to add as these fade',
  'no-room': 'more do not lie flat, heaped ones roll off; keep them to add as these fade',
} as const;

const heldPhrase = ({ heats }: Possibility, say: Say) => {
  if (heats.length === 0) return 'no heat that a dish asks for';
  return heats.map((held) => `${say.oven(held.oven)} for ${say.minutes(held.minutes)}`).join('; ');
};

const kindsPhrase = ({ kinds, method, heats }: Possibility) => {
  if (kinds.length > 0) return listed(kinds.map((kind) => kind.replaceAll('-', ' ')));
  return method === 'keep-warm' && heats.length > 0 ? 'a dish that is done' : 'no dish';
};
