// `emberwright look-over`: what is wrong with a camp file, before anybody counts on it.

import { noticeText, planMeal, refusalText, sayFor } from '#engine';
import { fileWords } from '#formats';
import { campFrom } from '../camp-reading.ts';
import { EXIT, type ExitCode } from '../exit.ts';
import type { Shell } from '../shell.ts';

export function lookOver(path: string, shell: Shell): ExitCode {
  const read = campFrom(path, shell);
  const meal = planMeal(read.camp, read.menu, { assumed: read.assumed });
  const say = sayFor({ measures: 'metric', clock: '24', plan: meal });
  const lines = [
    ...meal.refusals.map(
      (refusal) => `Stop: ${refusalText(refusal, say)} (${refusal.conflicts.join(', ')})`,
    ),
    ...read.notices.map((notice) => `Note: ${noticeText(notice, say, fileWords)}`),
  ];
  const { dishes, recipes } = read.menu;
  shell.out(
    `${path} is a camp: ${count(dishes.length, 'dish', 'dishes')}, ${count(recipes.length, 'recipe', 'recipes')}, ${count(read.camp.ovens.length, 'oven', 'ovens')}, ${count(read.camp.hands.length, 'pair of hands', 'pairs of hands')}.\n`,
  );
  for (const line of lines) shell.out(`  ${line}\n`);
  if (lines.length === 0) shell.out('  Nothing is wrong with it.\n');
  return meal.refusals.length > 0 ? EXIT.stopped : EXIT.fine;
}

const count = (number: number, one: string, many: string) =>
  `${number} ${number === 1 ? one : many}`;
