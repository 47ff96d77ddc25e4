// `emberwright plan`: a camp file in, the meal out as text, pages or data.

import {
  advisedPlan,
  clockMinutes,
  daySheet,
  dishCard,
  handSheet,
  type MealPlan,
  mealSummary,
  noticeText,
  planMeal,
  renderText,
  type Say,
  type SheetDocument,
  sayFor,
} from '#engine';
import { type CampRead, fileWords } from '#formats';
import { campFrom } from '../camp-reading.ts';
import { carriedSheet } from '../carried-sheet.ts';
import { type ExitCode, wrongUse } from '../exit.ts';
import { outcomeOf } from '../outcome.ts';
import { clockOf, type ReaderOptions, readerOf } from '../reading.ts';
import { writeSheets } from '../sheets.ts';
import type { Shell } from '../shell.ts';

interface PlanCommandOptions extends ReaderOptions {
  readonly dish?: string;
  readonly hand?: string;
  readonly sheet?: string;
  readonly sheets?: string;
  readonly now?: string;
  readonly json?: true;
  readonly why?: true;
}

export function plan(path: string, options: PlanCommandOptions, shell: Shell): ExitCode {
  const reader = readerOf(options, 'metric');
  const now = options.now === undefined ? undefined : clockOf('--now', options.now);
  const read = campFrom(path, shell);
  const at = now === undefined ? undefined : clockMinutes(now);
  const first = planMeal(read.camp, read.menu, {
    assumed: read.assumed,
    advice: 'later',
    ...(at === undefined ? {} : { now: at }),
  });
  const meal = advisedPlan(first, at);
  const say = sayFor({ ...reader, plan: meal });
  if (options.json) shell.out(`${JSON.stringify(meal, null, 2)}\n`);
  else if (options.sheets === undefined) printPlan(meal, read, options, { say, shell });
  if (options.sheets !== undefined) sayWritten(options.sheets, meal, say, options, shell);
  return outcomeOf(meal);
}

interface Voice {
  readonly say: Say;
  readonly shell: Shell;
}

function printPlan(
  meal: MealPlan,
  read: CampRead,
  options: PlanCommandOptions,
  { say, shell }: Voice,
): void {
  const print = (document: SheetDocument) =>
    shell.out(`${renderText(document, { width: shell.columns })}\n`);
  if (options.dish !== undefined) print(dishCard(meal, dishIn(meal, options.dish), say));
  if (options.hand !== undefined) print(handSheet(meal, handIn(meal, options.hand), say));
  if (options.sheet !== undefined) print(carriedSheet(options.sheet, meal, say));
  if ([options.dish, options.hand, options.sheet].some((each) => each !== undefined)) return;
  print(mealSummary(meal, say));
  for (const notice of read.notices) shell.out(`Note: ${noticeText(notice, say, fileWords)}\n`);
  if (read.notices.length > 0) shell.out('\n');
  print(daySheet(meal, say, { hasReasons: options.why === true }));
  const ids = meal.menu.dishes.map(({ id }) => id).join(', ');
  shell.out(
    `Next: --dish for one card (${ids}), --why for the reason of each time, --sheets <folder> for pages to print.\n`,
  );
}

function dishIn(meal: MealPlan, id: string): string {
  const ids = meal.menu.dishes.map((dish) => dish.id);
  if (ids.includes(id)) return id;
  throw wrongUse('--dish', `"${id}"`, `one of ${ids.join(', ')}`, 'Take a dish of this menu.');
}

function handIn(meal: MealPlan, id: string): string {
  const ids = meal.camp.hands.map((hand) => hand.id);
  if (ids.includes(id)) return id;
  throw wrongUse('--hand', `"${id}"`, `one of ${ids.join(', ')}`, 'Take a hand of this camp.');
}

/** With --json the words go beside the data, not into it. */
function sayWritten(
  folder: string,
  meal: MealPlan,
  say: Say,
  options: PlanCommandOptions,
  shell: Shell,
): void {
  const files = writeSheets(folder, meal, say, shell);
  const tell = options.json ? shell.error : shell.out;
  if (!options.json) tell(`${renderText(mealSummary(meal, say), { width: shell.columns })}\n`);
  tell(`${files.length} pages in ${folder}. Open ${folder}/index.html.\n`);
}
