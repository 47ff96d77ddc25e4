// The front door's wish as a planned camp of one dish and one oven, and its dish card.

import {
  airFromWord,
  batchMass,
  clockMinutes,
  dishCard,
  elevationForBoiling,
  type Fuel,
  grams,
  isRefusal,
  kelvin,
  type MealDay,
  metres,
  minutes,
  type OrRefusal,
  planTonightDay,
  type Recipe,
  type Refusal,
  readyRecipeWithId,
  refusalText,
  type Say,
  type SheetDocument,
  type TonightAnswers,
  tonightWords,
  voiceFor,
  windFromSign,
  writtenPortions,
} from '#engine';
import type {
  FireSpot,
  OwnKind,
  TonightAmount,
  TonightAnswer,
  TonightWish,
  Voice,
} from './messages.ts';

/** The card of the wish, or a card that says why it is refused; `own` is a recipe of the cook's. */
export function tonightAnswer(
  wish: TonightWish,
  voice: Voice,
  own?: Recipe,
): Promise<TonightAnswer> {
  const planned = plannedTonight(wish, own);
  return inWordsEnough((sentenceFor) => {
    if (isRefusal(planned)) {
      const say = voiceFor({ ...voice, plan: NOBODY, sentenceFor });
      return { card: refusedCard(planned, say), canGrow: false };
    }
    const { plan } = planned;
    const say = voiceFor({ ...voice, plan, sentenceFor });
    const amount = amountOf(plan, say);
    return {
      card: dishCard(plan, plan.menu.dishes[0]!.id, say),
      canGrow: true,
      ...(amount === undefined ? {} : { amount }),
    };
  });
}

/** Drawn with the usual sentences; once more with all of them if it came to say something unusual. */
async function inWordsEnough<Drawn>(draw: (sentenceFor: Say['sentenceFor']) => Drawn) {
  let isShort = false;
  const drawn = draw((code) => {
    isShort ||= tonightWords[code] === undefined;
    return tonightWords[code];
  });
  if (!isShort) return drawn;
  const { allWords } = await import('./all-words.ts');
  return draw((code) => allWords[code]);
}

function amountOf({ dishes }: MealDay, say: Say): TonightAmount | undefined {
  const [made] = dishes;
  if (made === undefined) return undefined;
  const { recipe, dish, portions } = made;
  const written = writtenPortions(recipe, dish);
  return {
    portions: Math.round(portions.factor * written),
    written,
    mass: say.mass(batchMass(recipe, dish, portions)),
  };
}

/** The wish planned; without a time to eat at, for the soonest that goes. */
export function plannedTonight(
  wish: TonightWish,
  own?: Recipe,
): OrRefusal<{ readonly plan: MealDay }> {
  return planTonightDay(answersFrom(wish, own));
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
      ...ovenFrom(wish),
      ...(wish.startsHot === undefined ? {} : { startsHot: wish.startsHot }),
    },
    when: wish.eatAtMinutes === undefined ? {} : { serveAt: clockMinutes(wish.eatAtMinutes) },
    date: wish.today,
    timeZone: wish.timeZone,
    now: clockMinutes(wish.nowMinutes),
    ...spotFrom(wish),
    ...(wish.hands === undefined ? {} : { hands: wish.hands }),
    ...(wish.thermometer === undefined ? {} : { thermometer: wish.thermometer }),
  };
}

const INCH_METRES = 0.0254;

/** The oven as the cook knows it; the same for a bread and for a question at the fire. */
export const ovenFrom = ({ ovenInches, ovenStyle, riserMetres, lidGrams }: FireSpot) => ({
  diameterMetres: ovenInches * INCH_METRES,
  style: ovenStyle,
  ...(riserMetres === undefined ? {} : { riser: metres(riserMetres) }),
  ...(lidGrams === undefined ? {} : { lidMass: grams(lidGrams) }),
});

/** Weather, ground, height and fuel; what was left as guessed is left out. */
export const spotFrom = (spot: FireSpot) => ({
  weather: {
    ...(spot.air === undefined ? {} : { airKelvin: airFromWord(spot.air).air }),
    ...(spot.wind === undefined ? {} : { windMetresPerSecond: windFromSign(spot.wind).wind }),
    ...(spot.rainMillimetres === undefined ? {} : { rain: spot.rainMillimetres }),
    ...(spot.sunRatio === undefined ? {} : { sun: spot.sunRatio }),
  },
  ...heightFrom(spot.height),
  ...fuelFrom(spot),
  ...(spot.ground === undefined ? {} : { ground: spot.ground }),
  ...(spot.groundIs === undefined ? {} : { groundIs: spot.groundIs }),
  ...(spot.hearth === undefined ? {} : { hearth: spot.hearth }),
  ...(spot.windScreens === undefined ? {} : { windScreens: spot.windScreens }),
});

function foodFrom(
  { what }: TonightWish,
  own: Recipe | undefined,
): Pick<TonightAnswers, 'what' | 'amount'> {
  if (!('kind' in what)) {
    const { portions } = what;
    const food = 'readyRecipe' in what ? what.readyRecipe : (own ?? what.recipe);
    return { what: food, ...(portions === undefined ? {} : { amount: { portions } }) };
  }
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

function fuelFrom({ fuel, pieceGrams }: Pick<TonightWish, 'fuel' | 'pieceGrams'>): {
  readonly fuel?: Fuel;
} {
  if (fuel === 'wood-coals') return { fuel: { kind: 'wood-coals', lead: FEEDER_LEAD } };
  if (pieceGrams === undefined) return {};
  return { fuel: { kind: 'briquettes', pieceMass: grams(pieceGrams), isMeasured: true } };
}

/** From lighting a feeder fire to its first shovel of coals; common practice, no source. */
const FEEDER_LEAD = minutes(60);

const NOBODY = { camp: { ovens: [], hands: [] }, menu: { dishes: [] } };

function refusedCard(refused: Refusal, say: Say): SheetDocument {
  return {
    kind: 'dish-card',
    title: 'This can’t be done as it stands',
    blocks: [
      { type: 'notice', level: 'stop', text: refusalText(refused, say), code: refused.code },
    ],
  };
}
