// The front door's wish as a planned camp of one dish and one oven, and its dish card.

import {
  airFromWord,
  campForTonight,
  clockMinutes,
  dishCard,
  elevationForBoiling,
  type Fuel,
  grams,
  isRefusal,
  kelvin,
  type MealPlan,
  metres,
  minutes,
  type OrRefusal,
  planMeal,
  type Recipe,
  type Refusal,
  readyRecipeWithId,
  refusalText,
  type SheetDocument,
  sayFor,
  type TonightAnswers,
  windFromSign,
} from '#engine';
import type { OwnKind, TonightAnswer, TonightWish, Voice } from './messages.ts';

/** The card of the wish, or a card that says why it is refused; `own` is a recipe of the cook's. */
export function tonightAnswer(wish: TonightWish, voice: Voice, own?: Recipe): TonightAnswer {
  const planned = plannedTonight(wish, own);
  if (isRefusal(planned)) return { card: refusedCard(planned, voice), canGrow: false };
  const { plan } = planned;
  return {
    card: dishCard(plan, plan.menu.dishes[0]!.id, sayFor({ ...voice, plan })),
    canGrow: true,
  };
}

const MOST_ROUNDS = 3;

/**
 * "As soon as it can be" is known only when the work has been laid out: where the first guess comes
 * too soon, the plan is made again for the time it could be served.
 */
export function plannedTonight(
  wish: TonightWish,
  own?: Recipe,
): OrRefusal<{ readonly plan: MealPlan }> {
  const answers = answersFrom(wish, own);
  let serveAt = answers.when.serveAt;
  for (let round = 1; ; round += 1) {
    const when = serveAt === undefined ? {} : { serveAt };
    const tonight = campForTonight({ ...answers, when });
    if (isRefusal(tonight)) return tonight;
    const { camp, menu, assumed } = tonight;
    const plan = planMeal(camp, menu, { assumed, now: answers.now });
    const serving = plan.daySheet.servings[0];
    const isOnTime = serving === undefined || serving.lateBy <= 0;
    if (answers.when.serveAt !== undefined || isOnTime || round === MOST_ROUNDS) return { plan };
    serveAt = clockMinutes(5 * Math.ceil(serving.served / 5));
  }
}

/** Ready doughs that stand for a cook's own of the same kind: their share of water, fat and sugar. */
const likeness: Readonly<Record<OwnKind, string>> = {
  'yeast-bread': 'round-loaf',
  'quick-bread': 'soda-bread',
  biscuit: 'biscuits',
  'corn-bread': 'corn-bread',
};

/** What was left as guessed is left out, so that the plan lists it as assumed. */
function answersFrom(wish: TonightWish, own: Recipe | undefined): TonightAnswers {
  return {
    ...foodFrom(wish, own),
    oven: {
      diameterMetres: wish.ovenInches * INCH_METRES,
      style: wish.ovenStyle,
      ...(wish.startsHot === undefined ? {} : { startsHot: wish.startsHot }),
    },
    when: wish.eatAtMinutes === undefined ? {} : { serveAt: clockMinutes(wish.eatAtMinutes) },
    date: wish.today,
    timeZone: wish.timeZone,
    now: clockMinutes(wish.nowMinutes),
    weather: {
      ...(wish.air === undefined ? {} : { airKelvin: airFromWord(wish.air).air }),
      ...(wish.wind === undefined ? {} : { windMetresPerSecond: windFromSign(wish.wind).wind }),
    },
    ...heightFrom(wish.height),
    ...fuelFrom(wish),
    ...(wish.ground === undefined ? {} : { ground: wish.ground }),
    ...(wish.hands === undefined ? {} : { hands: wish.hands }),
    ...(wish.windScreens === undefined ? {} : { windScreens: wish.windScreens }),
    ...(wish.thermometer === undefined ? {} : { thermometer: wish.thermometer }),
  };
}

const INCH_METRES = 0.0254;

function foodFrom(
  { what }: TonightWish,
  own: Recipe | undefined,
): Pick<TonightAnswers, 'what' | 'amount'> {
  if ('starter' in what) return { what: what.starter };
  if ('camp' in what) return { what: own ?? what.recipe };
  const like = readyRecipeWithId(likeness[what.kind]);
  if (like === undefined) throw new Error(`no ready dough stands for ${what.kind}`);
  const { thicknessMetres, massGrams } = what;
  return { what: ownDough(like), amount: { thicknessMetres, massGrams } };
}

/** One piece of dough as thick as the cook says; it isn't divided the way the ready one is. */
const ownDough = (like: Recipe): Recipe => ({
  ...like,
  id: 'own-dough',
  name: ownNames[like.kind] ?? like.name,
  division: [],
});

const ownNames: Readonly<Partial<Record<Recipe['kind'], string>>> = {
  'yeast-bread': 'Your yeast bread',
  'quick-bread': 'Your quick bread',
  biscuit: 'Your biscuits',
  'corn-bread': 'Your corn bread',
};

function heightFrom(height: TonightWish['height']): Pick<TonightAnswers, 'elevation'> {
  if (height === undefined) return {};
  if ('metres' in height) return { elevation: metres(height.metres) };
  const found = elevationForBoiling(kelvin(height.boilsKelvin));
  return isRefusal(found) ? {} : { elevation: found.elevation };
}

function fuelFrom({ fuel, pieceGrams }: TonightWish): { readonly fuel?: Fuel } {
  if (fuel === 'wood-coals') return { fuel: { kind: 'wood-coals', lead: FEEDER_LEAD } };
  if (pieceGrams === undefined) return {};
  return { fuel: { kind: 'briquettes', pieceMass: grams(pieceGrams), isMeasured: true } };
}

/** From lighting a feeder fire to its first shovel of coals; common practice, no source. */
const FEEDER_LEAD = minutes(60);

function refusedCard(refused: Refusal, voice: Voice): SheetDocument {
  const say = sayFor({ ...voice, plan: { camp: { ovens: [], hands: [] }, menu: { dishes: [] } } });
  return {
    kind: 'dish-card',
    title: 'This can’t be done as it stands',
    blocks: [
      { type: 'notice', level: 'stop', text: refusalText(refused, say), code: refused.code },
    ],
  };
}
