// Sentences for the codes of bake/.

import type { NoticeValues } from '../../notice/notice.ts';
import type { Words } from '../say.ts';

const num = (values: NoticeValues, key: string) => Number(values[key]);

function helpsDark({ face, contact }: NoticeValues): string {
  if (face === 'top') return 'look early, and lift coals off the lid once it is brown';
  if (contact === 'iron') return 'lay paper under it, or better a rack';
  if (contact === 'paper') return 'set it on a rack, or strew a finger of meal under it';
  return 'look early, and take the coals from below once its edge is brown';
}

export const bakeWords: Words = {
  BAKE_TARGET_CAPPED: (values, _about, say) =>
    `Water boils at ${say.degrees(num(values, 'boilingKelvin'))} here, so take it out at ` +
    `${say.degrees(num(values, 'coreKelvin'))} inside, not ` +
    `${say.degrees(num(values, 'wantedKelvin'))}, and look for colour and a steady reading.`,
  BAKE_THICKNESS_OUTSIDE_EVIDENCE: (values, _about, say) =>
    `No figures stand behind a dough of ${say.length(num(values, 'rawMetres'))} that rises to ` +
    `${say.length(num(values, 'risenMetres'))}: trust the probe and the colour, not the minutes.`,
  BAKE_TOP_STAYS_PALE: (values, _about, say) =>
    `The middle is baked after ${say.minutes(num(values, 'bakedMinutes'))}, the top would be ` +
    `brown only after ${say.minutes(num(values, 'brownedMinutes'))}: put more of the coals on ` +
    'the lid, or take it out pale.',
  BAKE_FACE_BURNS: (values, _about, say) =>
    `The ${values.face} is burnt after ${say.minutes(num(values, 'burnMinutes'))}, before the ` +
    `bread is done after ${say.minutes(num(values, 'doneMinutes'))}: ` +
    (values.face === 'bottom'
      ? 'fewer coals below, or paper, meal or a rack under it.'
      : 'fewer coals on the lid, or take it out paler inside the band.'),
  BAKE_FACE_DARK: (values, _about, say) =>
    `The ${values.face} comes out dark, not yet burnt, when this is done after ` +
    `${say.minutes(num(values, 'doneMinutes'))}: ${helpsDark(values)}.`,
  BAKE_TOO_WET_TO_STAND: (values, _about, say) =>
    `With ${say.percent(num(values, 'hydrationRatio'))} of water to its flour this is a batter and ` +
    `will not stand by itself: ${say.mass(num(values, 'mostGrams'))} of water in all, milk and egg ` +
    'counted, is the most that does; or bake it in a tin.',
  BAKE_OVEN_TOO_COOL: () =>
    'The oven never gets hot enough for long enough to bake this through: lay more coals, ' +
    'screen the wind or add coals sooner.',
  BAKE_OVEN_OUTSIDE_EVIDENCE: (values, _about, say) =>
    `The minutes are weak at ${say.oven(num(values, 'ovenKelvin'))}: look early, and judge by ` +
    'probe and colour.',
  BAKE_TENDER_BY_FORK: (values, _about, say) =>
    `About ${say.minutes(num(values, 'minutes'))} from the boil, ` +
    `${values.from === 'recipe' ? "from the recipe's own time" : 'common practice, no source'}: ` +
    'no sum can say when it is tender, so judge by fork.',
  BAKE_SIMMER_ABOVE_EVIDENCE: (values, _about, say) =>
    `Water boils at ${say.degrees(num(values, 'boilingKelvin'))} here, cooler than the published ` +
    'rule for longer simmering reaches: start early and judge by fork.',
  BAKE_POT_BOILS_LATE: (values, _about, say) =>
    `It boils only about minute ${say.count(Math.round(num(values, 'minutes')))}: the time counts ` +
    'that in; more coals below at first would save some of it.',
  BAKE_POT_NEVER_BOILS: () =>
    'These coals do not bring the pot to a simmer: lay more below until it boils, then take ' +
    'some away.',
  BAKE_SAFE_CORE_ABOVE_BOIL: (values, _about, say) =>
    `The safe core of ${say.degrees(num(values, 'coreKelvin'))} is too near the boil here ` +
    `(${say.degrees(num(values, 'boilingKelvin'))}): do not cook this dish at this height.`,
  BAKE_SAFE_CORE_RAISED: (values, _about, say) =>
    `The recipe stops at ${say.degrees(num(values, 'wantedKelvin'))} inside; the safe core is ` +
    `${say.degrees(num(values, 'coreKelvin'))}, so cook it to that.`,
  BAKE_PIN_SHORT: (values, _about, say) =>
    `${say.minutes(num(values, 'pinnedMinutes'))} are kept as you pinned them; we would give it ` +
    `${say.minutes(num(values, 'minutes'))} (${say.minutes(num(values, 'leastMinutes'))} at the ` +
    'soonest), so it is likely raw in the middle: look, and leave it in.',
  BAKE_PIN_LONG: (values, _about, say) =>
    `${say.minutes(num(values, 'pinnedMinutes'))} are kept as you pinned them; we would give it ` +
    `${say.minutes(num(values, 'minutes'))} (${say.minutes(num(values, 'mostMinutes'))} at the ` +
    'latest), so look sooner.',
  BAKE_ROAST_BY_PROBE: (values, _about, say) =>
    `Probe from minute ${say.count(Math.round(num(values, 'leastMinutes')))} on and go by the ` +
    'core: size and shape change the minutes more than the fire does.',
};
