// What is assumed where a camp file does not say, beside what camp/ takes as usual: so that a short
// file is enough. All of it is common practice, no source, unless it says otherwise.

export const USUAL = {
  /** Half an hour at least for a wood fire; a bed of coals takes longer. */
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
