// Times as a camp file writes them: `18:30`, or `+1 06:00` for the morning after.

const DAY_MINUTES = 1440;

/** Minutes since 00:00 of the camp's date; undefined where it is no time. */
export function readFileClock(text: string): number | undefined {
  const [, day, hours, minutes] = /^(?:([+-]\d{1,2}) )?(\d{1,2}):(\d{2})$/.exec(text) ?? [];
  if (hours === undefined || Number(hours) > 24 || Number(minutes) > 59) return undefined;
  return Number(day ?? 0) * DAY_MINUTES + Number(hours) * 60 + Number(minutes);
}

export function writeFileClock(clockMinutes: number): string {
  const day = Math.floor(clockMinutes / DAY_MINUTES);
  const inDay = clockMinutes - day * DAY_MINUTES;
  const two = (value: number) => String(value).padStart(2, '0');
  const time = `${two(Math.floor(inDay / 60))}:${two(inDay % 60)}`;
  return day === 0 ? time : `${day > 0 ? '+' : ''}${day} ${time}`;
}
