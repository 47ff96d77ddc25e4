// A screen: its title in the tab and as the first heading, and the focus on it after a move.

import type { ComponentChildren, RefObject } from 'preact';
import { useEffect, useRef } from 'preact/hooks';

interface PageProps {
  readonly title: string;
  readonly lead?: ComponentChildren;
  readonly eyebrow?: ComponentChildren;
  /** A screen whose sheet matters more than its title. */
  readonly isCompact?: boolean;
  readonly children: ComponentChildren;
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
function useFocusAfterMove(heading: RefObject<HTMLElement | null>): void {
  useEffect(() => {
    if (!isFirstScreen) heading.current?.focus();
    isFirstScreen = false;
  }, [heading]);
}
