import { describe, expect, it } from 'vitest';
import { inOvenOf, isRefusal, planMeal } from '#engine';
import { demoCamps, fromEngine, readCampFile } from '../index.ts';

const [demo] = demoCamps('2026-09-08');
const file = fromEngine(demo!.camp, demo!.menu);

describe('how a dish meets its oven, in a camp file', () => {
  const inOven = {
    on: 'tin',
    lid: 'hot',
    oven: 'cold',
    pieces: 'touching',
    tin: { length: '21.5 cm', width: '21.5 cm', height: '5 cm', round: true },
  } as const;

  it('is read, written and read again alike, on a dish and on a recipe', () => {
    const [dish, ...dishes] = file.menu;
    const [recipe, ...recipes] = file.recipes;
    const whole = {
      ...file,
      menu: [{ ...dish!, inOven }, ...dishes],
      recipes: [{ ...recipe!, inOven: { on: 'rack' as const } }, ...recipes],
    };
    const read = readCampFile(whole);
    if (!('camp' in read)) throw new Error('the file is not read');
    const again = fromEngine(read.camp, read.menu);
    const reread = readCampFile(again);
    if (!('camp' in reread)) throw new Error('what was written is not read');
    expect(reread.menu).toEqual(read.menu);
    expect(again.menu[0]!.inOven).toMatchObject({ on: 'tin', lid: 'hot', pieces: 'touching' });
    expect(read.menu.dishes[0]!.inOven?.tin).toEqual({
      length: 0.215,
      width: 0.215,
      height: 0.05,
      isRound: true,
    });
    expect(again.recipes[0]!.inOven).toEqual({ on: 'rack' });
    const first = read.menu.dishes[0]!;
    const own = read.menu.recipes.find(({ id }) => id === first.recipe)!;
    expect(inOvenOf(own, first).contact).toBe('tin');
  });

  it('left out, is what it was before: older files plan as they did', () => {
    const read = readCampFile(file);
    if (!('camp' in read)) throw new Error('the file is not read');
    expect(fromEngine(read.camp, read.menu)).toEqual(file);
    expect(isRefusal(planMeal(read.camp, read.menu))).toBe(false);
  });

  it('that nobody has heard of is named, with its place', () => {
    const [dish, ...dishes] = file.menu;
    const odd = { ...file, menu: [{ ...dish!, inOven: { on: 'straw' } }, ...dishes] };
    expect(JSON.stringify(readCampFile(odd))).toContain('inOven');
  });
});
