// The sheets of a meal: one at a time on screen, all of them on paper.

import { Link, useParams } from 'wouter';
import { DocumentView } from '../parts/DocumentView.tsx';
import type { MealSheets } from '../worker/messages.ts';

interface SheetsProps {
  readonly sheets: MealSheets;
  readonly root: string;
}

interface Tab {
  readonly path: string;
  readonly label: string;
}

const tabsOf = (sheets: MealSheets): readonly Tab[] => [
  { path: '', label: 'The meal' },
  { path: 'day', label: 'Day sheet' },
  { path: 'provisions', label: 'Provisions' },
  ...sheets.dishCards.map(({ dish, name }) => ({ path: `dish/${dish}`, label: name })),
  { path: 'print', label: 'All, to print' },
];

const useSheetPath = () => {
  const rest = (useParams() as Readonly<Record<string, string | undefined>>)['*'] ?? '';
  return decodeURIComponent(rest).replace(/\/$/, '');
};

export function SheetTabs({ sheets, root }: SheetsProps) {
  const current = useSheetPath();
  return (
    <nav className="no-print" aria-label="Sheets">
      <ul className="sheet-tabs">
        {tabsOf(sheets).map(({ path, label }) => (
          <li key={path}>
            <Link
              href={path === '' ? root : `${root}/${path}`}
              aria-current={path === current ? 'page' : undefined}
            >
              {label}
            </Link>
          </li>
        ))}
      </ul>
    </nav>
  );
}

export function Sheets({ sheets }: SheetsProps) {
  const current = useSheetPath();
  if (current === 'print') return <AllSheets sheets={sheets} />;
  if (current === 'day') return <DocumentView document={sheets.daySheet} level={2} />;
  if (current === 'provisions') return <DocumentView document={sheets.provisions} level={2} />;
  const card = sheets.dishCards.find(({ dish }) => current === `dish/${dish}`);
  return <DocumentView document={card?.card ?? sheets.summary} level={2} />;
}

function AllSheets({ sheets }: { readonly sheets: MealSheets }) {
  return (
    <div className="sheet-stack">
      <div className="no-print">
        <button type="button" className="button is-main" onClick={() => window.print()}>
          Print all sheets
        </button>
      </div>
      <DocumentView document={sheets.summary} level={2} />
      <DocumentView document={sheets.daySheet} level={2} />
      {sheets.dishCards.map(({ dish, card }) => (
        <DocumentView key={dish} document={card} level={2} />
      ))}
      <DocumentView document={sheets.provisions} level={2} />
    </div>
  );
}
