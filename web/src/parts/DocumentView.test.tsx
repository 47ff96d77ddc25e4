import { renderToStaticMarkup } from 'preact-render-to-string';
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

/** One block of each type with every field it can have; each text is its own. */
const full = {
  heading: { type: 'heading', text: 'heading text', half: true },
  lead: { type: 'lead', parts: [{ text: 'lead text' }, { text: 'lead strong', strong: true }] },
  paragraph: { type: 'paragraph', parts: [{ text: 'paragraph text', strong: true }] },
  figures: {
    type: 'figures',
    figures: [{ figure: 'big figure', label: 'figure label', note: 'figure note' }],
  },
  placement: { type: 'placement', lines: ['placement line', 'second line'] },
  drawing: {
    type: 'drawing',
    svg: '<svg>drawing words</svg>',
    alt: 'drawing alt',
    wide: true,
    phone: '<svg>phone words</svg>',
    lanes: true,
    narrow: true,
  },
  facts: { type: 'facts', rows: [{ label: 'fact label', value: 'fact value', note: 'fact note' }] },
  table: {
    type: 'table',
    caption: 'table caption',
    head: ['head one', 'head two'],
    rows: [['cell one', 'cell two']],
    numeric: [false, true],
  },
  steps: {
    type: 'steps',
    rows: [
      {
        when: 'step when',
        clock: 'step clock',
        what: 'step what',
        who: 'step who',
        note: 'step note',
        strong: true,
      },
    ],
  },
  list: { type: 'list', items: ['item one', 'item two'], tick: true },
  notice: {
    type: 'notice',
    level: 'stop',
    text: 'notice text',
    code: 'ONE_CODE',
    codes: ['OTHER_CODE'],
  },
  strip: { type: 'strip', items: ['strip one', 'strip two'] },
  why: {
    type: 'why',
    question: 'why question',
    blocks: [{ type: 'paragraph', parts: [{ text: 'why inside' }] }],
    half: true,
    isScreenOnly: true,
  },
  card: {
    type: 'card',
    title: 'card title',
    flag: 'card flag',
    blocks: [{ type: 'list', items: ['card inside'], tick: false }],
  },
  'page-break': { type: 'page-break' },
} as const satisfies { readonly [Type in Block['type']]: Required<Extract<Block, { type: Type }>> };

/** Told by class or by place, not by words of their own. */
const KINDS = /^(type|level|wide|half|tick|numeric|strong|lanes|narrow)$/;

function textsIn(value: unknown): readonly string[] {
  if (typeof value === 'string') return [value];
  if (typeof value !== 'object' || value === null) return [];
  return Object.entries(value).flatMap(([key, each]) => (KINDS.test(key) ? [] : textsIn(each)));
}

const drawn = (block: Block) =>
  renderToStaticMarkup(
    <DocumentView document={{ kind: 'any', title: 'Any', blocks: [block] }} level={1} />,
  );

describe('a block with every field', () => {
  it.each(Object.entries(full))('is drawn with each of its texts: %s', (_, block) => {
    const page = drawn(block);
    for (const text of textsIn(block)) expect(page).toContain(text);
  });

  it('stands under a head with every field, the camp on paper only', () => {
    const head = {
      kind: 'kind-of-sheet',
      title: 'sheet title',
      camp: 'camp title',
      eyebrow: 'sheet eyebrow',
      flag: 'sheet flag',
      blocks: [],
    } as const satisfies Required<SheetDocument>;
    const page = renderToStaticMarkup(<DocumentView document={head} level={1} />);
    for (const text of textsIn(head)) expect(page).toContain(text);
    expect(page).toContain('<span class="on-paper">camp title');
  });

  it('keeps the clock of a step beside its minutes', () => {
    expect(drawn(full.steps).replace(/<[^>]+>/g, '')).toContain('step when step clock');
  });

  it('marks what is strong, a number, to be ticked or to stand beside another', () => {
    expect(drawn(full.paragraph)).toContain('<strong>paragraph text</strong>');
    expect(drawn(full.steps)).toContain('is-strong');
    expect(drawn(full.table).match(/is-number/g)).toHaveLength(2);
    expect(drawn(full.list)).toContain('is-tick');
    expect(drawn(full.drawing)).toMatch(/has-lanes.*is-wide is-narrow/);
    expect(drawn(full.notice)).toContain('is-stop');
    for (const half of [full.heading, full.why]) expect(drawn(half)).toContain('sheet-half"');
  });

  it('gathers half-wide sections up to a block that keeps the whole width', () => {
    const page = renderToStaticMarkup(
      <DocumentView
        document={{
          kind: 'any',
          title: 'Any',
          blocks: [full.lead, full.heading, full.list, full.why, full.strip, full.facts],
        }}
        level={1}
      />,
    );
    expect(page.match(/class="sheet-half"/g)).toHaveLength(2);
    const order = ['lead text', 'heading text', 'item one', 'why inside', 'strip one', 'fact note'];
    const places = order.map((text) => page.indexOf(text));
    expect(places).toEqual(places.toSorted((one, other) => one - other));
    expect(places[0]).toBeGreaterThan(0);
    expect(page.indexOf('sheet-strip')).toBeGreaterThan(page.lastIndexOf('sheet-half"'));
  });
});

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
    expect(html).toContain('lead &lt;b');
    expect(html).not.toContain('<b>');
    expect(html).toContain('<svg role="img">');
  });
});
