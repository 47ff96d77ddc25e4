// Times, dates and directions as they stand in a camp file.

const DAY_MINUTES = 1440;
const CLOCK = /^(?:([+-]\d{1,2})\s+)?(\d{1,2}):(\d{2})$/;

/** `18:30`; `+1 06:00` is the morning after the camp's date, `-1 20:00` the evening before. */
export function readClock(text: string): number | undefined {
  const [, day, hour, minute] = CLOCK.exec(text.trim()) ?? [];
  const hours = Number(hour);
  const minutes = Number(minute);
  const isTime = (hours <= 23 && minutes <= 59) || (hours === 24 && minutes === 0);
  return isTime ? Number(day ?? 0) * DAY_MINUTES + hours * 60 + minutes : undefined;
}

export function writeClock(clockMinutes: number): string {
  const whole = Math.round(clockMinutes);
  const day = Math.floor(whole / DAY_MINUTES);
  const inDay = whole - day * DAY_MINUTES;
  const time = `${two(Math.floor(inDay / 60))}:${two(inDay % 60)}`;
  return day === 0 ? time : `${day > 0 ? '+' : ''}${day} ${time}`;
}

const OFFSET = /^([+-])(\d{2}):(\d{2})$/;

/** `-06:00` as minutes: what the camp's clock shows less universal time, ISO 8601. */
export function readUtcOffset(text: string): number | undefined {
  const [, sign, hours, minutes] = OFFSET.exec(text.trim()) ?? [];
  const offset = Number(hours) * 60 + Number(minutes);
  return offset <= 14 * 60 && Number(minutes) < 60 ? Number(`${sign}1`) * offset : undefined;
}

export function writeUtcOffset(minutes: number): string {
  const whole = Math.abs(Math.round(minutes));
  return `${minutes < 0 ? '-' : '+'}${two(Math.floor(whole / 60))}:${two(whole % 60)}`;
}

const two = (value: number) => String(value).padStart(2, '0');

/** A real day of the calendar, ISO 8601 `2026-09-12`, between 1900 and 2199. */
export function isDate(text: string): boolean {
  if (!/^(19|2[01])\d{2}-\d{2}-\d{2}$/.test(text)) return false;
  const time = Date.parse(`${text}T00:00:00Z`);
  return Number.isFinite(time) && new Date(time).toISOString().startsWith(text);
}

const DAYS_MILLISECONDS = 86_400_000;

/** The date that lies `days` days after (or before) another. */
export function dateAfter(date: string, days: number): string {
  return new Date(Date.parse(`${date}T00:00:00Z`) + days * DAYS_MILLISECONDS)
    .toISOString()
    .slice(0, 10);
}

/** Days from one date to another; negative where it is past. */
export const daysBetween = (from: string, to: string) =>
  Math.round((Date.parse(`${to}T00:00:00Z`) - Date.parse(`${from}T00:00:00Z`)) / DAYS_MILLISECONDS);

/** 0 = Sunday … 6 = Saturday. */
export const weekday = (date: string) => new Date(`${date}T00:00:00Z`).getUTCDay();

const POINTS = 'N NNE NE ENE E ESE SE SSE S SSW SW WSW W WNW NW NNW'.split(' ');
const POINT_DEGREES = 22.5;

const LETTERS: Readonly<Record<string, string>> = { north: 'N', east: 'E', south: 'S', west: 'W' };

/** `south-west`, `from the southwest`, `north-north-easterly` as letters: `SW`, `NNE`. */
const pointOf = (text: string) =>
  text
    .trim()
    .toLowerCase()
    .replace(/^from\s+(the\s+)?/, '')
    .replace(/(north|east|south|west)(er(ly|n))?/g, (_, word: string) => LETTERS[word] ?? '')
    .replace(/[\s-]+/g, '')
    .toUpperCase();

/** Degrees clockwise from north, from `WSW`, `south-west`, `247.5°` or `247 deg`. */
export function readDirection(text: string): number | undefined {
  const point = POINTS.indexOf(pointOf(text));
  if (point >= 0) return point * POINT_DEGREES;
  const degrees = /^(\d{1,3}(?:\.\d{1,12})?)\s*(?:°|deg|degrees)$/.exec(text.trim());
  const value = Number(degrees?.[1]);
  return 0 <= value && value <= 360 ? value : undefined;
}

export function writeDirection(degrees: number): string {
  const point = degrees / POINT_DEGREES;
  return Number.isInteger(point) ? POINTS[point % 16]! : `${degrees}°`;
}
