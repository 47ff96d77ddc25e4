// Collects the job's tasks as the solver wants them, with what each task means beside it.

import type {
  Group,
  Hold,
  Lag,
  Pool,
  Problem,
  Seat,
  Store,
  Task,
  WaitPrice,
  WorkUnit,
} from '../solver/problem.ts';
import type { Job } from './day-sheet.ts';
import { type Round, roundMinutes, spreadOf } from './round.ts';

/** What a task is to the cook; a milestone is not shown. */
export interface TaskMeaning {
  readonly kind: Job['kind'] | 'served';
  readonly dish?: string;
  readonly load?: string;
  readonly oven?: string;
  readonly say?: string;
  readonly values?: Job['values'];
  readonly needsTable?: boolean;
  readonly needsCare?: boolean;
  /** Where it goes round the ovens of a wave; `load` and `oven` are then the first of them. */
  readonly round?: Round;
}

export interface TaskWish extends TaskMeaning {
  readonly group: number;
  readonly minutes: number;
  readonly seats?: readonly Seat[];
  readonly takes?: Task['takes'];
  readonly due?: number;
  readonly fixed?: number;
  readonly sameAs?: number;
  readonly aim?: Task['aim'];
  readonly team?: string;
}

/** Waves of one dish may come out so far apart before what follows them all (ours, no source). */
const WAVES_APART = 20;

export class Builder {
  readonly tasks: Task[] = [];
  readonly meanings: TaskMeaning[] = [];
  readonly lags: Lag[] = [];
  /** Indices of lags that only keep time in hand: a slow job may use it up. */
  readonly cushions = new Set<number>();
  readonly pools: Pool[] = [];
  readonly holds: Hold[] = [];
  readonly stores: Store[] = [];
  readonly groups: Group[] = [];
  readonly prices: WaitPrice[] = [];
  readonly #poolOf = new Map<string, number>();

  task(wish: TaskWish): number {
    const {
      group,
      minutes,
      due,
      fixed,
      sameAs,
      aim,
      team,
      seats = [],
      takes = [],
      ...meaning
    } = wish;
    const id = `${wish.load ?? wish.dish ?? 'camp'}-${wish.kind}-${this.tasks.length}`;
    this.tasks.push({
      id,
      group,
      minutes: whole(minutes),
      seats,
      takes,
      ...(due === undefined ? {} : { due: Math.round(due) }),
      ...(fixed === undefined ? {} : { fixed: Math.round(fixed) }),
      ...(sameAs === undefined ? {} : { sameAs }),
      ...(aim === undefined ? {} : { aim }),
      ...(team === undefined ? {} : { team }),
    });
    this.meanings.push(meaning);
    return this.tasks.length - 1;
  }

  /** start(to) - start(from) in least … most */
  startLag(from: number, to: number, room: { readonly least: number; readonly most?: number }) {
    const most =
      room.most === undefined || !Number.isFinite(room.most)
        ? {}
        : { most: whole(room.most, -9999) };
    this.lags.push({ from, to, least: whole(room.least, -9999), ...most });
  }

  /**
   * least … most minutes between the end of one and the start of the other. Within a wave each oven
   * has it from its own end; into one the last oven must still be in time; out of one it counts from
   * the end of the round, and the first oven may wait for the other waves.
   */
  lag(from: number, to: number, room: { readonly least: number; readonly most?: number }) {
    const [out, into] = [this.meanings[from]!.round, this.meanings[to]!.round];
    const isInside = out !== undefined && out.wave === into?.wave;
    const ended = out === undefined ? this.tasks[from]!.minutes : whole(roundMinutes(out));
    const minutes = isInside ? whole(out.minutes) : ended;
    if (room.most === undefined) {
      this.startLag(from, to, { least: minutes + room.least });
      return;
    }
    const spread = isInside || into === undefined ? 0 : spreadOf(into.wave);
    const inTime = spread === 0 ? room.most : Math.max(room.least, room.most - spread);
    const most = isInside || out === undefined ? inTime : Math.max(inTime, WAVES_APART);
    this.startLag(from, to, { least: minutes + room.least, most: minutes + most });
  }

  /** Done so long before its serving, if all is as quick as reckoned. */
  cushion(from: number, served: number, minutes: number) {
    if (minutes <= 0) return;
    this.cushions.add(this.lags.length);
    this.lag(from, served, { least: minutes });
  }

  group(group: Group): number {
    this.groups.push(group);
    return this.groups.length - 1;
  }

  pool(id: string, capacity: number): number {
    const known = this.#poolOf.get(id);
    if (known !== undefined) return known;
    this.pools.push({ id, capacity: Math.max(0, Math.round(capacity)) });
    this.#poolOf.set(id, this.pools.length - 1);
    return this.pools.length - 1;
  }

  problem(clock: { from: number; to: number }, units: readonly WorkUnit[]): Problem {
    const { tasks, lags, pools, holds, stores, groups, prices } = this;
    return { ...clock, tasks, lags, pools, units, holds, stores, groups, prices };
  }
}

/** A whole number of minutes, never NaN. */
function whole(minutes: number, least = 0): number {
  return Number.isFinite(minutes) ? Math.max(least, Math.round(minutes)) : least;
}
