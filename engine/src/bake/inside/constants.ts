// Figures of dough, crumb, steam and colour that the model of the inside rests on.
// Sources beside each; grades: read (A/B), from memory (D), judged (D), tuned (on what, beside it).

/** Enthalpies are counted from here [K]. */
export const ZERO_KELVIN = 273.15;
/** Heat of liquid water and of what is not water [J/(kg K)]: 4200 and 700 … 1200 in bread-study2025
 * (read); 1300 for a dough with its fat, as the trial model took it. */
export const WATER_JOULES = 4200;
export const SOLIDS_JOULES = 1300;
/** Steam at 100 °C [J/kg], and how it changes with the boil [J/(kg K)] (steam tables, from memory). */
export const STEAM_JOULES = 2.2565e6;
export const STEAM_JOULES_SLOPE = -2600;
/** Gas constant of steam [J/(kg K)]. */
export const STEAM_GAS = 461.5;
export const GAS = 8.314;
export const STEFAN_BOLTZMANN = 5.670374e-8;

/**
 * Flour without a pore [kg/m3]: with water 0.75 of it a dough of 1250 without a bubble, which is
 * common practice, no source.
 */
export const SOLIDS_DENSITY = 1540;
export const WATER_DENSITY = 1000;

/** Conductivity without a pore [W/(m K)]: dry solids judged; a dough 0.42 … 0.447 (bread-study2025). */
export const DRY_CONDUCTIVITY = 0.25;
export const WATER_CONDUCTIVITY = 0.57;
/** Still air in a pore at 25 °C, its growth per kelvin, and radiation across 2 mm of it at 100 °C. */
export const AIR_CONDUCTIVITY = 0.026;
export const AIR_CONDUCTIVITY_SLOPE = 7e-5;
export const PORE_RADIATION_METRES = 0.002;

/** Steam in air at 0 °C and one atmosphere [m2/s], power of temperature (tables, from memory). */
export const STEAM_DIFFUSIVITY = 2.12e-5;
export const STEAM_DIFFUSIVITY_POWER = 1.81;

/** Oswin's law of sorption as bread studies quote it (lind-rask1991, parameters read second-hand). */
export const OSWIN = { offset: 5.5, slope: -0.0056, power: 0.38 } as const;
/**
 * Oswin's water is this much of what the quoted constants give. They put 51 % water (dry basis) into
 * flour at rest in room air of 55 %, where flour holds 13.5 % (sr28: 11.9 % of its mass). Tuned on
 * that one fact; without it a wet crumb would boil six kelvin above its water.
 */
export const OSWIN_SHARE = 0.27;

/** Starch setting [1/s, J/mol] (zanoni1995-starch, from memory): set when 98 % of it is. */
export const STARCH_RATE = 2.8e18;
export const STARCH_ENERGY = 139_000;
export const STARCH_SET = 0.98;

/** Browning [1/s, J/mol], and the change at which bread is burnt (zanoni1995, abstract read). */
export const BROWNING_RATE = 42_000;
export const BROWNING_ENERGY = 64_151;
export const BURNT_COLOUR = 52;
