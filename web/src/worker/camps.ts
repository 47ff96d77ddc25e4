// Questions that need the camp file: its checks, its versions, the demo camps.

import {
  campForTonight,
  clockMinutes,
  isRefusal,
  metres,
  noticeText,
  type Recipe,
  sayFor,
} from '#engine';
import { type CampRead, demoCamps, fromEngine, readCampFile } from '#formats';
import { mealSheets } from './meal-sheets.ts';
import type {
  Answers,
  CampEntry,
  FoodWord,
  MealAnswer,
  Opened,
  OwnRecipe,
  Question,
  TonightWish,
  Voice,
} from './messages.ts';
import { plannedTonight } from './tonight.ts';

type CampQuestion = Exclude<
  Question,
  { ask: 'ready-recipes' | 'tonight' | 'fire' | 'bench' | 'bread' | 'paste' | 'replan' }
>;

export function campAnswer(question: CampQuestion): Answers[CampQuestion['ask']] {
  switch (question.ask) {
    case 'demos':
      return demoCamps(question.today).map(entryOf);
    case 'open':
      return opened(question.text);
    case 'meal':
      return mealAnswer(question.file, question.voice, question.isAdvised === true);
    case 'grow':
      return grown(question.wish);
    case 'ready-recipe':
      return readyRecipeAsFile(question.id);
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

function mealAnswer(file: string, voice: Voice, isAdvised: boolean): MealAnswer {
  const read = readCampFile(file);
  if (!read.ok) return { troubles: read.troubles };
  const { camp, menu, assumed } = read;
  const sheets = mealSheets({ camp, menu, assumed, voice, isAdvised });
  return { troubles: [], sheets, foodWords: foodWordsOf(read, voice) };
}

/** What was said of the labels of the cook's own foods, for the form that holds them. */
function foodWordsOf({ camp, menu, notices }: CampRead, voice: Voice): readonly FoodWord[] {
  const say = sayFor({ ...voice, plan: { camp, menu } });
  return notices
    .filter(({ code }) => code.startsWith('LARDER_OWN_'))
    .map((each) => ({ name: String(each.about.ingredient), text: noticeText(each, say) }));
}

/** The recipe that a camp file holds under this name; undefined where the file can't be read. */
export function recipeFrom({ camp, recipe }: OwnRecipe): Recipe | undefined {
  const read = readCampFile(camp);
  return read.ok ? read.menu.recipes.find(({ id }) => id === recipe) : undefined;
}

function grown(wish: TonightWish): CampEntry | undefined {
  const own = 'camp' in wish.what ? recipeFrom(wish.what) : undefined;
  const planned = plannedTonight(wish, own);
  if (isRefusal(planned)) return undefined;
  const { camp, menu } = planned.plan;
  const file = { ...fromEngine(camp, menu), title: menu.dishes[0]!.name };
  return { id: file.id, title: file.title, date: camp.date, file: JSON.stringify(file) };
}

/** Written through a camp for it, since only whole camps are written; nothing of it is kept. */
function readyRecipeAsFile(id: string): Readonly<Record<string, unknown>> | undefined {
  const tonight = campForTonight({
    what: id,
    oven: { diameterMetres: metres(0.3048) },
    when: {},
    date: '2026-01-01',
    timeZone: 'UTC',
    now: clockMinutes(0),
  });
  if (isRefusal(tonight)) return undefined;
  return { ...fromEngine(tonight.camp, tonight.menu).recipes[0]! };
}
