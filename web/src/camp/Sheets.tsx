// The sheets of a meal: one at a time on screen, all of them on paper.

import { useId } from 'preact/hooks';
import { Link, useLocation, useParams } from 'wouter-preact';
import { DocumentView } from '../parts/DocumentView.tsx';
import type { MealSheets } from '../worker/messages.ts';

interface SheetsProps {
  readonly sheets: MealSheets;
  readonly root: string;
}

interface SheetEntry {
  readonly path: string;
  readonly label: string;
  readonly note?: string;
}

const mealEntries = ({ boards, carried }: MealSheets): readonly SheetEntry[] => [
  { path: '', label: 'The meal' },
  { path: 'day', label: 'Day sheet' },
  ...boards.map(({ path, sheet }) => ({ path, label: sheet.title })),
  { path: 'provisions', label: 'Provisions' },
  ...carried.map(({ path, sheet }) => ({ path, label: sheet.title })),
  { path: 'print', label: 'All, to print' },
];

const dishEntries = ({ dishCards }: MealSheets): readonly SheetEntry[] =>
  dishCards.map(({ dish, name, ovens, served }) => ({
    path: `dish/${dish}`,
    label: name,
    note: [served, ovens].filter((word) => word !== '').join(' · '),
  }));

const addressOf = (root: string, path: string) => (path === '' ? root : `${root}/${path}`);

export const useSheetPath = () => {
  const rest = (useParams() as Readonly<Record<string, string | undefined>>)['*'] ?? '';
  return decodeURIComponent(rest).replace(/\/$/, '');
};

/** A list beside the sheet where there is room, one box to choose from on a phone. */
export function SheetChooser(props: SheetsProps) {
  return (
    <nav className="no-print sheet-chooser" aria-label="Sheets">
      <SheetList {...props} />
      <SheetBox {...props} />
    </nav>
  );
}

function SheetList({ sheets, root }: SheetsProps) {
  return (
    <div className="sheet-list-wide">
      <SheetLinks entries={mealEntries(sheets)} root={root} />
      <h2>Dishes</h2>
      <SheetLinks entries={dishEntries(sheets)} root={root} />
    </div>
  );
}

interface SheetLinksProps {
  readonly entries: readonly SheetEntry[];
  readonly root: string;
}

function SheetLinks({ entries, root }: SheetLinksProps) {
  const current = useSheetPath();
  return (
    <ul className="sheet-links">
      {entries.map(({ path, label, note }) => (
        <li key={path}>
          <Link href={addressOf(root, path)} aria-current={path === current ? 'page' : undefined}>
            {label}
            {note === undefined ? null : <small className="sheet-link-note">{note}</small>}
          </Link>
        </li>
      ))}
    </ul>
  );
}

function SheetBox({ sheets, root }: SheetsProps) {
  const id = useId();
  const current = useSheetPath();
  const [, go] = useLocation();
  return (
    <div className="sheet-box field">
      <label className="unseen" htmlFor={id}>
        Sheet
      </label>
      <select
        id={id}
        className="sheet-pick"
        value={current}
        onChange={(event) => go(addressOf(root, event.currentTarget.value))}
      >
        <SheetOptions entries={mealEntries(sheets)} />
        <optgroup label="Dishes">
          <SheetOptions entries={dishEntries(sheets)} />
        </optgroup>
      </select>
    </div>
  );
}

const SheetOptions = ({ entries }: Pick<SheetLinksProps, 'entries'>) =>
  entries.map(({ path, label, note }) => (
    <option key={path} value={path}>
      {note === undefined || note === '' ? label : `${label} · ${note}`}
    </option>
  ));

export function Sheets({ sheets, root }: SheetsProps) {
  const current = useSheetPath();
  if (current === 'print') return <AllSheets sheets={sheets} />;
  if (current === 'day') return <DaySheetView sheets={sheets} root={root} />;
  if (current === 'provisions') return <DocumentView document={sheets.provisions} level={2} />;
  const board = [...sheets.boards, ...sheets.carried].find(({ path }) => current === path);
  if (board !== undefined) return <DocumentView document={board.sheet} level={2} />;
  const card = sheets.dishCards.find(({ dish }) => current === `dish/${dish}`);
  if (card !== undefined) return <DocumentView document={card.card} level={2} />;
  return <DocumentView document={sheets.summary} level={2} isHeadQuiet />;
}

function DaySheetView({ sheets, root }: SheetsProps) {
  return (
    <>
      <p className="no-print">
        <Link className="button" href={`/slip${root}`}>
          Something slipped
        </Link>
      </p>
      <DocumentView document={sheets.daySheet} level={2} />
    </>
  );
}

function AllSheets({ sheets }: Pick<SheetsProps, 'sheets'>) {
  return (
    <div className="sheet-stack">
      <div className="no-print">
        <button type="button" className="button is-main" onClick={() => window.print()}>
          Print all sheets
        </button>
      </div>
      <DocumentView document={sheets.summary} level={2} />
      <DocumentView document={sheets.daySheet} level={2} />
      {sheets.boards.map(({ path, sheet }) => (
        <DocumentView key={path} document={sheet} level={2} />
      ))}
      {sheets.dishCards.map(({ dish, card }) => (
        <DocumentView key={dish} document={card} level={2} />
      ))}
      <DocumentView document={sheets.provisions} level={2} />
      {sheets.carried
        .filter(({ sheet }) => !sheet.kind.startsWith('label-grid'))
        .map(({ path, sheet }) => (
          <DocumentView key={path} document={sheet} level={2} />
        ))}
    </div>
  );
}
