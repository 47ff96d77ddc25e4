// Works behind coals/.

import type { Bibliography } from './source.ts';

const transcribed = 'typed from web transcriptions; the first print was not seen';

export const coalsSources = {
  coalsOvenModelNotes: {
    title: 'Trial model of a camp oven as lid, wall, floor and a star cavity, fitted to one chart',
    by: 'this project',
    grade: 'D',
    note: 'computed and fitted, not measured; no thermocouple series of a camp oven was found',
  },
  coalsBurnNotes: {
    title: 'Burn law of a shrinking briquette, fixed by "half burned at 30 minutes"',
    by: 'this project',
    grade: 'D',
    note: 'derived; the half-hour figure comes from a handout relayed on two forums (chimneyMinutes)',
  },
  chartReprinted: {
    title: 'Baking temperature chart for 8 to 16 inch ovens',
    by: 'Lodge Manufacturing, as repeated by several pages',
    grade: 'B',
    note: `${transcribed}; the 16 inch row was seen on one page only`,
  },
  chartReprintedEdges: {
    title: 'Rows for 300, 475 and 500 F of the same chart',
    by: 'Camping and Hiking Ideas page',
    grade: 'B',
    note: `${transcribed}; its 475 F row for 10 inch breaks the pattern of the rest`,
  },
  chartSupply: {
    title: 'Coal chart for 10, 12 and 14 inch ovens, 300 to 500 F',
    by: 'Townsend scout page crediting a chuck-wagon supplier; a 2011 blog page repeats it whole',
    grade: 'B',
    note: transcribed,
  },
  chartPair: {
    title: 'Dutch Oven Cooking, part 1: one coal above and one below for each 25 F',
    by: 'Survival Library blog',
    year: 2015,
    grade: 'A',
    note: 'its last step is 50 F for one pair',
  },
  ruleTwiceDiameter: {
    title: 'Dutch Oven Cooking 101',
    by: 'Missouri Department of Conservation, Missouri Conservationist',
    year: 2009,
    where: 'June 2009',
    grade: 'A',
    note: 'a rule; the rows are made from it and not rounded',
  },
  rulePlusMinusThree: {
    title: 'Diameter plus three above, minus three below',
    by: 'Field & Stream and others',
    year: 2013,
    grade: 'B',
    note: 'some pages call the same count 325 F, others 350; read here as 325',
  },
  chartRings: {
    title: 'Rings of coals on the lid, one touching ring below at every size',
    by: 'Dinwiddie method as tabled by a food-storage page',
    grade: 'B',
    note: transcribed,
  },
  countingRules: {
    title: 'Single counts and rules for 350 F',
    by: 'about a dozen camping and scouting pages, 2003 to 2017',
    grade: 'B',
    note: 'each stands alone; kept to show how far they are apart',
  },
  ringMethod: {
    title: 'What a ring is: touching coals, outer edge on the edge of the pot, gaps for the legs',
    by: 'BellaOnline and the Dinwiddie handout',
    grade: 'B',
  },
  ovenSizing: {
    title: 'Dutch oven sizes: quarts, depth, weight',
    by: 'Utah Valley University outdoor page; weights repeated by a second page',
    grade: 'B',
    note: 'floor of a 12 inch oven about 10 inch; no wall thickness, no weight of the lid',
  },
  briquetteWeighing: {
    title: 'Weighings of 100 and of 7 briquettes of one brand',
    by: 'a burn test on a barbecue forum (about 2006), a page of 2014 and 2015, a charcoal reviewer',
    grade: 'B',
    note: '24.1 to 27.9 g each; two brands may differ twofold',
  },
  briquetteSize: {
    title: 'Width of a briquette: about 1.75 inch; another source: 2 inch square',
    by: 'a charcoal reviewer; Missouri Department of Conservation',
    grade: 'B',
  },
  chimneyMinutes: {
    title: 'Minutes in the chimney until coals are grey: 10-15, 15, 15-20, 20-30',
    by: 'several pages; a handout relayed in 2010; an extension agent in a newspaper, 2021',
    grade: 'B',
    note: 'sources disagree by a factor of two',
  },
  chimneyAtHeight: {
    title: 'Full ash after 25 minutes at 5500 ft and 80 F; near an hour once at about 6500 ft',
    by: 'two posts on a barbecue forum',
    grade: 'B',
    note: 'two reports; one of them a lighting that went wrong',
  },
  coalLife: {
    title: 'When coals are replaced: after 20, 30, 45, 60 minutes',
    by: 'several camp-cooking pages',
    grade: 'B',
  },
  woodCoalLife: {
    title: 'Campfire coals last about half as long as briquettes',
    by: 'Lodge Manufacturing page',
    grade: 'B',
  },
  splitByMethod: {
    title: 'Share of the coals above: bake 2/3, roast 1/2, simmer 1/3, boil and fry none',
    by: 'a scout troop in a newspaper, 2012; a camp cook’s page with 3/4 for bread',
    grade: 'B',
  },
  burnWind: {
    title: 'Burning rate of embers goes with the square root of the wind',
    by: 'Yan and others, International Journal of Wildland Fire 33, WF23151',
    year: 2024,
    where: 'abstract',
    grade: 'A',
  },
  emberWind: {
    title: 'Surface of embers: 750 °C at 1 m/s, 950 °C at 4 m/s',
    by: 'Urban, Vicariotto, Dunn-Rankin and Fernandez-Pello',
    year: 2019,
    grade: 'A',
    note: 'its fourth power and the square root of the wind agree: both double',
  },
  groundSaps: {
    title: 'Bare damp or cold earth takes heat from the coals below',
    by: 'a scout troop’s page; an extension agent in a newspaper, 2021',
    grade: 'B',
    note: 'a sign without a size; the sizes in the engine are ours',
  },
  handInside: {
    title: 'Hand just inside the oven: 550 F less 50 F for each second endured',
    by: 'two camp-cooking pages',
    grade: 'B',
    note: 'the test above an open fire differs by about 100 F and is another test',
  },
  flourTest: {
    title: 'A teaspoon of flour for five minutes: not brown below 300 F, light 350, dark 450',
    by: 'BellaOnline; a second page gives 400-450 for dark',
    grade: 'B',
  },
  turningRule: {
    title: 'Quarter turn of the oven one way and of the lid the other, every 10 to 15 minutes',
    by: 'Missouri Department of Conservation 2009; Field & Stream 2012',
    grade: 'A',
  },
  finishFromAbove: {
    title: 'Bread: about 8 minutes before the end all coals from below go on the lid',
    by: 'a bread page',
    grade: 'B',
  },
  churchillChu1975: {
    title:
      'Correlating equations for free convection from a vertical plate and a horizontal cylinder',
    by: 'Churchill and Chu, Int. J. Heat Mass Transfer 18',
    year: 1975,
    where: 'as equations 9.26 and 9.34 of bergman2011',
    grade: 'B',
  },
  churchillBernstein1977: {
    title: 'A correlating equation for forced convection from a cylinder in crossflow',
    by: 'Churchill and Bernstein, J. Heat Transfer 99',
    year: 1977,
    where: 'as equation 7.54 of bergman2011',
    grade: 'B',
  },
  bergman2011: {
    title: 'Fundamentals of Heat and Mass Transfer, 7th edition',
    by: 'Bergman, Lavine, Incropera and DeWitt',
    year: 2011,
    where: 'chapters 7, 9, 13; examples 7.3 and 9.2',
    grade: 'B',
    note: 'examples as quoted in the documentation of a heat-transfer library',
  },
  cengel: {
    title: 'Heat Transfer: A Practical Approach',
    by: 'Çengel',
    where: 'example 9-26b',
    grade: 'B',
    note: 'figures from an exam key; the edition was not stated',
  },
  verwer1999: {
    title: 'A second-order Rosenbrock method applied to photochemical dispersion problems',
    by: 'Verwer, Spee, Blom and Hundsdorfer, SIAM J. Sci. Comput. 20',
    year: 1999,
    grade: 'D',
    note: 'from memory; its order and stability are tested here instead of trusted',
  },
  abramowitz1964: {
    title: 'Handbook of Mathematical Functions',
    by: 'Abramowitz and Stegun',
    year: 1964,
    where: 'table 9.5',
    grade: 'D',
    note: 'from memory; the root is checked in a test',
  },
  plateTurning: {
    title: 'Disc with twelve patches, four at half power: exact series and finite volumes',
    by: 'this project',
    grade: 'C',
    note: 'computed by three independent methods that agree within 0.02 K; not a measurement',
  },
} as const satisfies Bibliography;
