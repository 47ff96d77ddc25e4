// Draws a document of publish/ on screen: the same tree that paper and terminal draw.

import type { ComponentChildren } from 'preact';
import {
  type Block,
  type FactRow,
  type Gathered,
  gathered,
  type Part,
  type SheetDocument,
  type StepRow,
} from '#engine';
import { type Drawing, drawingRows } from './drawing-rows.ts';

interface DocumentViewProps {
  readonly document: SheetDocument;
  /** Level of the document's own title; its headings come one below. */
  readonly level: 1 | 2 | 3;
  /** The page's own title says it already: shown on paper and to a screen reader only. */
  readonly isHeadQuiet?: boolean;
}

const headings = { 1: 'h1', 2: 'h2', 3: 'h3', 4: 'h4', 5: 'h5' } as const;
type Level = keyof typeof headings;

function Heading({ level, children, ...rest }: HeadingProps) {
  const Name = headings[level];
  return <Name {...rest}>{children}</Name>;
}

interface HeadingProps {
  readonly level: Level;
  readonly className?: string;
  readonly children: ComponentChildren;
}

export function DocumentView({ document, level, isHeadQuiet = false }: DocumentViewProps) {
  return (
    <article className={`sheet sheet-${document.kind}`}>
      <header className={`sheet-head ${isHeadQuiet ? 'is-quiet-on-screen' : ''}`}>
        <Eyebrow camp={document.camp} eyebrow={document.eyebrow} />
        <Heading level={level} className="sheet-title">
          {document.title}
        </Heading>
        {document.flag === undefined ? null : <p className="sheet-flag">{document.flag}</p>}
      </header>
      <Blocks blocks={document.blocks} level={(level + 1) as Level} />
      <div className="sheet-end" />
    </article>
  );
}

type EyebrowProps = {
  readonly [Key in 'camp' | 'eyebrow']: SheetDocument[Key] | undefined;
};

/** Paper leaves its camp and says which it is; on screen the page around it does. */
function Eyebrow({ camp, eyebrow }: EyebrowProps) {
  if (eyebrow === undefined && camp === undefined) return null;
  return (
    <p className={`sheet-eyebrow ${eyebrow === undefined ? 'on-paper' : ''}`}>
      {camp === undefined ? null : (
        <span className="on-paper">
          {camp}
          {eyebrow === undefined ? '' : ' · '}
        </span>
      )}
      {eyebrow}
    </p>
  );
}

function Blocks({ blocks, level }: BlocksProps) {
  return gathered(blocks).map((run, index) => (
    // biome-ignore lint/suspicious/noArrayIndexKey: a document is drawn anew as a whole
    <Run key={index} {...run} level={level} />
  ));
}

interface BlocksProps {
  readonly blocks: readonly Block[];
  readonly level: Level;
}

/** Sections and counts that stand beside each other do so on paper only. */
function Run({ kind, parts, level }: Gathered & Pick<BlocksProps, 'level'>) {
  const rows = parts.map((part, index) => (
    // biome-ignore lint/suspicious/noArrayIndexKey: a document is drawn anew as a whole
    <RunPart key={index} isHalf={kind === 'halves'} blocks={part} level={level} />
  ));
  return kind === 'whole' ? rows : <div className={`sheet-${kind}`}>{rows}</div>;
}

function RunPart({ isHalf, ...rows }: BlocksProps & { readonly isHalf: boolean }) {
  return isHalf ? (
    <div className="sheet-half">
      <Rows {...rows} />
    </div>
  ) : (
    <Rows {...rows} />
  );
}

function Rows({ blocks, level }: BlocksProps) {
  return drawingRows(blocks).map((row, index) =>
    row.kind === 'drawings' ? (
      // biome-ignore lint/suspicious/noArrayIndexKey: a document is drawn anew as a whole
      <Drawings key={index} drawings={row.drawings} />
    ) : (
      // biome-ignore lint/suspicious/noArrayIndexKey: a document is drawn anew as a whole
      <BlockView key={index} block={row.block} level={level} />
    ),
  );
}

function Drawings({ drawings }: { readonly drawings: readonly Drawing[] }) {
  return (
    <div className={`sheet-drawings ${drawings.every(isLanes) ? 'has-lanes' : ''}`}>
      {drawings.map((drawing, index) => (
        <figure
          // biome-ignore lint/suspicious/noArrayIndexKey: a document is drawn anew as a whole
          key={index}
          className={`sheet-drawing ${drawing.wide ? 'is-wide' : ''} ${lanesClass(drawing)}`}
        >
          {isLanes(drawing) && drawing.narrow !== true ? (
            <ScrollBox label="The day as a drawing; it can be moved sideways">
              <OurSvg drawing={drawing} />
            </ScrollBox>
          ) : (
            <OurSvg drawing={drawing} />
          )}
        </figure>
      ))}
    </div>
  );
}

/** The day's lanes are wider than a small screen; on a phone those drawn for it stand in their place. */
const isLanes = ({ lanes }: Drawing) => lanes === true;
const lanesClass = ({ lanes, narrow }: Drawing) =>
  lanes === true ? (narrow === true ? 'is-narrow' : 'is-lanes') : '';

/** Only for drawings made by publish/, which escapes every word in them. Spoken as its `alt`. */
function OurSvg({ drawing: { svg, phone, alt } }: { readonly drawing: Drawing }) {
  const drawn = (text: string, className?: string) => (
    <div
      role="img"
      aria-label={alt}
      className={className}
      // biome-ignore lint/security/noDangerouslySetInnerHtml: an SVG string of our own engine
      dangerouslySetInnerHTML={{ __html: text }}
    />
  );
  if (phone === undefined) return drawn(svg);
  return (
    <>
      {drawn(svg, 'not-on-phone')}
      {drawn(phone, 'on-phone')}
    </>
  );
}

function ScrollBox({
  label,
  children,
}: {
  readonly label: string;
  readonly children: ComponentChildren;
}) {
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: a box that scrolls must be reachable by key
    <section className="sheet-scroll" tabIndex={0} aria-label={label}>
      {children}
    </section>
  );
}

function BlockView({ block, level }: { readonly block: Block; readonly level: Level }) {
  switch (block.type) {
    case 'heading':
      return <Heading level={level}>{block.text}</Heading>;
    case 'lead':
      return <p className="sheet-lead">{partsOf(block.parts)}</p>;
    case 'paragraph':
      return <p className="sheet-text">{partsOf(block.parts)}</p>;
    case 'figures':
      return <Figures figures={block.figures} />;
    case 'placement':
      return <Placement lines={block.lines} />;
    case 'card':
      return <Card card={block} level={level} />;
    case 'drawing':
      return <Drawings drawings={[block]} />;
    case 'facts':
      return <Facts rows={block.rows} />;
    case 'table':
      return <Table table={block} />;
    case 'steps':
      return <Steps rows={block.rows} />;
    case 'list':
      return (
        <ul className={`sheet-list ${block.tick ? 'is-tick' : ''}`}>{linesOf(block.items)}</ul>
      );
    case 'notice':
      return <NoticeLine level={block.level} text={block.text} code={codesOf(block)} />;
    case 'strip':
      return (
        <ul className="sheet-strip" aria-label="Safety">
          {linesOf(block.items)}
        </ul>
      );
    case 'why':
      return (
        <details className={`sheet-why ${block.isScreenOnly === true ? 'no-print' : ''}`}>
          <summary>
            <span>{block.question}</span>
          </summary>
          <div>
            <Blocks blocks={block.blocks} level={level} />
          </div>
        </details>
      );
    case 'page-break':
      return <div className="page-break" />;
  }
}

const partsOf = (parts: readonly Part[]) =>
  parts.map((part, index) =>
    part.strong ? (
      // biome-ignore lint/suspicious/noArrayIndexKey: a sentence is drawn anew as a whole
      <strong key={index}>{part.text}</strong>
    ) : (
      part.text
    ),
  );

function Figures({ figures }: Pick<Extract<Block, { type: 'figures' }>, 'figures'>) {
  return (
    <dl className="sheet-figures">
      {figures.map((figure, index) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: two ovens may have the same figure
        <div className="sheet-figure" key={index}>
          <dt>{figure.label}</dt>
          <dd>
            <strong>{figure.figure}</strong>
          </dd>
          {figure.note === undefined ? null : <dd className="figure-note">{figure.note}</dd>}
        </div>
      ))}
    </dl>
  );
}

const linesOf = (lines: readonly string[]) =>
  lines.map((line, index) => (
    // biome-ignore lint/suspicious/noArrayIndexKey: two lines may say the same
    <li key={index}>{line}</li>
  ));

/** How the coals lie, as large as the dish's name. */
function Placement({ lines }: { readonly lines: readonly string[] }) {
  return <ul className="sheet-placement">{linesOf(lines)}</ul>;
}

interface CardProps {
  readonly card: Extract<Block, { type: 'card' }>;
  readonly level: Level;
}

function Card({ card, level }: CardProps) {
  return (
    <section className="sheet-card">
      <Heading level={level}>{card.title}</Heading>
      {card.flag === undefined ? null : <p className="sheet-flag">{card.flag}</p>}
      <Blocks blocks={card.blocks} level={Math.min(5, level + 1) as Level} />
    </section>
  );
}

function Facts({ rows }: { readonly rows: readonly FactRow[] }) {
  return (
    <dl className="sheet-facts">
      {rows.map((row, index) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: two facts may say the same
        <div key={index}>
          <dt>{row.label}</dt>
          <dd className="fact-value">{row.value}</dd>
          {row.note === undefined ? null : <dd className="fact-note">{row.note}</dd>}
        </div>
      ))}
    </dl>
  );
}

type TableBlock = Extract<Block, { type: 'table' }>;

const MOST_COLUMNS = 5;
/** Letters side by side on a phone of 360 px, and what the space beside a column takes of them. */
const ROW_LETTERS = 42;
const SPACE_LETTERS = 1.5;

/** More than a phone shows side by side: there each row is a small list under its own heads. */
function isMany({ head, rows }: TableBlock): boolean {
  if (MOST_COLUMNS < head.length) return true;
  const letters = head.map((word, column) =>
    Math.max(...[word, ...rows.map((row) => row[column] ?? '')].map(leastLetters)),
  );
  const needed = letters.reduce((sum, each) => sum + each + SPACE_LETTERS, 0);
  return 2 < head.length && ROW_LETTERS < needed;
}

/** Wrapped once, and no word broken. */
const leastLetters = (cell: string) =>
  Math.max(cell.length / 2, ...cell.split(' ').map((word) => word.length));

function Table({ table }: { readonly table: TableBlock }) {
  const isNumber = (column: number) => (table.numeric[column] ? 'is-number' : undefined);
  return (
    <div>
      <ScrollBox label={table.caption === '' ? 'Table' : table.caption}>
        <table className={`sheet-table ${isMany(table) ? 'is-many' : ''}`}>
          {table.caption === '' ? null : <caption>{table.caption}</caption>}
          <thead>
            <tr>
              {table.head.map((head, column) => (
                // biome-ignore lint/suspicious/noArrayIndexKey: heads stand in their columns
                <th key={column} scope="col" className={isNumber(column)}>
                  {head}
                </th>
              ))}
            </tr>
          </thead>
          <tbody>
            {table.rows.map((row, index) => (
              // biome-ignore lint/suspicious/noArrayIndexKey: two rows may say the same
              <tr key={index}>
                {row.map((cell, column) => (
                  // biome-ignore lint/suspicious/noArrayIndexKey: cells stand in their columns
                  <td key={column} className={isNumber(column)} data-head={table.head[column]}>
                    {cell}
                  </td>
                ))}
              </tr>
            ))}
          </tbody>
        </table>
      </ScrollBox>
    </div>
  );
}

function Steps({ rows }: { readonly rows: readonly StepRow[] }) {
  return (
    <ol className="sheet-steps">
      {rows.map((row, index) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: two steps may say the same
        <li key={index} className={row.strong ? 'is-strong' : undefined}>
          <span className="step-when">
            {row.when}
            {row.clock === undefined ? null : (
              <>
                {' '}
                <span className="step-clock">{row.clock}</span>
              </>
            )}
          </span>
          <span>
            <span className="step-what">{row.what}</span>
            {row.who === undefined ? null : <span className="step-who"> · {row.who}</span>}
          </span>
          {row.note === undefined ? null : <span className="step-note">{row.note}</span>}
        </li>
      ))}
    </ol>
  );
}

const levelWords = { danger: 'Danger', stop: 'Stop', doubt: 'Doubt', note: 'Note' } as const;

/** As one mark for whoever looks for a code: several where one box tells several things. */
const codesOf = ({ code, codes = [] }: NoticeBlock) =>
  [code, ...codes].filter((each) => each !== undefined).join(' ') || undefined;

type NoticeBlock = Extract<Block, { type: 'notice' }>;

export function NoticeLine({
  level,
  text,
  code,
}: Pick<NoticeBlock, 'level' | 'text'> & { readonly code?: string | undefined }) {
  return (
    <p className={`sheet-notice is-${level}`} data-code={code}>
      <span className="notice-level">{levelWords[level]}</span>
      <span>{text}</span>
    </p>
  );
}
