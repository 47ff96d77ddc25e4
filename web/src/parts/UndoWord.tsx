// The way back from what was just pressed.

import { useEffect, useRef } from 'preact/hooks';

interface UndoWordProps {
  /** Undefined where there is nothing to take back. */
  readonly undo: { readonly word: string; readonly run: () => void } | undefined;
}

/** What was pressed may be gone with what it took out: the focus then goes to the way back. */
export function UndoWord({ undo }: UndoWordProps) {
  const button = useRef<HTMLButtonElement>(null);
  const word = undo?.word;
  useEffect(() => {
    if (word !== undefined && document.activeElement === document.body) button.current?.focus();
  }, [word]);
  return (
    <div className="undo no-print" role="status">
      {undo === undefined ? null : (
        <>
          <span>{undo.word}.</span>
          <button type="button" ref={button} className="button" onClick={undo.run}>
            Undo
          </button>
        </>
      )}
    </div>
  );
}
