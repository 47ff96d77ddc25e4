import { describe, expect, it } from 'vitest';
import lumped from '../../validation/numerics/stiff-lumped.json' with { type: 'json' };
import { integrateStiff, type Rates } from './stiff.ts';

const SIGMA = 5.670374419e-8; // CODATA 2018, Stefan-Boltzmann constant
const usual = { relativeTolerance: 1e-6, absoluteTolerance: 1e-4, mostSteps: 2000 };

const lumpedRates: Rates = (time, [lid, pot, air, food], into) => {
  const p = lumped.parameters;
  const alive = Math.exp(-time / p.tau_burn);
  const radiated = (area: number, hot: number, cold: number) =>
    SIGMA * area * (hot ** 4 - cold ** 4);
  const lidToFood = radiated(p.eA_lid_food, lid!, food!);
  const lidToAir = p.hA_lid_air * (lid! - air!);
  const potToAir = p.hA_pot_air * (pot! - air!);
  const airToFood = p.hA_air_food * (air! - food!);
  const potToFood = p.G_pot_food * (pot! - food!);
  const lidToPot = p.G_lid_pot * (lid! - pot!);
  const lidLoss = p.hA_lid_amb * (lid! - p.Tamb) + radiated(p.eA_lid_amb, lid!, p.Tamb);
  const potLoss = p.hA_pot_amb * (pot! - p.Tamb) + radiated(p.eA_pot_amb, pot!, p.Tamb);
  const { P, Tc, width } = p.latent;
  const boiledOff = (P / 2) * (1 + Math.tanh((food! - Tc) / width));
  into[0] = (p.P_lid0 * alive - lidLoss - lidToAir - lidToFood - lidToPot) / p.C_lid;
  into[1] = (p.P_pot0 * alive - potLoss - potToAir - potToFood + lidToPot) / p.C_pot;
  into[2] = (lidToAir + potToAir - airToFood) / p.C_air;
  into[3] = (airToFood + lidToFood + potToFood - boiledOff) / p.C_food;
};

function lumpedRun(relativeTolerance: number, absoluteTolerance: number) {
  const { lid, pot, air, food } = lumped.startKelvin;
  return integrateStiff({
    rates: lumpedRates,
    start: [lid, pot, air, food],
    from: 0,
    to: 7200,
    at: lumped.rows.map(([time]) => time!),
    relativeTolerance,
    absoluteTolerance,
    mostSteps: 2000,
  });
}

function worstLumpedError(run: ReturnType<typeof integrateStiff>): number {
  expect(run.times.length).toBe(lumped.rows.length);
  const errors = lumped.rows.flatMap(([, ...wanted], row) =>
    wanted.map((celsius, store) => Math.abs(run.states[row]![store]! - 273.15 - celsius)),
  );
  return Math.max(...errors);
}

/** dT/dt = -K (T⁴ - Ts⁴): the time at which it has cooled to `kelvin`, up to a constant. */
function radiationClock(kelvin: number, surroundings: number): number {
  const logarithm = Math.log((kelvin + surroundings) / (kelvin - surroundings));
  return (logarithm + 2 * Math.atan(kelvin / surroundings)) / (4 * surroundings ** 3);
}

describe('integrateStiff on four coupled heat stores (scipy-ivp: Radau, LSODA, BDF agree to 4e-6 K)', () => {
  it('matches every row within 0.002 K at a relative tolerance of 1e-6', () => {
    const run = lumpedRun(1e-6, 1e-5);
    expect(run.status).toBe('done');
    expect(worstLumpedError(run)).toBeLessThan(0.002);
  });

  it('matches within 0.2 K at the loose tolerance of 1e-4, in under a hundred steps', () => {
    const run = lumpedRun(1e-4, 1e-2);
    expect(worstLumpedError(run)).toBeLessThan(0.2);
    expect(run.steps).toBeLessThan(100);
  });

  it('is as good between its steps as at them: every 20 s within 0.001 K of a run a thousand times finer', () => {
    const at = Array.from({ length: 361 }, (_, index) => index * 20);
    const { lid, pot, air, food } = lumped.startKelvin;
    const start = [lid, pot, air, food];
    const shared = { rates: lumpedRates, start, from: 0, to: 7200, at, mostSteps: 20_000 };
    const usualRun = integrateStiff({
      ...shared,
      relativeTolerance: 1e-6,
      absoluteTolerance: 1e-5,
    });
    const fineRun = integrateStiff({ ...shared, relativeTolerance: 1e-9, absoluteTolerance: 1e-8 });
    const errors = usualRun.states.flatMap((state, row) =>
      Array.from(state, (value, store) => Math.abs(value - fineRun.states[row]![store]!)),
    );
    expect(errors.length).toBe(4 * 361);
    expect(Math.max(...errors)).toBeLessThan(0.001);
  });

  it('takes far fewer steps than the 548 of an explicit Runge-Kutta pair at the same tolerance', () => {
    expect(lumpedRun(1e-6, 1e-6).steps).toBeLessThan(lumped.stepsAtRelative1e6.RK45 / 1.5);
  });
});

describe('integrateStiff against closed forms', () => {
  it('cools by radiation alone as the closed form says, within 1e-4 K', () => {
    const { m_kg, cp, eps, A_m2, Ts_K, T0_K } = lumped.radiationOnly.parameters;
    const rate = (SIGMA * eps * A_m2) / (m_kg * cp);
    const at = lumped.radiationOnly.rows.map(([time]) => time!);
    const run = integrateStiff({
      ...usual,
      rates: (_, [kelvin], into) => {
        into[0] = -rate * (kelvin! ** 4 - Ts_K ** 4);
      },
      start: [T0_K],
      from: 0,
      to: 7200,
      at,
      relativeTolerance: 1e-9,
    });
    lumped.radiationOnly.rows.forEach(([time, wanted], row) => {
      const kelvin = run.states[row]![0]!;
      expect(Math.abs(kelvin - wanted!)).toBeLessThan(1e-4);
      const clock = (radiationClock(wanted!, Ts_K) - radiationClock(T0_K, Ts_K)) / rate;
      expect(clock).toBeCloseTo(time!, 2);
    });
  });

  it('has order 3: an eight times smaller tolerance halves the step and cuts the error eightfold', () => {
    const error = (relativeTolerance: number) => {
      const run = integrateStiff({
        ...usual,
        rates: (time, [value], into) => {
          into[0] = -value! * Math.sin(time) * 2;
        },
        start: [1],
        from: 0,
        to: 5,
        relativeTolerance,
        absoluteTolerance: relativeTolerance,
        mostSteps: 20_000,
      });
      const exact = Math.exp(2 * (Math.cos(5) - 1));
      return { error: Math.abs(run.states[0]![0]! - exact), steps: run.steps };
    };
    const coarse = error(1e-6);
    const fine = error(1e-9);
    const order = Math.log(coarse.error / fine.error) / Math.log(fine.steps / coarse.steps);
    expect(order).toBeGreaterThan(2.6);
  });

  it('stays on a slow cosine although the system is a million times faster (prothero1974)', () => {
    const run = integrateStiff({
      ...usual,
      rates: (time, [value], into) => {
        into[0] = -1e6 * (value! - Math.cos(time)) - Math.sin(time);
      },
      start: [1],
      from: 0,
      to: 10,
      at: [1, 2, 5, 10],
      absoluteTolerance: 1e-6,
    });
    run.times.forEach((time, row) => {
      expect(Math.abs(run.states[row]![0]! - Math.cos(time))).toBeLessThan(1e-4);
    });
    expect(run.steps).toBeLessThan(400);
  });

  it('damps a fast unknown at once instead of ringing (L-stable), even if it may be off by 10', () => {
    const run = integrateStiff({
      ...usual,
      rates: (_, [fast], into) => {
        into[0] = -1e9 * fast!;
      },
      start: [1],
      from: 0,
      to: 1,
      absoluteTolerance: 10,
    });
    expect(Math.abs(run.states[0]![0]!)).toBeLessThan(1e-9);
    expect(run.steps).toBeLessThan(40);
  });

  it('lands on a jump of the rates: filling until 1, then draining (closed form, 1e-6)', () => {
    const run = integrateStiff({
      ...usual,
      rates: (time, [value], into) => {
        into[0] = (time < 1 ? 5 : 0) - value!;
      },
      start: [0],
      from: 0,
      to: 3,
      stops: [1],
      at: [0, 0.5, 1, 2, 3],
      relativeTolerance: 1e-8,
      absoluteTolerance: 1e-8,
    });
    const full = 5 * (1 - Math.exp(-1));
    const wanted = [0, 5 * (1 - Math.exp(-0.5)), full, full * Math.exp(-1), full * Math.exp(-2)];
    expect(run.times).toEqual([0, 0.5, 1, 2, 3]);
    wanted.forEach((value, row) => {
      expect(run.states[row]![0]!).toBeCloseTo(value, 6);
    });
  });
});

describe('integrateStiff when it cannot go on', () => {
  it('says so when the steps run out, and returns what it has', () => {
    const run = integrateStiff({
      ...usual,
      rates: lumpedRates,
      start: [293, 293, 293, 293],
      from: 0,
      to: 7200,
      at: [0, 7200],
      mostSteps: 5,
    });
    expect(run.status).toBe('too-many-steps');
    expect(run.times).toEqual([0]);
  });

  it('says so when the rates stop being numbers past some state', () => {
    const run = integrateStiff({
      ...usual,
      rates: (_, [value], into) => {
        into[0] = value! > 2 ? Number.NaN : 1;
      },
      start: [1],
      from: 0,
      to: 2,
    });
    expect(run.status).toBe('step-too-small');
    expect(run.states).toEqual([]);
  });

  it('throws on times in the wrong order and on rates that are not finite', () => {
    const rates: Rates = (_, __, into) => into.fill(Number.NaN);
    expect(() => integrateStiff({ ...usual, rates, start: [1], from: 1, to: 0 })).toThrow(
      RangeError,
    );
    expect(() => integrateStiff({ ...usual, rates, start: [1], from: 0, to: 1 })).toThrow(
      RangeError,
    );
  });
});
