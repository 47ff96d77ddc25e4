// Days of the calendar, without a clock: ISO 8601 in, ISO 8601 out.

/**
 * The day so many after another.
 *
 * @param date  `2026-09-12`
 * @returns the same text where it is no date
 * Day numbers counted from 1 March, as calendars are reckoned by computers (common practice, no source).
 * @example '2026-12-30', 3 → '2027-01-02'
 */
export function dayAfter(date: string, days: number): string {
  const [, year, month, day] = /^(\d{4})-(\d{2})-(\d{2})$/.exec(date) ?? [];
  if (year === undefined || month === undefined || day === undefined) return date;
  return dateOf(dayNumber(Number(year), Number(month), Number(day)) + Math.round(days));
}

/** Days since 1 March of the year 0; the leap day is the last of such a year. */
function dayNumber(year: number, month: number, day: number): number {
  const y = month <= 2 ? year - 1 : year;
  const m = month <= 2 ? month + 9 : month - 3;
  const leaps = Math.floor(y / 4) - Math.floor(y / 100) + Math.floor(y / 400);
  return 365 * y + leaps + Math.floor((153 * m + 2) / 5) + day - 1;
}

function dateOf(number: number): string {
  let y = Math.floor((10_000 * number + 14_780) / 3_652_425);
  if (number < dayNumber(y, 3, 1)) y -= 1;
  const left = number - dayNumber(y, 3, 1);
  const m = Math.floor((100 * left + 52) / 3060);
  const day = left - Math.floor((153 * m + 2) / 5) + 1;
  const month = m < 10 ? m + 3 : m - 9;
  return [y + (month <= 2 ? 1 : 0), two(month), two(day)].join('-');
}

const two = (value: number) => String(value).padStart(2, '0');
