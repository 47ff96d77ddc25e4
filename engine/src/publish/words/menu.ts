// Sentences for the codes of menu/.

import type { NoticeValues } from '../../notice/notice.ts';
import type { Say, Words } from '../say.ts';

const num = (values: NoticeValues, key: string) => Number(values[key]);
const has = (values: NoticeValues, key: string) => values[key] !== undefined;
const people = (count: number) => (count === 1 ? '1 portion' : `${count} portions`);

/** One of what the question was about, in a cook's words. */
export function fitWord(what: unknown): string {
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

/** Two lengths that are said alike are still not alike. */
function thickest(values: NoticeValues, say: Say): string {
  const most = say.length(num(values, 'mostMetres'));
  const isAlike = most === say.length(num(values, 'thicknessMetres'));
  return isAlike ? `a little less than ${most}` : most;
}

export const menuWords: Words = {
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
  MENU_SERVE_PAST: (values, about, say) =>
    `${say.dish(about.dish ?? '')} was to be served at ` +
    `${say.clock(num(values, 'serveAtClockMinutes'))}, and it is ` +
    `${say.clock(num(values, 'nowClockMinutes'))} already: choose a later time.`,
  MENU_LATEST_BEFORE_SERVE: (values, about, say) =>
    `${say.dish(about.dish ?? '')} may be no later than ` +
    `${say.clock(num(values, 'latestAtClockMinutes'))}, yet is served at ` +
    `${say.clock(num(values, 'serveAtClockMinutes'))}.`,
  MENU_PIN_UNKNOWN: (values, about, say) =>
    `${say.dish(about.dish ?? '')} is pinned to "${values.pin}", which is not in this camp.`,
  MENU_PIN_IMPOSSIBLE: (_values, about, say) =>
    `A number pinned for ${say.dish(about.dish ?? '')} can not be used: change it or let go of it.`,
  MENU_PIN_WITHOUT_EFFECT: (_values, about, say) =>
    `${say.dish(about.dish ?? '')} is pinned to a hot or cold oven, which changes nothing: it ` +
    'heats up with its oven, or needs none.',
  MENU_STEPS_CIRCULAR: (_values, about) =>
    `The steps of "${about.recipe}" can not be done in any order: one waits for a step that is not ` +
    'there, or two wait for each other, or one takes days.',
  MENU_OVEN_TOO_SMALL: (values, about, say) =>
    `No oven here holds ${say.mass(num(values, 'massGrams'))} of ${say.dish(about.dish ?? '')}` +
    (num(values, 'biggestGrams') > 0
      ? `: the most that goes in is ${say.mass(num(values, 'biggestGrams'))}`
      : '; it does not go into any of them') +
    (has(values, 'diameterMetres')
      ? `; a ${values.style} oven of ${say.length(num(values, 'diameterMetres'))} would hold it.`
      : ', and no usual oven would hold it.'),
  MENU_TOO_THICK: (values, about, say) =>
    `${say.dish(about.dish ?? '')} of ${say.length(num(values, 'thicknessMetres'))} would rise ` +
    `against the lid: the thickest that goes in here is ${thickest(values, say)}` +
    (has(values, 'diameterMetres')
      ? `; a ${values.style} oven of ${say.length(num(values, 'diameterMetres'))} would take it.`
      : '.'),
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
  MENU_POT_FULL: (values, about, say) =>
    `${say.ovenName(about.oven ?? '')} is full to ${say.percent(0.75 * num(values, 'fillRatio'))} of ` +
    'what it holds; three quarters is the usual limit. Let it simmer gently.',
  MENU_POT_PRESSED: (values, about, say) =>
    `${say.ovenName(about.oven ?? '')} is full to ${say.percent(0.75 * num(values, 'fillRatio'))} of ` +
    `what it holds with ${say.dish(about.dish ?? '')}, fuller than four fifths: over one more oven ` +
    'supper would be late. Only just simmer it, stay near, ladle some off if it rises.',
  MENU_LOW_HEADROOM: (values, about, say) =>
    `${say.dish(about.dish ?? '')} will stand only ${say.length(num(values, 'headroomMetres'))} ` +
    'below the lid: look early, the top may darken.',
  MENU_SPLIT: (values, about, say) =>
    `${say.dish(about.dish ?? '')} is shared over ${num(values, 'ovens')} ovens: weigh and divide it.`,
  MENU_IN_TURNS: (values, about, say) =>
    `${say.dish(about.dish ?? '')} is baked in ${num(values, 'turns')} turns: the first waits for ` +
    'the last.',
  MENU_OVEN_TIGHT: (values, about, say) =>
    `${say.dish(about.dish ?? '')} and ${say.dish(String(values.otherDish))} both want ` +
    `${say.ovenName(about.oven ?? '')}, ${say.minutes(num(values, 'overlapMinutes'))} at once: one ` +
    'more oven would free it.',
  MENU_DIVISION_LEFT_OVER: (values, about, say) =>
    `The pieces of ${say.dish(about.dish ?? '')} come to ${say.mass(num(values, 'piecesGrams'))}, the ` +
    `dough to ${say.mass(num(values, 'doughGrams'))}: the pieces are weighed so that all is used.`,
  MENU_OVEN_BETWEEN_SIZES: (values, _about, say) =>
    `An oven of ${say.length(num(values, 'diameterMetres'))} is reckoned between its neighbours, ` +
    `${say.length(num(values, 'depthMetres'))} deep: measure yours, your own figures win.`,
  MENU_OVEN_SIZE_UNKNOWN: (values, _about, say) =>
    has(values, 'diameterMetres')
      ? `An oven of ${say.length(num(values, 'diameterMetres'))} is outside what we know: ` +
        `${say.length(0.2032)} to ${say.length(0.4064)}.`
      : `Say how wide the oven is: ${say.length(0.2032)} to ${say.length(0.4064)}.`,
  MENU_READY_RECIPE_UNKNOWN: (values) => `There is no ready recipe called "${values.wanted}".`,
};
