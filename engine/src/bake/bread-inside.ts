// A dough as the model of the inside takes it, and what its bake comes to: through, brown, burnt.
// Source: bake/inside (its own sources); sides and mounds by heated-cylinder, halved, as dough-body.ts
// has it.

import type { Formula } from '../formula/formula.ts';
import { PROVED } from '../menu/lay.ts';
import type { OvenLoad } from '../menu/load.ts';
import type { BakeRequest } from './bake-request.ts';
import { HALF_BALL, moundHelp, sidesHelp } from './dough-body.ts';
import { waterShareOf } from './heat-content.ts';
import {
  type Body,
  bakeInside,
  COLOUR_MARKS,
  type CrustColour,
  type InsideMoment,
  type InsidePhysics,
  type InsideRun,
  insidePhysics,
  minuteReached,
  STARCH_SET,
} from './inside/index.ts';
import { facesIn, type OvenCourse } from './oven-course.ts';

/**
 * A dough as a slab as high as its middle, its sides folded in: same mass, same density. A mound's
 * middle is half as high again as its mean, and its core is there.
 */
export interface DoughSlab {
  readonly body: Body;
  /** Of its faces, so that the slab weighs what the dough does [m2]. */
  readonly area: number;
}

const THINNEST_METRES = 0.0005;
/** Without a bubble, about 1.25 g/cm3 (common practice, no source); a foam of 150 is no dough. */
const DENSITY = { least: 150, most: 1250 } as const;
const WATER = { least: 0.1, most: 2.5 } as const; // to one of dry: crackers … batter

/** The dough as its coals go on. */
export function doughSlab(load: OvenLoad, formula: Formula, startKelvin: number): DoughSlab {
  const proved = load.provedHeight;
  const said = Math.max(THINNEST_METRES, proved ?? load.thickness);
  const byMass = load.mass / 1000 / load.planArea; // kg/m2
  const own = proved === undefined ? byMass / said : load.mass / 1000 / (PROVED * load.volume);
  const density = Math.min(DENSITY.most, Math.max(DENSITY.least, own));
  const column = proved ?? (byMass > 0 ? byMass / density : said);
  const metres = Math.max(THINNEST_METRES, column);
  const risen = Math.max(metres, load.risenHeight);
  const folded = Math.sqrt(sidesOf(load, risen));
  const share = waterShareOf(formula);
  const water = Math.min(WATER.most, Math.max(WATER.least, share / Math.max(0.05, 1 - share)));
  return {
    body: {
      shape: 'slab',
      metres: metres / folded,
      density,
      water,
      rise: risen / metres,
      startKelvin,
    },
    area: byMass > 0 ? (load.planArea * byMass * folded) / (density * metres) : load.planArea,
  };
}

/**
 * A mound that nothing holds is open all round; of what is held or patted only a single round has
 * sides of its own, for biscuits shade each other. Rolls are as narrow as they are high: heat comes
 * from the dips between them too, and they bake as if level.
 */
function sidesOf(load: OvenLoad, risen: number): number {
  const radius = Math.sqrt(load.planArea / Math.PI);
  const held = load.shape === 'disc' ? sidesHelp(Math.min(1, risen / (2 * radius))) : 1;
  if (load.provedHeight === undefined) return held;
  const mean = Math.min(1, (PROVED * load.thickness) / load.provedHeight);
  if (load.shape !== 'disc') return Math.min(HALF_BALL, mean ** -2);
  const free = Math.min(1, Math.max(0, (HELD.mean - mean) / (HELD.mean - HELD.freeMean)));
  return held + free * Math.max(0, moundHelp(Math.min(1, risen / radius)) - held);
}

/** Mean over middle height: of half an ellipsoid, and of dough that a wall or its neighbours hold. */
const HELD = { freeMean: 2 / 3, mean: 0.8 } as const; // menu/lay.ts, data/rise.json

export interface BreadWish {
  readonly asked: BakeRequest;
  readonly course: OvenCourse;
  /** Core that is wanted [K], and how its top should look. */
  readonly coreKelvin: number;
  readonly top: CrustColour;
  /** A rougher answer, half the work: for bands and drafts. */
  readonly isRough?: boolean;
  readonly cutsAt?: readonly number[];
}

/** Minutes from load in; undefined where it does not happen while anybody looks. */
export interface BreadOutcome {
  readonly run: InsideRun;
  readonly slab: DoughSlab;
  /** Core hot and starch set. */
  readonly through: number | undefined;
  readonly topBrown: number | undefined;
  readonly bottomBrown: number | undefined;
  readonly topBurnt: number | undefined;
  readonly bottomBurnt: number | undefined;
}

/** Longest that is looked at [min]. */
export const LONGEST_MINUTES = 360;
/** A draft or a band that is not through by then counts as never through. */
const ROUGH_LONGEST_MINUTES = 150;
/** Looked at for so long after it is done, so that a face that burns soon after is seen. */
const AFTER_MINUTES = 12;

/**
 * Minutes at which a baked bread comes out at the latest, whatever its colour: as long again as its
 * middle took, a judgement; of thin ones, whose time colour sets, a quarter of an hour more, as camp
 * ovens' biscuits print it (published-bake-times: up to 25 min, through in 8 to 11). It bounds what a
 * pale lid can add, and the notice says so.
 */
export const latestForColour = (through: number) => through + Math.max(through, THIN_WAIT_MINUTES);
const THIN_WAIT_MINUTES = 15;

/** The dough baked along the course. */
export function breadOutcome(wish: BreadWish): BreadOutcome {
  const { asked, course, coreKelvin } = wish;
  const slab = doughSlab(asked.load, asked.formula, asked.air.temperature);
  const radius = asked.ovenDiameter === undefined ? undefined : asked.ovenDiameter / 2;
  const isThrough = (now: InsideMoment) => coreKelvin <= now.coreKelvin && STARCH_SET <= now.set;
  const enough = COLOUR_MARKS[wish.top];
  let throughAt: number | undefined;
  let doneAt: number | undefined;
  const run = bakeInside({
    body: slab.body,
    physics: physicsAt(asked.air.pressure),
    faces: facesIn(course, asked.load, radius),
    minutes: wish.isRough ? ROUGH_LONGEST_MINUTES : LONGEST_MINUTES,
    ...(wish.isRough ? { isRough: true } : {}),
    ...(wish.cutsAt === undefined ? {} : { cutsAt: wish.cutsAt }),
    until: (now) => {
      if (throughAt === undefined && isThrough(now)) throughAt = now.minute;
      if (throughAt === undefined) return false;
      if (enough <= now.topColour || latestForColour(throughAt) <= now.minute)
        doneAt ??= now.minute;
      return doneAt !== undefined && (wish.isRough || doneAt + AFTER_MINUTES <= now.minute);
    },
  });
  return outcomeOf(run, slab, { coreKelvin, enough });
}

function outcomeOf(
  run: InsideRun,
  slab: DoughSlab,
  { coreKelvin, enough }: { readonly coreKelvin: number; readonly enough: number },
): BreadOutcome {
  const reached = (figure: (now: InsideMoment) => number, wanted: number) =>
    minuteReached(run.moments, figure, wanted);
  const core = reached((now) => now.coreKelvin, coreKelvin);
  const set = reached((now) => now.set, STARCH_SET);
  return {
    run,
    slab,
    through: core === undefined || set === undefined ? undefined : Math.max(core, set),
    topBrown: reached((now) => now.topColour, enough),
    bottomBrown: reached((now) => now.bottomColour, COLOUR_MARKS.brown),
    topBurnt: reached((now) => now.topColour, COLOUR_MARKS.burnt),
    bottomBurnt: reached((now) => now.bottomColour, COLOUR_MARKS.burnt),
  };
}

/** Tables of the last few pressures: a camp has one, a comparison of heights a handful. */
const KEPT_PRESSURES = 8;
const tables = new Map<number, InsidePhysics>();

export function physicsAt(pressure: BakeRequest['air']['pressure']): InsidePhysics {
  const found = tables.get(pressure);
  if (found !== undefined) return found;
  if (tables.size >= KEPT_PRESSURES) tables.clear();
  const made = insidePhysics(pressure);
  tables.set(pressure, made);
  return made;
}
