// A sheet as one HTML page that needs nothing else: styles inside, drawings inside, prints on A4
// and Letter, reads in black and white.

import type { Block, Part, SheetDocument } from '../document.ts';
import { escapeText } from '../drawing/svg.ts';
import { gathered } from './gather.ts';
import { SHEET_STYLE } from './style.ts';

export interface HtmlOptions {
  /** `en` unless another translation is printed. */
  readonly language?: string;
  /** `@font-face` rules where the caller ships the fonts; system type stands in without. */
  readonly fontFaces?: string;
}

export const renderHtml = (document: SheetDocument, options: HtmlOptions = {}) =>
  page(document.title, [sheetHtml(document)], options);

/** Several sheets in one page, each beginning on a new sheet of paper. */
export const printBook = (
  title: string,
  documents: readonly SheetDocument[],
  options: HtmlOptions = {},
) => page(title, documents.map(sheetHtml), options);

function page(title: string, sheets: readonly string[], options: HtmlOptions): string {
  return [
    '<!doctype html>',
    `<html lang="${escapeText(options.language ?? 'en')}">`,
    '<head>',
    '<meta charset="utf-8">',
    '<meta name="viewport" content="width=device-width, initial-scale=1">',
    `<title>${escapeText(title)}</title>`,
    `<style>\n${options.fontFaces ?? ''}${SHEET_STYLE}</style>`,
    '</head>',
    '<body>',
    ...sheets,
    '</body>',
    '</html>',
    '',
  ].join('\n');
}

/** One sheet without the page around it. */
export function sheetHtml(document: SheetDocument): string {
  const head = [
    eyebrowHtml(document),
    tag(
      'h1',
      document.title.length > LONG_TITLE ? 'long' : '',
      `${escapeText(document.title)}${document.flag === undefined ? '' : ` ${tag('span', 'flag', escapeText(document.flag))}`}`,
    ),
  ];
  return tag(
    'article',
    `sheet ${escapeText(document.kind)}`,
    `\n<header>${head.join('')}</header>\n${blocksHtml(document.blocks)}\n`,
  );
}

/** `Camp · oven`; the camp's name has a class of its own, for a page that says it already. */
function eyebrowHtml({ camp, eyebrow }: SheetDocument): string {
  if (camp === undefined && eyebrow === undefined) return '';
  const between = camp === undefined || eyebrow === undefined ? '' : ' · ';
  const name = camp === undefined ? '' : tag('span', 'camp', escapeText(camp) + between);
  return tag('p', 'eyebrow', `${name}${escapeText(eyebrow ?? '')}`);
}

/** Letters; a longer title is set smaller on paper so that it stands on one line. */
const LONG_TITLE = 28;

const tag = (name: string, kind: string, inside: string) =>
  `<${name}${kind === '' ? '' : ` class="${kind}"`}>${inside}</${name}>`;

/** Sections that may stand in two columns are gathered; everything else keeps the whole width. */
const blocksHtml = (blocks: readonly Block[]) =>
  gathered(blocks)
    .map(({ kind, parts: sections }) => {
      if (kind === 'whole') return sections.map(rowsHtml).join('\n');
      if (kind === 'laid') return tag('div', 'laid', sections.map(rowsHtml).join('\n'));
      return tag(
        'div',
        'halves',
        sections.map((each) => tag('section', 'half', rowsHtml(each))).join('\n'),
      );
    })
    .join('\n');

/** Narrow drawings that follow each other share a row. */
function rowsHtml(blocks: readonly Block[]): string {
  const written: string[] = [];
  let row: string[] = [];
  const closeRow = () => {
    if (row.length > 0) written.push(tag('div', 'drawings', row.join('')));
    row = [];
  };
  for (const block of blocks) {
    if (block.type === 'drawing' && !block.wide) row.push(tag('figure', '', block.svg));
    else {
      closeRow();
      written.push(blockHtml(block));
    }
  }
  closeRow();
  return written.join('\n');
}

const parts = (list: readonly Part[]) =>
  list
    .map(({ text, strong }) => (strong ? tag('strong', '', escapeText(text)) : escapeText(text)))
    .join('');

const LEVEL_WORD = { danger: 'Danger', stop: 'Stop', doubt: 'Doubt', note: 'Note' } as const;

function blockHtml(block: Block): string {
  switch (block.type) {
    case 'heading':
      return tag('h2', '', escapeText(block.text));
    case 'lead':
      return tag('p', 'lead', parts(block.parts));
    case 'paragraph':
      return tag('p', '', parts(block.parts));
    case 'placement':
      return tag('div', 'placement', block.lines.map((l) => tag('p', '', escapeText(l))).join(''));
    case 'figures':
      return tag('div', 'figures', block.figures.map(figureHtml).join(''));
    case 'drawing':
      return tag('figure', laneKind(block), block.svg);
    case 'facts':
      return tag('dl', 'facts', block.rows.map(factHtml).join(''));
    case 'table':
      return tableHtml(block);
    case 'steps':
      return stepsHtml(block);
    case 'list':
      return tag(
        'ul',
        block.tick ? 'ticks' : '',
        block.items.map((item) => tag('li', '', escapeText(item))).join(''),
      );
    case 'notice':
      return `<p class="notice ${block.level}"${block.code === undefined ? '' : ` data-code="${escapeText(block.code)}"`}><b>${LEVEL_WORD[block.level]}</b> ${escapeText(block.text)}</p>`;
    case 'strip':
      return tag(
        'ul',
        'strip',
        block.items.map((item) => tag('li', '', escapeText(item))).join(''),
      );
    case 'why':
      return `<details open${block.isScreenOnly === true ? ' class="on-screen"' : ''}><summary>${escapeText(block.question)}</summary>${blocksHtml(block.blocks)}</details>`;
    case 'card':
      return tag(
        'section',
        'card',
        `${tag('h2', '', `${escapeText(block.title)}${block.flag === undefined ? '' : ` ${tag('span', 'flag', escapeText(block.flag))}`}`)}${blocksHtml(block.blocks)}`,
      );
    case 'page-break':
      return '<div class="page-break"></div>';
  }
}

const laneKind = ({ lanes, narrow }: BlockOf<'drawing'>) =>
  lanes ? `wide lanes${narrow ? ' narrow' : ''}` : 'wide';

type BlockOf<Type extends Block['type']> = Extract<Block, { type: Type }>;

const figureHtml = ({ figure, label, note }: BlockOf<'figures'>['figures'][number]) =>
  tag(
    'p',
    '',
    `${tag('b', '', escapeText(figure))} ${tag('span', '', escapeText(label))}${note === undefined ? '' : tag('small', '', escapeText(note))}`,
  );

const factHtml = ({ label, value, note }: BlockOf<'facts'>['rows'][number]) =>
  `${tag('dt', '', escapeText(label))}${tag('dd', '', `${escapeText(value)}${note === undefined ? '' : ` ${tag('small', '', escapeText(note))}`}`)}`;

function tableHtml({ caption, head, rows, numeric }: BlockOf<'table'>): string {
  const kind = (column: number) => (numeric[column] ? ' class="number"' : '');
  const heads = head.map((text, i) => `<th scope="col"${kind(i)}>${escapeText(text)}</th>`);
  const body = rows.map(
    (row) => `<tr>${row.map((text, i) => `<td${kind(i)}>${escapeText(text)}</td>`).join('')}</tr>`,
  );
  return `<table>${caption === '' ? '' : `<caption>${escapeText(caption)}</caption>`}<thead><tr>${heads.join('')}</tr></thead><tbody>${body.join('')}</tbody></table>`;
}

function stepsHtml({ rows }: BlockOf<'steps'>): string {
  const isClocked = rows.some(({ clock }) => clock !== undefined);
  const isShared = rows.some(({ who }) => who !== undefined);
  const body = rows.map(
    ({ when, clock, what, who, note, strong }) =>
      `<tr${strong ? ' class="strong"' : ''}><th scope="row">${escapeText(when)}</th>` +
      `${isClocked ? `<td class="clock">${escapeText(clock ?? '')}</td>` : ''}` +
      `${isShared ? `<td class="who">${escapeText(who ?? '')}</td>` : ''}` +
      `<td>${escapeText(what)}` +
      `${note === undefined ? '' : ` <small>${escapeText(note)}</small>`}</td></tr>`,
  );
  return `<table class="steps"><tbody>${body.join('')}</tbody></table>`;
}
