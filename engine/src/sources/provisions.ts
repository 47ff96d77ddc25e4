// Works behind provisions/.

import type { Bibliography } from './source.ts';

export const provisionsSources = {
  'afrs-a6': {
    title: 'Armed Forces Recipe Service, card A-6, edible portion to as purchased',
    by: 'US armed forces, TM 10-412 / NAVSUP P-7',
    grade: 'B',
    note: 'mirror, part of the list; its worked test is 3 lb x 1.19 = 3.57 lb',
  },
  'afrs-a1': {
    title: 'Armed Forces Recipe Service, card A-1, scaling',
    by: 'US armed forces, TM 10-412 / NAVSUP P-7',
    grade: 'B',
    note: '348 portions: factor 3.48, 1.25 lb becomes 4.35 lb',
  },
  'wind-doubles': {
    title: 'A camp cook on coal temperatures: wind can double the charcoal',
    by: 'a hobby page',
    grade: 'B',
    note: 'one report, no measurement',
  },
  'camping-gallon': {
    title: 'How much water per person, camping',
    by: 'general camping pages',
    grade: 'B',
    note: '1 US gallon a person a day for drinking and cooking; another says 2',
  },
  'sphere-water': {
    title: 'Basic water needs',
    by: 'Sphere Handbook 2011, quoted by The Open University',
    grade: 'B',
    note: '2.5 to 3 l for drinking and food, 3 to 6 cooking, 2 to 6 hygiene, 7.5 to 15 in all',
  },
  'sf-handwash': {
    title: 'Handwashing at temporary food booths',
    by: 'San Francisco Department of Public Health',
    year: 2023,
    grade: 'A',
    note: '5 US gallons warm water with a hands-free tap',
  },
  'ash-water': {
    title: 'Water to drown a cook fire: five gallons or more',
    by: "one camp cook's account",
    grade: 'B',
    note: 'not authoritative',
  },
} as const satisfies Bibliography;
