// What fits: how much goes into an oven, how so much of it lies there, over several ovens, or which
// oven for so much. A part of its own, fetched when it is first asked.

import {
  askAbout,
  type CampOven,
  type FitAsk,
  fitSheet,
  fromUnit,
  type Grams,
  grams,
  howItLies,
  isRefusal,
  metres,
  nominalOven,
  type Recipe,
  type Refusal,
  readyRecipeWithId,
  recipeMass,
  refusalText,
  type Say,
  type SheetDocument,
  sayFor,
  sizesFor,
  sizesSheet,
  spreadBatch,
  spreadSheet,
  whatFits,
} from '#engine';
import type { FitsLying, FitsOven, FitsQuestion } from './fits-messages.ts';

/** The sheet of one question; `own` is a recipe out of a camp. */
export function fitsAnswer(question: FitsQuestion, own?: Recipe): SheetDocument {
  const { what, voice } = question;
  const say = sayFor({ ...voice, plan: { camp: { ovens: [], hands: [] }, menu: { dishes: [] } } });
  const recipe = 'readyRecipe' in what ? readyRecipeWithId(what.readyRecipe) : own;
  if (recipe === undefined && !('kind' in what)) return goneSheet;
  const asked = 'kind' in what ? { what: what.kind } : askAbout(recipe!);
  const named = recipe === undefined ? {} : { name: recipe.name };
  const room: Room = { ask: { ...asked, ...lyingFrom(question.lying) }, named, say };
  const ovens = question.ovens.map(ovenFrom);
  const [oven] = ovens;
  const wanted = wantedOf(question, recipe);
  if (oven === undefined) return whichOven(room, wanted);
  if (question.isMost) return mostIn(room, oven);
  if (wanted === undefined) return plainSheet('Say how much there is of it.');
  return ovens.length === 1 ? soMuchIn(room, oven, wanted) : over(room, ovens, wanted);
}

interface Room {
  readonly ask: FitAsk;
  readonly named: { readonly name?: string };
  readonly say: Say;
}

function wantedOf({ amountGrams, isMost }: FitsQuestion, recipe: Recipe | undefined) {
  if (isMost) return undefined;
  if (amountGrams !== undefined) return grams(amountGrams);
  return recipe === undefined ? undefined : recipeMass(recipe);
}

function whichOven({ ask, named, say }: Room, wanted: Grams | undefined): SheetDocument {
  if (wanted === undefined) return plainSheet('Say how much there is of it.');
  return sizesSheet({ what: ask.what, wanted, sizes: sizesFor(wanted, ask), ...named }, say);
}

function mostIn({ ask, named, say }: Room, oven: CampOven): SheetDocument {
  const fit = whatFits(oven, ask);
  return isRefusal(fit) ? stopSheet(fit, say) : fitSheet({ fit, ...named }, say);
}

const LAYERED: readonly FitAsk['what'][] = ['cobbler', 'dumplings'];

/** How it lies; where it does not go in, what is left over and what can be done with that. */
function soMuchIn(room: Room, oven: CampOven, wanted: Grams): SheetDocument {
  const { ask, named, say } = room;
  const isLayered = ask.recipe === undefined && LAYERED.includes(ask.what);
  const fit = isLayered ? undefined : howItLies(oven, ask, wanted);
  if (fit !== undefined && !isRefusal(fit)) return fitSheet({ fit, ...named }, say);
  const sheet = over(room, [oven], wanted);
  const most = whatFits(oven, ask);
  if (isRefusal(most) || wanted < most.mass) return sheet;
  const rest = fitSheet({ fit: most }, say).blocks;
  return {
    ...sheet,
    blocks: [...sheet.blocks, { type: 'heading', text: 'The most that goes in' }, ...rest],
  };
}

function over({ ask, named, say }: Room, ovens: readonly CampOven[], wanted: Grams) {
  const spread = spreadBatch(wanted, ovens, ask);
  return isRefusal(spread)
    ? stopSheet(spread, say)
    : spreadSheet({ what: ask.what, wanted, spread, ...named }, say);
}

const lyingFrom = (lying: FitsLying): Partial<FitAsk> => ({
  ...(lying.thickMetres === undefined ? {} : { thickness: metres(lying.thickMetres) }),
  ...(lying.cutterMetres === undefined ? {} : { cutter: metres(lying.cutterMetres) }),
  ...(lying.pieceGrams === undefined ? {} : { pieceMass: grams(lying.pieceGrams) }),
  ...(lying.wedges === undefined ? {} : { wedges: lying.wedges }),
  inOven: {
    ...(lying.contact === undefined ? {} : { contact: lying.contact }),
    ...(lying.isTouching ? { pieces: 'touching' as const } : {}),
  },
});

/** As usually made, with what the owner measured; a depth makes it hold so much more or less. */
function ovenFrom({ inches, style, floorMetres, depthMetres }: FitsOven, at: number): CampOven {
  const made = nominalOven(fromUnit(inches, 'inch'), style);
  const depth = depthMetres === undefined ? made.depth : metres(depthMetres);
  return {
    ...made,
    id: String.fromCharCode(65 + at),
    depth,
    capacity: ((made.capacity * depth) / made.depth) as CampOven['capacity'],
    ...(floorMetres === undefined
      ? {}
      : { floorDiameter: metres(Math.min(floorMetres, made.diameter)) }),
  };
}

const stopSheet = (refusal: Refusal, say: Say): SheetDocument => ({
  kind: 'what-fits',
  title: 'It does not fit',
  blocks: [{ type: 'notice', level: 'stop', text: refusalText(refusal, say), code: refusal.code }],
});

const plainSheet = (text: string): SheetDocument => ({
  kind: 'what-fits',
  title: 'One answer more',
  blocks: [{ type: 'notice', level: 'note', text }],
});

const goneSheet = plainSheet('This recipe is no longer here. Choose another.');
