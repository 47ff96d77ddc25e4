// Our Nusselt number of a row of nusselt.json, by the name of its case.

import {
  nusseltCrossflow,
  nusseltCrossflowZukauskas,
  nusseltLevelCylinder,
  nusseltSphere,
  nusseltUprightPlate,
} from '../../src/coals/correlations.ts';

export type Inputs = Readonly<Record<string, number | undefined>>;

export const nusseltOf = (name: string, inputs: Inputs): number => {
  const prandtl = inputs.prandtl ?? Number.NaN;
  const rayleigh = prandtl * (inputs.grashof ?? Number.NaN);
  const reynolds = inputs.reynolds ?? Number.NaN;
  if (name.startsWith('upright plate')) return nusseltUprightPlate(rayleigh, prandtl);
  if (name.startsWith('level cylinder')) return nusseltLevelCylinder(rayleigh, prandtl);
  if (name.startsWith('sphere')) return nusseltSphere(rayleigh, prandtl);
  if (name.includes('older fit'))
    return nusseltCrossflowZukauskas(reynolds, prandtl, inputs.prandtlAtSurface ?? Number.NaN);
  return nusseltCrossflow(reynolds, prandtl);
};
