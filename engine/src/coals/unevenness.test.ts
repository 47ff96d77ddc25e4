import { describe, expect, it } from 'vitest';
import plate from '../../validation/coals/one-sided-plate.json' with { type: 'json' };
import { coalRequest } from '../../validation/coals/requests.ts';
import { isRefusal } from '../notice/notice.ts';
import { layCoals } from './lay-coals.ts';
import { plateSwing, windExcess } from './unevenness.ts';

const value = (name: string): number =>
  Number(plate.rows.find(([what]) => String(what).startsWith(name))?.[1]);

/** Complex sum of the missing power of the weak patches, a quarter of the ring. */
const missingDipole = (): number => {
  const weak = value('patches at half power');
  const angles = Array.from({ length: weak }, (_, index) => (index * 2 * Math.PI) / 12);
  const along = angles.reduce((sum, angle) => sum + Math.cos(angle), 0);
  const across = angles.reduce((sum, angle) => sum + Math.sin(angle), 0);
  return (value('full power') / 2) * Math.hypot(along, across);
};

describe('one-sided heat on a plate', () => {
  it('agrees with the exact disc (plateTurning) within 25 %: one harmonic, not the whole field', () => {
    const radius = value('radius');
    const moment = missingDipole() * value('patch radius');
    const flux = moment / ((Math.PI * radius ** 3) / 4); // q1 (r/R) cos has this moment
    const swing = plateSwing({
      fluxWattsPerSquareMetre: flux,
      radiusMetres: radius,
      spreadWattsPerKelvin: value('conductivity') * value('thickness'),
      coefficient: value('coefficient'),
    });
    const ours = 2 * swing * 0.95; // J1 of the pattern at r = 0.8 R beside its edge
    const exact = value('spread, K') - value('spread of an equal ring');
    expect(Math.abs(ours / exact - 1)).toBeLessThan(0.25);
  });

  it('grows with wind and is nothing of the wind in still air', () => {
    expect(windExcess(0)).toBe(0);
    expect(windExcess(2)).toBeGreaterThan(windExcess(1));
  });

  it('is mostly taken away by the turns of the plan', () => {
    const plan = layCoals(coalRequest({ wind: 1, stay: 60 }));
    if (isRefusal(plan)) throw new Error(plan.code);
    expect(plan.unevenness.turned).toBeLessThan(0.1 * plan.unevenness.unturned);
    expect(plan.unevenness.windward).toBe(true);
  });
});
