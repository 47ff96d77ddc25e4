// The sentence for a code, as this reader's voice has it. Every stage writes its own in words/; a code
// without one is our fault, and the reader still gets the code to ask about.

import type { Notice, NoticeLevel, Refusal } from '../notice/notice.ts';
import type { Block } from './document.ts';
import type { Say, Words } from './say.ts';

/** One sentence, the important thing first; `more` are a shell's own words (the camp file's). */
export const noticeText = (notice: Notice, say: Say, more: Words = {}) =>
  sentence(notice, say, more);

/** What can't be done and which wishes stand against each other. */
export const refusalText = (refusal: Refusal, say: Say) => sentence(refusal, say, {});

function sentence(said: Pick<Notice, 'code' | 'values' | 'about'>, say: Say, more: Words): string {
  const write = say.sentenceFor(said.code) ?? more[said.code];
  return write === undefined
    ? `There is something to know here that has no words yet (${said.code}).`
    : capital(write(said.values, said.about, say));
}

/** A sentence may begin with the name of a person or an ingredient. */
const capital = (text: string) => text.charAt(0).toUpperCase() + text.slice(1);

const ORDER: readonly NoticeLevel[] = ['danger', 'stop', 'doubt', 'note'];

/** Too little food is told with what stops a plan: nobody looks for it among the notes. */
const GRAVE_CODES: ReadonlySet<string> = new Set([
  'MENU_FOOD_SHORT',
  'MENU_TITLE_NOT_CHECKED',
  'FORMULA_UNWEIGHED',
  'BAKE_FACE_BURNS',
  'BAKE_FACE_DARK',
  'BAKE_TOO_WET_TO_STAND',
]);

/** What has to stand on top of a sheet. */
export const isGrave = ({ level, code }: Notice): boolean =>
  level === 'danger' || level === 'stop' || GRAVE_CODES.has(code);

/** Worst first; the same sentence only once. */
export function noticeBlocks(notices: readonly Notice[], say: Say): readonly Block[] {
  const seen = new Set<string>();
  return [...notices]
    .sort((left, right) => ORDER.indexOf(left.level) - ORDER.indexOf(right.level))
    .flatMap((notice): readonly Block[] => {
      const text = noticeText(notice, say);
      if (seen.has(text)) return [];
      seen.add(text);
      return [{ type: 'notice', level: notice.level, text, code: notice.code }];
    });
}

/** All of them in one box at the level of the worst: several boxes shout each other down. */
export function noticeBox(notices: readonly Notice[], say: Say): readonly Block[] {
  const blocks = noticeBlocks(notices, say).flatMap((block) =>
    block.type === 'notice' ? [block] : [],
  );
  const [first] = blocks;
  if (first === undefined || blocks.length === 1) return blocks;
  const text = blocks.map((block) => block.text).join(' ');
  const codes = [...new Set(notices.map(({ code }) => code))];
  return [{ type: 'notice', level: first.level, text, codes }];
}

export const refusalBlocks = (refusals: readonly Refusal[], say: Say): readonly Block[] =>
  refusals.map((refusal) => ({
    type: 'notice',
    level: 'stop',
    text: refusalText(refusal, say),
    code: refusal.code,
  }));
