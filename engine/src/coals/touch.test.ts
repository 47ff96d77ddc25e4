import { describe, expect, it } from 'vitest';
import { coalRequest } from '../../validation/coals/requests.ts';
import type { Joules, Kelvin } from '../quantity/unit.ts';
import { kelvin, squareMetres, watts } from '../quantity/unit.ts';
import { laid } from './coals-ahead.ts';
import type { Load } from './load.ts';
import { ovenCourse } from './oven-course.ts';
import { minuteLater, type OvenMoment, startMoment, withLoadIn } from './run.ts';
import { siteFor } from './site.ts';

/** Joules in it are its state: 30 W/K from the inside, and as said from the floor. */
const lump = (touchWattsPerKelvin: number): Load => {
  const at = ([joules = 0]: readonly number[]) => 294 + joules / 2500;
  return {
    planArea: squareMetres(0.036),
    start: [0],
    heatInto: (state, oven: Kelvin) => watts(0.9 * (oven - at(state))),
    ...(touchWattsPerKelvin > 0
      ? { fromFloor: (state) => ({ wattsPerKelvin: touchWattsPerKelvin, kelvin: at(state) }) }
      : {}),
    after: ([joules = 0], heat: Joules) => [joules + heat],
    temperature: (state) => kelvin(at(state)),
  };
};

const settingOf = (load: Load) => ({ ...siteFor(coalRequest({})), load });

const stepped = (load: Load, minutes: number): OvenMoment => {
  const setting = settingOf(load);
  let moment = startMoment({ ironKelvin: 294.26, coals: laid({ above: 17, below: 8 }) });
  for (let minute = 0; minute < minutes; minute += 1) {
    if (minute === 20) moment = withLoadIn(moment, load);
    moment = minuteLater(setting, moment);
  }
  return moment;
};

describe('a load that lies on the floor', () => {
  it('cools the floor it lies on, and the inside less than if all its heat came from there', () => {
    const [free, touching] = [stepped(lump(0), 35), stepped(lump(5), 35)];
    expect(touching.iron.floor).toBeLessThan(free.iron.floor - 20);
    expect(touching.loadJoules).toBeGreaterThan(free.loadJoules);
  });

  it('loses no heat: what coals gave is in iron, load and losses within 0.2 % (a sum of its own)', () => {
    const load = lump(5);
    const { body } = settingOf(load);
    const last = stepped(load, 40);
    const warmed = (at: number) => at - 294.26;
    const iron =
      body.lidCapacity * warmed(last.iron.lid) +
      body.wallCapacity * warmed(last.iron.wall) +
      body.floorCapacity * warmed(last.iron.floor);
    const error = last.givenJoules - iron - last.loadJoules - last.lossJoules;
    expect(Math.abs(error / last.givenJoules)).toBeLessThan(2e-3);
    expect(last.load?.[0]).toBeCloseTo(last.loadJoules, 3);
  });

  it('is run by the planner in minutes as under error control, iron within half a kelvin (sandu1997)', () => {
    const load = lump(5);
    const course = ovenCourse({
      setting: settingOf(load),
      start: startMoment({ ironKelvin: 294.26, coals: laid({ above: 17, below: 8 }) }),
      acts: [{ minute: 20, do: 'load-in' }],
      at: [30, 40],
    });
    expect(course.status).toBe('done');
    for (const moment of course.moments) {
      const ours = stepped(load, moment.minute);
      for (const part of ['lid', 'wall', 'floor'] as const)
        expect(Math.abs(ours.iron[part] - moment.iron[part]), part).toBeLessThan(0.5);
    }
  });
});
