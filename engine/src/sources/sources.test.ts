// Does every claim in the engine lead to a work that the bibliography names?

import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { root, type SourceFile, sourceFiles } from '../../validation/tidy/repository.ts';
import { splitText } from '../../validation/tidy/source-text.ts';
import { bibliographies, bibliography } from './index.ts';

const engine = sourceFiles('engine/src');
const engineCode = engine.filter((file) => !file.isTest);
const isKnown = (key: string) => key in bibliography;

/** Ways of saying that there is no work to name. */
const OWN =
  /no source|^ours\b|common practice|from memory|^derived\b|^tuned\b|^computed\b|textbook/i;
/** A word that can only be meant as a key: `meeus1998`, `food-code-3-401`, `coalsBurnNotes`. */
const LIKE_A_KEY =
  /^(?:[a-z]+(?:-[a-z]+)*(?:18|19|20)\d\d|[a-z]+[A-Z]\w*|[a-z]+\d+|[a-z]+(?:-\w+)+)$/;

interface Citation {
  readonly place: string;
  readonly text: string;
}

function citationsIn({ path, text }: SourceFile): readonly Citation[] {
  const { comments } = splitText(text);
  return comments.split('\n').flatMap((line, index) => {
    const found = /(?:@source|\/\/ source:)\s+(.*?)(?:\*\/)?\s*$/.exec(line);
    return found?.[1] ? [{ place: `${path}:${index + 1}`, text: found[1] }] : [];
  });
}

/** Words before the first blank or bracket of each part; brackets hold chapter, grade, remarks. */
function wordsOf(citation: string): readonly string[] {
  const plain = citation.replace(/\([^)]*\)/g, '');
  return plain.split(/[;,]/).map((part) => part.trim().split(/[\s:]/)[0] ?? '');
}

const unknownIn = (citation: string): readonly string[] => {
  const [first = '', ...more] = wordsOf(citation);
  const isOwn = OWN.test(citation);
  const wrong = more.filter((word) => LIKE_A_KEY.test(word) && !isKnown(word));
  return isOwn || isKnown(first) ? wrong : [first, ...wrong];
};

describe('the bibliography', () => {
  it('has every file of its folder in it', () => {
    const files = readdirSync(join(root, 'engine/src/sources'))
      .filter((name) => !['index.ts', 'source.ts', 'sources.test.ts'].includes(name))
      .map((name) => name.replace('.ts', ''));
    expect(files.toSorted()).toEqual(Object.keys(bibliographies).toSorted());
  });

  it('names each work once', () => {
    const keys = Object.values(bibliographies).flatMap((part) => Object.keys(part));
    const twice = keys.filter((key, index) => keys.indexOf(key) !== index);
    expect(twice).toEqual([]);
  });

  it('says of each work what it is, who made it, and says why where the grade is D', () => {
    const thin = Object.entries(bibliography).filter(
      ([, { title, by, grade, note }]) => !title || !by || (grade === 'D' && !note),
    );
    expect(thin.map(([key]) => key)).toEqual([]);
  });

  it('holds every key that is cited in the engine with @source or source:', () => {
    const wrong = engine
      .filter(({ path }) => !path.endsWith('sources.test.ts') && !path.endsWith('tidy.test.ts'))
      .flatMap(citationsIn)
      .flatMap(({ place, text }) => unknownIn(text).map((word) => `${place} cites ${word}`));
    expect(wrong).toEqual([]);
  });

  it('holds every work named by author and year in a comment or as "source" of a table', () => {
    const named = /\b[a-z]+(?:-[a-z]+)*(?:19|20)\d\d\b/g;
    const inComments = engineCode.flatMap(({ path, text }) =>
      [...splitText(text).comments.matchAll(named)].map(([key]) => `${path} names ${key}`),
    );
    const claims = new Set([...inComments, ...tableSources()]);
    expect([...claims].filter((claim) => !isKnown(lastWord(claim)))).toEqual([]);
  });
});

const lastWord = (text: string) => text.split(' ').at(-1) ?? '';

function tableSources(): readonly string[] {
  return ['engine/data', 'engine/validation'].flatMap((folder) =>
    readdirSync(join(root, folder), { recursive: true, encoding: 'utf8' })
      .filter((name) => name.endsWith('.json'))
      .flatMap((name) => {
        const text = readFileSync(join(root, folder, name), 'utf8');
        return [...text.matchAll(/"source": *"([^" ]+)"/g)].map(
          ([, key]) => `${name} names ${key}`,
        );
      }),
  );
}

describe('the citation rule itself', () => {
  it('accepts a known key with its chapter, and own work that says so', () => {
    expect(unknownIn('if97 eq. 31 (grade B)')).toEqual([]);
    expect(unknownIn('if97 eq. 30; iso2533 2.7')).toEqual([]);
    expect(unknownIn('common practice, no source')).toEqual([]);
  });

  it('refuses an unknown key, first or later', () => {
    expect(unknownIn('nobody1901 ch. 3')).toEqual(['nobody1901']);
    expect(unknownIn('if97 eq. 30; nobody1901 2.7')).toEqual(['nobody1901']);
  });
});
