// A table in plain characters: numbers to the right, the last wordy column takes what room is left.

import { fold } from './fold.ts';

export interface TextTableOptions {
  readonly width: number;
  readonly numeric?: readonly boolean[];
  readonly headed?: boolean;
}

export function textTable(rows: readonly (readonly string[])[], options: TextTableOptions): string {
  const columns = Math.max(0, ...rows.map((row) => row.length));
  const natural = Array.from({ length: columns }, (_, column) =>
    Math.max(0, ...rows.map((row) => (row[column] ?? '').length)),
  );
  const widths = shrink(natural, options.width - 2 * (columns - 1));
  const lines = rows.map((row) => tableRow(row, widths, options.numeric ?? []));
  if (options.headed !== true) return lines.join('\n');
  const rule = widths.map((width) => '-'.repeat(width)).join('  ');
  return [lines[0], rule, ...lines.slice(1)].join('\n');
}

/** Takes from the widest column until all fit, leaving each eight letters. */
function shrink(natural: readonly number[], room: number): readonly number[] {
  const widths = [...natural];
  let over = widths.reduce((sum, width) => sum + width, 0) - room;
  while (over > 0) {
    const widest = widths.indexOf(Math.max(...widths));
    if ((widths[widest] ?? 0) <= 8) break;
    widths[widest] = (widths[widest] ?? 0) - 1;
    over -= 1;
  }
  return widths;
}

function tableRow(
  row: readonly string[],
  widths: readonly number[],
  numeric: readonly boolean[],
): string {
  const cells = widths.map((width, column) => fold(row[column] ?? '', width).split('\n'));
  const height = Math.max(1, ...cells.map((cell) => cell.length));
  return Array.from({ length: height }, (_, line) =>
    widths
      .map((width, column) => {
        const text = cells[column]?.[line] ?? '';
        return numeric[column] ? text.padStart(width) : text.padEnd(width);
      })
      .join('  ')
      .trimEnd(),
  ).join('\n');
}
