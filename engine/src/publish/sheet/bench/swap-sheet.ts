// A swap as a sheet: every amount old beside new, allergens shouted, what can't be kept.

import type { SwapAnswer } from '../../../formula/swap/swap.ts';
import { notice } from '../../../notice/notice.ts';
import type { Block, SheetDocument } from '../../document.ts';
import { noticeText } from '../../notice-text.ts';
import type { Say } from '../../say.ts';
import { allergenWord } from '../free-from.ts';
import { listed } from '../phrases.ts';
import { gramsText, shareText, weighedText } from './figures-part.ts';
import { sourceBlocks } from './versions-part.ts';

export function swapSheet(title: string, answer: SwapAnswer, say: Say): SheetDocument {
  return {
    kind: 'bench-swap',
    title,
    blocks: [
      ...allergenBlocks(answer),
      changesTable(answer),
      keptBlock(answer),
      ...lossBlocks(answer, say),
      ...sourceBlocks(answer.losses, [...new Set(answer.changes.map(({ source }) => source))]),
    ],
  };
}

function allergenBlocks({ allergensIn, allergensOut, labels }: SwapAnswer): readonly Block[] {
  const words = (list: readonly string[]) =>
    listed(list.map((each) => allergenWord(each as 'milk')));
  return [
    ...(allergensIn.length === 0
      ? []
      : [
          {
            type: 'notice',
            level: 'danger',
            text: `This brings ${words(allergensIn).toUpperCase()} into it. Ask who can’t eat that before you take it.`,
          } as const,
        ]),
    ...(labels.length === 0
      ? []
      : [
          {
            type: 'notice',
            level: 'doubt',
            text: `Read the label of what comes in for ${words(labels)}.`,
          } as const,
        ]),
    ...(allergensOut.length === 0
      ? []
      : [
          {
            type: 'notice',
            level: 'note',
            text: `There is no ${words(allergensOut)} left in it, by the larder; labels still count.`,
          } as const,
        ]),
  ];
}

const changesTable = ({ changes }: SwapAnswer): Block => ({
  type: 'table',
  caption: 'Old amount beside the new; every other line stays.',
  head: ['', 'was', 'now'],
  rows: changes.map(({ name, was, now, after }) => [
    name,
    was === 0 ? '–' : gramsText(was),
    now === 0 ? 'none' : weighedText(now, after?.asWritten ?? ''),
  ]),
  numeric: [false, true, true],
});

/** Water, fat and salt before and after: to be seen, not to be believed. */
function keptBlock({ before, after }: SwapAnswer): Block {
  const row = (label: string, name: 'hydration' | 'fat' | 'salt') => ({
    label,
    value: `${shareText(before.figures[name].share)}, then ${shareText(after.figures[name].share)}`,
  });
  return {
    type: 'facts',
    rows: [row('Water', 'hydration'), row('Fat', 'fat'), row('Salt', 'salt')],
  };
}

function lossBlocks({ losses }: SwapAnswer, say: Say): readonly Block[] {
  if (losses.length === 0) return [];
  const items = losses.map((each) =>
    noticeText(notice(each.code, each.level, each.about, each.values), say),
  );
  return [
    { type: 'heading', text: 'What changes with it' },
    { type: 'list', items, tick: false },
  ];
}
