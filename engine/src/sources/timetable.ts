// What the timetable rests on.

import type { Bibliography } from './source.ts';

export const timetableSources: Bibliography = {
  bellman1958: {
    title: 'On a routing problem',
    by: 'R. Bellman',
    year: 1958,
    where: 'Quarterly of Applied Mathematics 16, 87-90',
    grade: 'D',
    note: 'from memory; the method is checked here against hand-made cycles and exhaustive search',
  },
  parkMiller1988: {
    title: 'Random number generators: good ones are hard to find',
    by: 'S. K. Park, K. W. Miller',
    year: 1988,
    where: 'Communications of the ACM 31 (10), 1192-1201; multiplier 48271 from the 1993 reply',
    grade: 'D',
    note: 'from memory; nothing rests on the quality of the numbers',
  },
  kolischSprecher1997: {
    title: 'PSPLIB: a project scheduling problem library',
    by: 'R. Kolisch, A. Sprecher',
    year: 1997,
    where: 'European Journal of Operational Research 96 (1), 205-216',
    grade: 'B',
    note: 'instances and best known values through a public repository; not read itself',
  },
  campPractice: {
    title: 'Minutes of small jobs at a camp fire',
    by: 'common practice',
    grade: 'D',
    note: 'no source: lighting 2 min, laying 2 to 3 min, a turn 1 min and the like',
  },
};
