// The runs that SciPy was given too (oven-scipy.json), on our equations under error control.

import { laid } from '../../src/coals/coals-ahead.ts';
import { type OvenCourse, ovenCourse } from '../../src/coals/oven-course.ts';
import { type CoalGroup, startMoment } from '../../src/coals/run.ts';
import { siteFor } from '../../src/coals/site.ts';
import { type Change, coalRequest, withTrialCoals } from './requests.ts';

interface ScipyCook {
  readonly change: Change;
  readonly coals: readonly CoalGroup[];
  readonly loadIn: number;
  readonly end: number;
}

export const scipyCooks: Readonly<Record<string, ScipyCook>> = {
  '12 inch, still, 70 F, 17/8': {
    change: {},
    coals: laid({ above: 17, below: 8 }),
    loadIn: 20,
    end: 90,
  },
  '10 inch, 3 m/s, -5 C, 2000 m, 16/7': {
    change: { inches: 10, wind: 3, airKelvin: 268.15, pressure: 79_495 },
    coals: laid({ above: 16, below: 7 }),
    loadIn: 15,
    end: 90,
  },
  '16 inch, 1 m/s, 30 C, 27/14': {
    change: { inches: 16, wind: 1, airKelvin: 303.15 },
    coals: laid({ above: 27, below: 14 }),
    loadIn: 25,
    end: 90,
  },
};

/** Every minute of one of them, over the coals that SciPy's run had. */
export const scipyCourse = (name: string): OvenCourse => {
  const { change, coals, loadIn, end } = scipyCooks[name]!;
  const setting = withTrialCoals(siteFor(coalRequest(change)));
  return ovenCourse({
    setting,
    start: startMoment({ ironKelvin: setting.outside.airKelvin, coals }),
    acts: [{ minute: loadIn, do: 'load-in' }],
    at: Array.from({ length: end + 1 }, (_, minute) => minute),
  });
};
