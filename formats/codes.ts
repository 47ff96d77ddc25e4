// Everything that reading a camp file can complain of or mention.

import type { CodeList } from '#engine';

export const fileCodes = {
  FILE_TOO_LONG: {
    kind: 'refusal',
    when: 'The text is longer than any camp needs.',
    next: 'Check that this is a camp file, and take out what does not belong to the camp.',
  },
  FILE_TOO_DEEP: {
    kind: 'refusal',
    when: 'Lists or groups stand inside one another far deeper than a camp file does.',
    next: 'Check that this is a camp file.',
  },
  FILE_NOT_JSON: {
    kind: 'refusal',
    when: 'The text breaks the rules of JSON (RFC 8259).',
    next: 'Mend the text at the line and column named; a comma or a quote is often missing just before.',
  },
  FILE_KEY_TWICE: {
    kind: 'refusal',
    when: 'The same key stands twice in one group, so that one of the two would be lost.',
    next: 'Keep one of the two and take the other out.',
  },
  FILE_NOT_PLAIN: {
    kind: 'refusal',
    when: 'What was handed over holds something that a file can not hold.',
    next: 'Hand over the text of the file, or plain lists, groups, text and numbers.',
  },
  FILE_NOT_A_CAMP: {
    kind: 'refusal',
    when: 'The file does not say that it is a camp file.',
    next: 'Choose a camp file, or begin it with "emberwright": "camp".',
  },
  FILE_NEWER: {
    kind: 'refusal',
    when: 'The file was made by a newer Emberwright.',
    next: 'Open it with that newer Emberwright, or bring this one up to date; the file is left as it is.',
  },
  FILE_VERSION_UNKNOWN: {
    kind: 'refusal',
    when: 'The version of the file is not a whole number.',
    next: 'Write the version as the file had it when it was saved; for a new file, 1.',
  },
  FILE_KEY_UNKNOWN: {
    kind: 'refusal',
    when: 'A key is not known in this place.',
    next: 'Rename it to a known key, or take it out.',
  },
  FILE_KEY_MISSING: {
    kind: 'refusal',
    when: 'A key that is needed is missing.',
    next: 'Add it.',
  },
  FILE_KIND_WRONG: {
    kind: 'refusal',
    when: 'There is a number where text belongs, a list where a group belongs, and the like.',
    next: 'Write it in the way that is wanted.',
  },
  FILE_WORD_UNKNOWN: {
    kind: 'refusal',
    when: 'A word is not one of the words that can stand here.',
    next: 'Use one of the words that are wanted.',
  },
  FILE_QUANTITY_UNREADABLE: {
    kind: 'refusal',
    when: 'A quantity has no unit, a unit that does not fit, or no plain number.',
    next: 'Write a number and its unit.',
  },
  FILE_QUANTITY_OUTSIDE: {
    kind: 'refusal',
    when: 'A quantity is smaller or larger than can be.',
    next: 'Check the number and its unit.',
  },
  FILE_NUMBER_OUTSIDE: {
    kind: 'refusal',
    when: 'A count is smaller or larger than can be, or not whole.',
    next: 'Check the number.',
  },
  FILE_TEXT_LENGTH: {
    kind: 'refusal',
    when: 'A text is empty or too long.',
    next: 'Shorten it, or write something.',
  },
  FILE_TEXT_SHAPE: {
    kind: 'refusal',
    when: 'A short name (id) holds signs that it can not hold.',
    next: 'Use letters, digits, - and _ only.',
  },
  FILE_LIST_LENGTH: {
    kind: 'refusal',
    when: 'A list is empty where something is needed, or far too long.',
    next: 'Shorten it, or add what is missing.',
  },
  FILE_TIME_UNREADABLE: {
    kind: 'refusal',
    when: 'A time of day can not be read.',
    next: 'Write it as "18:30"; "+1 06:00" is the next morning.',
  },
  FILE_DATE_UNREADABLE: {
    kind: 'refusal',
    when: 'A date can not be read or is not in the calendar.',
    next: 'Write year, month and day as "2026-09-12".',
  },
  FILE_DIRECTION_UNREADABLE: {
    kind: 'refusal',
    when: 'The direction of the wind can not be read.',
    next: 'Write a point of the compass, "WSW", or degrees, "247°".',
  },
  FILE_ID_TWICE: {
    kind: 'refusal',
    when: 'Two entries of one list have the same id.',
    next: 'Give one of them another id.',
  },
  FILE_REFERENCE_UNKNOWN: {
    kind: 'refusal',
    when: 'An entry names a recipe, oven, hand or step that is not in the file.',
    next: 'Name one that is there, or add it.',
  },
  FILE_STEPS_CIRCLE: {
    kind: 'refusal',
    when: 'Steps wait for one another in a circle.',
    next: 'Take out one "after", so that there is a first step.',
  },
  FILE_ORDER_WRONG: {
    kind: 'refusal',
    when: 'Two values that belong together stand the wrong way round.',
    next: 'Change one of the two.',
  },
  FILE_WEIGHT_MISSING: {
    kind: 'refusal',
    when: 'An ingredient has no weight, and none can be reckoned from its measure.',
    next: 'Weigh it and write "weight": "450 g".',
  },
  FILE_FOOD_IMPOSSIBLE: {
    kind: 'refusal',
    when: "The label of a food of the cook's own can not be: its parts are more than the whole.",
    next: 'Look at the label again, and whether "of" is 100 g or a serving.',
  },
  FILE_PIECES_UNKNOWN: {
    kind: 'refusal',
    when: 'A dish takes pieces that its recipe is not divided into.',
    next: 'Name pieces of the recipe\'s "division", or add them there.',
  },
  FILE_MIGRATED: {
    kind: 'notice',
    when: 'The file was made by an older Emberwright and has been carried over.',
    next: 'Nothing; when it is saved it is saved in the new form.',
  },
  FILE_ASSUMED: {
    kind: 'notice',
    when: 'The file does not say something, and the usual is assumed.',
    next: 'Write it into the file if it is otherwise.',
  },
  FILE_DATE_NOT_SAID: {
    kind: 'notice',
    when: 'The file names no date.',
    next: 'Times of day are right all the same; add "date" so that dusk is right too.',
  },
  FILE_DATE_FAR: {
    kind: 'notice',
    when: 'The date of the camp is more than a year away from today.',
    next: 'Check the year; times are right all the same, dusk is reckoned for that date.',
  },
  FILE_FOOD_UNKNOWN: {
    kind: 'notice',
    when: 'An ingredient is not in the larder, so its allergens are not known.',
    next: 'Read its label and write what it contains under "contains".',
  },
  FILE_WEIGHT_RECKONED: {
    kind: 'notice',
    when: 'A weight was reckoned from the measure.',
    next: 'Weigh it once and write the weight down.',
  },
} satisfies CodeList;

export type FileCode = keyof typeof fileCodes;
