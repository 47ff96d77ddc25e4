// Sentences for the codes of provisions/.

import type { NoticeValues } from '../../notice/notice.ts';
import type { Words } from '../say.ts';

const num = (values: NoticeValues, key: string) => Number(values[key]);

export const provisionsWords: Words = {
  PROVISIONS_FUEL_SHORT: (values, _about, say) =>
    `Charcoal is ${say.mass(num(values, 'shortGrams'))} short of the plan with its spare: you ` +
    `have ${say.mass(num(values, 'onHandGrams'))}, take ${say.mass(num(values, 'wantedGrams'))}.`,
  PROVISIONS_FUEL_NOT_ENOUGH: (values, _about, say) =>
    `Not enough charcoal: the plan burns ${say.mass(num(values, 'bareGrams'))} without any spare ` +
    `and you have ${say.mass(num(values, 'onHandGrams'))}. Take ` +
    `${say.mass(num(values, 'wantedGrams'))}, or drop a dish.`,
  PROVISIONS_FUEL_UNCOUNTED: (values, _about, say) =>
    `Nobody has weighed your charcoal, so a piece is taken as ` +
    `${say.mass(num(values, 'pieceGrams'))}: weigh ten.`,
  PROVISIONS_AS_BOUGHT: (values, _about, say) =>
    `${values.name}: buy ${say.mass(num(values, 'boughtGrams'))} to have ` +
    `${say.mass(num(values, 'grams'))} ready to cook.`,
  PROVISIONS_DRINKING_HOURS: (values, _about, say) =>
    `Drinking water is ${say.volume(num(values, 'eachCubicMetres'))} each, for ` +
    `${say.minutes(60 * num(values, 'hours'))} at camp: take more if people stay longer or it ` +
    'is hot.',
  PROVISIONS_WATER_TRIPS: (values, _about, say) =>
    `All the water is ${say.count(num(values, 'trips'))} walks with two cans of ` +
    `${say.volume(0.01)} (${String(values.water)}): fill cans before the cooking starts, or send ` +
    'several people.',
  PROVISIONS_BAG_APART: (values, about, say) =>
    `Weigh the bag for ${about.dish === undefined ? 'this dish' : say.dish(about.dish)} first ` +
    `(free of ${String(values.free).replaceAll('-', ' ')}), with clean tools, before any other bag is opened.`,
  PROVISIONS_FOOD_UNKNOWN: (values) =>
    `${values.name} is not in our larder: check yourself how it has to be kept.`,
};
