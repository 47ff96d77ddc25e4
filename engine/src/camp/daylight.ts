// When does the sun rise and set at the camp, and until when can one work without a lamp?
// Source: noaa-solar (low-precision series after meeus1998). Weakness: flat horizon; a ridge or
// trees take the light earlier. Within a minute between the polar circles.

import { type ClockMinutes, clockMinutes, type Degrees, type Minutes } from '../quantity/unit.ts';

export interface DaylightQuestion {
  readonly latitude: Degrees;
  readonly longitude: Degrees;
  /** ISO 8601, `2026-06-20`. */
  readonly date: string;
  /** The day so many after that date; that day itself where not said. */
  readonly daysAfter?: number;
  /** The camp's clock minus universal time. */
  readonly utcOffset: Minutes;
}

/** Undefined where that does not happen on the date. */
export interface Daylight {
  readonly dawn?: ClockMinutes;
  readonly sunrise?: ClockMinutes;
  readonly sunset?: ClockMinutes;
  /** End of civil dusk: after it hands need a lamp. */
  readonly dusk?: ClockMinutes;
  /** What the sun does around the clock, where it neither rises nor sets. */
  readonly sun: 'rises-and-sets' | 'never-sets' | 'never-rises';
}

// noaa-solar: centre of the disc 0.833° below the horizon (refraction and half its width); civil
// twilight ends at 6°.
const SUNSET_ALTITUDE = -0.833;
const CIVIL_ALTITUDE = -6;
/** The hour angle is worked out at the event's own time; a third round moves it < 1 s. */
const ROUNDS = 3;
const MINUTES_PER_DAY = 1440;

/**
 * Sunrise, sunset and civil twilight on the camp's own clock.
 *
 * @throws    RangeError — the date is not one, or latitude past the poles
 * @source    noaa-solar; meeus1998 ch. 25 (grade B)
 * @accuracy  worst 4 s against validation/camp/daylight.json
 */
export function daylightAt(question: DaylightQuestion): Daylight {
  const { latitude } = question;
  if (!(-90 <= latitude && latitude <= 90)) throw new RangeError(`latitude is ${latitude}`);
  const when = (altitude: number, side: -1 | 1) => crossing(question, altitude, side);
  const events = {
    dawn: when(CIVIL_ALTITUDE, -1),
    sunrise: when(SUNSET_ALTITUDE, -1),
    sunset: when(SUNSET_ALTITUDE, 1),
    dusk: when(CIVIL_ALTITUDE, 1),
  };
  const known = Object.entries(events).filter(([, at]) => typeof at === 'number');
  const sun = typeof events.sunset === 'string' ? events.sunset : 'rises-and-sets';
  return { ...Object.fromEntries(known), sun };
}

/** When the sun passes an altitude, before (-1) or after (1) its highest point. */
function crossing(
  { latitude, longitude, date, daysAfter = 0, utcOffset }: DaylightQuestion,
  altitude: number,
  side: -1 | 1,
): ClockMinutes | 'never-sets' | 'never-rises' {
  const midnight = julianDay(date) + daysAfter;
  let universal = MINUTES_PER_DAY / 2 - 4 * longitude;
  for (let round = 0; round < ROUNDS; round += 1) {
    const sun = sunAt(midnight + universal / MINUTES_PER_DAY);
    const cosine = hourAngleCosine(latitude, sun.declination, altitude);
    if (cosine > 1) return 'never-rises';
    if (cosine < -1) return 'never-sets';
    const noon = MINUTES_PER_DAY / 2 - 4 * longitude - sun.equationOfTime;
    universal = noon + side * 4 * arcCosine(cosine); // noaa-solar: 4 minutes a degree
  }
  return clockMinutes(universal + utcOffset);
}

/** noaa-solar: cosine of the hour angle at which the sun stands at an altitude. */
function hourAngleCosine(latitude: number, declination: number, altitude: number): number {
  return (
    (sine(altitude) - sine(latitude) * sine(declination)) /
    (cosineOf(latitude) * cosineOf(declination))
  );
}

/** Declination [degrees] and equation of time [minutes]; noaa-solar after meeus1998 ch. 25, 28. */
function sunAt(day: number): { declination: number; equationOfTime: number } {
  const century = (day - 2_451_545) / 36_525;
  const longitude = 280.466_46 + century * (36_000.769_83 + 0.000_303_2 * century);
  const anomaly = 357.529_11 + century * (35_999.050_29 - 0.000_153_7 * century);
  const eccentricity = 0.016_708_634 - century * (0.000_042_037 + 0.000_000_126_7 * century);
  const centre =
    sine(anomaly) * (1.914_602 - century * (0.004_817 + 0.000_014 * century)) +
    sine(2 * anomaly) * (0.019_993 - 0.000_101 * century) +
    sine(3 * anomaly) * 0.000_289;
  const node = 125.04 - 1934.136 * century;
  const apparent = longitude + centre - 0.005_69 - 0.004_78 * sine(node);
  const obliquity = 23.439_291 - 0.013_004_2 * century + 0.002_56 * cosineOf(node);
  return {
    declination: arcSine(sine(obliquity) * sine(apparent)),
    equationOfTime: equationOfTime(longitude, anomaly, eccentricity, obliquity),
  };
}

/** meeus1998 eq. 28.3, in minutes. */
function equationOfTime(
  longitude: number,
  anomaly: number,
  eccentricity: number,
  obliquity: number,
): number {
  const y = Math.tan((obliquity / 2) * DEGREE) ** 2;
  const radians =
    y * sine(2 * longitude) -
    2 * eccentricity * sine(anomaly) +
    4 * eccentricity * y * sine(anomaly) * cosineOf(2 * longitude) -
    0.5 * y * y * sine(4 * longitude) -
    1.25 * eccentricity * eccentricity * sine(2 * anomaly);
  return (4 * radians) / DEGREE;
}

const CIVIL_DATE = /^(\d{4})-(\d{2})-(\d{2})$/;
const MONTH_DAYS = [31, 29, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31] as const;

/** Julian day at 0:00 universal time; meeus1998 eq. 7.1. */
function julianDay(date: string): number {
  const [, yearText, monthText, dayText] = CIVIL_DATE.exec(date) ?? [];
  const [year, month, day] = [Number(yearText), Number(monthText), Number(dayText)];
  const isDate = 1 <= month && month <= 12 && 1 <= day && day <= MONTH_DAYS[month - 1]!;
  if (!isDate) throw new RangeError(`not a date: ${date}`);
  const [y, m] = month <= 2 ? [year - 1, month + 12] : [year, month];
  const century = Math.floor(y / 100);
  const gregorian = 2 - century + Math.floor(century / 4);
  return Math.floor(365.25 * (y + 4716)) + Math.floor(30.6001 * (m + 1)) + day + gregorian - 1524.5;
}

const DEGREE = Math.PI / 180;
const sine = (degrees: number) => Math.sin(degrees * DEGREE);
const cosineOf = (degrees: number) => Math.cos(degrees * DEGREE);
const arcSine = (value: number) => Math.asin(value) / DEGREE;
const arcCosine = (value: number) => Math.acos(value) / DEGREE;
