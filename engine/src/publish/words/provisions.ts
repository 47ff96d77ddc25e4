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
  PROVISIONS_PACK_ZERO: (values) =>
    `${values.name}: found a pack of ${String(values.foundGrams)} g, wanted more than 0. Write what ` +
    'stands on the packet; until then it is bought by weight.',
  PROVISIONS_YIELD_OVER_ONE: (values) =>
    `${values.name}: found a usable share of ${percentFound(num(values, 'foundRatio'))}, wanted more than ` +
    '0 and at most 100 %. Peeling never adds: a factor of 1.19 is a share of 84 %.',
  PROVISIONS_STORE_UNUSED: (values) =>
    `${values.name} stands in your stores and no dish uses it: check its name against the list.`,
  PROVISIONS_OVERLOAD: (values, _about, say) =>
    `Too heavy by ${say.mass(num(values, 'overGrams'))}: ${boxesWord(num(values, 'boxes'))} of ` +
    `${say.mass(num(values, 'massGrams'))} in all ${values.boxes === 1 ? 'finds' : 'find'} no carrier, ` +
    `though they may carry ${say.mass(num(values, 'limitGrams'))}. Take one more, go twice, or leave ` +
    'something at home.',
  PROVISIONS_BOX_HEAVY: (values, _about, say) =>
    `Box ${values.box} is ${say.mass(num(values, 'overGrams'))} heavier than a box may be and can not ` +
    'be divided: carry it by two.',
  PROVISIONS_ICE_SHORT: (values, _about, say) =>
    `The ice in ${values.cooler} lasts ${say.minutes(num(values, 'lastsMinutes'))} of ` +
    `${say.minutes(num(values, 'wantedMinutes'))}: take ${say.mass(num(values, 'shortGrams'))} more, or ` +
    'pack later.',
  PROVISIONS_COOLER_FULL: (values, _about, say) =>
    `Food and ice want ${say.percent(num(values, 'fillRatio'))} of the room in ${values.cooler}: take a ` +
    'second cooler, or leave out what needs no cold.',
  PROVISIONS_RAW_BESIDE_READY: (values) =>
    `${values.cooler} holds raw meat and food that is eaten as it is: take a second cooler, or seal the ` +
    'raw meat and lay it at the bottom, under everything.',
  PROVISIONS_COOLER_ASSUMED: (values, _about, say) =>
    `Nobody named a cooler: ${say.mass(num(values, 'iceGrams'))} of ice is reckoned for usual ones, as ` +
    'large as their food wants.',
};

const percentFound = (share: number) => `${Math.round(1000 * share) / 10} %`;

const boxesWord = (boxes: number) => (boxes === 1 ? 'one box' : `${boxes} boxes`);
