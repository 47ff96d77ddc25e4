// Sentences for the codes of menu/ about wishes that can't be as they stand: recipes, amounts, pins, what is
// to lie in an oven.

import type { NoticeValues } from '../../notice/notice.ts';
import type { Words } from '../say.ts';

const num = (values: NoticeValues, key: string) => Number(values[key]);
const has = (values: NoticeValues, key: string) => values[key] !== undefined;
const people = (count: number) => (count === 1 ? '1 portion' : `${count} portions`);

/** One of what the question was about, in a cook's words. */
function fitWord(what: unknown): string {
  const words: Readonly<Record<string, string>> = {
    biscuits: 'biscuit',
    rolls: 'roll',
    wedges: 'scored round',
    'tin-loaf': 'loaf in its tin',
    pot: 'pot of food',
    dumplings: 'stew with dumplings',
  };
  return words[String(what)] ?? String(what);
}

export const menuWishesWords: Words = {
  MENU_RECIPE_MISSING: (_values, about, say) =>
    `${say.dish(about.dish ?? '')} has no recipe: "${about.recipe}" is not in this camp.`,
  MENU_RECIPE_EMPTY: (_values, about) =>
    `The recipe "${about.recipe}" has no ingredients, or makes no portions.`,
  MENU_AMOUNT_IMPOSSIBLE: (_values, about) =>
    about.ingredient === undefined
      ? `An amount of the recipe "${about.recipe}" is zero, negative or no number.`
      : `${about.ingredient} in the recipe "${about.recipe}" weighs nothing or less: weigh it again.`,
  MENU_AMOUNT_ABSURD: (values, about, say) =>
    has(values, 'massGrams')
      ? `${say.mass(num(values, 'massGrams'))} of ${about.ingredient} is more than a camp could ` +
        'bake: look for a slipped decimal point.'
      : `${people(Math.round(num(values, 'portions')))} of the recipe "${about.recipe}" is more than ` +
        'a camp could bake: look for a slipped decimal point.',
  MENU_PIECES_MISSING: (values, about, say) =>
    `${say.dish(about.dish ?? '')} wants ${values.pieces}, and the recipe "${about.recipe}" is not ` +
    'divided so: say how many pieces it makes, and what each weighs.',
  MENU_NOBODY_EATS: (_values, about, say) =>
    `Nobody is left to eat ${say.dish(about.dish ?? '')}: say how many portions, or who takes it.`,
  MENU_PORTIONS_NEGATIVE: (values, about, say) =>
    `${say.dish(about.dish ?? '')}: found ${String(values.portions)} portions, wanted 0 or more. Say ` +
    'how many, or leave them out and they follow the mouths.',
  MENU_LATEST_BEFORE_SERVE: (values, about, say) =>
    `${say.dish(about.dish ?? '')} may be no later than ` +
    `${say.clock(num(values, 'latestAtClockMinutes'))}, yet is served at ` +
    `${say.clock(num(values, 'serveAtClockMinutes'))}.`,
  MENU_PIN_UNKNOWN: (values, about, say) =>
    `${say.dish(about.dish ?? '')} is pinned to "${values.pin}", which is not in this camp.`,
  MENU_PIN_IMPOSSIBLE: (_values, about, say) =>
    `A number pinned for ${say.dish(about.dish ?? '')} can not be used: change it or let go of it.`,
  MENU_STEPS_CIRCULAR: (_values, about) =>
    `The steps of "${about.recipe}" can not be done in any order: one waits for a step that is not ` +
    'there, or two wait for each other, or one takes days.',
  MENU_NOTHING_FITS: (values, _about, say) =>
    `No ${fitWord(values.what)} goes into this oven: its floor is ` +
    `${say.length(num(values, 'floorMetres'))} wide and it is ${say.length(num(values, 'depthMetres'))} ` +
    'deep, with a finger to be left below the lid. Make it thinner or smaller, or take a deeper oven.',
  MENU_MASS_AGAINST_FILL: (values, _about, say) =>
    `The whole mass of ${say.mass(num(values, 'wantedGrams'))} and a full ` +
    `${say.length(num(values, 'diameterMetres'))} oven can't stand together: at ` +
    `${say.length(num(values, 'thicknessMetres'))} raw it takes ${say.mass(num(values, 'fillGrams'))}. ` +
    (has(values, 'nearestThicknessMetres')
      ? `The nearest that works: ${say.mass(num(values, 'wantedGrams'))} fills it if it lies ` +
        `${say.length(num(values, 'nearestThicknessMetres'))} thick. `
      : '') +
    'Or leave one of the two out.',
  MENU_THICKNESS_WITHOUT_EFFECT: (values, about, say) =>
    `${say.dish(about.dish ?? '')} can't be made ${say.length(num(values, 'thicknessMetres'))} ` +
    'thick: it takes its own shape, or its amount decides. Say how much you want instead.',
  MENU_NO_OVEN: (_values, about, say) =>
    `There is no oven for ${say.dish(about.dish ?? '')}: add one, or serve something cold.`,
  MENU_PINNED_OVEN_OVERFULL: (values, about, say) =>
    `${say.ovenName(about.oven ?? '')} stays as you pinned it, but ` +
    `${say.dish(about.dish ?? '')} fills it to ${say.percent(num(values, 'fillRatio'))} of what is ` +
    'good: make less, or use a larger one.',
  MENU_POT_PRESSED: (values, about, say) =>
    `${say.ovenName(about.oven ?? '')} is full to ${say.percent(0.75 * num(values, 'fillRatio'))} of ` +
    `what it holds with ${say.dish(about.dish ?? '')}, fuller than four fifths: over one more oven ` +
    'supper would be late. Only just simmer it, stay near, ladle some off if it rises.',
  MENU_OVEN_TIGHT: (values, about, say) =>
    `${say.dish(about.dish ?? '')} and ${say.dish(String(values.otherDish))} both want ` +
    `${say.ovenName(about.oven ?? '')}, ${say.minutes(num(values, 'overlapMinutes'))} at once: one ` +
    'more oven would free it.',
};
