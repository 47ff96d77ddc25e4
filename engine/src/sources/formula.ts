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
  coloradoCakes: {
    title: 'Avoid holiday baking disasters: cakes 1/8 to 1/4 less leavening, oven 15-20 °F hotter',
    by: 'Colorado State University, Cooperative Extension',
    year: 2002,
    grade: 'A',
    note: 'Names no height; all of the state lies above 3,000 ft, so it is put at 5,000 ft.',
  },
  coloradoYeast: {
    title: 'Baking at 5,000 ft: 10-25 % less yeast, 1-2 tbsp more liquid for a cup of flour',
    by: 'a health district, quoting an emerita of Colorado State University Extension',
    grade: 'B',
  },
  nmsuCakes: {
    title: 'Circular 293: for each 2,500 ft, 1/4 to 1/2 tsp less powder for two cups of flour',
    by: 'New Mexico State University Extension',
    grade: 'A',
    note: 'Shortening cakes; its opening read, not its tables.',
  },
  serviceAltitude: {
    title: 'SB 10-495-1: amounts of leavening at 2,000 to 8,000 ft for cakes, hot breads and drop cookies',
    by: 'US Army supply bulletin (also a guideline card of the Armed Forces Recipe Service)',
    where: 'section on high altitude areas; table of amounts in the basic recipe',
    grade: 'A',
    note: 'Of a tablespoon it leaves 2 1/2, 2, 1 2/3 and 1 tsp: cuts of 17, 33, 44 and 67 %, two to three times what equal gas asks. Oven 25 °F hotter from 3,500 ft. Bakery mixes: 80, 66, 55 and 33 % of the soda packet.',
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
  sodaChemistry: {
    title: 'Stoichiometry of soda: NaHCO3 84.0066, CO2 44.0095 g/mol, one acid hydrogen for each',
    by: 'atomic masses',
    grade: 'A',
    note: 'Checked by sodium: 27.37 % of soda, and 27,360 mg in 100 g in sr28 NDB 18372.',
  },
  selfRisingFlour: {
    title:
      'Self-rising flour: at least 0.5 % of the flour as carbon dioxide, at most 4.5 parts of soda and acid to 100',
    by: 'Code of Federal Regulations',
    where: '21 CFR 137.180',
    grade: 'A',
  },
  sourFoodsFromMemory: {
    title: 'How sour: buttermilk 0.8 % lactic, vinegar 5 % acetic, lemon juice 4.8 % citric acid',
    by: 'from memory',
    grade: 'D',
    note: 'Buttermilk by the cup then takes 0.40 tsp of soda; cooks say half a teaspoon.',
  },
  powderByTheCup: {
    title: '1 to 1 1/4 tsp of powder, or 1/4 tsp of soda, for a cup of flour',
    by: 'common teaching',
    grade: 'D',
    note: 'Common practice, no source.',
  },
  bostonPowder: {
    title: 'Powder: 2 tsp for a cup of flour without eggs, 1 1/2 with them (tartrate powders)',
    by: 'The Boston Cooking-School Cook Book',
    grade: 'A',
    note: 'Its powders were single-acting and weaker in the oven.',
  },
  uwQuickBreads: {
    title: 'Altitude Adjusters, bulletin B-734: quick breads',
    by: 'University of Wyoming, Cooperative Extension (K. K. Harrington)',
    year: 1981,
    grade: 'B',
    note: 'As quoted: 1 tsp of powder or 1/2 tsp of soda for a cup is usually enough at 5,000 ft; usually no change, or slightly less.',
  },
  legalPowder: {
    title: 'Baking powder gives at least 12 % of its weight as carbon dioxide (USA); 10 % (Canada)',
    by: 'a trade dictionary citing federal standards; Food and Drug Regulations B.03.002',
    grade: 'B',
    note: 'The US text itself was not seen.',
  },
} as const satisfies Bibliography;
