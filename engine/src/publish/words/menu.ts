// Sentences for the codes of menu/.

import type { NoticeValues } from '../../notice/notice.ts';
import type { Say, Words } from '../say.ts';

const num = (values: NoticeValues, key: string) => Number(values[key]);
const has = (values: NoticeValues, key: string) => values[key] !== undefined;

/** Two lengths that are said alike are still not alike. */
function thickest(values: NoticeValues, say: Say): string {
  const most = say.length(num(values, 'mostMetres'));
  const isAlike = most === say.length(num(values, 'thicknessMetres'));
  return isAlike ? `a little less than ${most}` : most;
}

export const menuWords: Words = {
  MENU_SERVE_PAST: (values, about, say) =>
    `${say.dish(about.dish ?? '')} was to be served at ` +
    `${say.clock(num(values, 'serveAtClockMinutes'))}, and it is ` +
    `${say.clock(num(values, 'nowClockMinutes'))} already: choose a later time.`,
  MENU_PIN_WITHOUT_EFFECT: (_values, about, say) =>
    `${say.dish(about.dish ?? '')} is pinned to a hot or cold oven, which changes nothing: it ` +
    'heats up with its oven, or needs none.',
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
  MENU_POT_FULL: (values, about, say) =>
    `${say.ovenName(about.oven ?? '')} is full to ${say.percent(0.75 * num(values, 'fillRatio'))} of ` +
    'what it holds; three quarters is the usual limit. Let it simmer gently.',
  MENU_LOW_HEADROOM: (values, about, say) =>
    `${say.dish(about.dish ?? '')} will stand only ${say.length(num(values, 'headroomMetres'))} ` +
    'below the lid: look early, the top may darken.',
  MENU_SPLIT: (values, about, say) =>
    `${say.dish(about.dish ?? '')} is shared over ${num(values, 'ovens')} ovens: weigh and divide it.`,
  MENU_IN_TURNS: (values, about, say) =>
    `${say.dish(about.dish ?? '')} is baked in ${num(values, 'turns')} turns: the first waits for ` +
    'the last.',
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
