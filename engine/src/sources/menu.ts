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
  appetiteCommon: {
    title: 'Children and people over 65 eat less; a reserve for crowds',
    by: 'common practice, no source',
    grade: 'D',
    note: 'Planners say "less"; no published multiplier was found.',
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
