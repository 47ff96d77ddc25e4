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
  'leavening-apart': {
    title: 'Leavening in a small bag of its own where a mix is stored long; damp spoils it first',
    by: 'camp pages on dry mixes',
    grade: 'B',
    note: 'opened tins last anywhere from 3 to 18 months, by how damp they stand',
  },
  johnson1973: {
    title: 'Near-optimal bin packing algorithms: first fit decreasing takes 11/9 of the fewest',
    by: 'D. S. Johnson',
    year: 1973,
    grade: 'D',
    note: 'theorem from memory; tests count against exhaustive packings',
  },
  packerOnMules: {
    title: 'Sixty pounds a pannier and thirty on top; another 15 to 20 % of the animal',
    by: 'packers on a forum',
    grade: 'B',
    note: 'saddle not counted by one, counted by the other',
  },
  'fao-ice': {
    title: 'Ice in fisheries, T0713E section 12: useful facts about water and ice',
    by: 'Food and Agriculture Organization',
    grade: 'A',
    note: 'fusion 80 kcal/kg, density 0.92, stowage of block ice 1.4 m3/t',
  },
  iceSurfaceText: {
    title: 'A surface-science textbook, appendix I: 334 kJ/kg, 2.101 and 4.218 kJ/(kg K)',
    by: 'title not shown on the page read',
    grade: 'A',
  },
  iceRefrigerationText: {
    title: 'A refrigeration text: 25 lb of ice from 5 F to water of 40 F takes up 4,140.2 Btu',
    by: 'unnamed tutorial',
    grade: 'A',
    note: '144 Btu/lb, 0.504 and 1 Btu/(lb F)',
  },
  iceChest: {
    title: 'Textbook problem: a chest of 50 x 40 x 30 cm with 30 kg of ice',
    by: 'heat transfer textbook, statement read',
    grade: 'A',
    note: 'answers by outer and by inner area derived in our notes: 20.35 W and 15.7 W',
  },
  lidOpenings: {
    title: 'Making ice last: ten lid openings a day let in 30 to 40 Btu',
    by: 'a sailing magazine, 36-quart cooler, 24 h',
    grade: 'A',
  },
  siebel1892: {
    title: 'Specific heat of food from its water: 0.837 + 3.349 w kJ/(kg K)',
    by: 'J. E. Siebel',
    year: 1892,
    grade: 'D',
    note: 'from memory; as handbooks of refrigeration reprint it',
  },
} as const satisfies Bibliography;
