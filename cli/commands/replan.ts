// `emberwright replan`: a camp whose day slipped, what has happened by now, and how it can go on.

import {
  clockMinutes,
  jobMeant,
  lightingMeant,
  type MealPlan,
  planMeal,
  renderText,
  replan,
  replanSheet,
  type Slip,
  sayFor,
  timetableRequestOf,
} from '#engine';
import { campFrom } from '../camp-reading.ts';
import { EXIT, type ExitCode, wrongUse } from '../exit.ts';
import { clockOf, minutesOf, type ReaderOptions, readerOf } from '../reading.ts';
import type { Shell } from '../shell.ts';

interface ReplanOptions extends ReaderOptions {
  readonly now: string;
  readonly slip?: readonly string[];
  readonly json?: true;
}

export function replanCommand(path: string, options: ReplanOptions, shell: Shell): ExitCode {
  const reader = readerOf(options, 'metric');
  const now = clockMinutes(clockOf('--now', options.now));
  const read = campFrom(path, shell);
  const plan = planMeal(read.camp, read.menu, { assumed: read.assumed, advice: 'later' });
  const slips = (options.slip ?? []).map((text) => slipOf(text, plan, now));
  const request = timetableRequestOf(plan);
  const replanned = replan({ request, sheet: plan.daySheet, now, slips });
  if (options.json) shell.out(`${JSON.stringify(replanned, null, 2)}\n`);
  else {
    const say = sayFor({ ...reader, plan });
    const sheet = replanSheet({ plan, now, slips, replanned }, say);
    shell.out(`${renderText(sheet, { width: shell.columns })}\n`);
  }
  const [best] = replanned.offers;
  const isStopped = best === undefined || best.violations.length > 0 || best.lateBy > 0;
  return isStopped || replanned.asks.length > 0 ? EXIT.stopped : EXIT.fine;
}

const EXAMPLES =
  '"20 min behind", "rolls 20 min behind", "rise of rolls 15 min longer", "chimney 2 failed", ' +
  '"guests 30 min late", "oven B dropped" or "hand anna gone"';

/** `20 min behind`, `chimney 2 failed` … */
function slipOf(text: string, plan: MealPlan, now: number): Slip {
  const words = text.trim().replaceAll(/\s+/g, ' ');
  const readers = [behindOf, longerOf, chimneyOf, guestsOf, ovenOf, handOf];
  for (const read of readers) {
    const slip = read(words, plan, now);
    if (slip !== undefined) return slip;
  }
  throw wrongUse('--slip', `"${text}"`, 'something that can slip', `Write one of ${EXAMPLES}.`);
}

const MINUTES = String.raw`(\d+(?: ?(?:min|h))?)`;

function behindOf(text: string, plan: MealPlan): Slip | undefined {
  const [, who, much] = new RegExp(`^(?:(.+?) )?${MINUTES} (?:behind|late)$`, 'i').exec(text) ?? [];
  if (much === undefined || /^guests?$/i.test(who ?? '')) return undefined;
  const minutes = minutesOf('--slip', much, 0);
  return who === undefined
    ? { kind: 'behind', minutes }
    : { kind: 'behind', minutes, dish: dishIn(who, plan) };
}

function longerOf(text: string, plan: MealPlan, now: number): Slip | undefined {
  const [, kind, , name, much] =
    new RegExp(`^([\\w -]+?)( of) (.+?) ${MINUTES} longer$`, 'i').exec(text) ?? [];
  if (kind === undefined || name === undefined || much === undefined) return undefined;
  const { daySheet } = plan;
  const id = dishIn(name, plan);
  const longer = minutesOf('--slip', much, 0);
  const wanted = kind.toLowerCase() === 'bake' ? 'cook' : kind.toLowerCase().replaceAll(' ', '-');
  const job = jobMeant(daySheet, { dish: id, kind: wanted, longer }, now);
  if (job === undefined) {
    const kinds = [
      ...new Set(daySheet.jobs.flatMap((each) => (each.dish === id ? each.kind : []))),
    ];
    throw wrongUse('--slip', `"${kind}"`, `one of ${kinds.join(', ')}`, 'Take a job of this dish.');
  }
  return { kind: 'takes-longer', job: job.id, minutes: longer };
}

/** A chimney by its number, at the lighting that burns or is due; a lighting by its place in the list. */
function chimneyOf(text: string, { daySheet }: MealPlan, now: number): Slip | undefined {
  const [, what, digits] = /^(chimney|lighting) (\d+) (?:failed|did not catch)$/i.exec(text) ?? [];
  if (what === undefined || digits === undefined) return undefined;
  const number = Number(digits);
  const { lightings } = daySheet;
  const chimneys = new Set(lightings.flatMap(({ chimney }) => chimney ?? []));
  const isCounted = what.toLowerCase() === 'lighting' || chimneys.size === 0;
  const lighting = isCounted ? lightings[number - 1] : lightingMeant(daySheet, number, now);
  if (lighting !== undefined) return { kind: 'chimney-failed', lighting: lighting.id };
  const most = isCounted ? lightings.length : Math.max(...chimneys);
  throw wrongUse(
    '--slip',
    `"${text}"`,
    isCounted ? `a lighting from 1 to ${most}` : `a chimney from 1 to ${most}`,
    'They are numbered on the sheet, under "Fires".',
  );
}

function guestsOf(text: string, plan: MealPlan): Slip | undefined {
  const pattern = new RegExp(`^guests?(?: of (.+?))? ${MINUTES} late$`, 'i');
  const [, dish, much] = pattern.exec(text) ?? [];
  if (much === undefined) return undefined;
  const minutes = minutesOf('--slip', much, 0);
  return dish === undefined
    ? { kind: 'guests-late', minutes }
    : { kind: 'guests-late', minutes, dish: dishIn(dish, plan) };
}

function ovenOf(text: string, { camp }: MealPlan): Slip | undefined {
  const [, name] = /^oven (.+?) (?:dropped|cracked|gone)$/i.exec(text) ?? [];
  if (name === undefined) return undefined;
  return { kind: 'oven-dropped', oven: idIn(name, camp.ovens, 'an oven of this camp') };
}

function handOf(text: string, { camp }: MealPlan): Slip | undefined {
  const [, name] = /^hand (.+?) gone$/i.exec(text) ?? [];
  if (name === undefined) return undefined;
  return { kind: 'hand-gone', hand: idIn(name, camp.hands, 'somebody of this camp') };
}

const dishIn = (name: string, { menu }: MealPlan) => idIn(name, menu.dishes, 'a dish of this menu');

function idIn(
  name: string,
  things: readonly { readonly id: string; readonly name: string }[],
  wanted: string,
): string {
  const low = name.toLowerCase();
  const found = things.find(
    (each) => each.id.toLowerCase() === low || each.name.toLowerCase() === low,
  );
  if (found !== undefined) return found.id;
  const ids = things.map(({ id }) => id).join(', ');
  throw wrongUse('--slip', `"${name}"`, wanted, `One of ${ids}.`);
}
