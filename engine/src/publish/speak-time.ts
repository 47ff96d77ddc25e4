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
