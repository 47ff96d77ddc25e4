// Sentences for the codes of timetable/.

import type { NoticeValues } from '../../notice/notice.ts';
import type { Say, Words } from '../say.ts';

const num = (values: NoticeValues, key: string) => Number(values[key]);

const CHORES: Readonly<Record<string, string>> = {
  water: 'the trip for water before the first mixing',
  'wash-up': 'the wash-up',
  'ash-out': 'taking the ash out',
};

const SKILLS: Readonly<Record<string, string>> = {
  new: 'anybody',
  steady: 'a steady hand',
  'camp-cook': 'the camp cook',
};

const MISSING: Readonly<Record<string, string>> = {
  unit: 'nobody is free',
  hours: 'outside the hours of whoever does it',
  pool: 'there is no room at the table',
  hold: 'the oven is still in use',
  store: 'no lit coals are ready',
  lag: 'no room among the steps around',
  time: 'outside the time there is',
};

const job = (values: NoticeValues) => String(values.job ?? 'job').replaceAll('-', ' ');
const missing = (values: NoticeValues) => MISSING[String(values.rule)] ?? 'something is missing';

const more = (values: NoticeValues) => {
  const others = num(values, 'jobs') - 1;
  return others > 0 ? ` and ${others} more ${others === 1 ? 'job' : 'jobs'}` : '';
};

const inDark = (values: NoticeValues) =>
  num(values, 'jobs') === 1 ? 'one job is' : `${num(values, 'jobs')} jobs are`;

const listOf = (ids: NoticeValues[string] | undefined, say: Say) =>
  String(ids ?? '')
    .split(' ')
    .map((id) => say.hand(id))
    .join(', ');

export const timetableWords: Words = {
  TIMETABLE_NO_HANDS: () => 'Nobody is down to cook: put in at least one pair of hands with hours.',
  TIMETABLE_BEFORE_LIGHT: (values, _about, say) =>
    `First light is at ${say.clock(num(values, 'lightClockMinutes'))} and work begins at ` +
    `${say.clock(num(values, 'fromClockMinutes'))}: ${inDark(values)} in the dark. A lamp that ` +
    'leaves both hands free, and a lit way round the fire.',
  TIMETABLE_AFTER_DARK: (values, _about, say) =>
    `It is dark from ${say.clock(num(values, 'darkClockMinutes'))} and work goes on until ` +
    `${say.clock(num(values, 'untilClockMinutes'))}: ${inDark(values)} in the dark. A lamp that ` +
    'leaves both hands free, and a lit way round the fire.',
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
      .replaceAll('-', ' ')
      .split(' ')
      .join(', ');
    const which = steps === '' ? '' : ` (${steps})`;
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
  TIMETABLE_LATE: (values, about, say) =>
    `${say.dish(about.dish ?? '')} is late by ${say.minutes(num(values, 'lateMinutes'))}, ready at ` +
    `${say.clock(num(values, 'servedClockMinutes'))}; that is the least found.`,
  TIMETABLE_PAST_LATEST: (values, about, say) =>
    `${say.dish(about.dish ?? '')} was to be there by ` +
    `${say.clock(num(values, 'latestAtClockMinutes'))} at the latest and comes at ` +
    `${say.clock(num(values, 'servedClockMinutes'))}.`,
  TIMETABLE_NOT_KEPT: (values, about, say) =>
    `${job(values)}${about.dish === undefined ? '' : ` for ${say.dish(about.dish)}`} at ` +
    `${say.clock(num(values, 'startClockMinutes'))}${more(values)}: ${missing(values)}.`,
  TIMETABLE_PIN_NOT_KEPT: (values, about, say) =>
    `What you pinned for ${say.dish(about.dish ?? '')} stands, but ${job(values)} at ` +
    `${say.clock(num(values, 'startClockMinutes'))}${more(values)} does not fit: ` +
    `${missing(values)}. Move the pin, or what it clashes with?`,
  TIMETABLE_PIN_WAITS: (values, about, say) =>
    `With its coals pinned, ${say.dish(about.dish ?? '')} waits ` +
    `${say.minutes(num(values, 'waitMinutes'))}; it can bear ` +
    `${say.minutes(num(values, 'canWaitMinutes'))}.`,
  TIMETABLE_OVEN_WAITS: (values, about, say) =>
    `${say.dish(about.dish ?? '')} comes out early, since its oven bakes again for the same ` +
    `serving: it waits ${say.minutes(num(values, 'waitMinutes'))} and can bear ` +
    `${say.minutes(num(values, 'canWaitMinutes'))}. Wrap it and keep it warm.`,
  TIMETABLE_LIFT_ALONE: (_values, about, say) =>
    `Nobody can help to lift the oven of ${say.dish(about.dish ?? '')} when it is loaded: set it ` +
    'in its place empty and fill it there.',
  TIMETABLE_FIRE_UNFED: (values, _about, say) =>
    `Nobody is free to feed the fire for ${say.minutes(num(values, 'gapMinutes'))}: lay on a ` +
    'thick piece before.',
  TIMETABLE_PIN_UNKNOWN_HAND: (_values, about, say) =>
    `${say.dish(about.dish ?? '')} is pinned to somebody who is not among the hands; whoever is ` +
    'free does it.',
  TIMETABLE_ONLY_LESS_SKILLED: (values) =>
    `Some work wants ${SKILLS[String(values.skill)] ?? 'more practice'} and there is none: go ` +
    'slowly, gloves on, and have somebody beside you at lids and coals.',
  TIMETABLE_TOO_FEW_HANDS: (values, _about, say) =>
    `A job wants ${say.count(num(values, 'wanted'))} people at once and there are ` +
    `${say.count(num(values, 'found'))}: ask somebody to lend a hand for that minute, above all ` +
    'to lift a heavy oven.',
  TIMETABLE_FREE_FROM_NOT_FIRST: (_values, about, say) =>
    `${say.dish(about.dish ?? '')} can not be mixed first without spoiling: cover the flour, wash ` +
    'hands and table, and use only its own tools.',
  TIMETABLE_RISE_HURRIED: (values, about, say) =>
    `${say.dish(about.dish ?? '')} is in time only if its dough rises in ` +
    `${say.minutes(num(values, 'hurriedMinutes'))}; likely is ` +
    `${say.minutes(num(values, 'likelyMinutes'))}, so keep it warmer, or call later if it is slow.`,
  TIMETABLE_LEFT: (values) =>
    `Nobody has time in their hours for ${CHORES[String(values.what)] ?? String(values.what)}: do ` +
    'it before, after, or when there is a moment.',
  TIMETABLE_DISH_UNPLANNED: (values, about, say) => {
    const name = say.dish(about.dish ?? '');
    const reason =
      MISSING[String(values.rule)] ??
      `the soonest found is ${say.minutes(num(values, 'lateMinutes'))} late`;
    return (
      `${name} is not planned: ${reason}. Give it another time or oven; ` +
      'the rest stands without it.'
    );
  },
  TIMETABLE_HANDS_NOT_WASHED: (values, about, say) =>
    `Before ${job(values)}${about.dish === undefined ? '' : ` for ${say.dish(about.dish)}`} at ` +
    `${say.clock(num(values, 'startClockMinutes'))} hands must be washed and the sheet has no ` +
    'minute for it: wash all the same, and be a minute late.',
  TIMETABLE_OFF_MINUTE: (values, about, say) =>
    `Hands are busy: ${job(values)} for ${say.dish(about.dish ?? '')} is ` +
    `${say.minutes(num(values, 'offMinutes'))} off its minute, ` +
    `${num(values, 'offMinutes') > 5 ? 'so look at the heat before it' : 'which does no harm'}.`,
  TIMETABLE_NO_CHIMNEY: () =>
    'There is no chimney in the gear: light the coals in a heap on the pan, and give them longer.',
  TIMETABLE_COALS_OLD: (values, about, say) =>
    `The coals under ${say.dish(about.dish ?? '')} have to last ` +
    `${say.minutes(num(values, 'neededMinutes'))} and are good for about ` +
    `${say.minutes(num(values, 'lifeMinutes'))}: look early, and have some spare ones lit.`,
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
