import { describe, expect, it } from 'vitest';
import { coalRequest, withTrialCoals } from '../../validation/coals/requests.ts';
import trial from '../../validation/coals/trial-model.json' with { type: 'json' };
import { kelvin, toFahrenheit } from '../quantity/unit.ts';
import { laid } from './coals-ahead.ts';
import { minuteLater, type OvenMoment, type RunSetting, startMoment, withLoadIn } from './run.ts';
import { siteFor } from './site.ts';

interface Trial {
  readonly minutes: number;
  readonly stepsPerMinute: number;
  readonly loadAt?: number;
  readonly coalsOf?: RunSetting;
}

const request = coalRequest();
const setting = siteFor(request);
const AIR = setting.outside.airKelvin;

const momentsOf = ({
  minutes,
  stepsPerMinute,
  loadAt,
  coalsOf = setting,
}: Trial): readonly OvenMoment[] => {
  const moments = [startMoment({ ironKelvin: AIR, coals: laid({ above: 17, below: 8 }) })];
  for (let minute = 1; minute <= minutes; minute++) {
    const last = moments.at(-1) as OvenMoment;
    const moment = minuteLater(coalsOf, last, { stepsPerMinute });
    moments.push(minute === loadAt ? withLoadIn(moment, setting.load) : moment);
  }
  return moments;
};

const ironJoules = ({ iron }: OvenMoment) =>
  setting.body.lidCapacity * (iron.lid - AIR) +
  setting.body.wallCapacity * (iron.wall - AIR) +
  setting.body.floorCapacity * (iron.floor - AIR);

describe('the oven in time', () => {
  it('in the steps of the plans keeps within 0.1 K of one step a second, also as its coals turn to ash', () => {
    const coarse = momentsOf({ minutes: 75, stepsPerMinute: 1, loadAt: 20 });
    const fine = momentsOf({ minutes: 75, stepsPerMinute: 60, loadAt: 20 });
    const misses = coarse.map((moment, minute) =>
      Math.abs(moment.ovenKelvin - (fine[minute]?.ovenKelvin ?? Number.NaN)),
    );
    expect(Math.max(...misses)).toBeLessThan(0.1);
  });

  it('is at least three times as near when the step is halved: second order, as verwer1999 claims', () => {
    const at = (stepsPerMinute: number) =>
      momentsOf({ minutes: 12, stepsPerMinute }).at(-1)?.ovenKelvin ?? Number.NaN;
    const exact = at(240);
    expect(Math.abs((at(1) - exact) / (at(2) - exact))).toBeGreaterThan(3);
    expect(Math.abs((at(2) - exact) / (at(4) - exact))).toBeGreaterThan(3);
  });

  it('loses no heat: given = iron + load + losses within 0.1 %', () => {
    const last = momentsOf({ minutes: 90, stepsPerMinute: 1, loadAt: 20 }).at(-1) as OvenMoment;
    const error = last.givenJoules - ironJoules(last) - last.loadJoules - last.lossJoules;
    expect(Math.abs(error / last.givenJoules)).toBeLessThan(1e-3);
  });

  it('heats an empty 12 inch oven as the trial model did (coalsOvenModelNotes 5.5) within 6 F', () => {
    const coalsOf = withTrialCoals(setting);
    const moments = momentsOf({ minutes: 35, stepsPerMinute: 1, coalsOf });
    const rows = trial.rows.filter((row) => row[0] === 'empty' && Number(row[1]) <= 35);
    const errors = rows.map(([, minute, fahrenheit]) => {
      const moment = moments[Number(minute)] as OvenMoment;
      return toFahrenheit(kelvin(moment.ovenKelvin)) - Number(fahrenheit);
    });
    expect(errors.length).toBe(4);
    expect(Math.max(...errors.map(Math.abs))).toBeLessThan(6);
  });

  it('falls back to the air when all coals are ash, and never below it', () => {
    const last = momentsOf({ minutes: 600, stepsPerMinute: 1 }).at(-1) as OvenMoment;
    expect(last.ovenKelvin).toBeGreaterThan(AIR - 0.01);
    expect(last.ovenKelvin).toBeLessThan(AIR + 5);
  });
});
