// Sentences for the codes of timetable/ about what can't be in time, and about a day planned again.

import type { NoticeValues } from '../../notice/notice.ts';
import type { Say, Words } from '../say.ts';

const num = (values: NoticeValues, key: string) => Number(values[key]);

const listOf = (ids: NoticeValues[string] | undefined, say: Say) =>
  String(ids ?? '')
    .split(' ')
    .map((id) => say.hand(id))
    .join(', ');

export const timetableProofWords: Words = {
  TIMETABLE_SERVING_PAST: (values, about, say) =>
    `${say.dish(about.dish ?? '')} was wanted at ` +
    `${say.clock(num(values, 'servingClockMinutes'))} and it is ` +
    `${say.clock(num(values, 'nowClockMinutes'))} now: the sheet shows the soonest found.`,
  TIMETABLE_BEFORE_FIRST_TASK: (values, about, say) =>
    `${say.dish(about.dish ?? '')} is wanted at ${say.clock(num(values, 'servingClockMinutes'))} ` +
    `and nobody can begin before ${say.clock(num(values, 'firstClockMinutes'))}: serve it at ` +
    `${say.clock(num(values, 'soonestClockMinutes'))} or later.`,
  TIMETABLE_NOBODY_THERE: (values, about, say) =>
    `Nobody who may do it is there from ${say.clock(num(values, 'fromClockMinutes'))} to ` +
    `${say.clock(num(values, 'toClockMinutes'))}, and ` +
    `${say.minutes(num(values, 'workMinutes'))} of work` +
    `${about.dish === undefined ? '' : ` for ${say.dish(about.dish)}`} must be done then: change ` +
    'their hours or the serving time.',
  TIMETABLE_TOO_SOON: (values, about, say) => {
    const soonest = num(values, 'soonestClockMinutes');
    const later = Number.isFinite(soonest) ? ` at ${say.clock(soonest)} or later` : ' later';
    return about.dish === undefined
      ? 'There is not time enough before serving, however many help: serve later.'
      : `There is not time enough for ${say.dish(about.dish)}, however many help: serve it` +
          `${later}, or cook something quicker.`;
  },
  TIMETABLE_RISE_TOO_LONG: (values, about, say) =>
    `The dough of ${say.dish(about.dish ?? '')} rises for ` +
    `${say.minutes(num(values, 'riseMinutes'))} at its quickest, and there are only ` +
    `${say.minutes(num(values, 'thereMinutes'))} before it is served: mix it the day before, keep ` +
    'it warmer, or serve it later.',
  TIMETABLE_COALS_TOO_LATE: (values, about, say) =>
    `The first coals are ready at ${say.clock(num(values, 'readyClockMinutes'))}, too late for ` +
    `${say.dish(about.dish ?? '')} at ${say.clock(num(values, 'servingClockMinutes'))}: serve it ` +
    `at ${say.clock(num(values, 'soonestClockMinutes'))} or later, or light sooner.`,
  TIMETABLE_COALS_TOO_FEW: (values, _about, say) =>
    `By ${say.clock(num(values, 'byClockMinutes'))} ${say.count(num(values, 'neededCoals'))} coals ` +
    `are needed and the chimneys can have made ${say.count(num(values, 'thereCoals'))}: one more ` +
    'chimney, or an earlier start.',
  TIMETABLE_OVEN_TWICE: (values, about, say) =>
    `${say.ovenName(about.oven ?? '')} can not hold ${say.dish(about.dish ?? '')} and ` +
    `${say.dish(String(values.other))} in time, whichever goes first: it is empty again at ` +
    `${say.clock(num(values, 'emptiedClockMinutes'))} and needed by ` +
    `${say.clock(num(values, 'neededClockMinutes'))}. Give one of them another oven or time.`,
  TIMETABLE_TABLE_TOO_SMALL: (values, _about, say) =>
    `From ${say.clock(num(values, 'fromClockMinutes'))} to ` +
    `${say.clock(num(values, 'toClockMinutes'))} there are ` +
    `${say.minutes(num(values, 'workMinutes'))} of work at the table and room for ` +
    `${say.minutes(num(values, 'tableMinutes'))}: one more table, or begin sooner.`,
  TIMETABLE_CONTRADICTION: (values, about, say) => {
    const steps = String(values.steps ?? '')
      .split(' ')
      .join(', ')
      .replaceAll('-', ' ');
    const which = steps === '' ? '' : ` (${steps})`;
    if (values.pinnedClockMinutes !== undefined) {
      return (
        `You pinned ${say.dish(about.dish ?? '')} for coals on at ` +
        `${say.clock(num(values, 'pinnedClockMinutes'))}, and the work round it can not all be ` +
        `true with that${which}: move the pin.`
      );
    }
    return about.dish === undefined
      ? `Times that were set can not all be true at once${which}: change one of them.`
      : `The times set for ${say.dish(about.dish)} can not all be true at once${which}: change a ` +
          'step or a pin.';
  },
  TIMETABLE_HOURS_TOO_SHORT: (values, _about, say) => {
    const who = values.isAll === 1 ? 'hands' : listOf(values.hands, say);
    return (
      `From ${say.clock(num(values, 'fromClockMinutes'))} to ` +
      `${say.clock(num(values, 'toClockMinutes'))} there are ` +
      `${say.minutes(num(values, 'workMinutes'))} of work for ${who} and only ` +
      `${say.minutes(num(values, 'handMinutes'))} of their hours: more hands, longer hours or fewer ` +
      'dishes.'
    );
  },
  TIMETABLE_REPLAN_PIN: (values, about, say) =>
    `You pinned ${say.dish(about.dish ?? '')} for coals on at ` +
    `${say.clock(num(values, 'pinnedClockMinutes'))}, which can not be kept: ` +
    `${say.clock(num(values, 'foundClockMinutes'))} is the next that goes. Is that right?`,
  TIMETABLE_REPLAN_LOAD_LOST: (_values, about, say) =>
    `${say.dish(about.dish ?? '')} was in ${say.ovenName(about.oven ?? '')} and is left out from ` +
    'here on: what can be saved of it?',
  TIMETABLE_REPLAN_NO_OVEN: (_values, about, say) =>
    `No other oven will do for ${say.dish(about.dish ?? '')}: it is left out. Cook it in a smaller ` +
    'one, by a card of its own?',
  TIMETABLE_REPLAN_OTHER_OVEN: (values, about, say) =>
    `${say.dish(about.dish ?? '')} goes into ${say.ovenName(String(values.other))} now; its coals ` +
    `were counted for ${say.ovenName(about.oven ?? '')}, so look early.`,
};
