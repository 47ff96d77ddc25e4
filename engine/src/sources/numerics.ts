// Works behind numerics/ and its checks.

import type { Bibliography } from './source.ts';

export const numericsSources = {
  sandu1997: {
    title:
      'Benchmarking stiff ODE solvers for atmospheric chemistry problems II: Rosenbrock solvers',
    by: 'A. Sandu, J. G. Verwer, J. G. Blom, E. J. Spee, G. R. Carmichael, F. A. Potra',
    year: 1997,
    where: 'Atmospheric Environment 31, 3459-3472; method RODAS3',
    grade: 'D',
    note: 'Coefficients from memory; checked by symbols: they meet the four conditions of order 3, and the stepper is gated by closed forms and by scipy-ivp.',
  },
  hairer1993: {
    title: 'Solving Ordinary Differential Equations I: Nonstiff Problems',
    by: 'E. Hairer, S. P. Norsett, G. Wanner',
    year: 1993,
    where: '2nd ed., II.4 (first step, step control), II.6 (cubic between steps)',
    grade: 'D',
    note: 'From memory.',
  },
  hairer1996: {
    title: 'Solving Ordinary Differential Equations II: Stiff and Differential-Algebraic Problems',
    by: 'E. Hairer, G. Wanner',
    year: 1996,
    where: '2nd ed., IV.7 (Rosenbrock methods), IV.8 (error norm, next step)',
    grade: 'D',
    note: 'From memory.',
  },
  prothero1974: {
    title: 'On the stability and accuracy of one-step methods for solving stiff systems',
    by: 'A. Prothero, A. Robinson',
    year: 1974,
    where: 'Mathematics of Computation 28, 145-162; the test equation has a closed form',
    grade: 'D',
    note: 'From memory; the closed form is checked by substitution.',
  },
  lawson1974: {
    title: 'Solving Least Squares Problems',
    by: 'C. L. Lawson, R. J. Hanson',
    year: 1974,
    where: 'ch. 23, algorithm NNLS',
    grade: 'D',
    note: 'From memory; every answer of the tests is proved by the conditions of its optimum.',
  },
  golub2013: {
    title: 'Matrix Computations',
    by: 'G. H. Golub, C. F. Van Loan',
    year: 2013,
    where: '4th ed., ch. 3 (elimination with partial pivoting), 4.3 (tridiagonal systems)',
    grade: 'D',
    note: 'From memory; checked by putting answers back into the equations.',
  },
  brent1973: {
    title: 'Algorithms for Minimization without Derivatives',
    by: 'R. P. Brent',
    year: 1973,
    where: 'ch. 4 (zero in an interval)',
    grade: 'D',
    note: 'From memory; checked against closed forms.',
  },
  steele2014: {
    title: 'Fast splittable pseudorandom number generators',
    by: 'G. L. Steele, D. Lea, C. H. Flood',
    year: 2014,
    where: 'OOPSLA 2014, 453-472; doi 10.1145/2660193.2660195',
    grade: 'D',
    note: 'From memory, in a 32-bit form; only evenness is checked.',
  },
  'scipy-ivp': {
    title: 'Four stiff heat stores integrated by Radau, LSODA and BDF',
    by: 'computed with scipy 1.10.1',
    where: 'validation/numerics/stiff-lumped.json',
    grade: 'C',
    note: 'Three independent methods agree to 4e-6 K; parameters are test values, not measurements.',
  },
} as const satisfies Bibliography;
