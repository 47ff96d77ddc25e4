import { describe, expect, it } from 'vitest';
import run from '../../validation/safety/lethality-run.json' with { type: 'json' };
import table from '../../validation/safety/lethality-table.json' with { type: 'json' };
import { fromFahrenheit, minutes } from '../quantity/unit.ts';
import { holdMinutesFor, lethalityOf } from './lethality.ts';

const readings = (fahrenheit: readonly number[], stepMinutes: number) =>
  fahrenheit.map((core, index) => ({
    minute: minutes(index * stepMinutes),
    core: fromFahrenheit(core),
  }));

describe('lethality of a run of core readings', () => {
  it('is that of the worked example in lethality-worksheet within 0.0006 min', () => {
    const rows = run.rows as unknown as readonly (readonly [number, number])[];
    const found = lethalityOf(
      readings(
        rows.map(([core]) => core),
        0.5,
      ),
    );
    expect(found.equivalent).toHaveLength(16);
    rows.forEach(([, published], index) => {
      expect(Math.abs(found.equivalent[index]! - published)).toBeLessThan(0.0006);
    });
  });

  it('is 7.354 log for 4 min at 145 F, by the formula itself (lethality-worksheet)', () => {
    const found = lethalityOf(readings([145, 145], 4));
    expect(found.equivalent[1]).toBeCloseTo(4 * 10 ** -0.5, 6);
    expect(found.logReduction).toBeCloseTo(7.354, 3);
  });

  it('comes to the exact integral of a ramp from 130 to 150 F as the readings close up', () => {
    const exact = (10 / Math.LN10) * (1 - 1e-2); // integral of 10^((T-150)/10), 1 F a minute
    const ramp = Array.from({ length: 2001 }, (_, index) => 130 + index / 100);
    const found = lethalityOf(readings(ramp, 0.01));
    expect(found.equivalent.at(-1)).toBeCloseTo(exact, 4);
  });

  it('refuses readings that run backwards', () => {
    const [first, second] = readings([140, 150], 1);
    expect(() => lethalityOf([second!, first!])).toThrow(RangeError);
  });
});

describe('holding time at one temperature', () => {
  const rows = table.rows as unknown as readonly (readonly [number, number, number])[];

  it('rounded up keeps to the 6.5-log column of fsis-appendix-a within one printed unit', () => {
    const printed = rows.filter(([, seconds]) => seconds > 0);
    expect(printed).toHaveLength(28);
    for (const [core, seconds] of printed) {
      const unit = core <= 145 ? 60 : 1; // minutes to 145 F, seconds above
      const ours = Math.ceil((holdMinutesFor(fromFahrenheit(core), 6.5) * 60) / unit - 1e-9);
      expect(Math.abs(ours - seconds / unit), `${core} F`).toBeLessThanOrEqual(1);
    }
  });
});
