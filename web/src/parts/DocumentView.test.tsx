import { renderToStaticMarkup } from 'react-dom/server';
import { describe, expect, it } from 'vitest';
import type { Block, SheetDocument } from '#engine';
import { DocumentView } from './DocumentView.tsx';

const blocks: readonly Block[] = [
  { type: 'lead', parts: [{ text: 'lead <b>' }, { text: 'strong', strong: true }] },
  { type: 'figures', figures: [{ figure: '17', label: 'above', note: '13 on the rim' }] },
  { type: 'placement', lines: ['17 above: 13 on the rim'] },
  { type: 'drawing', svg: '<svg role="img"><title>lid</title></svg>', alt: 'lid', wide: false },
  { type: 'drawing', svg: '<svg role="img"><title>floor</title></svg>', alt: 'floor', wide: false },
  { type: 'heading', text: 'When' },
  { type: 'paragraph', parts: [{ text: 'paragraph' }] },
  { type: 'facts', rows: [{ label: 'Middle', value: '96 °C', note: 'or more' }] },
  {
    type: 'table',
    caption: 'Fires',
    head: ['at', 'coals'],
    rows: [['17:00', '30']],
    numeric: [false, true],
  },
  {
    type: 'steps',
    rows: [{ when: '11 min', what: 'Turn', who: 'the fire hand', note: 'a quarter' }],
  },
  { type: 'list', items: ['tongs', 'tongs'], tick: true },
  { type: 'notice', level: 'danger', text: 'never in a tent', code: 'SAFETY_TENT' },
  { type: 'strip', items: ['water at hand'] },
  {
    type: 'why',
    question: 'Why 17?',
    blocks: [{ type: 'paragraph', parts: [{ text: 'wind +3' }] }],
  },
  { type: 'card', title: 'Bag 1', flag: 'GLUTEN-FREE', blocks: [{ type: 'heading', text: 'Add' }] },
  { type: 'page-break' },
];
const sheet: SheetDocument = {
  kind: 'dish-card',
  title: 'Rolls',
  eyebrow: 'Supper',
  flag: 'MILK-FREE',
  blocks,
};
const html = renderToStaticMarkup(<DocumentView document={sheet} level={2} />);

describe('a document on screen', () => {
  it('shows every kind of block, with nothing dropped', () => {
    const words =
      'Rolls|Supper|MILK-FREE|strong|17|above|13 on the rim|lid|floor|When|paragraph|Middle|96 °C|or more|Fires|30|Turn|the fire hand|a quarter|never in a tent|Danger|water at hand|Why 17\\?|wind \\+3|Bag 1|GLUTEN-FREE|Add';
    for (const word of words.split('|')) expect(html).toMatch(new RegExp(word));
    expect(html.match(/tongs/g)).toHaveLength(2);
  });

  it('has its headings in order, one level at a time', () => {
    const levels = [...html.matchAll(/<h(\d)/g)].map(([, level]) => Number(level));
    expect(levels).toEqual([2, 3, 3, 4]);
  });

  it('escapes every word; only drawings are taken as they are', () => {
    expect(html).toContain('lead &lt;b&gt;');
    expect(html).toContain('<svg role="img">');
  });
});
