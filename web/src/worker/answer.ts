// Each question and its answer. Plain functions, so that tests need no browser. What reads and
// writes camp files is a part of its own, fetched when the first camp is opened or changed.

import { readyRecipes } from '#engine';
import type { FitsQuestion } from './fits-messages.ts';
import type { Answers, Question, TonightFood } from './messages.ts';
import { tonightAnswer } from './tonight.ts';

export async function answerTo(question: Question): Promise<Answers[Question['ask']]> {
  switch (question.ask) {
    case 'ready-recipes':
      return readyRecipes.map(({ id, name, kind }) => ({ id, name, kind }));
    case 'tonight':
      return tonightAnswer(question.wish, question.voice, await recipeOf(question.wish.what));
    case 'fire':
      return (await import('./fire.ts')).fireAnswer(question);
    case 'paste':
      return (await import('./paste.ts')).pasteAnswer(question);
    case 'bread':
      return (await import('./bread.ts')).breadAnswer(question, await recipeOf(question.what));
    case 'fits':
      return (await import('./fits.ts')).fitsAnswer(question, await recipeOf(question.what));
    case 'replan':
      return (await import('./replan.ts')).replanAnswer(question);
    case 'bench':
      return (await import('./bench.ts')).benchAnswer(question);
    default:
      return (await import('./camps.ts')).campAnswer(question);
  }
}

async function recipeOf(what: TonightFood | FitsQuestion['what']) {
  return 'camp' in what ? (await import('./camps.ts')).recipeFrom(what) : undefined;
}
