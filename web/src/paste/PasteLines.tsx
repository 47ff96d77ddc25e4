// The pasted text line by line, with what each was read as; a tap opens a line to be corrected.

import { useId, useState } from 'preact/hooks';
import type { LineRole } from '#engine';
import type { PasteLine } from '../worker/paste-messages.ts';

interface LinesProps {
  readonly lines: readonly PasteLine[];
  readonly onText: (piece: number, text: string) => void;
  readonly onFood: (piece: number, food: string) => void;
  readonly onRole: (piece: number, role: LineRole) => void;
}

const STATES: Readonly<Record<PasteLine['state'], string>> = {
  understood: 'Read',
  look: 'Look',
  open: 'Open',
};

export function PasteLines({ lines, ...changes }: LinesProps) {
  const shown = lines.filter(({ role }) => role !== 'blank');
  return (
    <ol className="paste-lines">
      {shown.map((line) => (
        <li key={line.piece} className={`paste-line is-${line.state}`}>
          <Line line={line} {...changes} />
        </li>
      ))}
    </ol>
  );
}

type LineProps = Omit<LinesProps, 'lines'> & { readonly line: PasteLine };

function Line({ line, onText, onFood, onRole }: LineProps) {
  const [written, setWritten] = useState<string>();
  const id = useId();
  const text = line.text.trim();
  return (
    <details>
      <summary>
        <span className="paste-state">{STATES[line.state]}</span>
        <span className="paste-text">{text}</span>
        <span className="paste-read">{line.readAs}</span>
      </summary>
      <div className="paste-change">
        {line.notices.map((notice) => (
          <p key={notice}>{notice}</p>
        ))}
        {line.choices.length < 2 && line.food !== undefined ? null : (
          <FoodSelect line={line} onFood={onFood} />
        )}
        <div className="field">
          <label className="field-label" htmlFor={`${id}-role`}>
            This is
          </label>
          <select
            id={`${id}-role`}
            value={line.role}
            onChange={(event) => onRole(line.piece, event.currentTarget.value as LineRole)}
          >
            {ROLES.map(([role, label]) => (
              <option key={role} value={role}>
                {label}
              </option>
            ))}
          </select>
        </div>
        <div className="field">
          <label className="field-label" htmlFor={`${id}-text`}>
            Write it otherwise
          </label>
          <input
            id={`${id}-text`}
            value={written ?? text}
            onInput={(event) => setWritten(event.currentTarget.value)}
            onBlur={() => {
              if (written !== undefined && written !== text) onText(line.piece, written);
              setWritten(undefined);
            }}
          />
        </div>
      </div>
    </details>
  );
}

const ROLES: readonly (readonly [LineRole, string])[] = [
  ['ingredient', 'something that goes in'],
  ['step', 'work to be done'],
  ['title', 'the title'],
  ['heading', 'a heading'],
  ['yield', 'how much it makes'],
  ['heat', 'how hot'],
  ['note', 'a note'],
  ['unread', 'not to be read'],
];

function FoodSelect({ line, onFood }: Pick<LineProps, 'line' | 'onFood'>) {
  const id = useId();
  if (line.role !== 'ingredient' || line.choices.length === 0) return null;
  return (
    <div className="field">
      <label className="field-label" htmlFor={id}>
        Which food
      </label>
      <select
        id={id}
        value={line.food ?? ''}
        onChange={(event) => onFood(line.piece, event.currentTarget.value)}
      >
        {line.food === undefined ? <option value="">not one of these</option> : null}
        {line.choices.map(({ key, name }) => (
          <option key={key} value={key}>
            {name}
          </option>
        ))}
      </select>
    </div>
  );
}
