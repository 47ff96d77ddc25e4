// Rules of the house that no compiler knows. Each finding names file, line and what was wanted.

import { describe, expect, it } from 'vitest';
import {
  importsOf,
  resolved,
  type SourceFile,
  sourceFiles,
} from '../validation/tidy/repository.ts';
import { callsOf, functionsIn, splitText } from '../validation/tidy/source-text.ts';
import { codeLists } from './index.ts';
import type { CodeList } from './notice/notice.ts';
import type { Words } from './publish/say.ts';

const engine = sourceFiles('engine/src');
const engineCode = engine.filter((file) => !file.isTest);
const shells = sourceFiles('formats', 'oplog', 'server', 'cli', 'web/src');
const tests = [...engine, ...shells, ...sourceFiles('scripts')].filter((file) => file.isTest);

/** In the order of the job: a file imports from its own place or from one to its left. */
const ORDER = [
  'quantity',
  'notice',
  'sources',
  'numerics',
  'solver',
  'camp',
  'larder',
  'menu',
  'formula',
  'coals',
  'bake',
  'safety',
  'timetable',
  'provisions',
  'meal.ts',
  'fireside',
  'logbook',
  'publish',
  'like-loads.ts',
  'plan.ts',
  'plan-tonight.ts',
  'plan-meal.ts',
  'codes.ts',
  'index.ts',
];

const placeOf = (path: string) => /^engine\/src\/([^/]+)/.exec(path)?.[1] ?? '';
const lineOf = (text: string, index: number) => text.slice(0, index).split('\n').length;

describe('imports', () => {
  it('knows a place in the order for every folder and file of the engine', () => {
    const unknown = engineCode.filter(({ path }) => !ORDER.includes(placeOf(path)));
    expect(unknown.map(({ path }) => path)).toEqual([]);
  });

  it('run one way inside the engine, types too', () => {
    const wrong = engineCode.flatMap((file) =>
      importsOf(file).flatMap((imported) => {
        const target = resolved(file, imported);
        if (target === undefined) return [`${file.path} imports the package ${imported}`];
        if (/^engine\/data\/[^/]+\.json$/.test(target)) return [];
        const runsLeft = ORDER.indexOf(placeOf(target)) <= ORDER.indexOf(placeOf(file.path));
        return target.startsWith('engine/src/') && runsLeft ? [] : [`${file.path} → ${target}`];
      }),
    );
    expect(wrong).toEqual([]);
  });

  it('reach the engine and the formats only through #engine and #formats', () => {
    const own = (path: string) => path.split('/')[0];
    const wrong = shells.flatMap((file) =>
      importsOf(file).flatMap((imported) => {
        const target = resolved(file, imported);
        const leaves = target !== undefined && own(target) !== own(file.path);
        const isFormatsItself = own(file.path) === 'formats' && imported.startsWith('#formats');
        const isDeep = /^#(?:engine|formats)\//.test(imported);
        return leaves || isFormatsItself || isDeep ? [`${file.path} → ${imported}`] : [];
      }),
    );
    expect(wrong).toEqual([]);
  });
});

describe('purity of the engine', () => {
  const BANNED =
    /\bDate\b|\bMath\.random\b|\bconsole\.|\bprocess\.|\bperformance\.|\bset(?:Timeout|Interval|Immediate)\b|\bqueueMicrotask\b|\bfetch\s*\(|\bIntl\b|\btoLocale\w+|\bglobalThis\b|\brequire\s*\(|\blocaleCompare\b/g;

  it('has no clock, chance, locale, network or console in it', () => {
    const wrong = engineCode.flatMap(({ path, text }) => {
      const { code } = splitText(text);
      return [...code.matchAll(BANNED)].map(
        (found) => `${path}:${lineOf(code, found.index)} uses ${found[0]}`,
      );
    });
    expect(wrong).toEqual([]);
  });
});

describe('size', () => {
  const written = [...engineCode, ...shells].filter((file) => !file.isTest);

  it('keeps every function within 70 lines', () => {
    const wrong = written
      .filter(({ path }) => path.endsWith('.ts') && !/fixtures?\.ts$/.test(path))
      .flatMap(({ path, text }) =>
        functionsIn(text)
          .filter(({ lines }) => lines > 70)
          .map(({ name, line, lines }) => `${path}:${line} ${name} has ${lines} lines`),
      );
    expect(wrong).toEqual([]);
  });

  it('keeps every file within 600 lines', () => {
    const wrong = [...written, ...tests].filter(({ text }) => text.split('\n').length > 600);
    expect(wrong.map(({ path }) => path)).toEqual([]);
  });
});

const TEST = /(?<![.\w])(?:it|test)(?:\.\w+)*/g;

describe('tests', () => {
  it('have names that say what is true, and each one expects something', () => {
    const wrong = tests.flatMap((file) =>
      callsOf(file.text, TEST).flatMap((call) =>
        troubleWith(call.text, file).map((trouble) => `${file.path}:${call.line} ${trouble}`),
      ),
    );
    expect(wrong).toEqual([]);
  });

  it('are never left switched off or alone', () => {
    const wrong = tests.filter(({ text }) =>
      /\b(?:it|test|describe)\.(?:only|skip|todo)\b/.test(splitText(text).code),
    );
    expect(wrong.map(({ path }) => path)).toEqual([]);
  });
});

function troubleWith(call: string, file: SourceFile): readonly string[] {
  const name = /^\w*\(\s*(['"`])((?:\\.|(?!\1).)*)\1/s.exec(call)?.[2] ?? '';
  const says = name.trim().split(/\s+/).length >= 2;
  const expects = /\bexpect\b|\bassert\b/.test(call) || callsChecker(call, file);
  return [
    ...(says ? [] : [`is called "${name}": say in a sentence what is true`]),
    ...(expects ? [] : [`"${name}" expects nothing`]),
  ];
}

/** A test may leave its expectations to a function of its own file. */
function callsChecker(call: string, file: SourceFile): boolean {
  const checkers = functionsIn(file.text).filter(({ text }) => /\bexpect\b|\bassert\b/.test(text));
  return checkers.some(({ name }) => name !== 'arrow' && new RegExp(`\\b${name}\\b`).test(call));
}

describe('sources', () => {
  const PHYSICAL = ['camp', 'coals', 'bake', 'formula'];
  const ARITHMETIC = /\*\*|[\w)\]] [*/] [\w(]|\bMath\.(?:sqrt|exp|log|sin|cos|tan\w*|cbrt)\b/g;

  it('are named in every file of camp, formula, coals and bake that reckons', () => {
    const wrong = engineCode
      .filter(({ path }) => PHYSICAL.includes(placeOf(path)))
      .filter(({ text }) => (splitText(text).code.match(ARITHMETIC)?.length ?? 0) >= 3)
      .filter(
        ({ text }) => !/\bsources?\b|@source|@tuned|\bno source\b/i.test(splitText(text).comments),
      );
    expect(wrong.map(({ path }) => path)).toEqual([]);
  });
});

describe('codes', () => {
  const stages = engineCode
    .map(({ path }) => /^engine\/src\/(\w+)\/codes\.ts$/.exec(path)?.[1])
    .filter((stage) => stage !== undefined);

  it.each(stages)(
    'of %s each have one sentence in publish/words, and no sentence is left over',
    async (stage) => {
      const [codes, words] = [await codesOf(stage), await wordsOf(stage)];
      expect(words.toSorted()).toEqual(Object.keys(codes).toSorted());
    },
  );

  it.each(stages)(
    'of %s begin with its name, and say when they are given and what to do',
    async (stage) => {
      for (const [code, { when, next }] of Object.entries(await codesOf(stage))) {
        expect(code).toMatch(new RegExp(`^${stage.toUpperCase()}(?:_[A-Z0-9]+)+$`));
        expect([code, when.length >= 5, next.length >= 5]).toEqual([code, true, true]);
      }
    },
  );

  it.each(stages)('of %s are all given somewhere', async (stage) => {
    const rest = engineCode.filter(({ path }) => !/\/codes\.ts$|\/words\//.test(path));
    const unused = Object.keys(await codesOf(stage)).filter(
      (code) => !rest.some(({ text }) => text.includes(`'${code}'`)),
    );
    expect(unused).toEqual([]);
  });

  it('of every stage are in the public list that the manual is written from', () => {
    expect(Object.keys(codeLists).toSorted()).toEqual(stages.toSorted());
  });

  it('are in a list wherever one is given', async () => {
    const lists = await Promise.all(stages.map(codesOf));
    const known = new Set(lists.flatMap(Object.keys));
    const given = /\b(?:notice|refusal)\(\s*'([A-Z0-9_]+)'/g;
    const wrong = engineCode.flatMap(({ path, text }) =>
      [...text.matchAll(given)].flatMap(([, code]) =>
        known.has(code!) ? [] : [`${path} gives ${code}`],
      ),
    );
    expect(wrong).toEqual([]);
  });
});

async function codesOf(stage: string): Promise<CodeList> {
  const file = (await import(/* @vite-ignore */ `./${stage}/codes.ts`)) as Record<string, CodeList>;
  return file[`${stage}Codes`] ?? {};
}

/** Codes with a sentence in the files of a stage; one with two sentences stands here twice. */
async function wordsOf(stage: string): Promise<readonly string[]> {
  const ours = new RegExp(`^engine/src/publish/words/${stage}(?:-\\w+)*\\.ts$`);
  const paths = engineCode.map(({ path }) => path).filter((path) => ours.test(path));
  const files = await Promise.all(
    paths.map((path) => import(/* @vite-ignore */ path.replace('engine/src', '.'))),
  );
  return files.flatMap((file: Record<string, Words>) =>
    Object.entries(file).flatMap(([name, words]) =>
      name.endsWith('Words') ? Object.keys(words) : [],
    ),
  );
}

describe('the rules themselves', () => {
  it('see code, and not comments, strings, patterns or templates', () => {
    const text =
      "const a = 'Date'; // Date\nconst b = /Date[/]Date/; /* Date */ const c = `Date $" +
      '{Date.x} Date`;';
    const { code, comments } = splitText(text);
    expect(code.match(/Date/g)).toEqual(['Date']);
    expect(comments.match(/Date/g)).toEqual(['Date', 'Date']);
    expect(code.length).toBe(text.length);
  });

  it('measure functions, also behind a type in braces', () => {
    const text =
      'function one(a: { b: number }): { c: number } {\n  return {\n c: 1 };\n}\nconst two = () => {\n};';
    const found = functionsIn(text).map(({ name, lines }) => [name, lines]);
    expect(found).toContainEqual(['one', 4]);
    expect(found).toContainEqual(['two', 2]);
  });

  it('find a test that expects nothing', () => {
    const file = {
      path: 'x.test.ts',
      text: "it('is so', () => {\n  const a = ')';\n});",
      isTest: true,
    };
    const [call] = callsOf(file.text, TEST);
    expect(troubleWith(call!.text, file)).toEqual(['"is so" expects nothing']);
    expect(troubleWith("it('works', () => { expect(1).toBe(1); })", file)).toHaveLength(1);
  });
});
