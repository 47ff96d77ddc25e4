import { describe, expect, it } from 'vitest';
import { baseOf, movedBy, shownText, withUnit } from './quantity-text.ts';

describe('a quantity of the file in the reader’s measures', () => {
  it('converts by the exact definitions of NIST Handbook 44 appendix C', () => {
    expect(shownText('100 °C', 'air', 'us')).toBe('212 °F');
    expect(shownText('-40 °F', 'air', 'metric')).toBe('-40 °C');
    expect(shownText('304.8 m', 'height', 'us')).toBe('1000 ft');
    expect(shownText('44.704 m/s', 'wind', 'us')).toBe('100 mph');
    expect(shownText('0.3048 m', 'oven-size', 'us')).toBe('12 in');
    expect(shownText('283.49523125 g', 'ten', 'us')).toBe('10 oz');
    expect(shownText('45.359237 kg', 'charcoal', 'us')).toBe('100 lb');
  });

  it('leaves alone what it can’t read and what is already right', () => {
    expect(shownText('rather warm', 'air', 'us')).toBe('rather warm');
    expect(shownText('18.5 °C', 'air', 'metric')).toBe('18.5 °C');
  });

  it('shows a number as a cook would write it, however it was computed', () => {
    expect(shownText('0.30479999999999996 m', 'oven-size', 'us')).toBe('12 in');
    expect(shownText('0.30479999999999996 m', 'oven-size', 'metric')).toBe('30 cm');
    expect(shownText('2.4499999999 m/s', 'wind', 'metric')).toBe('2.4 m/s');
  });

  it('is moved by so much in the unit that it is written in', () => {
    expect(movedBy('10 °C', 5)).toBe('15 °C');
    expect(movedBy('50 °F', 5)).toBe('59 °F');
    expect(movedBy('3.6 km/h', -5, 0)).toBe('0 km/h');
    expect(movedBy('mild', 5)).toBe('mild');
    expect(baseOf('86 F')).toBeCloseTo(30, 9);
  });

  it('reads the fractions of a tape measure (inch of 25.4 mm, NIST Handbook 44 appendix C)', () => {
    for (const text of ['1/2 in', '½ in', '0.5 in']) expect(baseOf(text)).toBeCloseTo(0.0127, 9);
    for (const text of ['8 1/2 in', '8½ in']) expect(baseOf(text)).toBeCloseTo(0.2159, 9);
    expect(shownText('8 1/2 in', 'oven-size', 'us')).toBe('8 1/2 in');
    expect(baseOf('1/0 in')).toBeUndefined();
    expect(baseOf('1/2/3 in')).toBeUndefined();
  });

  it('takes a bare number in the reader’s own unit', () => {
    expect(withUnit('18', 'air', 'metric')).toBe('18 °C');
    expect(withUnit('18', 'air', 'us')).toBe('18 °F');
    expect(withUnit('18 °C', 'air', 'us')).toBe('18 °C');
    expect(withUnit('8 1/2', 'small-length', 'us')).toBe('8 1/2 in');
    expect(withUnit('2,5', 'small-length', 'metric')).toBe('2.5 cm');
    expect(withUnit('2 small', 'small-length', 'metric')).toBe('2 small');
  });
});
