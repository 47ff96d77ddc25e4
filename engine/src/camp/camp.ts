// What a camp is, once read: the place, its weather, its people, ovens and fuel, all in SI.
// The menu and its recipes are in menu/.
// The saved shape (the camp file) is in formats/; this is what every stage computes from.

import type {
  ClockMinutes,
  CubicMetres,
  Degrees,
  Grams,
  Kelvin,
  Metres,
  MetresPerSecond,
  Minutes,
  Pascals,
  Ratio,
} from '../quantity/unit.ts';
import type { Stores } from './stores.ts';

export interface Camp {
  readonly id: string;
  readonly title: string;
  readonly place: Place;
  /** The camp's date, ISO 8601 (`2026-09-12`); clock minutes count from its 00:00. */
  readonly date: string;
  /** IANA name, only carried along: all times are the camp's own clock. */
  readonly timeZone: string;
  /** Soonest first; at least one. */
  readonly weather: readonly WeatherHour[];
  readonly mouths: readonly MouthGroup[];
  readonly needs: readonly Need[];
  readonly hands: readonly Hand[];
  readonly ovens: readonly CampOven[];
  readonly fuel: Fuel;
  readonly gear: Gear;
  readonly restriction: FireRestriction;
  /** Whom it feeds: friends, or the public under a health office's rules; home where not said. */
  readonly event?: EventKind;
  /** Wished time in hand before each serving; a few minutes where not said. */
  readonly inHand?: Minutes;
  /** What the cook knows of the stores; undefined where nothing was said. */
  readonly pantry?: Pantry;
  /** Packs, larder, boxes and carriers; undefined where nothing was said. */
  readonly stores?: Stores;
}

export type EventKind = 'home' | 'public';

export interface Pantry {
  /** Half a teaspoon of the powder in hot water: it fizzes hard, weakly, or not at all. */
  readonly powderFizz?: 'hard' | 'weak' | 'none';
  /** Months since the tin of powder was opened: a doubt, no more. */
  readonly powderOpenedMonths?: number;
}

export type Ground = 'soil' | 'grass' | 'gravel' | 'sand' | 'rock' | 'snow' | 'paving';

export interface Place {
  readonly name: string;
  readonly elevation: Metres;
  readonly ground: Ground;
  /** What the coals below lie on. */
  readonly hearth: 'ground' | 'fire-pan' | 'fire-table';
  /** How the ground is; dry where not said. */
  readonly groundIs?: 'dry' | 'wet' | 'frozen';
  readonly latitude?: Degrees;
  readonly longitude?: Degrees;
  /** The camp's clock less universal time. */
  readonly utcOffset?: Minutes;
  readonly water?: string;
}

export interface WeatherHour {
  readonly at: ClockMinutes;
  readonly air: Kelvin;
  /** Wind as forecast, at 10 m above open ground. */
  readonly wind: MetresPerSecond;
  readonly gust: MetresPerSecond;
  readonly windFrom: Degrees;
  readonly humidity?: Ratio;
  /** Rain that falls [mm/h]; none where not said. */
  readonly rain?: number;
  /** Share of a high, clear sun that shines on the ovens; none where not said. */
  readonly sun?: Ratio;
  readonly sky?: string;
}

export type Appetite = 'child' | 'ordinary' | 'hard-work' | 'over-65';

export interface MouthGroup {
  readonly count: number;
  readonly appetite: Appetite;
  readonly who?: string;
  /** They come so long after the serving: their portions are kept back. */
  readonly late?: Minutes;
}

/** Words for what someone can't or won't eat: US nine and EU fourteen classes, and ways of eating. */
export type NeedKind = Allergen | 'vegetarian' | 'vegan';
export type Allergen =
  | 'gluten'
  | 'wheat'
  | 'milk'
  | 'egg'
  | 'fish'
  | 'crustacean'
  | 'mollusc'
  | 'tree-nut'
  | 'peanut'
  | 'soy'
  | 'sesame'
  | 'celery'
  | 'mustard'
  | 'lupin'
  | 'sulphite';

export interface Need {
  readonly who: string;
  readonly kind: NeedKind;
  /** 'strict' means no cross-contact: own oven, own tools, made first. */
  readonly strictness: 'preference' | 'avoid' | 'strict';
}

export type Skill = 'new' | 'steady' | 'camp-cook';

export interface Hand {
  readonly id: string;
  readonly name: string;
  readonly skill: Skill;
  readonly from: ClockMinutes;
  readonly to: ClockMinutes;
  /** In between asleep or elsewhere: no work falls in here. */
  readonly away?: readonly { readonly from: ClockMinutes; readonly to: ClockMinutes }[];
}

/** One oven. Sizes as made are nominal; an owner's measurement wins where it is given. */
export interface CampOven {
  readonly id: string;
  /** What the cook calls it: chalk mark, cord, nickname. */
  readonly name: string;
  /** Nominal diameter of the oven. */
  readonly diameter: Metres;
  readonly depth: Metres;
  readonly style: 'regular' | 'deep';
  readonly capacity: CubicMetres;
  readonly mass: Grams;
  /** Inside diameter of the floor, if the owner measured it. */
  readonly floorDiameter?: Metres;
  /** The lid alone on the scales, and its width, if the owner measured them. */
  readonly lidMass?: Grams;
  readonly lidDiameter?: Metres;
  /** What it is set upon beside its legs: so much higher above the coals below. */
  readonly riser?: Metres;
  /** Only for a dish free of these (its own cord, its own spoon). */
  readonly keptFreeOf: readonly Allergen[];
  readonly mark?: string;
}

export type Fuel = BriquetteFuel | WoodFuel;

export interface BriquetteFuel {
  readonly kind: 'briquettes';
  /** One unlit briquette. */
  readonly pieceMass: Grams;
  /** True if the cook weighed or counted; false if it is the usual one. */
  readonly isMeasured: boolean;
  /** Undefined where the cook has not said how much there is. */
  readonly onHand?: Grams;
}

export interface WoodFuel {
  readonly kind: 'wood-coals';
  /** Minutes from lighting the feeder fire to the first shovel of coals. */
  readonly lead: Minutes;
}

export interface Gear {
  readonly chimneys: number;
  /** Coals that one chimney holds. */
  readonly chimneyfulCoals: number;
  readonly lidStands: number;
  readonly tables: number;
  readonly windScreens: number;
  readonly thermometer: boolean;
  /** A can with a tap that stays open, soap, paper, a bucket under it; not known where not said. */
  readonly handWash?: boolean;
  /** Sodium hypochlorite by the label of the bleach; undefined where nobody read it. */
  readonly bleach?: Ratio;
  readonly others: readonly string[];
}

/** 'unknown' is not 'none': the plan then says: ask before you light. */
export type FireRestriction = 'unknown' | 'none' | 'stage-1' | 'stage-2' | 'coals-allowed-here';

/** The air an oven stands in at one time; what camp/ gives to every later stage. */
export interface Air {
  readonly temperature: Kelvin;
  readonly pressure: Pascals;
  /** Wind at oven height, after the screen. */
  readonly wind: MetresPerSecond;
  readonly windFrom: Degrees;
  /** Local boiling point of water. */
  readonly boiling: Kelvin;
}
