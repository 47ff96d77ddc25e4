// Sentences for the codes of menu/ about a pasted text: how it was read, and what was put in.

import type { NoticeValues } from '../../notice/notice.ts';
import type { Say, Words } from '../say.ts';

const num = (values: NoticeValues, key: string) => Number(values[key]);
const has = (values: NoticeValues, key: string) => values[key] !== undefined;
const people = (count: number) => (count === 1 ? '1 portion' : `${count} portions`);

/** "17 coals above and 8 below", as far as it was written. */
function writerCoals(values: NoticeValues): string {
  const sides = [
    ...(has(values, 'above') ? [`${num(values, 'above')} above`] : []),
    ...(has(values, 'below') ? [`${num(values, 'below')} below`] : []),
  ];
  if (0 < sides.length) return sides.join(' and ').replace(/^(\d+)/, '$1 coals');
  return has(values, 'pieces')
    ? `${num(values, 'pieces')} coals`
    : `${Math.round(100 * num(values, 'aboveRatio'))} % of the coals on the lid`;
}

export const menuTextWords: Words = {
  MENU_TEXT_EMPTY: () => 'There is nothing to read: paste a recipe.',
  MENU_TEXT_TOO_LONG: (values) =>
    `That is ${Math.round(num(values, 'letters') / 1000)} thousand letters, and a recipe has at most ` +
    `${Math.round(num(values, 'most') / 1000)} thousand: paste one recipe at a time.`,
  MENU_TEXT_NO_INGREDIENTS: () =>
    'No ingredient was found: write each on a line of its own, its amount first.',
  MENU_TEXT_KIND: (values) => `Taken as ${kindName(values.kind)}: ${reasonFor(values)}.`,
  MENU_TEXT_UNREAD: (values) =>
    num(values, 'pieces') === 1
      ? 'One part was not understood; it is kept as it stands.'
      : `${num(values, 'pieces')} parts were not understood; they are kept as they stand.`,
  MENU_TEXT_PORTIONS: (values) =>
    `How much it makes is not said: by its weight about ${people(num(values, 'portions'))}.`,
  MENU_TEXT_HEAT: (values, _about, say) =>
    `No heat is named: ${say.oven(num(values, 'ovenKelvin'))} is usual for its kind.`,
  MENU_TEXT_HEAT_READ: (values, _about, say) =>
    `The heat is read as ${say.oven(num(values, 'ovenKelvin'))}.`,
  MENU_TEXT_COALS: (values) =>
    `The writer lays ${writerCoals(values)}. It stands beside our count, which is reckoned for ` +
    'your oven, air and wind.',
  MENU_TEXT_STEPS: (values) => putIn(String(values.steps).split(', ')),
  MENU_TEXT_LIQUID: (values, about, say) =>
    `How much ${about.ingredient} is not said: ${say.mass(num(values, 'massGrams'))} makes a usual ` +
    'dough. Hold some back.',
  MENU_TEXT_TWO: () =>
    'Two breads seem to stand in this text, and they were read as one: paste one at a time.',
  MENU_TEXT_ZERO: (values, about) =>
    `"${values.written}" puts nothing in: write how much ${about.ingredient}, or leave the line out.` +
    (values.part === 'flour' || values.part === 'meal'
      ? ' Without flour there is no dough: a soft one has about three cups of flour to one of liquid.'
      : ''),
  MENU_TEXT_PINCH: (values, about, say) =>
    `How much ${about.ingredient} is not said: ${smallMass(num(values, 'massGrams'), say)} is assumed.`,
};

/** A pinch is grams to every reader. */
const smallMass = (mass: number, say: Say) =>
  mass < 28.35 ? `${Math.round(10 * mass) / 10}\u00a0g` : say.mass(mass);

const PUT_IN: Readonly<Record<string, string>> = {
  mix: 'mixing',
  rise: 'a first rise',
  shape: 'shaping',
  'second-rise': 'a second rise once it is shaped',
  load: 'into the oven',
  cook: 'cooking',
  'take-out': 'out of the oven',
};

function putIn(steps: readonly string[]): string {
  const named = steps.map((step) => PUT_IN[step] ?? step).join(', ');
  const rise = steps.includes('second-rise')
    ? ' Without a second rise a loaf is dense: write "bake at once" where that is meant.'
    : '';
  return `Put in, since the text does not tell it: ${named}.${rise}`;
}

/** "yeast-bread" as a cook says it. */
const kindName = (kind: number | string | undefined) => String(kind).replace('-', ' ');

const REASONS: Readonly<Record<string, string>> = {
  yeast: 'yeast and flour are in it',
  'cut-rounds': 'a leavened dough is cut into rounds',
  cornmeal: 'a good part of its flour is cornmeal',
  'fruit-under-dough': 'there is more fruit than flour',
  'leavened-flour': 'flour is raised with powder or soda',
  flour: 'flour is most of it',
  beans: 'beans are a good part of it',
  'meat-and-liquid': 'meat cooks in liquid or with vegetables',
  'meat-alone': 'it is mostly meat',
  fruit: 'it is mostly fruit',
  vegetables: 'it is mostly vegetables',
  'nothing-known': 'nothing in it tells, so choose',
};

const reasonFor = (values: NoticeValues) =>
  values.because === 'title' ? `its title says "${values.word}"` : REASONS[String(values.because)];
