// Works behind formula/ and its checks.

import type { Bibliography } from './source.ts';

export const formulaSources = {
  battersAndDoughs: {
    title:
      'Batters and doughs by cups: liquid to flour 1 : 1 pours, 1 : 2 drops, 1 : 2 2/3 or 1 : 3 soft',
    by: 'two school books of cookery, about 1900 (Theory and Practice of Cookery; A Book of Recipes for the Cooking School)',
    grade: 'B',
    note: 'Read in part, as reproduced. They differ on soft dough, 2 2/3 or 3 cups of flour; both stand.',
  },
  fatShortens: {
    title: 'Fat makes bread tender by parting the starch and gluten of the flour',
    by: 'Theory and Practice of Cookery, batters and doughs; a professional baking text, fats',
    grade: 'B',
    note: 'Read in part. A pup-loaf study finds a larger loaf with 3 % shortening (5.04 against 4.24 cm3 a gram), a cook writer less rise with much fat: both are told.',
  },
  solidFats: {
    title: 'Butter rises a little more by its water; lard and shortening, all fat, are more tender',
    by: 'a cooking-school text',
    year: 2022,
    grade: 'B',
  },
  breadIngredients: {
    title: 'What salt, sugar, eggs and whole grain do in bread',
    by: 'a cook writer on bread ingredients; notes from a household text',
    grade: 'B',
    note: 'Pages read in part; no measurements.',
  },
  milkInBread: {
    title: 'Bread with water: chewier crumb, crisper crust; with milk: finer crumb, darker crust',
    by: 'an article on bread; a manual for home baking',
    grade: 'B',
    note: 'Read in part; by lactose and protein.',
  },
  yeastKinds: {
    title: 'Fresh yeast 1, active dry 0.4, instant 0.33, by weight',
    by: 'bakers, printed alike on many pages',
    grade: 'B',
    note: 'No primary work read.',
  },
  olderServiceCards: {
    title: 'Older cards of a military recipe service: biscuits, corn bread, hot rolls, sweet dough',
    by: 'as reproduced',
    grade: 'B',
  },
  biscuitTrade: {
    title: 'Biscuit formulas in a trade magazine, one of them for honey',
    by: 'a bakery magazine',
    grade: 'B',
  },
  sodaBreads: {
    title: 'Soda breads: an open cookbook, a regional page, a manuscript of the 1800s',
    by: 'as read on three pages',
    grade: 'B',
  },
  bannocks: {
    title: 'Three pan and oven breads raised with powder',
    by: 'an outfitter, a community page, a magazine',
    grade: 'B',
  },
  breadFormulas: {
    title: 'Field bread of 1941, a lean bread, a study loaf of 810 g',
    by: 'a news magazine, an encyclopedic article, a baking-model paper',
    grade: 'B',
  },
  enrichedBreads: {
    title: 'Dinner rolls for 250 and an egg bread worked out from a service card',
    by: 'two cooks, each on a page of their own',
    grade: 'B',
    note: 'Weights read on the pages; eggs counted as 50 g each.',
  },
  enrichedFromMemory: {
    title: 'Butter and egg doughs: 20 to 50 % butter, 40 to 50 % egg, 8 to 15 % sugar',
    by: 'from memory',
    grade: 'D',
    note: 'Common practice of bakers.',
  },
  sourdoughFromMemory: {
    title: 'Usual sourdough: 65 to 75 % water, 2 % salt',
    by: 'from memory',
    grade: 'D',
    note: 'The salt is also in a published table.',
  },
  kitchenSwaps: {
    title: 'Kitchen rules for swapping one food for another',
    by: 'common practice',
    grade: 'D',
    note: 'Shown beside what we reckon where the two differ; no primary source.',
  },
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
    title:
      'SB 10-495-1: amounts of leavening at 2,000 to 8,000 ft for cakes, hot breads and drop cookies',
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
  iceTable: {
    title: 'Ice in each pound of dough water, by tap water and wanted water temperature',
    by: 'a bakery supplier',
    grade: 'B',
    note: 'Read; its figures follow (tap - wanted) / (tap + 112) in °F, 144 BTU to melt a pound.',
  },
  gaenzle1998: {
    title: 'Modeling of growth of Lactobacillus sanfranciscensis and Candida milleri in sourdough',
    by: 'Gänzle, Ehmann, Hammes',
    year: 1998,
    where: 'Applied and Environmental Microbiology 64, 2616-2623',
    grade: 'A',
    note: 'Abstract read; the temperatures of half and quarter rate by the author in a sourdough forum FAQ, section 39.',
  },
  starterChart: {
    title: 'Sourdough feeding chart: 1:1:1 to 1:10:10, hours to its peak at 20 °C',
    by: 'a sourdough supplier',
    year: 2025,
    grade: 'B',
    note: 'Read. Ranges of two to four hours; fitted on its first and last row, judged on the four between.',
  },
  starterAt22: {
    title: 'A feed of 1:1:1 is ripe after about 3.5 hours, 1:10:10 after about 12, at 22 °C',
    by: 'a bread page',
    grade: 'B',
    note: 'Read in part.',
  },
  yeastGrowth: {
    title: 'Yeast at 1.67 %, 27 °C: no growth for 2 h, +26 % from 2 to 4 h, +9 % from 4 to 6 h',
    by: 'lecture notes on bread',
    grade: 'B',
  },
  coldFerment: {
    title: 'Slow rises in the cold take 0.2 to 0.5 % of yeast for 12 to 24 h',
    by: 'a page of kitchen answers',
    grade: 'B',
    note: 'Read. A well-known cook book of 2004 says 0.25 % of yeast for a dough over night, and names no temperature.',
  },
  usualYeastRise: {
    title: '1 % of instant yeast doubles a dough in 75 minutes at 80 °F',
    by: 'common practice',
    grade: 'D',
    note: 'The common 1.4 % and one hour in a warm room, by the law. No source.',
  },
  mixKeeping: {
    title:
      'Dry mixes: 6 to 12 months without fat, 3 with; about a month sealed in a pack; yeast apart',
    by: 'a page on mixes; an outdoors page on bannock (2011)',
    grade: 'B',
    note: 'Read. They speak of a jar at home and of a bag in a pack.',
  },
  missouriStaples: {
    title: 'MP557, storing food in the cupboard: powder 18 months, soda 2 years, kept dry',
    by: 'University of Missouri Extension',
    grade: 'A',
  },
  wholeGrainKeeping: {
    title: 'Whole wheat flour and cornmeal go rancid in as little as three months in the pantry',
    by: 'a cooking magazine',
    grade: 'B',
  },
  dryMilkKeeping: {
    title: 'Dried skim milk keeps 24 months closed at 70 °F, 3 to 6 months once opened',
    by: 'Cornell Cooperative Extension (as reproduced); Utah State University Extension (as quoted)',
    grade: 'B',
    note: 'Another page says 1 to 2 months once opened. Nobody measured it in a mix in a warm pack.',
  },
  dryMilkInMix: {
    title: 'A mix with milk powder keeps a weekend; heat shortens it',
    by: 'an outdoors forum',
    grade: 'D',
    note: 'Read. The three months at home are from memory.',
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
  fizzTest: {
    title:
      'Half a teaspoon of powder in a quarter cup of hot water must fizz hard; opened tins last 3 to 18 months by the damp',
    by: 'two kitchen pages',
    year: 2013,
    grade: 'D',
    note: 'Practice.',
  },
  sodaTaste: {
    title:
      'Soda without acid frees half its gas in the heat and leaves strongly alkaline carbonate, which tastes bitter',
    by: 'a baking page; bulletin B-734 speaks of a bitter or alkaline aftertaste',
    grade: 'B',
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
  dryButtermilkGrades: {
    title:
      'Dry buttermilk, grades and standards: titratable acidity 0.10 to 0.18 % when stirred up',
    by: 'USDA Agricultural Marketing Service',
    grade: 'A',
    note: 'From the churning of butter. Cultured buttermilk is 0.8 to 0.9 % (a food-service text, B).',
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
