// Works behind formula/ and its checks.

import type { Bibliography } from './source.ts';

export const formulaSources = {
  bakersPercent: {
    title: "Baker's percentage: every ingredient over the flour",
    by: 'encyclopedic article',
    grade: 'B',
  },
  hydrationClasses: {
    title: 'Hydration classes: 50-57 % stiff, 58-65 % medium, above high',
    by: 'encyclopedic article',
    grade: 'B',
    note: 'The finer words above 65 % are from memory.',
  },
  uwAltitude: {
    title: 'Altitude Adjusters, cakes (also bulletin B-734, 1981)',
    by: 'University of Wyoming Extension',
    where: 'table: baking powder less per teaspoon at 3,000, 5,000, 7,000 ft',
    grade: 'A',
    note: 'No change below 3,000 ft. Cakes; used for quick breads as well.',
  },
  purdyAltitude: {
    title: 'High-altitude adjustment table',
    by: 'S. Purdy',
    grade: 'B',
    note: 'As reproduced by permission on a baking-education page; cuts more than the gas law above 7,000 ft because cake walls are weak.',
  },
  coloradoWheat: {
    title: 'Leaflet on yeast bread at altitude: 1/2 tsp less yeast per tbsp',
    by: 'Colorado Wheat Administrative Committee',
    grade: 'B',
    note: 'As reproduced; the height is not printed, we read it as Colorado at about 5,000 ft.',
  },
  yeastRate: {
    title: 'Rate of yeast doubles for every 17 °F',
    by: 'a baking-oven maker',
    where: 'example: doubled in 2 h at 80 °F, 1 h at 97 °F, 4 h at 63 °F',
    grade: 'B',
  },
  yeastHandout: {
    title: 'Yeast handout: nearly stops at 40 °F, killed at 140 °F, ferment at 80-85 °F',
    by: 'a home-baking association',
    grade: 'B',
  },
  doughTemperatures: {
    title: 'Water temperature by the rule of three, three worked examples',
    by: 'a trade magazine (2018), a baking school, a how-to text',
    grade: 'B',
    note: 'The first read, the others as quoted.',
  },
  neutralisingValues: {
    title: 'Neutralising values of leavening acids',
    by: 'a phosphate data sheet; Miller, Food Chemistry laboratory manual, table 2.1',
    grade: 'A',
  },
  legalPowder: {
    title: 'Baking powder gives at least 12 % of its weight as carbon dioxide (USA); 10 % (Canada)',
    by: 'a trade dictionary citing federal standards; Food and Drug Regulations B.03.002',
    grade: 'B',
    note: 'The US text itself was not seen.',
  },
} as const satisfies Bibliography;
