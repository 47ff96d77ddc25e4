import { describe, expect, it } from 'vitest';
import { shownText, withUnit } from './quantity-text.ts';

describe('a quantity of the file in the reader’s measures', () => {
  it('converts by the exact definitions of NIST Handbook 44 appendix C', () => {
    expect(shownText('100 °C', 'air', 'us')).toBe('212 °F');
    expect(shownText('-40 °F', 'air', 'metric')).toBe('-40 °C');
    expect(shownText('304.8 m', 'height', 'us')).toBe('1000 ft');
    expect(shownText('44.704 m/s', 'wind', 'us')).toBe('100 mph');
  });

  it('leaves alone what it can’t read and what is already right', () => {
    expect(shownText('rather warm', 'air', 'us')).toBe('rather warm');
    expect(shownText('18.5 °C', 'air', 'metric')).toBe('18.5 °C');
  });

  it('takes a bare number in the reader’s own unit', () => {
    expect(withUnit('18', 'air', 'metric')).toBe('18 °C');
    expect(withUnit('18', 'air', 'us')).toBe('18 °F');
    expect(withUnit('18 °C', 'air', 'us')).toBe('18 °C');
  });
});
