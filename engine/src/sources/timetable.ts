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
  bartuschMohringRadermacher1988: {
    title: 'Scheduling project networks with resource constraints and time windows',
    by: 'M. Bartusch, R. H. Möhring, F. J. Radermacher',
    year: 1988,
    where: 'Annals of Operations Research 16, 201-240',
    grade: 'D',
    note: 'from memory; checked here by trying every start of tiny projects, and on RCPSP/max samples',
  },
  debelsVanhoucke2005: {
    title: 'A bi-population based genetic algorithm for the project scheduling problem',
    by: 'D. Debels, M. Vanhoucke',
    year: 2005,
    where: 'Lecture Notes in Computer Science 3483, 378-387',
    grade: 'D',
    note: 'from memory: populations pressed to either end in turn, a peak of one parent kept whole',
  },
  shawLargeSteps1998: {
    title:
      'Using constraint programming and local search methods to solve vehicle routing problems',
    by: 'P. Shaw',
    year: 1998,
    where: 'Lecture Notes in Computer Science 1520, 417-431',
    grade: 'D',
    note: 'from memory: a part of a plan is freed and drawn afresh, the rest stays',
  },
  marquesSilvaSakallah1999: {
    title: 'GRASP: a search algorithm for propositional satisfiability',
    by: 'J. P. Marques-Silva, K. A. Sakallah',
    year: 1999,
    where: 'IEEE Transactions on Computers 48 (5), 506-521',
    grade: 'D',
    note: 'from memory: a clause from each contradiction, and back as far as it says',
  },
  schuttExplained2011: {
    title: 'Explaining the cumulative propagator',
    by: 'A. Schutt, T. Feydy, P. J. Stuckey, M. G. Wallace',
    year: 2011,
    where: 'Constraints 16, 250-282',
    grade: 'D',
    note: 'from memory: bounds of times as literals, each with its reason; held against proven optima of another solver',
  },
  lubySinclairZuckerman1993: {
    title: 'Optimal speedup of Las Vegas algorithms',
    by: 'M. Luby, A. Sinclair, D. Zuckerman',
    year: 1993,
    where: 'Information Processing Letters 47 (4), 173-180',
    grade: 'D',
    note: 'from memory: how long to search before beginning again',
  },
  boxMuller1958: {
    title: 'A note on the generation of random normal deviates',
    by: 'G. E. P. Box, M. E. Muller',
    year: 1958,
    where: 'Annals of Mathematical Statistics 29 (2), 610-611',
    grade: 'D',
    note: 'from memory; mean and spread of the draws are tested',
  },
  campPractice: {
    title: 'Minutes of small jobs at a camp fire',
    by: 'common practice',
    grade: 'D',
    note: 'no source: lighting 2 min, laying 2 to 3 min, a turn 1 min and the like',
  },
};
