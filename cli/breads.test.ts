// `leaven` and `rise` end to end: what is printed, how it ends.

import { describe, expect, it } from 'vitest';
import { run } from './run.ts';
import { realShell } from './shell.ts';

function command(...given: readonly (string | { readonly text: string })[]) {
  const words = given.filter((each) => typeof each === 'string');
  const piped = given.find((each) => typeof each !== 'string');
  let [out, error] = ['', ''];
  const exit = run(words, {
    ...realShell(),
    columns: 90,
    ...(piped === undefined ? {} : { readText: () => piped.text }),
    out: (text) => {
      out += text;
    },
    error: (text) => {
      error += text;
    },
  });
  return { exit, out: () => out, error: () => error };
}

describe('emberwright leaven', () => {
  it('weighs the powder for the height and shows where the tables disagree', () => {
    const { exit, out } = command('leaven', '--what', 'biscuits', '--height', '6500 ft');
    expect(exit).toBe(0);
    expect(out()).toMatch(/baking powder\s+19\.7 g.*25 g/); // 1 − 0.7864 of ussa1976 at 6,500 ft
    expect(out()).toMatch(/21 % less\s+baking powder,\s+for equal gas/);
    expect(out()).toMatch(/a service manual for cakes and hot\s+46 to 52 %/);
  });

  it('does not cut a recipe twice that is written for about this height', () => {
    const words = ['--what', 'biscuits', '--height', '2100 m', '--written', '1500 m'];
    const { out } = command('leaven', ...words);
    expect(out()).toMatch(/baking powder\s+25 g/);
    expect(out()).not.toMatch(/for equal gas/);
  });

  it('tells gas from soda: 29 % less gas at 9,000 ft (ussa1976) are 42 % less soda where some meets no acid', () => {
    const text = 'Soda bread\n475 g plain flour\n388 g buttermilk\n4.67 g baking soda\n6 g salt\n';
    const { out } = command('leaven', '--height', '9000 ft', '--what', '-', { text });
    const flat = out().replaceAll(/\s+/g, ' ');
    // By hand: 388 × 0.008 × 0.933 = 2.9 g meet acid, 1.77 g give half; 0.7148 of 3.78 is 2.7 g.
    expect(flat).toMatch(/29 % less gas, for as much lift: 42 % less baking soda/);
    expect(flat).toMatch(/baking soda 2\.7 g 5\/8 tsp/);
    expect(flat).toMatch(/1\.4 g of carbon dioxide, 2 g as written/); // 3.78 × 0.5239
    expect(flat).toMatch(/keeps to 29 % here 42 % less baking soda/);
    expect(flat).not.toMatch(/42 % less, for equal gas/);
  });

  it('stops at powder that does not fizz and says what does its work', () => {
    const { exit, out } = command('leaven', '--what', 'biscuits', '--fizz', 'none');
    expect(exit).toBe(1);
    expect(out()).toMatch(/5\.7 g of soda with 12\.8 g of cream\s+of tartar/); // 25 g × 0.12 / 0.5239
    expect(out()).toMatch(/baking powder\s+leave out\s+dead/);
    expect(out()).not.toMatch(/baking powder\s+25 g/);
  });

  it('takes the date of a tin as a doubt only', () => {
    const { exit, out } = command('leaven', '--what', 'biscuits', '--opened', '12 months');
    expect(exit).toBe(0);
    expect(out()).toMatch(/Doubt: The powder has been open for 12 months/);
  });

  it('speaks as the recipe measures where neither air nor height says: cups, so quarts and °F', () => {
    const { out } = command('leaven', '--what', 'biscuits', '--opened', '30');
    expect(out()).toMatch(/qt in the bowl/);
    expect(out()).toMatch(/air 64 °F/);
    expect(out()).not.toMatch(/\d l |°C/);
  });

  it('says what is wrong with a test that is none', () => {
    const { exit, error } = command('leaven', '--what', 'biscuits', '--fizz', 'loud');
    expect(exit).toBe(3);
    expect(error()).toMatch(/--fizz: found "loud", wanted hard or weak or none/);
  });
});

describe('emberwright rise', () => {
  it('tells the water, the rise with its doubt, and what would move it', () => {
    const { exit, out } = command('rise', '--what', 'rolls', '--air', '45 F');
    expect(exit).toBe(0);
    expect(out()).toMatch(/Water for the dough\s+\d+ °F/);
    expect(out()).toMatch(/First rise\s+.*likely/);
    expect(out()).toMatch(/sooner[\s\S]*later/);
  });

  it('stops at a dough of 2 °C and names the nearest thing that works', () => {
    const { exit, out } = command('rise', '--what', 'rolls', '--air', '2 C', '--dough', '2 C');
    expect(exit).toBe(1);
    expect(out()).toMatch(
      /STOP: At 2 °C this dough stops before it has risen[\s\S]*a box at 30 °C/,
    );
  });

  it('follows the dough from the cold into a warm box', () => {
    const words = ['rise', '--what', 'rolls', '--dough', '8 C', '--air', '5 C'];
    const cold = command(...words).out();
    const boxed = command(...words, '--stands', '2 h at 5 C, then 30 C').out();
    const hours = (text: string) => Number(/First rise\s+(\d+) h/.exec(text)?.[1]);
    expect(hours(boxed)).toBeLessThan(hours(cold));
    expect(boxed).toMatch(/round it 5 °C to 30 °C/);
  });

  it('refuses a bread that does not rise before it is baked, and a stay without its time', () => {
    expect(command('rise', '--what', 'biscuits').exit).toBe(3);
    const { exit, error } = command('rise', '--what', 'rolls', '--stands', '5 C, then 20 C');
    expect(exit).toBe(3);
    expect(error()).toMatch(/--stands: found "5 C"/);
  });
});

describe('a crumb at a height', () => {
  it("is named where it can't get so hot, with the heat that works: 3 K below the boil (crumb-below-boil)", () => {
    const high = command('leaven', '--what', 'round-loaf', '--height', '4500 m');
    // Water boils at 84.95 °C between the rows of 4,000 and 5,000 m (iapws-fluids 86.63 and 83.27).
    expect(high.out()).toMatch(/Water boils at 85 °C here, so take it out at\s+82 °C inside/);
    expect(command('leaven', '--what', 'round-loaf').out()).not.toMatch(/Water boils/);
  });
});

describe('emberwright mix', () => {
  it('weighs the bags, says what is added at camp, how long they keep and how many bakes a tin holds', () => {
    const { exit, out } = command('mix', '--what', 'fire-bread', '--bags', '4');
    expect(exit).toBe(0);
    expect(out()).toMatch(/all-purpose flour\s+400 g\s+1600 g/); // four times the recipe’s own 400 g
    expect(out()).toMatch(/Add at camp: .*Water 312 g \(1 1\/3\s+cups\)/);
    expect(out()).toMatch(/Keeps 1 month in a pack/);
    expect(out()).toMatch(/Flour is raw: no tasting/);
    expect(out()).toMatch(/The bag contains (wheat and gluten|gluten and wheat)/);
    expect(out()).toMatch(/8 bakes/); // 250 ml × 0.9 over 20 g of powder and 5 g of salt, sr28 spoons
  });

  it('offers no tin for a bread that is raised by yeast, and says why', () => {
    const { exit, out } = command('mix', '--what', 'rolls', '--tin', '250 ml');
    expect(exit).toBe(0);
    expect(out()).not.toMatch(/Or a tin without flour|powder|Leavening last/);
    expect(out()).toMatch(/No tin without flour for a yeast bread: .*salt/s);
    expect(out()).toMatch(/Not before the last 7 days, if it is carried warm: yeast/);
    expect(out()).toMatch(/Yeast last/);
  });

  it('says a bag in the grams of its table, with ounces beside them: 480 + 24 + 25 + 8 g are 1 lb 3 oz', () => {
    const { out } = command('mix', '--what', 'biscuits', '--measures', 'us');
    expect(out()).toMatch(/Bags: 1 of 537 g \(1 lb 3 oz\)/); // 18.94 oz
    expect(command('mix', '--what', 'biscuits', '--measures', 'metric').out()).toMatch(
      /Bags: 1 of 537 g\n/,
    );
  });

  it('makes no dry mix of a stew: salt and pepper alone are none', () => {
    expect(command('mix', '--what', 'beef-stew').exit).toBe(3);
  });
});
