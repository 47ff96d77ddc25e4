// What was typed into a box, read or not.

export type Reading<Value> = { readonly ok: true; readonly value: Value } | { readonly ok: false };

const DAY_MINUTES = 1440;

interface Bounds {
  readonly lowest: number;
  readonly highest: number;
}

/** A whole number within bounds. */
export function readWhole(text: string, bounds: Bounds): Reading<number> {
  const reading = readDecimal(text, bounds);
  return reading.ok && Number.isInteger(reading.value) ? reading : { ok: false };
}

/** A number within bounds, with a point or a comma; `1 1/2` and `½` as cooks write them. */
export function readDecimal(text: string, { lowest, highest }: Bounds): Reading<number> {
  const value = numberFrom(text.trim());
  if (value === undefined || value < lowest || highest < value) return { ok: false };
  return { ok: true, value };
}

const signs: Readonly<Record<string, string>> = { '½': '1/2', '¼': '1/4', '¾': '3/4' };

function numberFrom(text: string): number | undefined {
  const plain = text.replace(/[½¼¾]/, (sign) => ` ${signs[sign]}`).trim();
  const fraction = /^(?:(\d{1,6}) +)?(\d{1,3})\/(\d{1,3})$/.exec(plain);
  if (fraction) {
    const under = Number(fraction[3]);
    return under === 0 ? undefined : Number(fraction[1] ?? 0) + Number(fraction[2]) / under;
  }
  return /^[-−]?\d{1,7}(?:[.,]\d{1,6})?$/.test(plain)
    ? Number(plain.replace(',', '.').replace('−', '-'))
    : undefined;
}

/** Minutes of the clock from `18:30`, `6:30 pm`, `6pm` or `1830`. */
export function readClock(text: string): Reading<number> {
  const match = /^(\d{1,2})(?:[:.h]?(\d{2}))?\s*(am|pm|a\.m\.|p\.m\.)?$/i.exec(text.trim());
  const hours = Number(match?.[1]);
  const minutes = Number(match?.[2] ?? 0);
  const half = match?.[3]?.[0]?.toLowerCase();
  if (match === null || minutes > 59) return { ok: false };
  if (half === undefined) {
    const isTime = match[2] !== undefined && hours <= 23;
    return isTime ? { ok: true, value: hours * 60 + minutes } : { ok: false };
  }
  if (hours < 1 || 12 < hours) return { ok: false };
  return { ok: true, value: (hours % 12) * 60 + minutes + (half === 'p' ? DAY_MINUTES / 2 : 0) };
}

/** `18:30` or `6:30 pm`, of the clock's own day. */
export function writeClock(clockMinutes: number, clock: '12' | '24'): string {
  const inDay = ((Math.round(clockMinutes) % DAY_MINUTES) + DAY_MINUTES) % DAY_MINUTES;
  const hours = Math.floor(inDay / 60);
  const minutes = String(inDay % 60).padStart(2, '0');
  if (clock === '24') return `${String(hours).padStart(2, '0')}:${minutes}`;
  return `${((hours + 11) % 12) + 1}:${minutes} ${hours < 12 ? 'am' : 'pm'}`;
}

/** For a box: at most so many decimals, and none that say nothing. */
export const writeNumber = (value: number, decimals = 0) => String(Number(value.toFixed(decimals)));
