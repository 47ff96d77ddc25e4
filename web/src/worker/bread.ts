// What raises one bread, how long its dough takes, how it is carried dry: without a camp or an oven.
// A part of its own, fetched when the first of these is asked.

import {
  assumedOfBread,
  breadAlone,
  cubicMetres,
  dryMixOf,
  isRaised,
  kelvin,
  leavenSheet,
  metres,
  minutes,
  mixSheet,
  placeFrom,
  type Recipe,
  readyRecipeWithId,
  riseSheet,
  type SheetDocument,
  sayFor,
  usualBread,
} from '#engine';
import type { BreadQuestion, DoughWish } from './bread-messages.ts';

/** The sheet of one question; `own` is a recipe out of a camp. */
export function breadAnswer(question: BreadQuestion, own?: Recipe): SheetDocument {
  const { what, spot, voice } = question;
  const found = 'readyRecipe' in what ? readyRecipeWithId(what.readyRecipe) : own;
  if (found === undefined) return nothingSheet('This recipe is no longer here.');
  const recipe =
    spot.writtenMetres === undefined ? found : { ...found, writtenAt: metres(spot.writtenMetres) };
  const say = sayFor({ ...voice, plan: { camp: { ovens: [], hands: [] }, menu: { dishes: [] } } });
  const air = spot.airKelvin === undefined ? usualBread.air : kelvin(spot.airKelvin);
  const elevation = spot.metres === undefined ? usualBread.elevation : metres(spot.metres);
  const assumed = assumedOfBread(
    { air: spot.airKelvin, height: spot.metres, written: recipe.writtenAt },
    say,
  );
  const bread = { recipe, air, elevation };
  const named = { name: recipe.name, assumed };
  switch (question.door) {
    case 'leaven': {
      const made = breadAlone({ ...bread, powder: question.powder });
      return isRaised(made.formula) ? leavenSheet({ ...named, ...made }, say) : flatSheet(recipe);
    }
    case 'rise': {
      const made = breadAlone({ ...bread, stands: standsFrom(question.dough, air) });
      const rises = made.leavening.rise !== undefined;
      return rises ? riseSheet({ ...named, ...made }, say) : noRiseSheet(recipe);
    }
    case 'mix': {
      const tin = question.tinCubicMetres;
      const room = tin === undefined ? usualBread.tin : cubicMetres(tin);
      const dry = dryMixOf(breadAlone(bread).formula, room);
      return dry === undefined
        ? nothingSheet(`${recipe.name} has nothing to weigh dry. Choose one with flour.`)
        : mixSheet({ name: recipe.name, bags: question.bags, ...dry }, say);
    }
  }
}

function standsFrom({ stays, mixedKelvin, flourKelvin, tapKelvin }: DoughWish, air: number) {
  const places = stays.length === 0 ? [{ minutes: 0, kelvin: air }] : stays;
  return {
    place: placeFrom(
      places.map((stay) => ({ minutes: minutes(stay.minutes), place: kelvin(stay.kelvin) })),
    ),
    ...(mixedKelvin === undefined ? {} : { mixed: kelvin(mixedKelvin) }),
    ...(flourKelvin === undefined ? {} : { flour: kelvin(flourKelvin) }),
    ...(tapKelvin === undefined ? {} : { tap: kelvin(tapKelvin) }),
  };
}

const flatSheet = ({ name }: Recipe) =>
  nothingSheet(`${name} has neither powder, soda nor yeast. Choose a bread that rises.`);

const noRiseSheet = ({ name }: Recipe) =>
  nothingSheet(`${name} has neither yeast nor starter. Choose a bread that rises before it bakes.`);

const nothingSheet = (text: string): SheetDocument => ({
  kind: 'bread',
  title: 'Nothing to say of it',
  blocks: [{ type: 'notice', level: 'stop', text }],
});
