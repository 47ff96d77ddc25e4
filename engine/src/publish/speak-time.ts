// How is a time of day or a stretch of time written? Days before and after the camp's own are said.

import { NO_BREAK } from './speak-number.ts';

const DAY_MINUTES = 1440;

/** `18:30` or `6:30 pm`; `22:40 the day before`. */
export function clockWord(clockMinutes: number, clock: '12' | '24'): string {
  const whole = Math.round(clockMinutes);
  const day = Math.floor(whole / DAY_MINUTES);
  const minute = whole - day * DAY_MINUTES;
  const time = clock === '24' ? on24(minute) : on12(minute);
  return day === 0 ? time : `${time} ${dayWord(day)}`;
}

const twoDigits = (number: number) => String(number).padStart(2, '0');

const on24 = (minute: number) => `${twoDigits(Math.floor(minute / 60))}:${twoDigits(minute % 60)}`;

function on12(minute: number): string {
  const hour = Math.floor(minute / 60);
  const half = hour < 12 ? 'am' : 'pm';
  return `${hour % 12 === 0 ? 12 : hour % 12}:${twoDigits(minute % 60)}${NO_BREAK}${half}`;
}

function dayWord(day: number): string {
  if (day === -1) return 'the day before';
  if (day === 1) return 'the next day';
  return day < 0 ? `${-day} days before` : `${day} days after`;
}

/** For the axis of a drawing, where there is no room for words: `00:30 +1` is the next day. */
export function axisClock(clockMinutes: number, spoken: (minutes: number) => string): string {
  const day = Math.floor(Math.round(clockMinutes) / DAY_MINUTES);
  const time = spoken(clockMinutes - day * DAY_MINUTES);
  return day === 0 ? time : `${time} ${day > 0 ? '+' : ''}${day}`;
}

/** `1 h 20 min`. */
export function minutesWord(minutes: number): string {
  const whole = Math.round(minutes);
  if (whole < 0) return `-${minutesWord(-whole)}`;
  const hours = Math.floor(whole / 60);
  const rest = whole % 60;
  if (hours === 0) return `${rest}${NO_BREAK}min`;
  return rest === 0
    ? `${hours}${NO_BREAK}h`
    : `${hours}${NO_BREAK}h${NO_BREAK}${rest}${NO_BREAK}min`;
}

const WEEKDAYS = 'Sunday Monday Tuesday Wednesday Thursday Friday Saturday'.split(' ');
const MONTHS =
  'January February March April May June July August September October November December'.split(
    ' ',
  );

/** `Saturday 12 September`; `Day 2` where the camp has no date. */
export function dateWord(date: string, daysAfter: number): string {
  const [, year, month, day] = /^(\d{4})-(\d{2})-(\d{2})$/.exec(date) ?? [];
  if (day === undefined) return `Day ${daysAfter + 1}`;
  const days = daysSinceMarch(Number(year), Number(month), Number(day)) + daysAfter;
  const weekday = WEEKDAYS[(((days + FIRST_WEEKDAY) % 7) + 7) % 7];
  const civil = civilDate(days);
  return `${weekday} ${civil.day} ${MONTHS[civil.month - 1]}`;
}

/** 1 March of the year 0 was a Wednesday, in the calendar of today run backwards. */
const FIRST_WEEKDAY = 3;
const FOUR_CENTURIES = 146_097;

/** Years are counted from March, so that a leap day is the last of its year; ours, held against known days. */
function daysSinceMarch(year: number, month: number, day: number): number {
  const from = month > 2 ? year : year - 1;
  const months = (month + 9) % 12;
  const leaps = Math.floor(from / 4) - Math.floor(from / 100) + Math.floor(from / 400);
  return 365 * from + leaps + Math.floor((153 * months + 2) / 5) + day - 1;
}

function civilDate(days: number): { readonly month: number; readonly day: number } {
  const inEra = ((days % FOUR_CENTURIES) + FOUR_CENTURIES) % FOUR_CENTURIES;
  let year = Math.min(399, Math.floor(inEra / 365));
  while (daysSinceMarch(year, 3, 1) > inEra) year -= 1;
  const inYear = inEra - daysSinceMarch(year, 3, 1);
  const months = Math.floor((5 * inYear + 2) / 153);
  return { month: ((months + 2) % 12) + 1, day: inYear - Math.floor((153 * months + 2) / 5) + 1 };
}
