// Works behind menu/ and its checks.

import type { Bibliography } from './source.ts';

export const menuSources = {
  armedForcesRecipes: {
    title: 'Armed Forces Recipe Service, TM 10-412 / NAVSUP P-7',
    by: 'US Army and Navy',
    year: 2003,
    where: 'card A-1 (scaling), D 001 00, D-001, D-009, D-014, L-23',
    grade: 'A',
    note: 'Cards D 001 00 and D-009 read as scans; A-1, D-014 and L-23 in a mirror (B).',
  },
  birginGentil2009: {
    title:
      'New and improved results for packing identical unitary radius circles within triangles, rectangles and strips',
    by: 'E. G. Birgin and J. M. Gentil',
    year: 2009,
    where: 'table 1, column "Reference" (best known)',
    grade: 'A',
    note: 'Every ratio up to 37 was reached again by an optimiser of our own to 1e-8.',
  },
  ovenFromMemory: {
    title: 'Small deep ovens and the depth of the 16-inch',
    by: 'us, from memory',
    grade: 'D',
    note: 'Not in the chart that we read; never used to gate accuracy.',
  },
  beranbaum2009: {
    title: 'Filling the pan: no less than half and no more than two thirds',
    by: 'R. L. Beranbaum',
    year: 2009,
    where: 'chapter note, as quoted on a reference page',
    grade: 'B',
  },
  potFill: {
    title: 'Working fill of a legged oven: about three quarters',
    by: 'a camping page',
    grade: 'B',
    note: 'Single secondary source.',
  },
  hardWorkRations: {
    title: 'Menu planning of a scout troop: 3,000 kcal of trail food, 4,200 on a hard day',
    by: 'a troop page',
    grade: 'B',
  },
  calorieNeeds: {
    title: 'Estimated calorie needs per day, by age, sex and physical activity level',
    by: 'Dietary Guidelines for Americans, appendix 2',
    year: 2015,
    where: 'table A2-1, moderately active',
    grade: 'B',
    note: 'No published multiplier of portions was found: energy needed stands in for appetite.',
  },
  appetiteCommon: {
    title: 'A reserve for crowds: one in twenty from twelve eaters on, one in ten from fifty',
    by: 'common practice, no source',
    grade: 'D',
    note: 'Planners say "some more"; no published figure was found.',
  },
  schoolRecipes: {
    title: 'USDA Recipes for Schools, B-09 and D-20',
    by: 'US Department of Agriculture',
    year: 2004,
    grade: 'A',
  },
  northDakotaBeans: {
    title: 'Kidney beans, quantity recipe for adult care',
    by: 'North Dakota Department of Public Instruction',
    grade: 'A',
    note: '8 lb 6 oz dry for 100 half cups',
  },
  arsBakedBeans: {
    title: 'Home freezing bulletin, baked beans',
    by: 'USDA Agricultural Research Service',
    grade: 'A',
    note: '4 lb dry for 25 cups',
  },
  mississippiRice: {
    title: 'School recipe MRS 1341, brown rice',
    by: 'Mississippi Department of Education',
    year: 2020,
    grade: 'A',
  },
  fns23: {
    title:
      'Dry Beans, FNS-23: two cups make about five; a state extension service says six of a pound',
    by: 'USDA Food and Nutrition Service',
    grade: 'A',
  },
  usdaBuyingGuide: {
    title: 'Food Buying Guide for Child Nutrition Programs, example page',
    by: 'US Department of Agriculture',
    grade: 'B',
    note: 'ground beef 0.74 and 8.5 lb for 100 oz read; yields by cut are from memory (D)',
  },
  porkGuide: {
    title: 'Retail guide to pork: 16 oz raw, 12 oz cooked',
    by: 'a trade association',
    grade: 'B',
  },
  servingBasics: {
    title: 'Basics at a Glance: scoops, ladles, measures',
    by: 'National Food Service Management Institute',
    grade: 'B',
    where: 'read in two reprints',
  },
  pupLoaf: {
    title: 'Density and oven spring of a small tin loaf',
    by: 'He and Hoseney (attribution from memory), as reproduced in two encyclopedic texts',
    grade: 'B',
  },
  professionalBaking: {
    title: 'A professional baking text: biscuits about double, cramped ones rise higher',
    by: 'open textbook',
    grade: 'B',
  },
  lloyd2004: {
    title: 'Effect of long-term storage on baking powder functionality',
    by: 'Lloyd, Ogden, Pike and Utley',
    year: 2004,
    where: 'abstract: biscuits 66-79 against 47 cm³ without powder',
    grade: 'B',
  },
} as const satisfies Bibliography;
