// Works behind quantity/ and its checks.

import type { Bibliography } from './source.ts';

export const quantitySources = {
  'nist-hb44': {
    title: 'Specifications, Tolerances, and Other Technical Requirements (Handbook 44)',
    by: 'NIST',
    where: 'appendix C: inch 25.4 mm, pound 453.592 37 g, gallon 231 cubic inches, all exact',
    grade: 'B',
    note: 'Not read; the same sizes come from GNU units and a UCUM library, to the last digit.',
  },
  'nist-sp811': {
    title: 'Guide for the Use of the International System of Units (Special Publication 811)',
    by: 'A. Thompson, B. N. Taylor, NIST',
    year: 2008,
    where: 'appendix B.8',
    grade: 'D',
    note: 'From memory; checked against GNU units.',
  },
  'nist-sp430': {
    title: 'Household Weights and Measures (Special Publication 430)',
    by: 'NIST',
    year: 2004,
    where: '1 cup = 8 fl oz = 16 tbsp = 48 tsp; 240 ml is marked approximate there',
    grade: 'A',
  },
  'si-brochure': {
    title: 'The International System of Units',
    by: 'BIPM',
    year: 2019,
    where: '9th ed., 2.3.1: 0 °C is 273.15 K',
    grade: 'D',
    note: 'From memory; exact by definition.',
  },
  'gnu-units': {
    title: 'GNU units',
    by: 'A. Mariano and others',
    where: 'version 2.22 and its table of definitions; run by the test where it is installed',
    grade: 'B',
  },
  ucum: {
    title: 'The Unified Code for Units of Measure',
    by: 'Regenstrief Institute; library @lhncbc/ucum-lhc 7.1.10',
    where: 'code system 2.2',
    grade: 'B',
    note: 'Its metre of mercury is rounded (133.322 kPa) and it has no temperature difference in °F.',
  },
} as const satisfies Bibliography;
