// Works behind safety/.

import type { Bibliography } from './source.ts';

export const safetySources = {
  'foodsafety-chart': {
    title: 'Cook to a Safe Minimum Internal Temperature (chart)',
    by: 'US Department of Health and Human Services, USDA FSIS',
    grade: 'B',
    note: 'read in a peer-reviewed reprint (PMC4914716 table 1) and pages crediting it; also hot hold 140 F, cold hold 40 F',
  },
  'food-code-3-401': {
    title: 'FDA Food Code section 3-401.11',
    by: 'US Food and Drug Administration',
    grade: 'B',
    where: 'read in MN 4626.0340, NY 271-2.10, AK 18 AAC 31.232, IN 410 IAC 7-24-182',
    note: 'the 2022 federal text itself was not opened',
  },
  'food-code-3-501': {
    title: 'FDA Food Code section 3-501.16, holding',
    by: 'US Food and Drug Administration',
    grade: 'B',
    where: 'read in Delaware and Washington adoptions',
    note: 'hot 135 F, cold 41 F; the consumer figures are stricter and are used',
  },
  'food-code-4-501': {
    title: 'FDA Food Code section 4-501.114, chlorine',
    by: 'US Food and Drug Administration',
    grade: 'B',
    where: 'Wisconsin adoption (2024)',
  },
  'fsis-two-hours': {
    title: 'Danger zone and the two-hour rule',
    by: 'USDA FSIS; FDA outdoor eating tips (2017)',
    grade: 'B',
    note: '2 h out of hot and cold, 1 h above 90 F',
  },
  'fsis-appendix-a': {
    title:
      'Compliance guidelines for lethality, appendix A, times for 6.5 and 7 logs of salmonella',
    by: 'USDA FSIS',
    year: 1999,
    grade: 'B',
    note: 'full table read in a mirror, checked row by row against a Canadian reprint',
  },
  'lethality-worksheet': {
    title: 'Process lethality determination worksheet, with its worked example',
    by: 'American Meat Institute Foundation; parameters after Scott and Weddig 1998',
    year: 2010,
    grade: 'B',
  },
  'fda-bad-bug-book': {
    title: 'Bad Bug Book, chapter on phytohaemagglutinin',
    by: 'US Food and Drug Administration, quoted by Ohio State University Extension',
    grade: 'B',
    note: 'soak 5 h, drop the water, boil 30 min in fresh water; no figure for height was found',
  },
  'fda-flour': { title: 'Flour is a raw food', by: 'US FDA and CDC', grade: 'B' },
  'inspq-honey': { title: 'From Tiny Tot to Toddler', by: 'INSPQ, Quebec', grade: 'A' },
  'cdc-garlic': { title: 'Prevention of botulism', by: 'US CDC', grade: 'B' },
  'uk-rice': {
    title: 'Cooked rice: cool within 1 h, a day in the cold, re-heat once',
    by: 'UK guidance in a county leaflet',
    grade: 'B',
  },
  'epa-p100sp1s': {
    title: 'Emergency Disinfection of Drinking Water',
    by: 'US Environmental Protection Agency',
    where: 'NEPIS P100SP1S',
    grade: 'A',
    note: 'boil 1 min, 3 min above 5,000 ft',
  },
  'epa-older-leaflet': {
    title: 'Emergency disinfection, older leaflet: 8 drops a gallon at 4 to 6 %, 4 at 7 to 10 %',
    by: 'US Environmental Protection Agency, quoted',
    grade: 'B',
    note: 'fewer drops above 7 % than the newer table: the newer, stricter one is used',
  },
  'cdc-water': {
    title: 'Making Water Safe in an Emergency',
    by: 'US CDC',
    grade: 'A',
    note: 'boil 1 min, 3 min above 6,500 ft',
  },
  'kdhe-bleach': {
    title: 'Disinfecting with household bleach',
    by: 'Kansas Department of Health and Environment',
    grade: 'A',
  },
  'bleach-bucket': {
    title: 'Worked example of a bleach bucket on a public page',
    by: 'unnamed',
    grade: 'B',
    note: 'prints .6144 oz and 1.23 Tbsp after rounding',
  },
  'cdc-norovirus': { title: 'Norovirus clean-up, 1000 to 5000 ppm', by: 'US CDC', grade: 'B' },
  'river-permit': {
    title: 'Dish washing for river permits',
    by: 'public-land permit wording',
    grade: 'B',
  },
  'falcpa-faster': {
    title: 'FALCPA 2004 and FASTER Act 2021: nine allergens',
    by: 'US Congress',
    grade: 'B',
  },
  'eu-1169-2011': {
    title: 'Regulation (EU) 1169/2011, Annex II: fourteen allergens',
    by: 'European Union',
    grade: 'B',
  },
  'aafa-cast-iron': {
    title: 'Are cast iron pans safe?',
    by: 'Asthma and Allergy Foundation of America',
    grade: 'A',
    note: 'seasoned iron is a poor pan to share; keep one apart',
  },
  'cpsc-5012': {
    title: 'Charcoal and carbon monoxide, document 5012 and release 99-051',
    by: 'US Consumer Product Safety Commission',
    grade: 'A',
  },
  'usfs-campfire': {
    title: 'Campfire checklist and Rocky Mountain Region page',
    by: 'USDA Forest Service',
    grade: 'A',
    note: 'circle 10 ft across, 15 ft from tents and gear; drown, stir, drown, feel',
  },
  'fire-departments': {
    title: 'Ash disposal notes of three fire departments',
    by: 'Rocky Point NY, Worthington OH, Kitsap WA',
    grade: 'A',
    note: 'days of live ash from dealers’ notes',
  },
  'fire-stages': {
    title: 'Fire restriction stages: order of 2021 and stage sheets under 36 CFR 261.52',
    by: 'Bureau of Land Management, USDA Forest Service',
    grade: 'A',
    note: 'local orders override',
  },
  'red-flag-example': {
    title: 'Red Flag criteria of one region: 15 mph, 25 % humidity, 75 F',
    by: 'Sunriver, Oregon, after the National Weather Service',
    grade: 'A',
    note: 'other offices use other figures (25 mph, 20 %)',
  },
  'burns-first-aid': {
    title: "Children's burns: 20 min of cool running water",
    by: 'Australian burns service page',
    grade: 'A',
  },
  'nc-dph': {
    title: 'Norovirus in food service',
    by: 'North Carolina Division of Public Health',
    grade: 'A',
    note: 'wash 20 s, stay away 48 h after symptoms',
  },
  'high-risk-groups': { title: 'People at risk', by: 'FoodSafety.gov', grade: 'A' },
} as const satisfies Bibliography;
