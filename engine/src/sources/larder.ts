// Works behind larder/ and its checks.

import type { Bibliography } from './source.ts';

export const larderSources = {
  sr28: {
    title: 'National Nutrient Database for Standard Reference, Release 28',
    by: 'USDA Agricultural Research Service',
    year: 2015,
    where: 'tables FOOD_DES, WEIGHT, NUT_DATA; NDB numbers in each row',
    grade: 'A',
    note: '140 rows copied; 130 agree on water, energy, protein, fat, carbohydrate and sodium with an earlier release, ten (dairy, dried egg, brown rice, potato, sausage) were analysed anew between releases.',
  },
  herr41: {
    title: 'Average Weight of a Measured Cup of Various Foods',
    by: 'Fulton, Matthews and Davis, USDA Home Economics Research Report 41',
    year: 1977,
    grade: 'B',
    note: 'As quoted in a mailing-list post of 2004; the report itself was not seen.',
  },
  allergenClasses: {
    title: 'The nine major allergens of the USA and the fourteen of the EU',
    by: 'FALCPA 2004 with FASTER 2021; Regulation (EU) 1169/2011 annex II',
    grade: 'D',
    note: 'Given to foods by their nature, from memory of the lists; labels to check are common practice.',
  },
  labelEnergy: {
    title:
      'Energy and salt on food labels: 4, 9 and 4 kcal/g, fibre 2 kcal/g, salt is sodium times 2.5',
    by: 'Regulation (EU) 1169/2011 annexes I and XIV; 21 CFR 101.9(c)(1)',
    grade: 'D',
    note: 'From memory; American labels count fibre as carbohydrate, European ones do not.',
  },
  labelRounding: {
    title: 'How labels round, and how far they may be off: a fifth',
    by: '21 CFR 101.9(c) and (g)',
    grade: 'D',
    note: 'From memory: fat to half a gram, carbohydrate and protein to a gram, energy to 10 kcal.',
  },
  larderFromMemory: {
    title: 'Foods that the release does not have',
    by: 'us, from memory',
    grade: 'D',
    note: 'Instant yeast, rice flour, drinks, stocks, squash, spices and the like; never used to gate accuracy.',
  },
} as const satisfies Bibliography;
