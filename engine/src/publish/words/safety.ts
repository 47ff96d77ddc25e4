// Sentences for the codes of safety/.

import type { NoticeValues } from '../../notice/notice.ts';
import type { Words } from '../say.ts';

const num = (values: NoticeValues, key: string) => Number(values[key]);

/** `tree-nut, milk` as it is said: `tree nut, milk`. */
const said = (allergens: unknown) => String(allergens).replaceAll('-', ' ');

const FOODS: Readonly<Record<string, string>> = {
  'ground-meat': 'ground meat',
  poultry: 'poultry',
  'whole-meat': 'meat',
  ham: 'ham',
  'egg-dish': 'egg',
  'wild-game': 'wild game',
  shellfish: 'shellfish',
  casserole: 'meat in a pot',
  leftover: 'food cooked before',
  fish: 'fish',
};

export const safetyWords: Words = {
  SAFETY_FIRE_FORBIDDEN: (_values, about, say) =>
    `No coals may be lit here under the fire restriction, so ` +
    `${about.dish === undefined ? 'this dish' : say.dish(about.dish)} can not be cooked over ` +
    'coals. Local orders override.',
  SAFETY_BLEACH_UNKNOWN: () =>
    'Read the per cent of sodium hypochlorite on the bleach label (1 to 15): without it no dose ' +
    'can be given.',
  SAFETY_BLEACH_NOT_FOR_DRINKING: (values) =>
    `No table of drops has bleach of ${num(values, 'percent')} %: boil the water, or take plain ` +
    'bleach of 6 to 8.25 %.',
  SAFETY_NO_WATER: () => 'Say how much water, and how strong: both more than nothing.',
  SAFETY_BLEACH_BETWEEN: (values) =>
    `The table prints drops for 6 and 8.25 %; for ${num(values, 'percent')} % those of the weaker ` +
    'row near it are taken.',
  SAFETY_LOW_HOLD: (values, _about, say) => {
    const why: Readonly<Record<string, string>> = {
      food: 'the table is of whole red meat only',
      people: 'children, old or ill people eat',
      low: `times under ${say.degrees(333.15)} were not confirmed`,
    };
    return (
      `No holding time for a core of ${say.degrees(num(values, 'coreKelvin'))}: ` +
      `${why[String(values.because)] ?? 'no table has it'}. Cook to the core on the card.`
    );
  },
  SAFETY_FIRE_STAGE_ONE: () =>
    'Stage 1 fire restriction: charcoal only in a ring or grate built in at a developed site, ' +
    'not on the ground, in a pan or on a table. Ask the local office; its order overrides.',
  SAFETY_FIRE_STAGE_TWO: () =>
    'Stage 2 fire restriction: no charcoal and no wood fire anywhere. Cook without fire.',
  SAFETY_FIRE_ASK: () =>
    'Nobody has said whether fires are restricted here: ask the local office before you light.',
  SAFETY_FIRE_COALS_ALLOWED: () =>
    'You say coals are allowed at this place: keep the permit or the rule at hand.',
  SAFETY_WIND_RED_FLAG: (values, _about, say) =>
    `Do not light: wind, ${say.wind(num(values, 'windMetresPerSecond'))}, at ` +
    `${say.clock(num(values, 'atClockMinutes'))} with dry, warm air is Red Flag weather. Local ` +
    'orders override.',
  SAFETY_WIND_STRONG: (values, _about, say) =>
    `Wind, ${say.wind(num(values, 'windMetresPerSecond'))}, at ` +
    `${say.clock(num(values, 'atClockMinutes'))}: ask whether a warning is out, and do not light ` +
    'if it is dry.',
  SAFETY_WIND_FRESH: (values, _about, say) =>
    `Wind, ${say.wind(num(values, 'windMetresPerSecond'))}, at ` +
    `${say.clock(num(values, 'atClockMinutes'))}: screen up, and someone watches the fire.`,
  SAFETY_CARBON_MONOXIDE: () =>
    'Coals never in a tent, vehicle, cave or under a fly, even when they feel cold: the gas ' +
    'kills and has no smell.',
  SAFETY_UNDER_ROOF: (values, about, say) =>
    `${about.dish === undefined ? 'This camp' : say.dish(about.dish)} speaks of "${values.roof}": no coals and no oven ` +
    'with coals on it in there or under it, whatever is open. An oven goes in when its lid and floor are swept clean.',
  SAFETY_HOT_IRON: () =>
    'Gloves and lifter. Lid level and far edge first, then on its stand. Black iron burns too.',
  SAFETY_CLEAR_GROUND: (values, _about, say) =>
    `Bare ground ${say.height(num(values, 'circleMetres'))} across, tents and gear ` +
    `${say.height(num(values, 'gearMetres'))} away, an adult always there.`,
  SAFETY_WATER_AT_HAND: () => 'Bucket of water and a shovel beside the fire before it is lit.',
  SAFETY_FIRE_PAN: () => 'Not on grass: put a fire pan with legs under the coals.',
  SAFETY_SNOW_MELTS: () => 'Coals on snow drown: put a fire pan or table under them.',
  SAFETY_BURNS: (values, _about, say) =>
    `A burn: cool running water for ${say.minutes(num(values, 'minutes'))}, no ice, no butter; ` +
    "any child's burn, or one on face, hands or groin, goes to a doctor.",
  SAFETY_ASH: () =>
    'Ash: drown, stir, drown, feel. Never bury coals. Into a lidded metal can, and live for days.',
  SAFETY_TREATED_WOOD: () => 'Never painted, treated or railway wood, and no wet river stones.',
  SAFETY_WASH_HANDS: (values, _about, say) =>
    `Soap and water, ${say.count(num(values, 'seconds'))} seconds, before food and after meat, ` +
    'egg, flour and ash. Sanitiser does not take allergens off.',
  SAFETY_ILL_HANDS: (values, _about, say) =>
    `Sick in the last ${say.count(num(values, 'hours'))} hours: hands off the food.`,
  SAFETY_TREAT_WATER: (values, _about, say) =>
    values.isTreated === 'yes'
      ? 'Water from the wild: drink it and use it uncooked only as filtered or treated. A filter ' +
        'may let viruses through; its label says so.'
      : 'Water from the wild, unless a filter or tablets treat it: a rolling boil for ' +
        `${say.minutes(num(values, 'boilMinutes'))} before it is drunk or used uncooked. That is ` +
        'no job of this plan: bring treated water, or give the boiling to somebody.',
  SAFETY_HIGH_RISK: (values, _about, say) =>
    `${say.count(num(values, 'people'))} children or people over 65 eat: keep to the cores on ` +
    'the cards, no raw egg, dough or sprouts.',
  SAFETY_PROBE: (values, _about, say) =>
    values.by === 'boil'
      ? `No thermometer: keep it at a steady bubble to the end, every piece under the liquid, then ` +
        `${FOODS[String(values.food)] ?? String(values.food)} is hotter than the ` +
        `${say.degrees(num(values, 'coreKelvin'))} it needs.`
      : `${values.by === 'borrow' ? 'Borrow a thermometer, no sign tells it. ' : ''}` +
        `Probe the coldest point: ${say.degrees(num(values, 'coreKelvin'))} for ` +
        `${FOODS[String(values.food)] ?? String(values.food)}` +
        `${num(values, 'restMinutes') > 0 ? `, then rest ${say.minutes(num(values, 'restMinutes'))}` : ''}.`,
  SAFETY_KIDNEY_BEANS: (values, _about, say) =>
    `Dry beans of this sort are poison half cooked: soak ` +
    `${say.minutes(num(values, 'soakMinutes'))}, throw that water away, boil hard for ` +
    `${say.minutes(num(values, 'boilMinutes'))} in fresh water, only then simmer.`,
  SAFETY_BEANS_AT_HEIGHT: (values, _about, say) =>
    `At ${say.height(num(values, 'heightMetres'))} water boils cooler than that rule was made for, and no figure for ` +
    'heights was found: boil these beans at home, or take tinned ones.',
  SAFETY_READINGS_FEW: () =>
    'Give readings with their times, soonest first: 18:30 150 F, 20:15 72 F.',
  SAFETY_RAW_FLOUR: () => 'Flour is raw: no tasting, and wash hands and table after it.',
  SAFETY_HONEY: () => 'Honey, baked or not, is never for a child under one year.',
  SAFETY_RICE: () => 'Rice: eat it hot, chill within an hour, eat within a day, re-heat once.',
  SAFETY_GARLIC_OIL: () =>
    'Garlic in oil: make it fresh, keep it cold, never keep it warm, and throw it away after four days.',
  SAFETY_KEEP_COLD: (values, _about, say) =>
    `Keep it at ${say.degrees(num(values, 'coldKelvin'))} or below until it is served.`,
  SAFETY_EGG_NOT_COOKED: () => 'Egg that is not cooked here: boiled or pasteurised only.',
  SAFETY_CHECK_LABEL: (values) =>
    `Read the label of ${values.ingredient}: it may hold ${said(values.allergen)}. Until then it counts ` +
    'as in the dish.',
  SAFETY_KEPT_APART: (values) =>
    `${values.free === '' ? 'Kept apart' : `Kept free of ${said(values.free)}`}: own oven, lid lifter ` +
    'and spoon, clean hands, mixed first and served first.',
  SAFETY_NO_OVEN_KEPT_APART: () =>
    'No oven of this camp is kept for this dish alone, and seasoned iron can not be washed clean ' +
    'of an allergen: keep one for it.',
  SAFETY_NOT_FREE: (values) => `It holds ${said(values.found)}: say so at the line.`,
  SAFETY_PUBLIC_NO_HAND_WASH: () =>
    'A public event needs a hand-wash line and none is listed: a can with a tap that stays open, soap, ' +
    'paper, a bucket under it, before anyone touches food.',
  SAFETY_PUBLIC_NO_THERMOMETER: () =>
    'A public event needs a stem thermometer that reads from ice to the boil, and none is listed.',
  SAFETY_PUBLIC_EVENT: (values, _about, say) =>
    'Food for the public: file with the health office 10 days to 4 weeks before, whose rules override. Its ' +
    `code asks ${say.degrees(num(values, 'codeHotKelvin'))} hot and ${say.degrees(num(values, 'codeColdKelvin'))} cold; ` +
    `this plan keeps the stricter ${say.degrees(num(values, 'hotKelvin'))} and ` +
    `${say.degrees(num(values, 'coldKelvin'))}. Fresh spoons every four hours, food off the ground, the log kept.`,
  SAFETY_WILD_GAME: () => 'Wild game is cooked through like poultry, roasts too.',
  SAFETY_SHELLFISH: () =>
    'Shellfish: flesh opaque all through; shells open in the cooking, and what stays shut is thrown away.',
  SAFETY_FOIL_POTATO: (values, _about, say) =>
    `Potatoes in foil: above ${say.degrees(num(values, 'hotKelvin'))} until they are eaten, or open the foil ` +
    'and chill them. Never left standing in it.',
  SAFETY_UNFIT: (values, about, say) =>
    `Not for ${values.who}: ${about.dish === undefined ? 'this dish' : say.dish(about.dish)} ` +
    `(${said(values.because)}).`,
  SAFETY_NOTHING_TO_EAT: (values) => `Nothing on this menu is safe for ${values.who}: add a dish.`,
};
