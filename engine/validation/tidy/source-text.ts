// Reads TypeScript without a compiler: which characters are code, which are comment or text?
// Good enough for rules of the house; not for .tsx, whose bare text may hold anything.

export interface SplitText {
  /** Same length and lines; comments and the insides of strings are blanks. */
  readonly code: string;
  /** Same length and lines; everything but comments is blanks. */
  readonly comments: string;
}

type Mode = 'code' | 'line' | 'block' | 'single' | 'double' | 'template' | 'regex' | 'class';

interface Reader {
  readonly text: string;
  at: number;
  /** Innermost last; a template's `${` pushes code again. */
  readonly modes: Mode[];
  /** Open braces at the time of each `${`. */
  readonly templates: number[];
  braces: number;
  code: string;
  comments: string;
}

export function splitText(text: string): SplitText {
  const reader: Reader = {
    text,
    at: 0,
    modes: ['code'],
    templates: [],
    braces: 0,
    code: '',
    comments: '',
  };
  while (reader.at < text.length) readOne(reader);
  return { code: reader.code, comments: reader.comments };
}

function readOne(reader: Reader): void {
  const mode = reader.modes.at(-1)!;
  if (mode === 'code') readCode(reader);
  else if (mode === 'line' || mode === 'block') readComment(reader, mode);
  else readQuoted(reader, mode);
}

function readCode(reader: Reader): void {
  const { text, at } = reader;
  const pair = text.slice(at, at + 2);
  const one = text[at]!;
  if (pair === '//' || pair === '/*') {
    reader.modes.push(pair === '//' ? 'line' : 'block');
    take(reader, 2, 'comment');
  } else if (one === "'" || one === '"' || one === '`') {
    reader.modes.push(one === "'" ? 'single' : one === '"' ? 'double' : 'template');
    take(reader, 1, 'code');
  } else if (one === '/' && startsRegex(reader.code)) {
    reader.modes.push('regex');
    take(reader, 1, 'code');
  } else readBrace(reader, one);
}

function readBrace(reader: Reader, one: string): void {
  const endsTemplate = one === '}' && reader.templates.at(-1) === reader.braces;
  if (endsTemplate) {
    reader.templates.pop();
    reader.modes.pop();
    take(reader, 1, 'blank');
    return;
  }
  if (one === '{') reader.braces += 1;
  if (one === '}') reader.braces -= 1;
  take(reader, 1, 'code');
}

/**
 * A slash after an operator or an opening bracket starts a pattern; after a value it divides. A `!`
 * behind a value belongs to the value.
 */
const startsRegex = (before: string) =>
  /(?:^|[=(,:;&|?{}[+\n]|(?<![\w)\]])!|=>|\breturn)\s*$/.test(before.slice(-40));

function readComment(reader: Reader, mode: 'line' | 'block'): void {
  const ends =
    mode === 'line' ? reader.text[reader.at] === '\n' : reader.text.startsWith('*/', reader.at);
  if (!ends) {
    take(reader, 1, 'comment');
    return;
  }
  reader.modes.pop();
  take(reader, mode === 'line' ? 1 : 2, mode === 'line' ? 'blank' : 'comment');
}

const CLOSERS: Readonly<Record<string, string>> = {
  single: "'",
  double: '"',
  template: '`',
  regex: '/',
  class: ']',
};

function readQuoted(reader: Reader, mode: Mode): void {
  const { text, at } = reader;
  if (text[at] === '\\') {
    take(reader, 2, 'blank');
    return;
  }
  if (mode === 'template' && text.startsWith('${', at)) {
    reader.modes.push('code');
    reader.templates.push(reader.braces);
    take(reader, 2, 'blank');
    return;
  }
  if (mode === 'regex' && text[at] === '[') reader.modes.push('class');
  const isCut = text[at] === '\n' && mode !== 'template';
  const isClosed = text[at] === CLOSERS[mode];
  if (isCut || isClosed) reader.modes.pop();
  take(reader, 1, isClosed && mode !== 'class' ? 'code' : 'blank');
}

function take(reader: Reader, count: number, kind: 'code' | 'comment' | 'blank'): void {
  const taken = reader.text.slice(reader.at, reader.at + count);
  const blank = taken.replace(/[^\n]/g, ' ');
  reader.code += kind === 'code' ? taken : blank;
  reader.comments += kind === 'comment' ? taken : blank;
  reader.at += count;
}

export interface Block {
  readonly name: string;
  readonly line: number;
  readonly lines: number;
  /** As written. */
  readonly text: string;
}

/** Named functions and arrows with a body, with their length in lines. */
export function functionsIn(text: string): readonly Block[] {
  const { code } = splitText(text);
  const heads =
    /\bfunction\s*\*?\s*(\w*)\s*(?:<[^{(]*>)?\(|\bconst\s+(\w+)[^=;\n]*=\s*(?:async\s*)?\(|=>\s*(?=\{)/g;
  return [...code.matchAll(heads)].flatMap((head) => {
    const isArrowBody = head[0].startsWith('=>');
    const open = isArrowBody
      ? head.index + head[0].length
      : bodyAfter(code, head.index + head[0].length - 1);
    if (open === undefined) return [];
    return [blockFrom(text, code, head.index, open, head[1] ?? head[2] ?? 'arrow')];
  });
}

/**
 * Calls such as `it('…', () => …)`; of `it.each<…>(table)('…', …)` the second bracket.
 *
 * @param names   matches up to the name's end
 */
export function callsOf(text: string, names: RegExp): readonly Block[] {
  const { code } = splitText(text);
  return [...code.matchAll(names)].flatMap((head) => {
    const first = afterTypes(code, head.index + head[0].length);
    if (code[first] !== '(') return [];
    const next = closing(code, first) + 1;
    const open = code[next] === '(' ? next : first;
    return [blockFrom(text, code, open, open, head[0])];
  });
}

/** Past `<…>`, in which the arrow of a function type closes nothing. */
function afterTypes(code: string, from: number): number {
  if (code[from] !== '<') return from;
  let depth = 0;
  for (let at = from; at < code.length; at += 1) {
    if (code[at] === '<') depth += 1;
    if (code[at] === '>' && code[at - 1] !== '=') depth -= 1;
    if (depth === 0) return at + 1;
  }
  return code.length;
}

/** The body's brace: the first after the parameters that does not open a type. */
function bodyAfter(code: string, openBracket: number): number | undefined {
  let at = closing(code, openBracket) + 1;
  const isDeclared = /^\s*(?::|=>|\{)/.test(code.slice(at, at + 200));
  for (let last = ''; isDeclared && at < code.length; at += 1) {
    const one = code[at]!;
    if (one === '{' && !':|&<,'.includes(last)) return at;
    if (
      one === ';' ||
      (last === '>' && code[at - 1] !== '>' && /[\w([]/.test(one) && isArrow(code, at))
    )
      return undefined;
    if ('({['.includes(one)) at = closing(code, at);
    if (/\S/.test(one)) last = code[at]!;
  }
  return undefined;
}

/** An arrow with no braces has no body of its own to measure. */
const isArrow = (code: string, at: number) => /=>\s*$/.test(code.slice(Math.max(0, at - 40), at));

function blockFrom(text: string, code: string, start: number, open: number, name: string): Block {
  const end = closing(code, open);
  const whole = text.slice(start, end + 1);
  return {
    name,
    line: text.slice(0, start).split('\n').length,
    lines: whole.split('\n').length,
    text: whole,
  };
}

function closing(code: string, open: number): number {
  let depth = 0;
  for (let at = open; at < code.length; at += 1) {
    if ('({['.includes(code[at]!)) depth += 1;
    if (')}]'.includes(code[at]!)) depth -= 1;
    if (depth === 0) return at;
  }
  return code.length - 1;
}
