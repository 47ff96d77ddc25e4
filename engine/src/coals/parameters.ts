// The numbers of the oven model, read once from data/coals-oven-model.json.
// Two are fitted, three tuned on the most reprinted chart, the rest assumed: see the file.
// Source: coalsOvenModelNotes 5.2, the fitted pair refitted on this network.

import model from '../../data/coals-oven-model.json' with { type: 'json' };

type ParameterName = keyof typeof model.rows;

/** Value of one model parameter; its name ends in its unit. */
export const parameter = (name: ParameterName): number => model.rows[name].value;

export const STEFAN_BOLTZMANN = 5.670374419e-8; // W/m2K4, exact (SI brochure, CODATA 2018)

// Powers by multiplication: the engine's `**` goes through a general routine, and these run often.
export const cube = (value: number): number => value * value * value;
export const fourth = (value: number): number => value * value * value * value;
