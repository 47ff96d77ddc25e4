// How readily does air carry heat from a hot plate or wall? Nusselt numbers of the handbooks.
// Sources: churchillChu1975, churchillBernstein1977, bergman2011 (ch. 7, 9), ussa1976 for the air.
// Weak spot: an oven is not an infinite plate; the fitted coal strength absorbs part of that.

import { cube } from './parameters.ts';

const GRAVITY = 9.80665; // m/s2, standard gravity, exact (CGPM 1901)
const GAS_CONSTANT_AIR = 287.053; // J/kgK, ussa1976 (R*/M0)
const SPECIFIC_HEAT_AIR = 1006; // J/kgK, dry air near 300 K

/** Air at one film temperature and pressure. */
export interface AirProperties {
  /** [W/mK] */
  readonly conductivity: number;
  /** [m2/s] */
  readonly kinematicViscosity: number;
  readonly prandtl: number;
}

/**
 * Dry air as a fluid, by Sutherland's laws.
 *
 * @param filmKelvin  mean of surface and air                     [K]  200 … 1000
 * @source            ussa1976 eq. 51 (viscosity), eq. 53 (conductivity)
 */
export const airProperties = (filmKelvin: number, pressurePascals: number): AirProperties => {
  const power = filmKelvin * Math.sqrt(filmKelvin);
  const viscosity = (1.458e-6 * power) / (filmKelvin + 110.4); // ussa1976 eq. 51
  const conductivity =
    (2.64638e-3 * power) / (filmKelvin + 245.4 * Math.exp((-12 * Math.LN10) / filmKelvin)); // eq. 53
  const density = pressurePascals / (GAS_CONSTANT_AIR * filmKelvin);
  return {
    conductivity,
    kinematicViscosity: viscosity / density,
    prandtl: (viscosity * SPECIFIC_HEAT_AIR) / conductivity,
  };
};

export const rayleighNumber = (
  air: AirProperties,
  filmKelvin: number,
  differenceKelvin: number,
  lengthMetres: number,
): number =>
  (((GRAVITY * Math.abs(differenceKelvin)) / filmKelvin) * cube(lengthMetres) * air.prandtl) /
  (air.kinematicViscosity * air.kinematicViscosity);

/** Natural convection from an upright plate. @source churchillChu1975 (bergman2011 eq. 9.26) */
export const nusseltUprightPlate = (rayleigh: number, prandtl: number): number =>
  (0.825 +
    (0.387 * Math.cbrt(Math.sqrt(rayleigh))) / (1 + (0.492 / prandtl) ** (9 / 16)) ** (8 / 27)) **
  2;

/** Natural convection from a level cylinder. @source churchillChu1975 (bergman2011 eq. 9.34) */
export const nusseltLevelCylinder = (rayleigh: number, prandtl: number): number =>
  (0.6 +
    (0.387 * Math.cbrt(Math.sqrt(rayleigh))) / (1 + (0.559 / prandtl) ** (9 / 16)) ** (8 / 27)) **
  2;

/** Natural convection from a sphere, with its turbulent part. @source bergman2011 eq. 9.35 */
export const nusseltSphere = (rayleigh: number, prandtl: number): number => {
  const fluid = 1 + (0.469 / prandtl) ** (9 / 16);
  const turbulent = (1 + (7.44e-8 * rayleigh) / fluid ** (16 / 9)) ** (1 / 12); // from memory
  return 2 + ((0.589 * rayleigh ** 0.25) / fluid ** (4 / 9)) * turbulent;
};

/** Hot plate facing up, length = area / perimeter. @source bergman2011 eq. 9.30, 9.31 */
export const nusseltPlateUp = (rayleigh: number): number =>
  rayleigh < 1e7 ? 0.54 * Math.sqrt(Math.sqrt(rayleigh)) : 0.15 * Math.cbrt(rayleigh);

/** Wind across a cylinder. @source churchillBernstein1977 (bergman2011 eq. 7.54) */
export const nusseltCrossflow = (reynolds: number, prandtl: number): number =>
  0.3 +
  ((0.62 * Math.sqrt(reynolds) * Math.cbrt(prandtl)) / (1 + (0.4 / prandtl) ** (2 / 3)) ** 0.25) *
    (1 + (reynolds / 282_000) ** (5 / 8)) ** 0.8;

/** Wind across a cylinder, the older fit. @source bergman2011 eq. 7.53, table 7.4 */
export const nusseltCrossflowZukauskas = (
  reynolds: number,
  prandtl: number,
  prandtlAtSurface: number,
): number => {
  const [factor, power] =
    reynolds < 40
      ? [0.75, 0.4]
      : reynolds < 1000
        ? [0.51, 0.5]
        : reynolds < 2e5
          ? [0.26, 0.6]
          : [0.076, 0.7];
  const exponent = prandtl <= 10 ? 0.37 : 0.36;
  return factor * reynolds ** power * prandtl ** exponent * (prandtl / prandtlAtSurface) ** 0.25;
};

/** Wind along a plate, laminar. @source bergman2011 eq. 7.30 */
export const nusseltPlateAlong = (reynolds: number, prandtl: number): number =>
  0.664 * Math.sqrt(reynolds) * Math.cbrt(prandtl);

/** Still-air and wind coefficients together. @source bergman2011 ch. 9.9 (n = 3), from memory */
export const mixedCoefficient = (natural: number, forced: number): number =>
  forced === 0 ? natural : Math.cbrt(cube(natural) + cube(forced));

interface Surface {
  readonly surfaceKelvin: number;
  readonly airKelvin: number;
  readonly pressurePascals: number;
  readonly windMetresPerSecond: number;
}

/** Heat transfer coefficient of a level round plate, free side up [W/m2K]. */
export const plateCoefficient = (surface: Surface, diameterMetres: number): number => {
  const filmKelvin = (surface.surfaceKelvin + surface.airKelvin) / 2;
  const air = airProperties(filmKelvin, surface.pressurePascals);
  const difference = surface.surfaceKelvin - surface.airKelvin;
  const length = diameterMetres / 4; // area / perimeter of a disc
  const rayleigh = rayleighNumber(air, filmKelvin, difference, length);
  const natural = (nusseltPlateUp(rayleigh) * air.conductivity) / length;
  const reynolds = (surface.windMetresPerSecond * diameterMetres) / air.kinematicViscosity;
  const forced = (nusseltPlateAlong(reynolds, air.prandtl) * air.conductivity) / diameterMetres;
  return mixedCoefficient(natural, forced);
};

/** Heat transfer coefficient of the round wall of an oven [W/m2K]. */
export const wallCoefficient = (
  surface: Surface,
  size: { readonly diameterMetres: number; readonly heightMetres: number },
): number => {
  const filmKelvin = (surface.surfaceKelvin + surface.airKelvin) / 2;
  const air = airProperties(filmKelvin, surface.pressurePascals);
  const difference = surface.surfaceKelvin - surface.airKelvin;
  const rayleigh = rayleighNumber(air, filmKelvin, difference, size.heightMetres);
  const natural =
    (nusseltUprightPlate(rayleigh, air.prandtl) * air.conductivity) / size.heightMetres;
  if (surface.windMetresPerSecond <= 0) return natural;
  const reynolds = (surface.windMetresPerSecond * size.diameterMetres) / air.kinematicViscosity;
  const forced = (nusseltCrossflow(reynolds, air.prandtl) * air.conductivity) / size.diameterMetres;
  return mixedCoefficient(natural, forced);
};
