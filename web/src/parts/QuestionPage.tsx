// Questions on one side, their answer on the other, and the way to the questions beside them. On a
// phone the answer lies below; its gist is then one tap away.

import type { ComponentChildren } from 'preact';
import { Link } from 'wouter-preact';
import type { SheetDocument } from '#engine';
import { Computing } from './Computing.tsx';
import { DocumentView } from './DocumentView.tsx';

interface QuestionDoorsProps {
  /** Address before the name of the door. */
  readonly root: string;
  readonly doors: readonly (readonly [door: string, title: string])[];
  readonly open: string;
}

export const QuestionDoors = ({ root, doors, open }: QuestionDoorsProps) => (
  <nav className="fire-doors" aria-label="Questions">
    <ul>
      {doors.map(([door, title]) => (
        <li key={door}>
          <Link href={`${root}/${door}`} replace aria-current={door === open ? 'page' : undefined}>
            {title}
          </Link>
        </li>
      ))}
    </ul>
  </nav>
);

interface QuestionPartProps {
  readonly children: ComponentChildren;
  readonly sheet: SheetDocument | undefined;
  readonly isStale: boolean;
  readonly failure?: string | undefined;
  /** What is still to be said, where nothing can be asked yet. */
  readonly unasked?: string | undefined;
}

export const QuestionPart = ({ children, sheet, isStale, failure, unasked }: QuestionPartProps) => (
  <div className="tonight">
    <div className="tonight-choices">
      {children}
      {sheet === undefined ? null : <AnswerPeek sheet={sheet} />}
    </div>
    <section
      id="card"
      className={`tonight-card ${isStale ? 'is-stale' : ''}`}
      aria-label="Answer"
      aria-busy={isStale}
    >
      {unasked === undefined ? (
        <Computing isBusy={isStale} failure={failure} />
      ) : (
        <p className="word">{unasked}</p>
      )}
      {sheet === undefined ? null : <DocumentView document={sheet} level={2} />}
    </section>
  </div>
);

/** The gist of the answer, one tap from it; only where it lies below the questions. */
const AnswerPeek = ({ sheet }: { readonly sheet: SheetDocument }) => (
  <a className="card-peek is-words" href="#card">
    <span>{gistOf(sheet)}</span>
  </a>
);

/** The counts, else the verdict, else the first thing to do. */
function gistOf({ blocks, title }: SheetDocument): string {
  for (const block of blocks) {
    if (block.type === 'figures')
      return block.figures.map(({ figure, label }) => `${figure} ${label}`).join(', ');
    if (block.type === 'lead') return block.parts.map(({ text }) => text).join('');
    if (block.type === 'steps') return block.rows[0]?.what ?? title;
    if (block.type === 'notice') return block.text;
  }
  return title;
}
