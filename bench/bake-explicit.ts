// The equations of engine/src/bake/inside by explicit finite volumes on even slices: the plain way, for
// comparison. Properties are the engine's; the integration is its own, shares no code with it and is
// stable only in small steps.

import { crumbConductivity } from '../engine/src/bake/inside/conduct.ts';
import {
  SOLIDS_JOULES,
  STEAM_GAS,
  STEFAN_BOLTZMANN,
  WATER_JOULES,
  ZERO_KELVIN,
} from '../engine/src/bake/inside/constants.ts';
import {
  type InsidePhysics,
  rowAt,
  steamBetween,
  waterActivity,
} from '../engine/src/bake/inside/physics.ts';
import { browningRate } from '../engine/src/bake/inside/skin.ts';
import { tuning } from '../engine/src/bake/inside/tuning.ts';

export interface PlainLoaf {
  readonly metres: number;
  readonly density: number;
  readonly water: number;
  readonly rise: number;
  readonly startKelvin: number;
  readonly contact: number;
  readonly ovenKelvin: number;
  readonly film: number;
  readonly lidKelvin: number;
  readonly emissivity: number;
  readonly steamShare: number;
}

export interface PlainAnswer {
  /** Minute at which the coolest slice passes 90 °C. */
  readonly throughMinute: number;
  readonly loss: number;
  readonly topColour: number;
  readonly steps: number;
}

const STIFF_KELVIN = 343.15;
const FREE_WATER = 0.15;
const AIR_JOULES = 1000;
const THROUGH_KELVIN = 363.15;
/** Share of the largest stable step. */
const SAFE = 0.8;
/** Most that crumb conducts, pores full of steam, for the stable step [W/(m K)]. */
const MOST_CONDUCTIVITY = 3;

interface Skin {
  kelvin: number;
  browning: number;
}

/** The bake of `minutes`, with `count` even slices; one long function, so that nothing hides its cost. */
export function plainBake(
  loaf: PlainLoaf,
  physics: InsidePhysics,
  run: { readonly count: number; readonly minutes: number },
): PlainAnswer {
  const { count } = run;
  const raw = (1 + loaf.water) / loaf.density;
  const dry = loaf.metres / raw / count;
  const kelvin = new Float64Array(count).fill(loaf.startKelvin);
  const water = new Float64Array(count).fill(loaf.water);
  const heat = kelvin.map(
    (each) => (SOLIDS_JOULES + WATER_JOULES * loaf.water) * (each - ZERO_KELVIN),
  );
  const hottest = Float64Array.from(kelvin);
  const volume = new Float64Array(count);
  const into = new Float64Array(count);
  const wetInto = new Float64Array(count);
  const bottom: Skin = { kelvin: loaf.startKelvin, browning: 0 };
  const top: Skin = { kelvin: loaf.startKelvin, browning: 0 };
  const thin = dry * raw;
  const step =
    (SAFE * thin * dry * (SOLIDS_JOULES + WATER_JOULES * loaf.water * 0.5)) /
    (2 * MOST_CONDUCTIVITY);
  const steps = Math.ceil((run.minutes * 60) / step);
  const seconds = (run.minutes * 60) / steps;
  let steam = 0;
  let through = Number.NaN;

  const conductivity = (slice: number, pore: number) =>
    crumbConductivity(water[slice]!, volume[slice]!, pore);
  const poreOf = (one: number, other: number, slice: number, next: number) =>
    tuning.steamInPores *
      Math.min(1, (water[slice]! + water[next]!) / 2 / FREE_WATER) *
      steamBetween(physics.steamSum, one, other) +
    rowAt(physics.stillPore, (one + other) / 2);
  /** Skin in balance: what comes from outside goes into half a slice and into steam. */
  const skinOf = (skin: Skin, slice: number, isTop: boolean): { watts: number; dried: number } => {
    const half =
      (2 * conductivity(slice, poreOf(kelvin[slice]!, skin.kelvin, slice, slice))) /
      (dry * volume[slice]!);
    let dried = 0;
    let dew = 0;
    if (isTop && skin.kelvin < physics.boilKelvin) {
      const own = waterActivity(skin.kelvin, water[slice]!) * rowAt(physics.vapour, skin.kelvin);
      const over = own - loaf.steamShare * physics.pressurePascals;
      if (over > 0)
        dried = ((tuning.skinDrying * loaf.film) / AIR_JOULES / (STEAM_GAS * skin.kelvin)) * over;
      dew = dried * (physics.steamJoules - WATER_JOULES * (skin.kelvin - ZERO_KELVIN));
    }
    const shine = isTop ? loaf.emissivity * STEFAN_BOLTZMANN : 0;
    const passage = (isTop ? loaf.film : loaf.contact) + 4 * shine * skin.kelvin ** 3;
    const pull =
      (isTop ? loaf.film : loaf.contact) * loaf.ovenKelvin +
      shine * (loaf.lidKelvin ** 4 + 3 * skin.kelvin ** 4);
    const now = (half * kelvin[slice]! + pull - dew) / (half + passage);
    skin.browning += browningRate((skin.kelvin + now) / 2) * seconds;
    skin.kelvin = now;
    return { watts: half * (now - kelvin[slice]!), dried };
  };

  for (let turn = 0; turn < steps; turn += 1) {
    for (let slice = 0; slice < count; slice += 1) {
      const way = Math.min(
        1,
        Math.max(0, (hottest[slice]! - loaf.startKelvin) / (STIFF_KELVIN - loaf.startKelvin)),
      );
      volume[slice] = raw * (1 + (loaf.rise - 1) * way);
    }
    into.fill(0);
    wetInto.fill(0);
    for (let slice = 0; slice + 1 < count; slice += 1) {
      const next = slice + 1;
      const pore = poreOf(kelvin[slice]!, kelvin[next]!, slice, next);
      const lower = (2 * conductivity(slice, pore)) / (dry * volume[slice]!);
      const upper = (2 * conductivity(next, pore)) / (dry * volume[next]!);
      const wetLower = (2 * tuning.waterDiffusivity) / (dry * volume[slice]! ** 2);
      const wetUpper = (2 * tuning.waterDiffusivity) / (dry * volume[next]! ** 2);
      const wet = ((wetLower * wetUpper) / (wetLower + wetUpper)) * (water[slice]! - water[next]!);
      const carried =
        wet * WATER_JOULES * ((wet > 0 ? kelvin[slice]! : kelvin[next]!) - ZERO_KELVIN);
      const flow = ((lower * upper) / (lower + upper)) * (kelvin[slice]! - kelvin[next]!) + carried;
      into[slice] = into[slice]! - flow;
      into[next] = into[next]! + flow;
      wetInto[slice] = wetInto[slice]! - wet;
      wetInto[next] = wetInto[next]! + wet;
    }
    const last = count - 1;
    into[0] = into[0]! + skinOf(bottom, 0, false).watts;
    const above = skinOf(top, last, true);
    into[last] =
      into[last]! + above.watts - above.dried * WATER_JOULES * (top.kelvin - ZERO_KELVIN);
    wetInto[last] = wetInto[last]! - above.dried;
    steam += above.dried * seconds;
    let core = Number.POSITIVE_INFINITY;
    for (let slice = 0; slice < count; slice += 1) {
      let joules = heat[slice]! + (into[slice]! * seconds) / dry;
      let wet = Math.max(0, water[slice]! + (wetInto[slice]! * seconds) / dry);
      const held = heldBy(physics, joules, wet);
      if (held < wet) {
        joules -= physics.steamJoules * (wet - held);
        steam += dry * (wet - held);
        wet = held;
      }
      heat[slice] = joules;
      water[slice] = wet;
      kelvin[slice] = ZERO_KELVIN + joules / (SOLIDS_JOULES + WATER_JOULES * wet);
      hottest[slice] = Math.max(hottest[slice]!, kelvin[slice]!);
      core = Math.min(core, kelvin[slice]!);
    }
    if (Number.isNaN(through) && core >= THROUGH_KELVIN) through = ((turn + 1) * seconds) / 60;
  }
  const mass = dry * count * (1 + loaf.water);
  const topColour = 52 * (1 - Math.exp(-top.browning)); // zanoni1995
  return { throughMinute: through, loss: steam / mass, topColour, steps };
}

/** Water that a slice can hold, read off the boiling line. */
function heldBy(physics: InsidePhysics, heat: number, water: number): number {
  if (heat / (SOLIDS_JOULES + WATER_JOULES * water) + ZERO_KELVIN <= physics.boilKelvin)
    return water;
  const { line } = physics;
  const place = (heat - physics.steamJoules * water - line.from) / line.step;
  const row = Math.max(0, Math.min(line.water.length - 2, Math.floor(place)));
  const share = place - row;
  return Math.min(
    water,
    Math.max(0, line.water[row]! * (1 - share) + line.water[row + 1]! * share),
  );
}
