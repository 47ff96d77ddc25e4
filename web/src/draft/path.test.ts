import { describe, expect, it } from 'vitest';
import { pathText, takenOutWord, valueAt, withValueAt } from './path.ts';

const file = { ovens: [{ id: 'A' }, { id: 'B', diameter: '12 in' }], title: 'Supper' };

describe('a place in a camp file', () => {
  it('is named as troubles name it', () => {
    expect(pathText(['ovens', 2, 'diameter'])).toBe('ovens[2].diameter');
  });

  it('is changed in a copy and leaves the rest as it was', () => {
    const changed = withValueAt(file, ['ovens', 1, 'diameter'], '14 in');
    expect(valueAt(changed, ['ovens', 1, 'diameter'])).toBe('14 in');
    expect(file.ovens[1]?.diameter).toBe('12 in');
    expect(changed.ovens[0]).toBe(file.ovens[0]);
  });

  it('is named when it is taken out of a list, and only then', () => {
    expect(takenOutWord(file, [[['ovens', 0], undefined]])).toBe('A was taken out');
    expect(takenOutWord(file, [[['ovens', 1, 'diameter'], undefined]])).toBeUndefined();
    expect(takenOutWord({ mouths: [{}] }, [[['mouths', 0], undefined]])).toBe(
      'One group was taken out',
    );
  });

  it('is taken out of a group or a list, and made where it was missing', () => {
    expect(withValueAt(file, ['ovens', 0], undefined).ovens).toEqual([file.ovens[1]]);
    expect(withValueAt(file, ['ovens', 1, 'diameter'], undefined).ovens[1]).toEqual({ id: 'B' });
    expect(withValueAt(file, ['fuel', 'kind'], 'wood-coals')).toMatchObject({
      fuel: { kind: 'wood-coals' },
    });
  });
});
