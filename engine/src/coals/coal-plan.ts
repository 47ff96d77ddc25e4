// What coals/ answers for one load in one oven. Minutes count from "coals on" (AT-THE-FIRE's one
// zero); the day sheet puts clock times beside them.

import type { Air, CampOven, Fuel, Place } from '../camp/camp.ts';
import type { HeatMethod } from '../menu/recipe.ts';
import type { Notice } from '../notice/notice.ts';
import type {
  Degrees,
  Grams,
  Kelvin,
  KelvinDifference,
  Metres,
  Minutes,
  Ratio,
} from '../quantity/unit.ts';
import type { SiteConditions } from './conditions.ts';
import type { FactorBeliefs, FactorName } from './factors.ts';
import type { Load } from './load.ts';
import type { BakeJudge } from './settle.ts';

/** What a dish wants of its oven; bake/ makes it from the recipe. */
export interface HeatWish {
  readonly method: HeatMethod;
  /** Inside the oven while the load is in. For a simmer: just above the local boil. */
  readonly wanted: Kelvin;
  /** The load stays this long. */
  readonly minutes: Minutes;
  /** Coals are added as for a stay of so long, where the load turns out to be done sooner. */
  readonly tendedFor?: Minutes;
  /** Heat the empty oven first, or start cold with the load in. */
  readonly preheat: boolean;
  /** A pot: so long the lid is off and all coals lie below; then the lid's set goes on. */
  readonly brownFirst?: Minutes;
}

export interface CoalRequest {
  readonly loadId: string;
  readonly oven: CampOven;
  readonly air: Air;
  readonly place: Place;
  /** The plan counts on a wind screen; `air.wind` is already behind it. */
  readonly screened: boolean;
  readonly fuel: Fuel;
  readonly wish: HeatWish;
  readonly load: Load;
  /** Iron at the start: the air, or hotter when another dish has just come out. */
  readonly ironAtStart: Kelvin;
  readonly pins: { readonly above?: number; readonly below?: number };
  /**
   * What a printed chart counts on, where `load` is truer than that: the wanted heat then means what
   * it means in a chart, and what `load` takes beside shows in the curve.
   */
  readonly chartLoad?: Load;
  /** How a bake comes out of an oven's curve: coals are then laid so that it comes out best. */
  readonly judge?: BakeJudge;
  /** Counts that a judge has chosen before: kept, or where the next judge begins; the pins win. */
  readonly chosen?: ChosenCounts;
  /** What a logbook learnt of this cook's coals, oven and camp; left out, the prior. */
  readonly beliefs?: FactorBeliefs;
  /** Rain, wet ground, a riser, the oven weighed; left out, none of it. */
  readonly conditions?: SiteConditions;
}

/** Counts above and below, with what the judge said of those that it turned down. */
export interface ChosenCounts {
  readonly above: number;
  readonly below: number;
  readonly asCounted?: AsCounted;
}

/** Laid by chart and split its bottom would be dark before it is done. Minutes from load in. */
export interface AsCounted {
  readonly above: number;
  readonly below: number;
  readonly darkMinute: Minutes;
  readonly doneMinute: Minutes;
}

export interface CoalPlan {
  readonly load: string;
  readonly oven: string;
  readonly fuel: 'briquettes' | 'wood-coals';
  readonly method: HeatMethod;
  /** True where the cook pinned the counts; the plan then judges them. */
  readonly isPinned: boolean;
  /**
   * 'settled': counts and split are those out of which the bake comes best, core and both colours
   * together. 'first': by the charts and the usual split. Left out where no bake can choose.
   */
  readonly answer?: 'first' | 'settled';
  readonly above: CoalSet;
  readonly below: CoalSet;
  readonly reckoning: Reckoning;
  /** What the judge says of the layout as counted; left out where that is laid, or does no harm. */
  readonly asCounted?: AsCounted;
  /** The load goes in at this minute; 0 for a pot that starts cold. */
  readonly loadInMinute: Minutes;
  readonly outMinute: Minutes;
  readonly wanted: { readonly low: Kelvin; readonly high: Kelvin };
  /**
   * A pot that is browned first: until this minute the lid is off and no coals lie above. `above` is
   * then empty and the lid's set is the addition of that minute; it is drawn from here.
   */
  readonly browning?: { readonly until: Minutes; readonly thenAbove: CoalSet };
  readonly curve: readonly CurvePoint[];
  /**
   * The same acts with one factor moved by one standard deviation each: what depends on the oven
   * (a finishing time) is reckoned along them, and the differences give its band.
   */
  readonly factorRuns?: readonly FactorRun[];
  readonly turns: readonly Turn[];
  readonly additions: readonly Addition[];
  readonly checks: readonly Check[];
  readonly moves: readonly Move[];
  readonly unevenness: Unevenness;
  /** A pot: water that leaves it as steam after it has come up, if none drips back from its lid. */
  readonly boiledOff?: Grams;
  /** Unlit fuel that the plan burns, additions counted, no spare. */
  readonly fuelMass: Grams;
  readonly coalsInAll: number;
  readonly energy: EnergyBalance;
  readonly notices: readonly Notice[];
}

/** Coals in one place. Wood coals are told in rings and shovels; `pieces` then only drives physics. */
export interface CoalSet {
  /** Whole briquettes, or briquette-equivalents that are never shown for wood. */
  readonly pieces: number;
  readonly ring: number;
  readonly spread: number;
  /** Rings in quarters (1 = touching all round), for wood and for ring-talk. */
  readonly rings: number;
  /** Shovels in halves; only for wood coals. */
  readonly shovels?: number;
  /** How wide one piece is, for the drawing. */
  readonly pieceWidth?: Metres;
  /** Where each lies, for the drawing; seen from above, origin at the oven's centre. */
  readonly places: readonly CoalPlace[];
}

export interface CoalPlace {
  readonly x: Metres;
  readonly y: Metres;
  readonly in: 'ring' | 'spread';
}

/** Why this count: the chart's, ours, and a line for everything that moved it. */
export interface Reckoning {
  readonly chart?: ChartCount;
  readonly above: number;
  readonly below: number;
  /** Adds up from the chart's total (or from ours in mild air) to ours. Zero lines stay. */
  readonly because: readonly CountReason[];
  /** What each published chart would say at this size and temperature. */
  readonly others: readonly ChartCount[];
}

export interface ChartCount {
  readonly source: string;
  readonly above: number;
  readonly below: number;
  readonly oven: Kelvin;
}

export interface CountReason {
  readonly cause:
    | 'our-oven-model'
    | 'wind'
    | 'cold'
    | 'height'
    | 'depth'
    | 'ground'
    | 'rain'
    | 'sun'
    | 'riser'
    /** Floor, lid or weight as the owner measured them. */
    | 'own-measures'
    | 'charcoal'
    | 'load'
    /** How strong the first coals are over the minutes until more come, and iron that warms. */
    | 'first-set'
    | 'hot-oven'
    | 'rounding'
    | 'lid-full'
    /** The bake's own choice: what the dough takes beside a chart's, and colour on both faces. */
    | 'bake'
    | 'pin';
  readonly coals: number;
}

export interface CurvePoint {
  readonly minute: Minutes;
  /** Temperature inside the oven. */
  readonly oven: Kelvin;
  /** 80 % band by the factors of factors.ts, whose width is that of the published charts. */
  readonly low: Kelvin;
  readonly high: Kelvin;
  readonly lid: Kelvin;
  readonly floor: Kelvin;
  readonly wall: Kelvin;
  /** Mean temperature of the load; undefined while the oven is empty. */
  readonly load?: Kelvin;
}

export interface FactorRun {
  readonly factor: FactorName;
  /** Its band has no width. */
  readonly curve: readonly CurvePoint[];
}

/**
 * AT-THE-FIRE 7. 'food': oven with lid a quarter one way, then the lid alone a quarter back, so that
 * the food moves against both sets of coals. 'oven-with-lid' and 'lid-alone' are other moves.
 */
export interface Turn {
  readonly minute: Minutes;
  readonly kind: 'food' | 'oven-with-lid' | 'lid-alone';
  /** Clockwise seen from above. */
  readonly angle: Degrees;
}

export interface Addition {
  readonly minute: Minutes;
  readonly above: number;
  readonly below: number;
  /** The same in shovels, for wood coals. */
  readonly shovelsAbove?: number;
  readonly shovelsBelow?: number;
  /** Clear ash first. */
  readonly clearAsh: boolean;
}

export interface Check {
  readonly minute: Minutes;
  /** A flour test needs an empty oven; a lifted corner needs a full one. */
  readonly oven: 'empty' | 'full';
  readonly ways: readonly CheckWay[];
  /** Simulated: what the look costs. */
  readonly costs: { readonly heat: KelvinDifference; readonly minutes: Minutes };
  /** An empty oven: so much hotter by the time the load goes in; its window counts on that. */
  readonly rises?: KelvinDifference;
  readonly ifHot: readonly Move[];
  readonly ifCool: readonly Move[];
}

export type CheckWay =
  | { readonly by: 'thermometer'; readonly low: Kelvin; readonly high: Kelvin }
  | { readonly by: 'hand-inside'; readonly leastSeconds: number; readonly mostSeconds: number }
  | { readonly by: 'flour'; readonly colour: 'pale' | 'straw' | 'brown' | 'dark' }
  | { readonly by: 'nose' }
  | { readonly by: 'top-colour'; readonly colour: 'pale' | 'straw' | 'brown' | 'dark' }
  | { readonly by: 'bottom-corner'; readonly colour: 'pale' | 'straw' | 'brown' | 'dark' }
  | { readonly by: 'probe'; readonly core: Kelvin }
  | { readonly by: 'simmer'; readonly looks: 'still' | 'shivering' | 'bubbling' | 'rolling' };

/** Something a cook can do about the heat, with its simulated effect. */
export interface Move {
  readonly do:
    | 'add-above'
    | 'add-below'
    | 'take-above'
    | 'take-below'
    | 'knock-ash'
    | 'screen-wind'
    | 'below-to-above'
    | 'turn';
  readonly coals: number;
  /** Wood coals: the same in shovels. */
  readonly shovels?: number;
  /** Change of oven temperature once it has settled. */
  readonly effect: KelvinDifference;
  /** Coals that change their side: what the floor feels, beside the oven's air. */
  readonly floor?: KelvinDifference;
  /** Minutes until most of it is felt. */
  readonly after: Minutes;
  /** Where the effect rests on a guess: it may be nothing, and is hardly more than this. */
  readonly most?: KelvinDifference;
}

export interface Unevenness {
  /** Warmest less coolest edge of what the food sees, over the bake, without and with turns. */
  readonly unturned: KelvinDifference;
  readonly turned: KelvinDifference;
  readonly windward: boolean;
  /** The same of each face; `unturned` and `turned` above are of the worse one. */
  readonly top?: FaceUnevenness;
  readonly bottom?: FaceUnevenness;
  /** The hotter side's top is golden so much sooner than the other's. */
  readonly sooner?: { readonly unturned: Minutes; readonly turned: Minutes };
}

export interface FaceUnevenness {
  readonly unturned: KelvinDifference;
  readonly turned: KelvinDifference;
  /** Hot rim or, below zero, hot middle: no turn cures it, only where the coals lie. */
  readonly edgeOverMiddle: KelvinDifference;
}

/** Where the heat of the simulated run went [J]; sums to zero within the method's error. */
export interface EnergyBalance {
  readonly givenJoules: number;
  readonly ironJoules: number;
  readonly loadJoules: number;
  readonly lossJoules: number;
  readonly errorRatio: Ratio;
}
