// When does food first lie in the oven?

import type { Counted } from './count.ts';

/** What is browned goes in at coals on, the rest of the pot when its lid does. */
export const foodInMinute = ({ run, feed }: Counted): number =>
  feed.brownMinutes > 0 ? 0 : run.loadInMinute;
