import { describe, expect, it } from 'vitest';
import { withEdits } from './path.ts';
import { isSteady, plainEdits } from './weather-edits.ts';

const cooling = [
  { at: '16:00', air: '20 °C', wind: '4 m/s', gust: '21.6 km/h', windFrom: 'W' },
  { at: '18:00', air: '59 °F', wind: '2 m/s', windFrom: 'NW' },
  { at: '20:00', air: '12 °C', wind: '1 m/s', windFrom: 'N' },
];
const told = (key: 'air' | 'wind' | 'windFrom', text: string) =>
  withEdits({ weather: cooling }, plainEdits(cooling, { key, at: 1, text })).weather;

describe('one word for the weather of the whole time', () => {
  it('moves every hour by as much, each in the unit it is written in', () => {
    expect(told('air', '50 °F').map(({ air }) => air)).toEqual(['15 °C', '50 °F', '7 °C']);
    expect(told('air', '10 °C').map(({ air }) => air)).toEqual(['15 °C', '10 °C', '7 °C']);
  });

  it('moves the gusts along, and no wind below a calm', () => {
    expect(told('wind', '3 m/s').map(({ wind }) => wind)).toEqual(['5 m/s', '3 m/s', '2 m/s']);
    expect(told('wind', '3 m/s')[0]?.gust).toBe('25.2 km/h');
    expect(told('wind', '0 m/s').map(({ wind }) => wind)).toEqual(['2 m/s', '0 m/s', '0 m/s']);
  });

  it('sets one direction for every hour, and what it can’t read as it is', () => {
    expect(told('windFrom', 'north').map(({ windFrom }) => windFrom)).toEqual(
      Array.from({ length: 3 }, () => 'north'),
    );
    expect(told('air', 'nippy').map(({ air }) => air)).toEqual(['nippy', 'nippy', 'nippy']);
  });

  it('sets rain for every hour, and takes it out of all of them where it is emptied', () => {
    const edits = plainEdits(cooling, { key: 'rain', at: 1, text: '2 mm' });
    const wet = withEdits({ weather: cooling }, edits).weather;
    expect(wet.map((hour) => 'rain' in hour && hour.rain)).toEqual(['2 mm', '2 mm', '2 mm']);
    const dry = withEdits({ weather: wet }, plainEdits(wet, { key: 'rain', at: 1, text: '' }));
    expect(dry.weather).toEqual(cooling);
  });

  it('knows whether all hours say the same', () => {
    expect(isSteady(cooling, 'air')).toBe(false);
    expect(isSteady([cooling[0]!, cooling[0]!], 'wind')).toBe(true);
  });
});
