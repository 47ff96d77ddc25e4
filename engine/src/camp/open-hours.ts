// When is a pair of hands there? From its first to its last hour, less the stretches in which it is away.

import type { Hand } from './camp.ts';

export interface Hours {
  readonly from: number;
  readonly to: number;
}

/** Soonest first; one of no length where the hand is never there. */
export function openHours({ from, to, away = [] }: Hand): readonly Hours[] {
  let open: readonly Hours[] = [{ from, to }];
  for (const gone of away) {
    open = open.flatMap((each) =>
      [
        { from: each.from, to: Math.min(each.to, gone.from) },
        { from: Math.max(each.from, gone.to), to: each.to },
      ].filter((part) => part.from < part.to),
    );
  }
  return open.length > 0 ? open : [{ from, to: from }];
}
