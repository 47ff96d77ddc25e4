// What a camp file may say of its spot and ovens reaches the coals, and comes back as it was written.

import { describe, expect, it } from 'vitest';
import { type DishPlan, planMeal } from '#engine';
import pilcrowCreek from './demo/pilcrow-creek.camp.json' with { type: 'json' };
import { type CampFile, fromEngine, readCampFile } from './index.ts';

interface Said {
  readonly place?: Partial<CampFile['place']>;
  readonly hour?: Partial<NonNullable<CampFile['weather']>[number]>;
  readonly oven?: Partial<NonNullable<CampFile['ovens']>[number]>;
}

const readWith = ({ place, hour, oven }: Said) =>
  readCampFile({
    ...pilcrowCreek,
    place: { ...pilcrowCreek.place, hearth: 'ground', ...place },
    weather: pilcrowCreek.weather.map((each) => ({ ...each, ...hour })),
    ovens: pilcrowCreek.ovens.map((each) => (each.id === 'A' ? { ...each, ...oven } : each)),
  });

const campWith = (said: Said) => {
  const read = readWith(said);
  if (!read.ok) throw new Error(JSON.stringify(read.troubles[0]));
  return read;
};

const loafWith = (said: Said): DishPlan => {
  const read = campWith(said);
  const loaf = planMeal(read.camp, read.menu).dishes.find(({ dish }) => dish.id === 'loaf');
  if (loaf === undefined) throw new Error('not planned');
  return loaf;
};

const lineOf = ({ loads }: DishPlan, cause: string) =>
  loads[0]!.coals.reckoning.because.find((each) => each.cause === cause)?.coals ?? 0;

const ALL: Said = {
  place: { groundIs: 'wet' },
  hour: { rain: '3 mm', sun: '40 %' },
  oven: { riser: '2 in', lidWeight: '6 lb', lidDiameter: '11 1/4 in' },
};

describe('a spot as the camp file tells it', () => {
  it.each<[string, Said]>([
    ['rain', { hour: { rain: '3 mm' } }],
    ['riser', { oven: { riser: '2 in' } }],
    ['ground', { place: { groundIs: 'wet' } }],
  ])(
    'has a line of its own for %s, with more coals (signs: groundSaps, common practice)',
    (cause, said) => {
      expect(lineOf(loafWith(said), cause)).toBeGreaterThan(lineOf(loafWith({}), cause));
    },
  );

  it('has fewer coals for a full sun on its lids, at most about two (coalsOvenModelNotes 5.4)', () => {
    const saved = lineOf(loafWith({ hour: { sun: '100 %' } }), 'sun');
    expect(saved).toBeLessThan(0);
    expect(saved).toBeGreaterThanOrEqual(-3);
  });

  it('says what the owner’s own measures moved', () => {
    const wide = loafWith({ oven: { lidDiameter: '12 in' } });
    expect(lineOf(wide, 'own-measures')).not.toBe(0);
    expect(lineOf(loafWith({}), 'own-measures')).toBe(0);
  });

  it('comes back from the engine as the same amounts', () => {
    const { camp, menu } = campWith(ALL);
    const again = readCampFile(fromEngine(camp, menu));
    expect(again.ok && again.camp).toEqual(camp);
    expect(camp.weather[0]).toMatchObject({ rain: 3, sun: 0.4 });
    expect(camp.ovens[0]?.riser).toBeCloseTo(0.0508, 9);
  });

  it.each<[string, Said]>([
    ['rain', { hour: { rain: '80 mm' } }],
    ['sun', { hour: { sun: '140 %' } }],
    ['riser', { oven: { riser: '3 ft' } }],
  ])('is refused by its path where its %s can not be', (field, said) => {
    const read = readWith(said);
    expect(read.ok).toBe(false);
    expect(!read.ok && read.troubles[0]?.path).toContain(field);
  });

  it('is planned but for an oven whose lid can not be its own', () => {
    const read = campWith({ oven: { lidDiameter: '20 in' } });
    const { refusals } = planMeal(read.camp, read.menu);
    expect(refusals.map(({ code }) => code)).toContain('COALS_CONDITIONS_IMPOSSIBLE');
  });
});
