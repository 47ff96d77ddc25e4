// Sentences for the codes of formula/.

import type { NoticeValues } from '../../notice/notice.ts';
import type { Words } from '../say.ts';
import { sentenceCase } from '../sheet/phrases.ts';
import { decimal } from '../speak-number.ts';

/** Soda and cream of tartar for the powder; a small scale shows a tenth. */
const instead = (values: NoticeValues) =>
  `${decimal(num(values, 'sodaGrams'), 1)} g of soda with ${decimal(num(values, 'tartarGrams'), 1)} g of cream of tartar`;

const num = (values: NoticeValues, key: string) => Number(values[key]);

export const formulaWords: Words = {
  FORMULA_HEIGHT_CUT: (values, _about, say) =>
    `At ${say.height(num(values, 'elevationMetres'))} the same gas takes more room, so ` +
    `${say.percent(num(values, 'cutRatio'))} of it is left out; the old amount stands beside the new.`,
  FORMULA_HEIGHT_RAISED: (values, _about, say) =>
    `The recipe was written for thinner air than at ${say.height(num(values, 'elevationMetres'))}, so ` +
    `the leavening is ${say.percent(-num(values, 'cutRatio'))} more; the old amount stands beside the new.`,
  FORMULA_ALREADY_TRIMMED: (_values, about) =>
    `${about.ingredient} is already cut for height, as the recipe says, and is left as it is.`,
  FORMULA_HEIGHT_ABOVE_RANGE: (values, _about, say) =>
    `No published advice for baking reaches ${say.height(num(values, 'elevationMetres'))}: bake a ` +
    'small piece first.',
  FORMULA_SALT_UNUSUAL: (values, _about, say) =>
    `The salt is ${say.percent(num(values, 'saltRatio'))} of the flour; bread has about 2 %. Was a ` +
    'spoon misread?',
  FORMULA_LEAVENING_HIGH: () =>
    'There is more leavening in this than in any published formula we know. Was a spoon misread?',
  FORMULA_LEAVENING_MISSING: () => 'Nothing in this makes it rise: no yeast, no powder, no soda.',
  FORMULA_DOUGH_WET: (values, _about, say) =>
    `With ${say.percent(num(values, 'hydrationRatio'))} water this pours and can't be shaped: hold ` +
    'some of the water back, or bake it as one.',
  FORMULA_FOOD_UNKNOWN: (_values, about) =>
    `${about.ingredient} is not in the larder: its grams count, its water, fat and salt don't.`,
  FORMULA_UNWEIGHED: (values, about) =>
    `${about.ingredient} ("${values.written}") has no weight: batch, formula and time leave it out` +
    `${values.isDough === 'yes' ? ', so the dough is another than you will mix' : ''}. ` +
    'Write its grams, or add it as a food of your own.',
  FORMULA_RISE_COLD: (values, _about, say) =>
    `At ${say.degrees(num(values, 'doughKelvin'))} the dough hardly rises: keep it in a warm box, or ` +
    'mix it with warmer water.',
  FORMULA_RISE_WARM: (values, _about, say) =>
    `At ${say.degrees(num(values, 'doughKelvin'))} the dough is too warm for a sound estimate: put it ` +
    'in the shade and look early.',
  FORMULA_RISE_STOPPED: (values, _about, say) =>
    `At ${say.degrees(num(values, 'placeKelvin'))} this dough stops before it has risen: in ` +
    `a day it comes to ${say.percent(num(values, 'doneRatio'))} of its rise.` +
    (values.boxMinutes === undefined
      ? ' Make another bread, or raise it at home.'
      : ` Nearest that works: a box at ${say.degrees(num(values, 'boxKelvin'))}, where it is risen after ` +
        `${say.minutes(num(values, 'boxMinutes'))}.`),
  FORMULA_RISE_LONG: (values, _about, say) =>
    `Where it stands the first rise takes about ${say.minutes(num(values, 'firstMinutes'))}: mix it the evening before` +
    (values.boxMinutes === undefined
      ? '.'
      : `, or keep it in a box at ${say.degrees(num(values, 'boxKelvin'))}, where it takes ${say.minutes(num(values, 'boxMinutes'))}.`),
  FORMULA_WATER_CAPPED: (values, _about, say) => {
    const dough = say.degrees(num(values, 'doughKelvin'));
    const bring = values.egg === 1 ? 'flour and eggs' : 'the flour';
    if (values.limit === 'nothing to warm') {
      return `Nothing in this dough can be warmed before the yeast: it comes to ${dough}. Bring ${bring} to room warmth first.`;
    }
    const what = String(values.warmed ?? '') || 'water';
    return (
      `${sentenceCase(what)} of ${say.degrees(num(values, 'waterKelvin'))} is the limit; the dough then ` +
      `comes to ${dough}. Bring ${bring} nearer to that first.`
    );
  },
  FORMULA_POWDER_WEAK: (values) =>
    `The powder fizzes weakly and no one can say what it still lifts. Take new, or ${instead(values)} instead.`,
  FORMULA_POWDER_DEAD: (values) =>
    `The powder does not fizz and lifts nothing. Take ${instead(values)} instead.`,
  FORMULA_POWDER_OLD: (values) =>
    `The powder has been open for ${num(values, 'months')} months: damp, not time, spoils it, so test it. ` +
    'Half a teaspoon in a quarter cup of hot water must fizz hard.',
  FORMULA_SODA_LEFT: (values, _about, say) =>
    `About ${decimal(num(values, 'sodaGrams'), 1)} g of soda finds no acid, ` +
    `${say.percent(num(values, 'leftRatio'))} of the flour: bitter, soapy, and yellowish brown inside.`,
  FORMULA_WATER_OUT_OF_REACH: (values, _about, say) =>
    `No water between ice and what kills yeast makes a dough of ` +
    `${say.degrees(num(values, 'wantedKelvin'))} with flour at ` +
    `${say.degrees(num(values, 'flourKelvin'))}: warm or cool the flour.`,
};
