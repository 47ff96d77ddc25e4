// A camp that may still be opening, or not be in this browser at all.

import type { ComponentChildren } from 'preact';
import { Link } from 'wouter-preact';
import { Page } from '../parts/Page.tsx';
import { type Draft, useDraft } from './use-draft.ts';

interface OpenedCampProps {
  readonly shelf: 'camp' | 'demo';
  readonly id: string;
  readonly children: (draft: Extract<Draft, { state: 'open' }>) => ComponentChildren;
}

export function OpenedCamp({ shelf, id, children }: OpenedCampProps) {
  const draft = useDraft(shelf, id);
  if (draft.state === 'opening') return <p className="computing is-busy">Opening the camp</p>;
  if (draft.state === 'open') return <>{children(draft)}</>;
  return (
    <Page title="No such camp in this browser">
      <p>
        It may be in another browser, or saved as a file. <Link href="/camps">All camps</Link>
      </p>
    </Page>
  );
}
