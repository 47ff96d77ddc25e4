// Sentences for the codes of timetable/.

import type { NoticeValues } from '../../notice/notice.ts';
import type { Words } from '../say.ts';

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
  TIMETABLE_RISE_NOT_AS_WRITTEN: (values, about, say) =>
    `The recipe of ${say.dish(about.dish ?? '')} gives the first rise ` +
    `${say.minutes(num(values, 'writtenMinutes'))}; with this yeast at this warmth about ` +
    `${say.minutes(num(values, 'reckonedMinutes'))} is likely, and that is what the sheet has. ` +
    'Look at the yeast and the temperature that were written.',
  TIMETABLE_LEFT: (values) =>
    `Nobody has time in their hours for ${CHORES[String(values.what)] ?? String(values.what)}: do ` +
    'it before, after, or when there is a moment.',
  TIMETABLE_DISH_UNPLANNED: (values, about, say) => {
    const name = say.dish(about.dish ?? '');
    if (values.rule === 'proven') {
      return `${name} is not planned: that it can not be is proven. The rest stands without it.`;
    }
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
};
