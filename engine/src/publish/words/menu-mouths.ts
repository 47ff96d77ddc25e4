// Sentences for the codes of menu/ about who eats: portions held back, and what somebody must not have.

import type { NoticeValues } from '../../notice/notice.ts';
import type { Words } from '../say.ts';

const num = (values: NoticeValues, key: string) => Number(values[key]);
const people = (count: number) => (count === 1 ? '1 portion' : `${count} portions`);

export const menuMouthsWords: Words = {
  MENU_PINNED_OVEN_NOT_KEPT_FREE: (values, about, say) =>
    `${say.ovenName(about.oven ?? '')} is kept free of ${values.allergen}, and ` +
    `${say.dish(about.dish ?? '')} has it in: it can't be the safe oven after that.`,
  MENU_NOT_KEPT_FREE: (_values, about, say) =>
    `No oven here is kept free for ${say.dish(about.dish ?? '')}: scrub and burn out ` +
    `${say.ovenName(about.oven ?? '')}, line it, and use it for nothing else before.`,
  MENU_RESERVE: (values, about, say) =>
    `${people(num(values, 'portions'))} of ${say.dish(about.dish ?? '')} are added and held back for ` +
    'latecomers (common practice).',
  MENU_LATECOMERS: (values, about, say) =>
    `Keep ${people(num(values, 'portions'))} of ${say.dish(about.dish ?? '')} apart, covered: ` +
    `${say.count(num(values, 'mouths'))} come ${say.minutes(num(values, 'lateMinutes'))} late.`,
  MENU_LATE_LONGER: (values, about, say) =>
    `${say.count(num(values, 'mouths'))} come ${say.minutes(num(values, 'lateMinutes'))} late and ` +
    `${say.dish(about.dish ?? '')} waits well for ${say.minutes(num(values, 'waitsMinutes'))}: make ` +
    `their ${people(num(values, 'portions'))} later, or keep them and say that they are not fresh.`,
  MENU_FOOD_SHORT: (values, about, say) =>
    `${say.dish(about.dish ?? '')} is ${people(num(values, 'portions'))}, ` +
    `${say.count(num(values, 'eaters'))} eat it` +
    `${values.eaters === values.wantedPortions ? '' : ` and want ${people(Math.ceil(num(values, 'wantedPortions')))}`}` +
    ': raise the portions, or leave them out and they follow the mouths.',
  MENU_CANNOT_EAT: (values, about, say) =>
    `${values.who} can't eat ${say.dish(about.dish ?? '')} (${values.because})` +
    (values.portions === 'kept' ? '; the portions stay as you gave them.' : ' and is not counted.'),
  MENU_NOTHING_TO_EAT: (values, _about, say) =>
    `${values.who} can eat nothing that is served at ` +
    `${say.clock(num(values, 'serveAtClockMinutes'))}.`,
  MENU_CHECK_LABEL: (values, about, say) =>
    `Read the label of ${about.ingredient} for ${say.dish(about.dish ?? '')}: it may hold ` +
    `${values.allergen}, which ${values.who} must not have.`,
  MENU_TITLE_CONTRADICTED: (values, about) =>
    `"${values.title}" is called free of ${values.allergen}, and it is NOT: ` +
    `${about.ingredient ?? 'the recipe itself'} holds it. Serve it to nobody who must not have it.`,
  MENU_TITLE_NOT_CHECKED: (values) =>
    `"${values.title}" is called free of ${values.allergen}: NOT CHECKED. ` +
    (values.labels === '' ? '' : `Read the label of ${values.labels}. `) +
    'Nothing keeps oven, hands and tools apart for it, until the dish is marked to be kept free.',
};
