// A screen: its title in the tab and as the first heading, and the focus on it after a move.

import { type ReactNode, useEffect, useRef } from 'react';

interface PageProps {
  readonly title: string;
  readonly lead?: ReactNode;
  readonly eyebrow?: ReactNode;
  /** A screen whose sheet matters more than its title. */
  readonly isCompact?: boolean;
  readonly children: ReactNode;
}

export function Page({ title, lead, eyebrow, isCompact, children }: PageProps) {
  const heading = useRef<HTMLHeadingElement>(null);
  useEffect(() => {
    document.title = `${title} · Emberwright`;
  }, [title]);
  useFocusAfterMove(heading);
  return (
    <>
      <header className={`page-head ${isCompact ? 'is-compact' : ''}`}>
        {eyebrow === undefined ? null : <div className="page-eyebrow">{eyebrow}</div>}
        <h1 tabIndex={-1} ref={heading}>
          {title}
        </h1>
        {lead === undefined ? null : <p>{lead}</p>}
      </header>
      {children}
    </>
  );
}

let isFirstScreen = true;

/** The first screen leaves the focus where the browser puts it; later ones tell a screen reader. */
function useFocusAfterMove(heading: React.RefObject<HTMLElement | null>): void {
  useEffect(() => {
    if (!isFirstScreen) heading.current?.focus();
    isFirstScreen = false;
  }, [heading]);
}
