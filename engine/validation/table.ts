// One table of the report: what is published, what we say, how far apart, and what to make of it.

export interface ReportRow {
  readonly what: string;
  readonly published: string;
  readonly ours: string;
  /** Ours less the published one, in its own unit or as a share. */
  readonly apart: string;
  readonly verdict: Verdict;
  /** Key in the bibliography. */
  readonly source: string;
}

export type Verdict = 'agrees' | 'near' | 'apart' | 'fitted' | 'taken';

/** Stands once above the tables. */
export const VERDICTS = [
  'Verdicts. agrees: within the rounding or the spread of its source. near: within twice that. apart: past',
  'it, and why stands below. fitted: it helped to set a number of ours. taken: our number is this one. The',
  'last two prove nothing.',
].join('\n');

const HEAD = {
  what: 'what',
  published: 'published',
  ours: 'ours',
  apart: 'apart',
  verdict: 'verdict',
  source: 'source',
} as const;
const COLUMNS = ['what', 'published', 'ours', 'apart', 'verdict', 'source'] as const;

/** A heading, the rows in columns, and remarks on the doubtful ones. */
export function reportTable(
  title: string,
  rows: readonly ReportRow[],
  remarks: readonly string[] = [],
): string {
  const widths = COLUMNS.map((key) => Math.max(...[HEAD, ...rows].map((row) => row[key].length)));
  const line = (row: Readonly<Record<(typeof COLUMNS)[number], string>>) =>
    COLUMNS.map((key, at) =>
      key === 'what' || key === 'verdict' || key === 'source'
        ? row[key].padEnd(widths[at]!)
        : row[key].padStart(widths[at]!),
    )
      .join('  ')
      .trimEnd();
  const apart = rows.filter(({ verdict }) => verdict === 'apart').length;
  const count = `${rows.length} rows, ${apart === 0 ? 'none apart' : `${apart} apart`}.`;
  return [title, '', line(HEAD), ...rows.map(line), count, ...remarks].join('\n');
}

interface Spanned {
  readonly what: string;
  readonly source: string;
  readonly least: number;
  readonly most: number;
  readonly ours: number;
  /** Half of the last printed digit, or what the source's own spread is. */
  readonly rounding: number;
  readonly say: (value: number) => string;
  readonly verdict?: Verdict;
}

/** Ours against a printed number or span: agrees within its rounding, near within twice that. */
export function spanRow(row: Spanned): ReportRow {
  const { what, source, least, most, ours, rounding, say } = row;
  const miss = ours < least ? ours - least : ours > most ? ours - most : 0;
  const judged =
    Math.abs(miss) <= rounding * (1 + 1e-9) + 1e-12
      ? 'agrees'
      : Math.abs(miss) <= 2 * rounding
        ? 'near'
        : 'apart';
  return {
    what,
    published: least === most ? say(least) : `${say(least)} to ${say(most)}`,
    ours: say(ours),
    apart: miss === 0 ? '0' : `${miss < 0 ? '-' : '+'}${say(Math.abs(miss))}`,
    verdict: row.verdict ?? judged,
    source,
  };
}

/** A number with so many digits behind the point, and its unit. */
export const fixed =
  (digits: number, unit = '') =>
  (value: number) =>
    `${value.toFixed(digits)}${unit === '' ? '' : ` ${unit}`}`;
