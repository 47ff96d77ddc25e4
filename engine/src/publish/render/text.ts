// A sheet for the terminal: the same tree, tables aligned, nothing but plain characters.

import type { Block, Part, SheetDocument } from '../document.ts';
import { fold } from './fold.ts';
import { textTable } from './text-table.ts';

export interface TextOptions {
  /** Columns of the terminal; lines are broken, never cut. */
  readonly width: number;
}

export function renderText(document: SheetDocument, { width }: TextOptions): string {
  const room = Math.max(40, width);
  const title = [document.title, document.flag].filter((text) => text !== undefined).join('  ·  ');
  const head = [
    [document.camp, document.eyebrow].filter((text) => text !== undefined).join(' · '),
    title,
    '='.repeat(Math.min(room, title.length)),
  ].filter((text) => text !== '');
  const body = document.blocks.map((block) => textBlock(block, room));
  return `${[head.join('\n'), ...body].filter((text) => text !== '').join('\n\n')}\n`.replaceAll(
    '\u00a0',
    ' ',
  );
}

const joined = (parts: readonly Part[]) => parts.map(({ text }) => text).join('');

const LEVEL_WORD = { danger: 'DANGER', stop: 'STOP', doubt: 'Doubt', note: 'Note' } as const;

function textBlock(block: Block, width: number): string {
  switch (block.type) {
    case 'heading':
      return `${block.text}\n${'-'.repeat(Math.min(width, block.text.length))}`;
    case 'lead':
    case 'paragraph':
      return fold(joined(block.parts), width);
    case 'placement':
      return block.lines.map((line) => fold(`>> ${line}`, width, '   ')).join('\n');
    case 'figures':
      return block.figures
        .map(({ figure, label, note }) =>
          fold(`${figure} ${label}${note === undefined ? '' : ` (${note})`}`, width, '  '),
        )
        .join('\n');
    case 'drawing':
      return block.narrow ? '' : fold(`[Drawing: ${block.alt}]`, width, ' ');
    case 'facts':
      return textTable(
        block.rows.map(({ label, value, note }) => [label, note ? `${value} (${note})` : value]),
        { width },
      );
    case 'table':
      return [
        fold(block.caption, width),
        textTable([block.head, ...block.rows], { width, numeric: block.numeric, headed: true }),
      ]
        .filter((text) => text !== '')
        .join('\n');
    case 'steps':
      return textTable(
        block.rows.map(({ when, clock, what, who, note, strong }) => [
          strong ? '*' : ' ',
          when,
          ...(block.rows.some((row) => row.clock !== undefined) ? [clock ?? ''] : []),
          [what, who === undefined ? '' : `[${who}]`, note === undefined ? '' : `(${note})`]
            .filter(Boolean)
            .join(' '),
        ]),
        { width },
      );
    case 'list':
      return block.items
        .map((item) =>
          fold(`${block.tick ? '[ ]' : '-'} ${item}`, width, block.tick ? '    ' : '  '),
        )
        .join('\n');
    case 'notice':
      return fold(`${LEVEL_WORD[block.level]}: ${block.text}`, width, '  ');
    case 'strip':
      return block.items.map((item) => fold(`! ${item}`, width, '  ')).join('\n');
    case 'why':
      return [block.question, ...block.blocks.map((inner) => textBlock(inner, width))].join('\n');
    case 'card':
      return [
        `+ ${[block.title, block.flag].filter(Boolean).join('  ·  ')}`,
        ...block.blocks.map((inner) => indent(textBlock(inner, width - 2))),
      ].join('\n');
    case 'page-break':
      return '';
  }
}

const indent = (text: string) =>
  text
    .split('\n')
    .map((line) => `  ${line}`)
    .join('\n');
