// Works behind bake/.

import type { Bibliography } from './source.ts';

export const bakeSources = {
  'trial-bake-model': {
    title: 'Trial model of heat and moisture in a dough, 39 computed cases',
    by: 'this project',
    grade: 'D',
    note: 'computed, not measured; fitted to one digitised series (zhang-datta2005), so a fit and no proof',
  },
  'zhang-datta2005': {
    title: 'Transport processes and large deformation during baking of bread',
    by: 'Zhang and Datta, AIChE Journal',
    year: 2005,
    where: 'doi 10.1002/aic.10518; points from the open data set of doi 10.14311/TPFM.2025.015',
    grade: 'B',
    note: "someone's digitisation of a printed figure",
  },
  zanoni1995: {
    title: 'Study of the bread baking process: browning of the crust',
    by: 'Zanoni, Peri and Bruno, LWT 28',
    year: 1995,
    where: 'pages 604-609, abstract',
    grade: 'A',
  },
  baik1999: {
    title: 'Heat transfer coefficients in a tunnel oven',
    by: 'Baik and others, Journal of Food Science 64',
    year: 1999,
    where: 'pages 688-694, abstract',
    grade: 'A',
    note: '20 to 48 W/m2K, three quarters of it radiant',
  },
  'camp-practice': {
    title: 'Common practice of camp cooks',
    by: 'no source',
    grade: 'D',
    note: 'what many cooks do and nobody we read has measured',
  },
  'bakery-cores': {
    title:
      'Core temperatures of breads: a home-baking handout (200-210 F lean) and bakers on the web',
    by: 'several',
    grade: 'D',
    note: 'practice, not science; cores of biscuits, bannock and cobbler from memory',
  },
  'published-bake-times': {
    title: 'Baking times in service cards, trade magazines and community recipes',
    by: 'several',
    grade: 'B',
    note: 'biscuits 10-12 min at 450 F and 15 min at 450 F; bannock about 30 min at 350 F; soda bread 35-55 min',
  },
  'csu-high-altitude': {
    title: 'High Altitude Food Preparation',
    by: 'Colorado State University Extension',
    grade: 'A',
    note: 'simmered and braised meats may need one quarter more time at 5,000 ft',
  },
  'nmsu-e215': {
    title: 'High Altitude Cooking, Guide E-215',
    by: 'New Mexico State University Extension',
    grade: 'A',
    note: 'opening read: apple in a 350 F oven to 200 F inside takes 20 min at 3,500 ft, 45 min at 10,000 ft',
  },
  'usda-fns23': {
    title: 'Dry Beans, FNS-23',
    by: 'US Department of Agriculture',
    grade: 'A',
    note: 'kidney, pinto, navy 2 h; small red and white 1.5 h; Great Northern 1.25 h; lima 1 h',
  },
  'crumb-below-boil': {
    title: 'Done at the lower of the target and three kelvin below the local boil',
    by: 'this project',
    grade: 'D',
    note: 'judgement from physics: a crumb cannot pass the local boiling point',
  },
  'oven-network-notes': {
    title: 'Heat network of a camp oven, fitted to one published coal chart',
    by: 'this project',
    grade: 'D',
    note: 'the cap of 1500 W/m2 was fitted; 40 W/m2K was chosen so that transients stay sane',
  },
  'heated-cylinder': {
    title: 'Product solution of a finite cylinder: rates of slab and long cylinder add up',
    by: 'heat transfer textbooks',
    grade: 'D',
    note: 'relation from memory; first roots pi/2 and 2.405 give the weight 2.34',
  },
  'camp-cobbler': {
    title: 'Camp meals: cobbler in a 14-inch oven, about 4.4 kg of filling, 45 to 60 min at 350 F',
    by: 'a hobby page, 2005',
    grade: 'B',
  },
  'heated-sphere': {
    title: 'One-term series of a sphere heated by convection (Heisler)',
    by: 'heat transfer textbooks',
    grade: 'D',
    note: 'relation from memory',
  },
} as const satisfies Bibliography;
