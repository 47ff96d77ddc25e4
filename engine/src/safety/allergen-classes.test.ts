import { describe, expect, it } from 'vitest';
import table from '../../validation/safety/allergen-classes.json' with { type: 'json' };
import type { Allergen } from '../camp/camp.ts';
import { allergyMeant, classesOfAllergen, EU_FOURTEEN, US_NINE } from './allergen-classes.ts';

const rows = table.rows as unknown as readonly (readonly [Allergen, string | null, string])[];

describe('allergen classes', () => {
  it('are those of both laws, word by word (falcpa-faster, eu-1169-2011)', () => {
    expect(rows).toHaveLength(15);
    for (const [allergen, us, eu] of rows) {
      expect(classesOfAllergen(allergen).us ?? null, allergen).toBe(us);
      expect(classesOfAllergen(allergen).eu, allergen).toBe(eu);
    }
  });

  it('cover each of the nine and each of the fourteen', () => {
    expect(US_NINE).toHaveLength(9);
    expect(EU_FOURTEEN).toHaveLength(14);
    expect([...US_NINE].sort()).toEqual(rows.flatMap(([, us]) => us ?? []).sort());
    expect([...EU_FOURTEEN].sort()).toEqual([...new Set(rows.map(([, , eu]) => eu))].sort());
  });
});

describe('an allergy word that the camp file does not know', () => {
  it('is named with what it means; nut and shellfish of the annex (eu-1169-2011), others from memory', () => {
    expect(allergyMeant('lactose')).toEqual(['milk']);
    expect(allergyMeant('Coeliac')).toEqual(['gluten']);
    expect(allergyMeant('macadamia')).toEqual(['tree-nut']);
    expect(allergyMeant('shellfish')).toEqual(['crustacean', 'mollusc']);
    expect(allergyMeant('nuts')).toEqual(['tree-nut', 'peanut']);
    expect(allergyMeant('peanut allergy')).toEqual(['peanut']);
    expect(allergyMeant('sulfites')).toEqual(['sulphite']);
    expect(allergyMeant('moonlight')).toEqual([]);
  });
});
