// The same hands, other coals: a run with the additions and the loading of a plan repeated as they
// stand, so that a weaker coal or a move shows what it does.

import type { CoalRequest } from './coal-plan.ts';
import { laid } from './coals-ahead.ts';
import type { Counted } from './count.ts';
import { laidFirst, lidOffSeconds } from './feeding.ts';
import {
  minuteLater,
  type OvenMoment,
  type RunSetting,
  startMoment,
  withCoals,
  withLoadIn,
} from './run.ts';

/** Moments of the whole plan under another setting. */
export const replayed = (
  request: CoalRequest,
  setting: RunSetting,
  counted: Counted,
): readonly OvenMoment[] => {
  const coals = laidFirst(counted.counts, counted.feed);
  const start = startMoment({ ironKelvin: request.ironAtStart, coals });
  return replayedFrom(setting, counted, start, { untilMinute: counted.run.outMinute });
};

export interface ReplayEnd {
  readonly untilMinute: number;
  /** True where `from` already holds what was done at its own minute. */
  readonly isDone?: boolean;
  /** The lid is lifted for this long in the first minute. */
  readonly openSeconds?: number;
}

/** Moments from one moment on; what the plan does at each later minute is done. */
export const replayedFrom = (
  setting: RunSetting,
  counted: Counted,
  from: OvenMoment,
  end: ReplayEnd,
): readonly OvenMoment[] => {
  const moments: OvenMoment[] = [];
  let moment = from;
  let isDone = end.isDone ?? false;
  while (true) {
    if (!isDone) moment = withPlannedActs(setting, counted, moment);
    moments.push(moment);
    if (moment.minute >= end.untilMinute) return moments;
    const { loadInMinute } = counted.run;
    const planned = lidOffSeconds(counted.feed, { minute: moment.minute, loadInMinute });
    const look = moment.minute === from.minute ? (end.openSeconds ?? 0) : 0;
    moment = minuteLater(setting, moment, { openSeconds: look + planned });
    isDone = false;
  }
};

const withPlannedActs = (setting: RunSetting, { run }: Counted, moment: OvenMoment): OvenMoment => {
  const loaded = moment.minute === run.loadInMinute ? withLoadIn(moment, setting.load) : moment;
  const added = run.additions.find((addition) => addition.minute === moment.minute);
  return added ? withCoals(loaded, laid(added)) : loaded;
};
