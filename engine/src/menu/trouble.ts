// Is it a menu that can be cooked? Found before portions, ovens and doughs are reckoned.

import type { Camp } from '../camp/camp.ts';
import { type Notice, notice, type Refusal, refusal } from '../notice/notice.ts';
import type { ClockMinutes } from '../quantity/unit.ts';
import { canStartHot } from './heat-kind.ts';
import type { Menu, MenuDish } from './menu.ts';
import { mouthsIn } from './mouths/appetites.ts';
import { labelsToCheck, unfitFor } from './needs.ts';
import { dishPieces, recipeMass } from './pieces.ts';
import { portionsFor } from './portions.ts';
import type { Ingredient, Recipe } from './recipe.ts';
import { titleNotices } from './title-claims.ts';

export interface MenuTrouble {
  readonly refusals: readonly Refusal[];
  readonly notices: readonly Notice[];
}

const MOST_INGREDIENT_GRAMS = 200_000; // ours: 200 kg in one dish is a slipped decimal point
const MOST_PORTIONS = 2000; // ours
const MOST_FACTOR = 500; // ours
const MOST_MINUTES = 3 * 24 * 60; // ours: no camp step takes three days
const MOST_COALS = 400; // ours: on one oven

/**
 * Everything that makes the menu impossible, and who can't eat what.
 *
 * @param notBefore  now, on the camp's clock; leave out where the plan is for another day
 */
export function menuTrouble(menu: Menu, camp: Camp, notBefore?: ClockMinutes): MenuTrouble {
  const recipes = new Map(menu.recipes.map((recipe) => [recipe.id, recipe]));
  const wrong = new Map(menu.recipes.map((recipe) => [recipe.id, recipeRefusals(recipe)]));
  const refusals: Refusal[] = [];
  const notices: Notice[] = [];
  for (const dish of menu.dishes) {
    const recipe = recipes.get(dish.recipe);
    refusals.push(...timeRefusals(dish, notBefore), ...pinRefusals(dish, camp));
    if (recipe === undefined) {
      refusals.push(missing(dish));
      continue;
    }
    const own = wrong.get(recipe.id) ?? [];
    refusals.push(...own.map((each) => ({ ...each, about: { ...each.about, dish: dish.id } })));
    if (own.length === 0) refusals.push(...amountRefusals(dish, recipe, camp));
    notices.push(...labelNotices(dish, recipe, camp), ...pinNotices(dish, recipe));
    notices.push(...titleNotices(dish, recipe));
  }
  return { refusals, notices: [...notices, ...nothingToEat(menu, camp)] };
}

const missing = (dish: MenuDish) =>
  refusal('MENU_RECIPE_MISSING', [`menu.${dish.id}.recipe`, 'recipes'], {
    dish: dish.id,
    recipe: dish.recipe,
  });

function recipeRefusals(recipe: Recipe): readonly Refusal[] {
  const about = { recipe: recipe.id };
  const path = `recipes.${recipe.id}`;
  if (recipe.ingredients.length === 0 || !(0 < recipe.portions)) {
    return [refusal('MENU_RECIPE_EMPTY', [path], about)];
  }
  const amounts = recipe.ingredients.flatMap((each) => amountRefusal(each, recipe));
  const pieces = recipe.division.filter(
    (piece) => !(0 < piece.gramsEach && 1 <= piece.count && 0 < piece.portionsEach),
  );
  return [
    ...amounts,
    ...pieces.map(() => refusal('MENU_AMOUNT_IMPOSSIBLE', [`${path}.division`], about)),
    ...(areStepsInOrder(recipe) ? [] : [refusal('MENU_STEPS_CIRCULAR', [`${path}.steps`], about)]),
  ];
}

function amountRefusal(ingredient: Ingredient, recipe: Recipe): readonly Refusal[] {
  const isLeftOut = ingredient.isUnweighed === true && hasWeighed(recipe);
  if (isLeftOut && ingredient.grams === 0) return [];
  const isPossible = 0 < ingredient.grams;
  if (isPossible && ingredient.grams <= MOST_INGREDIENT_GRAMS) return [];
  const about = { recipe: recipe.id, ingredient: ingredient.name };
  const code = isPossible ? 'MENU_AMOUNT_ABSURD' : 'MENU_AMOUNT_IMPOSSIBLE';
  const values = Number.isFinite(ingredient.grams) ? { massGrams: ingredient.grams } : {};
  return [refusal(code, [`recipes.${recipe.id}.ingredients.${ingredient.name}`], about, values)];
}

const hasWeighed = ({ ingredients }: Recipe) => ingredients.some((each) => 0 < each.grams);

/** Every step can start once those before it are done: no circle, no step that is not there. */
function areStepsInOrder({ steps }: Recipe): boolean {
  const done = new Set<string>();
  for (let round = 0; round < steps.length; round++) {
    const next = steps.find(
      (step) => !done.has(step.id) && step.after.every((lag) => done.has(lag.step)),
    );
    if (next === undefined) return false;
    done.add(next.id);
  }
  return steps.every((step) => 0 <= step.minutes && step.minutes <= MOST_MINUTES);
}

function amountRefusals(dish: MenuDish, recipe: Recipe, camp: Camp): readonly Refusal[] {
  const about = { dish: dish.id, recipe: recipe.id };
  if (dish.pieces !== undefined && dishPieces(recipe, dish).length === 0) {
    const conflicts = [`menu.${dish.id}.pieces`, `recipes.${recipe.id}.division`];
    return [refusal('MENU_PIECES_MISSING', conflicts, about, { pieces: dish.pieces.join(', ') })];
  }
  if (dish.portions !== undefined && !(0 <= dish.portions)) {
    const values = { portions: dish.portions };
    return [refusal('MENU_PORTIONS_NEGATIVE', [`menu.${dish.id}.portions`], about, values)];
  }
  const { portions, factor } = portionsFor(dish, recipe, camp);
  if (!(0 < portions) || !(0 < factor)) {
    return [refusal('MENU_NOBODY_EATS', [`menu.${dish.id}.portions`, 'mouths'], about)];
  }
  const isAbsurd = MOST_PORTIONS < portions || MOST_FACTOR < factor;
  const isHuge = MOST_INGREDIENT_GRAMS < recipeMass(recipe) * factor;
  return isAbsurd || isHuge
    ? [refusal('MENU_AMOUNT_ABSURD', [`menu.${dish.id}.portions`], about, { portions })]
    : [];
}

function timeRefusals(dish: MenuDish, notBefore?: ClockMinutes): readonly Refusal[] {
  const about = { dish: dish.id };
  const path = `menu.${dish.id}`;
  const values = { serveAtClockMinutes: dish.serveAt };
  const isPast = notBefore !== undefined && dish.serveAt < notBefore;
  const isUpsideDown = dish.latestAt !== undefined && dish.latestAt < dish.serveAt;
  return [
    ...(isPast
      ? [
          refusal('MENU_SERVE_PAST', [`${path}.serveAt`, 'now'], about, {
            ...values,
            nowClockMinutes: notBefore,
          }),
        ]
      : []),
    ...(isUpsideDown
      ? [
          refusal('MENU_LATEST_BEFORE_SERVE', [`${path}.latestAt`, `${path}.serveAt`], about, {
            ...values,
            latestAtClockMinutes: dish.latestAt,
          }),
        ]
      : []),
  ];
}

function pinRefusals({ id, pins }: MenuDish, camp: Camp): readonly Refusal[] {
  const about = { dish: id };
  const path = `menu.${id}.pins`;
  const unknown = (pin: string | undefined, known: readonly { id: string }[], where: string) =>
    pin === undefined || known.some((each) => each.id === pin)
      ? []
      : [refusal('MENU_PIN_UNKNOWN', [`${path}.${where}`, `${where}s`], about, { pin })];
  const isCount = (count: number | undefined) =>
    count === undefined || (0 <= count && count <= MOST_COALS && Number.isInteger(count));
  const isTime = (time: number | undefined) =>
    time === undefined || (0 < time && time <= MOST_MINUTES);
  const areGood = isCount(pins.coalsAbove) && isCount(pins.coalsBelow) && isTime(pins.bakeMinutes);
  return [
    ...unknown(pins.oven, camp.ovens, 'oven'),
    ...unknown(pins.hand, camp.hands, 'hand'),
    ...(areGood ? [] : [refusal('MENU_PIN_IMPOSSIBLE', [path], about)]),
  ];
}

const pinNotices = ({ id, pins, inOven }: MenuDish, recipe: Recipe): readonly Notice[] =>
  (pins.preheat === undefined && inOven?.oven === undefined) || canStartHot(recipe)
    ? []
    : [notice('MENU_PIN_WITHOUT_EFFECT', 'note', { dish: id })];

function labelNotices(dish: MenuDish, recipe: Recipe, camp: Camp): readonly Notice[] {
  const watched = camp.needs.filter((need) => need.strictness !== 'preference');
  return labelsToCheck(recipe).flatMap(({ ingredient, allergen }) =>
    watched
      .filter((need) => need.kind === allergen || (need.kind === 'gluten' && allergen === 'wheat'))
      .map((need) =>
        notice(
          'MENU_CHECK_LABEL',
          need.strictness === 'strict' ? 'danger' : 'doubt',
          { dish: dish.id, ingredient },
          { who: need.who, allergen },
        ),
      ),
  );
}

/** At each serving time everyone should find something that they can eat. */
function nothingToEat(menu: Menu, camp: Camp): readonly Notice[] {
  if (mouthsIn(camp.mouths) === 0) return [];
  const recipes = new Map(menu.recipes.map((recipe) => [recipe.id, recipe]));
  const times = [...new Set(menu.dishes.map((dish) => dish.serveAt))];
  return times.flatMap((serveAt) => {
    const dishes = menu.dishes.filter((dish) => dish.serveAt === serveAt);
    const unfit = dishes.map((dish) => {
      const recipe = recipes.get(dish.recipe);
      return recipe === undefined ? [] : unfitFor(recipe, camp).map((each) => each.who);
    });
    const hungry = camp.needs.filter((need) => unfit.every((who) => who.includes(need.who)));
    return [...new Set(hungry.map((need) => need.who))].map((who) =>
      notice('MENU_NOTHING_TO_EAT', 'doubt', {}, { who, serveAtClockMinutes: serveAt }),
    );
  });
}
