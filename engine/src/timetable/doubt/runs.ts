// How many runs of a day with drawn bakes and rises.

/** @tuned so that the share in time of the demo camps moves by about four in a hundred */
export const RUNS = 120;
