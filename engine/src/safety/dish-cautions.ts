// Which cautions belong on a dish's card? Danger first.

import { BELOW_BOIL_KELVIN } from '../bake/done-target.ts';
import { figuresOfDish, isBaked } from '../bake/kinds.ts';
import type { Camp } from '../camp/camp.ts';
import { airAt } from '../camp/weather.ts';
import type { Formula } from '../formula/formula.ts';
import { isPot } from '../menu/heat-kind.ts';
import type { MenuDish } from '../menu/menu.ts';
import { allergensIn, labelsToCheck } from '../menu/needs.ts';
import type { Recipe } from '../menu/recipe.ts';
import { type Notice, type NoticeLevel, type NoticeValues, notice } from '../notice/notice.ts';
import { clockMinutes, fromCelsius, fromFahrenheit } from '../quantity/unit.ts';
import type { SafeCore } from './care.ts';
import type { SafetyCode } from './codes.ts';
import { needsFullBoil } from './full-boil.ts';
import { freeFromOf, strictIn, watchedIn } from './kept-apart.ts';
import { byDanger } from './order.ts';
import { classesOf } from './safe-core.ts';

export interface CautionsAsked {
  readonly dish: MenuDish;
  readonly recipe: Recipe;
  readonly formula: Formula;
  readonly camp: Camp;
  readonly least: SafeCore | undefined;
}

/** Cautions of one dish, danger first. */
export function dishCautions(asked: CautionsAsked): readonly Notice[] {
  const about = { dish: asked.dish.id, recipe: asked.recipe.id };
  return [...apartCautions(asked), ...foodCautions(asked)]
    .map((each) => ({ ...each, about: { ...about, ...each.about } }))
    .sort(byDanger);
}

function apartCautions(asked: CautionsAsked): readonly Notice[] {
  const { dish, recipe, camp } = asked;
  const watched = watchedIn(camp);
  const labels = labelsToCheck(recipe)
    .filter((label) => watched.includes(label.allergen))
    .map(({ ingredient, allergen }) =>
      notice('SAFETY_CHECK_LABEL', 'danger', { ingredient }, { allergen, ingredient }),
    );
  if (!dish.freeFrom) return labels;
  const kept = freeFromOf({ dish, recipe, camp });
  const inIt = allergensIn(recipe).filter((each) => watched.includes(each));
  const strict = strictIn(camp).filter((each) => !inIt.includes(each));
  const isOvenKept = camp.ovens.some((oven) =>
    strict.every((each) => oven.keptFreeOf.includes(each)),
  );
  const needsOven = recipe.method !== 'none' && strict.length > 0;
  return [
    ...labels,
    said('SAFETY_KEPT_APART', 'danger', { free: kept.join(', ') }),
    ...(inIt.length > 0 ? [said('SAFETY_NOT_FREE', 'note', { found: inIt.join(', ') })] : []),
    ...(needsOven && !isOvenKept
      ? [said('SAFETY_NO_OVEN_KEPT_APART', 'danger', { free: strict.join(', ') })]
      : []),
  ];
}

function foodCautions(asked: CautionsAsked): readonly Notice[] {
  const { recipe, formula, camp, least } = asked;
  const has = (words: RegExp) =>
    formula.lines.some((line) => words.test(line.ingredient.name.toLowerCase()));
  const hasPart = (...parts: readonly string[]) =>
    formula.lines.some((line) => parts.includes(line.ingredient.part));
  const isCold = recipe.method === 'none';
  const classes = classesOf(recipe, formula);
  const children = camp.mouths.some((group) => group.appetite === 'child');
  const cautions: (Notice | false)[] = [
    least !== undefined && !isCoveredWhenDone(asked, least) && probeCaution(asked, least),
    needsFullBoil(formula) &&
      said('SAFETY_KIDNEY_BEANS', 'danger', { soakMinutes: 300, boilMinutes: 30 }),
    needsFullBoil(formula) &&
      camp.place.elevation > HIGH_METRES &&
      said('SAFETY_BEANS_AT_HEIGHT', 'danger', { heightMetres: camp.place.elevation }),
    has(/\bhoney\b/) && said('SAFETY_HONEY', children ? 'danger' : 'note'),
    isCold && hasPart('egg') && said('SAFETY_EGG_NOT_COOKED', 'danger'),
    isCold && has(/\bgarlic\b/) && hasPart('fat') && said('SAFETY_GARLIC_OIL', 'note'),
    isCold && said('SAFETY_KEEP_COLD', 'note', { coldKelvin: fromFahrenheit(40) }),
    has(/\bfoil\b/) &&
      has(/\bpotato/) &&
      said('SAFETY_FOIL_POTATO', 'danger', { hotKelvin: fromFahrenheit(140) }), // cdc-garlic
    classes.includes('wild-game') && said('SAFETY_WILD_GAME', 'note'),
    classes.includes('shellfish') && said('SAFETY_SHELLFISH', 'danger'),
    has(/\brice\b/) && hasPart('grain') && said('SAFETY_RICE', 'note'),
    hasPart('flour', 'meal') && said('SAFETY_RAW_FLOUR', 'note'),
  ];
  return cautions.filter((each): each is Notice => each !== false);
}

/** 5,000 ft, as for water: the rule of beans was made at low ground, no figure for heights was found. */
const HIGH_METRES = 1524;

/**
 * Bread is done far above what its egg needs, so that one core stands on its card. Not where the
 * boil of the place caps it near there.
 */
function isCoveredWhenDone({ recipe, camp }: CautionsAsked, least: SafeCore): boolean {
  const { coreCelsius } = figuresOfDish(recipe);
  if (!isBaked(recipe) || least.food !== 'egg-dish' || coreCelsius === null) return false;
  const done = recipe.target.core ?? fromCelsius(coreCelsius);
  const boiling = airAt(camp, camp.weather[0]?.at ?? clockMinutes(0), { screened: false }).boiling;
  return least.core <= Math.min(done, boiling - BELOW_BOIL_KELVIN);
}

/** One core: the hotter of what is safe and what the cook wants; how, where nobody has a probe. */
function probeCaution({ recipe, camp }: CautionsAsked, least: SafeCore): Notice {
  const byHand = isPot(recipe) ? 'boil' : 'borrow';
  return said('SAFETY_PROBE', 'danger', {
    coreKelvin: Math.max(least.core, isPot(recipe) ? 0 : (recipe.target.core ?? 0)),
    restMinutes: least.rest,
    food: least.food,
    by: camp.gear.thermometer ? 'probe' : byHand,
  });
}

const said = (code: SafetyCode, level: NoticeLevel, values: NoticeValues = {}): Notice =>
  notice(code, level, {}, values);
