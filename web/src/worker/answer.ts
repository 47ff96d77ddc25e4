// Each question and its answer. Plain functions, so that tests need no browser.

import { starters } from '#engine';
import { type CampRead, demoCamps, readCampFile } from '#formats';
import { mealSheets } from './meal-sheets.ts';
import type { Answers, CampEntry, MealAnswer, Opened, Question, Voice } from './messages.ts';
import { tonightAnswer } from './tonight.ts';

export function answerTo(question: Question): Answers[Question['ask']] {
  switch (question.ask) {
    case 'starters':
      return starters.map(({ id, name, kind }) => ({ id, name, kind }));
    case 'demos':
      return demoCamps(question.today).map(entryOf);
    case 'open':
      return opened(question.text);
    case 'meal':
      return mealAnswer(question.file, question.voice);
    case 'tonight':
      return tonightAnswer(question.wish, question.voice);
  }
}

const entryOf = ({ file }: CampRead): CampEntry => ({
  id: file.id,
  title: file.title,
  date: file.date ?? '',
  file: JSON.stringify(file),
});

function opened(text: string): Opened {
  const read = readCampFile(text);
  return read.ok ? { ok: true, camp: entryOf(read) } : { ok: false, troubles: read.troubles };
}

function mealAnswer(file: string, voice: Voice): MealAnswer {
  const read = readCampFile(file);
  if (!read.ok) return { troubles: read.troubles };
  const { camp, menu, assumed } = read;
  return { troubles: [], sheets: mealSheets({ camp, menu, assumed, voice }) };
}
