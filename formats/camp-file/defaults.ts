// What is assumed where a camp file does not say: the usual, so that a short file is enough.
// Each is told to the cook (`assumed`), none is a measurement.

/** Common practice, no source, unless said otherwise. */
export const USUAL = {
  elevationMetres: 0,
  airKelvin: 293.15,
  windMetresPerSecond: 2,
  /** Gust over mean wind of a light breeze: from memory. */
  gustPerWind: 1.5,
  /** One unlit briquette. */
  pieceMassGrams: 25,
  chimneyfulCoals: 80,
  /** practice notes name 30 minutes as the least for a wood fire; a bed of coals takes longer. */
  feederLeadMinutes: 60,
  stepMinutes: 5,
  handFromMinutes: 0,
  handToMinutes: 1440,
  coldWaitMinutes: 60,
  hotWaitMinutes: 20,
} as const;

/** Stands where a file names no date; only dusk depends on it. */
export const NO_DATE = '2000-01-01';
export const NO_TIME_ZONE = 'UTC';
