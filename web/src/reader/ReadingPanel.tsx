// Measures, clock and ground: one line in the head of every page that opens to three choices.

import type { RefObject } from 'preact';
import { useEffect, useRef } from 'preact/hooks';
import { Choice } from '../parts/Choice.tsx';
import { useReader } from './ReaderContext.tsx';

const groundWords = { auto: 'as the device', day: 'day', night: 'night' } as const;

export function ReadingPanel() {
  const { reader, choose } = useReader();
  const panel = useRef<HTMLDetailsElement>(null);
  useCloseOutside(panel);
  const measures = reader.measures === 'us' ? '°F' : '°C';
  return (
    <details className="reading no-print" ref={panel}>
      <summary>
        <span className="unseen">How you read: </span>
        {measures} · {reader.clock} h
        {reader.ground === 'auto' ? '' : ` · ${groundWords[reader.ground]}`}
      </summary>
      <div className="reading-panel">
        <Choice
          legend="Measures"
          isSmall
          isRow
          value={reader.measures}
          options={[
            { value: 'us', label: 'Cups, °F' },
            { value: 'metric', label: 'Grams, °C' },
          ]}
          onChoose={(value) => choose({ measures: value })}
        />
        <Choice
          legend="Clock"
          isSmall
          isRow
          value={reader.clock}
          options={[
            { value: '12', label: '6:30 pm' },
            { value: '24', label: '18:30' },
          ]}
          onChoose={(value) => choose({ clock: value })}
        />
        <Choice
          legend="Ground"
          isSmall
          isRow
          value={reader.ground}
          options={[
            { value: 'auto', label: 'Device' },
            { value: 'day', label: 'Day' },
            { value: 'night', label: 'Night' },
          ]}
          onChoose={(value) => choose({ ground: value })}
        />
      </div>
    </details>
  );
}

/** A tap elsewhere or Escape folds the panel away. */
function useCloseOutside(panel: RefObject<HTMLDetailsElement | null>): void {
  useEffect(() => {
    const onPointer = (event: PointerEvent) => {
      if (panel.current?.open && !panel.current.contains(event.target as Node)) {
        panel.current.open = false;
      }
    };
    const onKey = (event: KeyboardEvent) => {
      if (event.key !== 'Escape' || !panel.current?.open) return;
      panel.current.open = false;
      panel.current.querySelector('summary')?.focus();
    };
    document.addEventListener('pointerdown', onPointer);
    document.addEventListener('keydown', onKey);
    return () => {
      document.removeEventListener('pointerdown', onPointer);
      document.removeEventListener('keydown', onKey);
    };
  }, [panel]);
}
