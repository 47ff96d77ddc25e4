// What has to be placed on the clock, and with what: tasks, lags, things that are held, stores that
// are filled in batches. Whole minutes throughout; nothing here knows what the work is.
// Weakness: durations are fixed; only the room between tasks may stretch.

export interface Problem {
  /** Everything lies in here [min]. */
  readonly from: number;
  readonly to: number;
  readonly tasks: readonly Task[];
  readonly lags: readonly Lag[];
  /** Things that are there several times over and alike. */
  readonly pools: readonly Pool[];
  /** Things that do one task at a time and differ. */
  readonly units: readonly WorkUnit[];
  readonly holds: readonly Hold[];
  readonly stores: readonly Store[];
  readonly groups: readonly Group[];
  readonly prices: readonly WaitPrice[];
}

export interface Stretch {
  readonly from: number;
  readonly to: number;
}

export interface Pool {
  readonly id: string;
  readonly capacity: number;
}

export interface WorkUnit {
  readonly id: string;
  /** When it is there at all. */
  readonly windows: readonly Stretch[];
}

/** Indices of the units that may take this seat, most wanted first. */
export type Seat = readonly number[];

export interface Task {
  readonly id: string;
  /** Index of its group: placed together, late together. */
  readonly group: number;
  readonly minutes: number;
  /** Not before. */
  readonly release?: number;
  /** Starts no later than. */
  readonly latest?: number;
  /** Starts exactly here; never moved. */
  readonly fixed?: number;
  /** Wanted to start exactly here; the group's lateness is added. */
  readonly due?: number;
  /** Busy all the while, each by a different unit. */
  readonly seats: readonly Seat[];
  readonly takes: readonly { readonly pool: number; readonly amount: number }[];
  /** Index of a task that must be done by the same first unit. */
  readonly sameAs?: number;
  /** Liked best at this distance from the start of another task, if there is room. */
  readonly aim?: { readonly from: number; readonly minutes: number };
  /** Tasks of one team would rather stay with one unit. */
  readonly team?: string;
}

/** least <= start(to) - start(from) <= most */
export interface Lag {
  readonly from: number;
  readonly to: number;
  readonly least: number;
  readonly most?: number;
}

/** One of a pool, held from the start of one task to the end of another. */
export interface Hold {
  readonly id: string;
  readonly pool: number;
  readonly first: number;
  readonly last: number;
}

/**
 * Something that is made in batches, keeps for a while, and is used up by tasks as they start.
 * A batch takes `minutes` of work, is ready `lead` minutes after that, and holds at most `size`.
 */
export interface Store {
  readonly id: string;
  readonly size: number;
  readonly minutes: number;
  readonly lead: number;
  readonly seats: readonly Seat[];
  readonly team?: string;
  /** One of this pool is taken from the start of the work until the batch is emptied out. */
  readonly holder?: number;
  /** A batch is better not older than this when it is used. */
  readonly waitLiked: number;
  /** From the work of a batch to its last use it has to be kept up, again and again. */
  readonly upkeep?: UpkeepWish;
  readonly uses: readonly StoreUse[];
}

/** So many minutes of work, each time between these from the end of the time before. */
export interface UpkeepWish {
  readonly minutes: number;
  readonly soonest: number;
  readonly most: number;
  readonly seats: readonly Seat[];
}

export interface StoreUse {
  readonly task: number;
  readonly amount: number;
  /** May have been ready this long, no longer. */
  readonly waitMost: number;
  /** Is just as good up to here; past it only where there is no other way. */
  readonly waitWell?: number;
}

/**
 * 'late' groups are placed backwards from their due times, 'early' ones as soon as they can be.
 * What may be left is left when there is no room for it, and said so.
 */
export interface Group {
  readonly id: string;
  readonly towards: 'late' | 'early';
  readonly mayBeLeft: boolean;
  /** Price of one minute late. */
  readonly latePrice: number;
}

/** Each minute of start(to) - start(from) costs this much. */
export interface WaitPrice {
  readonly from: number;
  readonly to: number;
  readonly price: number;
}

/** A finished plan. Indices as in the problem. */
export interface Plan {
  /** Undefined for a task of a group that was left. */
  readonly starts: readonly (number | undefined)[];
  readonly crews: readonly (readonly number[])[];
  readonly batches: readonly Batch[];
  /** In order; a gap longer than wanted is left where nobody was free. */
  readonly upkeeps: readonly Upkeep[];
  /** Minutes late, group by group. */
  readonly lateBy: readonly number[];
  readonly left: readonly number[];
  /** What could not be kept; empty for a sound plan. */
  readonly broken: readonly Broken[];
}

export interface Batch {
  readonly store: number;
  readonly start: number;
  readonly readyAt: number;
  /** The holder is free again; equal to readyAt where nothing holds it. */
  readonly emptiedAt: number;
  readonly crew: readonly number[];
  readonly uses: readonly { readonly use: number; readonly amount: number }[];
}

/** Keeping up a batch once. */
export interface Upkeep {
  readonly store: number;
  /** Index of the batch in the plan. */
  readonly batch: number;
  readonly start: number;
  readonly crew: readonly number[];
}

/** A constraint that a forced placement could not keep. */
export interface Broken {
  /** 'hours': done by somebody outside their hours. */
  readonly rule: 'lag' | 'unit' | 'hours' | 'pool' | 'hold' | 'store' | 'time';
  readonly task: number;
}
