// Reads JSON (RFC 8259) so that a cook can mend it: where it breaks, by line and column, what was
// already readable, and any key that stands twice. `JSON.parse` tells none of the three.

import { asIs, type FileTrouble, type PathStep, trouble } from './trouble.ts';

export interface ReadJson {
  /** As far as it was readable; complete if there are no troubles. */
  readonly value: unknown;
  readonly troubles: readonly FileTrouble[];
  /** Top-level keys that were read to their end, in the order of the file. */
  readonly complete: readonly string[];
}

export const MOST_CHARACTERS = 2_000_000;
export const MOST_DEPTH = 24;
const MOST_TROUBLES = 50;

/** The value of a JSON text, or what of it stands before the place where it breaks. */
export function readJson(text: string): ReadJson {
  if (text.length > MOST_CHARACTERS)
    return { value: undefined, complete: [], troubles: [tooLong(text)] };
  const reader = new JsonReader(text);
  try {
    return { value: reader.whole(), troubles: reader.troubles, complete: reader.complete };
  } catch (broken) {
    if (!(broken instanceof Broken)) throw broken;
    return {
      value: reader.top,
      troubles: [...reader.troubles, broken.trouble],
      complete: reader.complete,
    };
  }
}

const tooLong = (text: string) =>
  trouble('FILE_TOO_LONG', '', {
    found: asIs(`${text.length} characters`),
    wanted: `${MOST_CHARACTERS} characters at most`,
  });

/** Stops the reader at the first place where the text is no JSON. */
class Broken extends Error {
  constructor(readonly trouble: FileTrouble) {
    super(trouble.code);
  }
}

// A group that was written over with a key such as `__proto__` must stay a plain group.
const setKey = (group: object, key: string, value: unknown) =>
  Object.defineProperty(group, key, {
    value,
    enumerable: true,
    writable: true,
    configurable: true,
  });

const WORDS = [
  ['true', true],
  ['false', false],
  ['null', null],
] as const;

class JsonReader {
  readonly troubles: FileTrouble[] = [];
  readonly complete: string[] = [];
  top: unknown;
  private at = 0;
  private readonly path: PathStep[] = [];

  constructor(private readonly text: string) {
    if (text.startsWith('\uFEFF')) this.at = 1;
  }

  whole(): unknown {
    const value = this.value();
    this.space();
    if (this.at < this.text.length) this.fail('the end of the file');
    return value;
  }

  private value(): unknown {
    this.space();
    const sign = this.text[this.at];
    if (sign === '{') return this.group();
    if (sign === '[') return this.list();
    if (sign === '"') return this.string();
    const word = WORDS.find(([name]) => this.text.startsWith(name, this.at));
    if (word === undefined) return this.number();
    this.at += word[0].length;
    return word[1];
  }

  private group(): object {
    const group = {};
    if (this.path.length === 0) this.top = group;
    const keys = new Set<string>();
    this.members('}', () => {
      this.space();
      const key = this.key(keys);
      this.expect(':');
      this.path.push(key);
      setKey(group, key, this.value());
      this.path.pop();
      if (this.path.length === 0) this.complete.push(key);
    });
    return group;
  }

  private key(keys: Set<string>): string {
    if (this.text[this.at] !== '"') this.fail('a key in double quotes');
    const key = this.string();
    if (keys.has(key) && this.troubles.length < MOST_TROUBLES)
      this.troubles.push(
        trouble('FILE_KEY_TWICE', [...this.path, key], {
          found: asIs(`"${key}" a second time, before ${this.place()}`),
          wanted: `"${key}" once`,
        }),
      );
    keys.add(key);
    return key;
  }

  private list(): unknown[] {
    const list: unknown[] = [];
    this.members(']', () => {
      this.path.push(list.length);
      list.push(this.value());
      this.path.pop();
    });
    return list;
  }

  /** What stands between brackets, parted by commas. */
  private members(end: string, readOne: () => void): void {
    if (this.path.length >= MOST_DEPTH) this.tooDeep();
    this.at += 1;
    this.space();
    if (this.text[this.at] === end) {
      this.at += 1;
      return;
    }
    for (;;) {
      readOne();
      this.space();
      const sign = this.text[this.at];
      if (sign !== ',' && sign !== end) this.fail(`"," or "${end}"`);
      this.at += 1;
      if (sign === end) return;
    }
  }

  private string(): string {
    const start = this.at;
    // biome-ignore lint/suspicious/noControlCharactersInRegex: RFC 8259 7 forbids them in text.
    const inside = /[^"\\\u0000-\u001f]*/y;
    this.at += 1;
    for (;;) {
      inside.lastIndex = this.at;
      this.at += inside.exec(this.text)![0].length;
      const sign = this.text[this.at];
      if (sign === '"') break;
      if (sign !== '\\') this.fail('a double quote that ends the text', start);
      if (!/^\\(["\\/bfnrt]|u[0-9a-fA-F]{4})/.test(this.text.slice(this.at, this.at + 6)))
        this.fail('an escape such as \\" or \\n');
      this.at += 2;
    }
    this.at += 1;
    return JSON.parse(this.text.slice(start, this.at)) as string;
  }

  private number(): number {
    const number = /-?(0|[1-9]\d*)(\.\d+)?([eE][-+]?\d+)?/y;
    number.lastIndex = this.at;
    const found = number.exec(this.text)?.[0];
    if (found === undefined) this.fail('a value');
    const value = Number(found);
    if (!Number.isFinite(value)) this.fail('a number of ordinary size');
    this.at += found.length;
    return value;
  }

  private expect(sign: string): void {
    this.space();
    if (this.text[this.at] !== sign) this.fail(`"${sign}"`);
    this.at += 1;
  }

  private space(): void {
    const space = /[ \t\n\r]*/y;
    space.lastIndex = this.at;
    this.at += space.exec(this.text)![0].length;
  }

  private fail(wanted: string, at = this.at): never {
    const sign = this.text[at];
    const found = sign === undefined ? asIs('the end of the text') : this.text.slice(at, at + 20);
    throw new Broken(trouble('FILE_NOT_JSON', this.place(at), { found, wanted }));
  }

  private tooDeep(): never {
    const told = {
      found: asIs(`${MOST_DEPTH + 1} levels`),
      wanted: `${MOST_DEPTH} levels at most`,
    };
    throw new Broken(trouble('FILE_TOO_DEEP', this.place(), told));
  }

  private place(at = this.at): string {
    const before = this.text.slice(0, at).split('\n');
    return `line ${before.length}, column ${before.at(-1)!.length + 1}`;
  }
}
