// How is a drawing written? Elements as strings: pure, escaped, with numbers cut to a tenth, colours
// as CSS variables with a fallback so that a drawing stands alone and still follows night and day.

export type Attributes = Readonly<Record<string, string | number | undefined>>;

/** The tokens of the look; night mode sets the variables, paper takes the fallbacks. */
export const ink = {
  ink: 'var(--ink, #1d1a17)',
  soft: 'var(--soft, #544d45)',
  line: 'var(--line, #cfc6b6)',
  sheet: 'var(--sheet, #fbf8f1)',
  iron: 'var(--iron, #34302d)',
  oat: 'var(--oat, #e4d8bf)',
  steel: 'var(--steel, #2f5d73)',
  ember: 'var(--ember, #b93a0c)',
  ash: 'var(--ash, #d8d2c8)',
} as const;

const SANS =
  "var(--sans, 'Source Sans 3 Variable', 'Source Sans 3', 'Segoe UI', Arial, sans-serif)";

export const escapeText = (text: string) =>
  text
    .replaceAll('&', '&amp;')
    .replaceAll('<', '&lt;')
    .replaceAll('>', '&gt;')
    .replaceAll('"', '&quot;')
    // Characters that no XML document may hold, whatever a cook pasted.
    // biome-ignore lint/suspicious/noControlCharactersInRegex: these are the ones to remove
    .replace(/[\u0000-\u0008\u000b\u000c\u000e-\u001f\ufffe\uffff]/g, '');

const attributeText = (value: string | number) =>
  typeof value === 'number' ? shortNumber(value) : escapeText(value);

/** A tenth of a unit is finer than any printer; a lost number must not lose the drawing. */
export const shortNumber = (value: number) =>
  Number.isFinite(value) ? String(Math.round(value * 10) / 10) : '0';

export function element(name: string, attributes: Attributes, ...children: string[]): string {
  const written = Object.entries(attributes)
    .filter((entry): entry is [string, string | number] => entry[1] !== undefined)
    .map(([key, value]) => ` ${key}="${attributeText(value)}"`)
    .join('');
  return children.length === 0
    ? `<${name}${written}/>`
    : `<${name}${written}>${children.join('')}</${name}>`;
}

export const group = (attributes: Attributes, ...children: string[]) =>
  element('g', attributes, ...children, '');

export interface Picture {
  readonly width: number;
  readonly height: number;
  readonly kind: string;
  readonly title: string;
  readonly alt: string;
  readonly children: readonly string[];
}

/** A whole drawing with its text alternative inside. */
export function picture({ width, height, kind, title, alt, children }: Picture): string {
  return element(
    'svg',
    {
      xmlns: 'http://www.w3.org/2000/svg',
      viewBox: `0 0 ${shortNumber(width)} ${shortNumber(height)}`,
      class: `drawing drawing-${kind}`,
      role: 'img',
      'aria-label': alt,
    },
    element('title', {}, escapeText(title)),
    element('desc', {}, escapeText(alt)),
    ...children,
  );
}

export interface Words {
  readonly x: number;
  readonly y: number;
  readonly text: string;
  readonly size?: number;
  readonly bold?: boolean;
  readonly anchor?: 'start' | 'middle' | 'end';
  readonly fill?: string;
  /** Ground around the letters, where a line may run beneath them. */
  readonly halo?: boolean;
}

/** One line of text; the class carries nothing that the attributes don't. */
export const words = ({
  x,
  y,
  text,
  size = 13,
  bold = false,
  anchor,
  fill = ink.ink,
  halo = false,
}: Words) =>
  element(
    'text',
    {
      x,
      y,
      fill,
      'font-family': SANS,
      'font-size': size,
      'font-weight': bold ? 650 : undefined,
      'text-anchor': anchor === 'start' ? undefined : anchor,
      stroke: halo ? ink.sheet : undefined,
      'stroke-width': halo ? 3 : undefined,
      'paint-order': halo ? 'stroke' : undefined,
    },
    escapeText(text),
  );

// Mean advance of letters in units of the font size. A sans averages near half an em; these are on
// the wide side so that a fallback font still fits (judged on screen, not measured on a font table).
const LETTER = 0.55;
const BOLD_LETTER = 0.59;
const NARROW = 0.31;
const CAPITAL = 0.68;

/** Width that a line of text may take, on the wide side. */
export function textWidth(text: string, size: number, bold = false): number {
  let width = 0;
  for (const letter of text) {
    if (/[\s.,:;'|!iljtfI()·-]/.test(letter)) width += NARROW;
    else if (/[A-ZMWmw@%—]/.test(letter)) width += CAPITAL;
    else width += bold ? BOLD_LETTER : LETTER;
  }
  return width * size * (bold ? 1.03 : 1);
}

export const fits = (text: string, room: number, size: number, bold = false) =>
  textWidth(text, size, bold) <= room;

/** Lines that each fit; a word too long for a line is broken, never cut off. */
export function wrap(text: string, room: number, size: number, bold = false): readonly string[] {
  const lines: string[] = [];
  let line = '';
  for (const word of text.split(/ +/).flatMap((each) => breakWord(each, room, size, bold))) {
    const longer = line === '' ? word : `${line} ${word}`;
    if (line !== '' && !fits(longer, room, size, bold)) {
      lines.push(line);
      line = word;
    } else line = longer;
  }
  return line === '' ? lines : [...lines, line];
}

function breakWord(word: string, room: number, size: number, bold: boolean): readonly string[] {
  if (fits(word, room, size, bold)) return [word];
  const letters = Math.max(1, Math.floor(room / (CAPITAL * size * 1.03)));
  const parts: string[] = [];
  for (let from = 0; from < word.length; from += letters) {
    parts.push(word.slice(from, from + letters));
  }
  return parts;
}

export const circle = (x: number, y: number, radius: number, more: Attributes = {}) =>
  element('circle', { cx: x, cy: y, r: radius, ...more });

export const line = (x1: number, y1: number, x2: number, y2: number, more: Attributes = {}) =>
  element('line', { x1, y1, x2, y2, stroke: ink.ink, ...more });

export const path = (d: string, more: Attributes = {}) => element('path', { d, ...more });

export const points = (list: readonly (readonly [number, number])[]) =>
  list.map(([x, y]) => `${shortNumber(x)},${shortNumber(y)}`).join(' ');
