// The wash command beside published figures: boil by height, drops, doses by the label.

import { describe, expect, it } from 'vitest';
import { EXIT } from './exit.ts';
import { heard } from './heard.ts';

const told = (words: string) =>
  heard(words.match(/"[^"]*"|\S+/g)!.map((w) => w.replaceAll('"', '')));

describe('emberwright wash', () => {
  it('boils 3 min above 5,000 ft, 1 below, and 3 where nobody says how high (epa-p100sp1s)', () => {
    expect(told('wash --height "6500 ft"').out).toContain('3 min rolling boil');
    expect(told('wash --height "1000 ft"').out).toContain('1 min rolling boil');
    expect(told('wash --height "boils at 198 F"').out).toContain('3 min rolling boil');
    expect(told('wash').out).toContain('3 min rolling boil (height not said)');
  });

  it('gives 30 drops of 8.25 % for 5 gal, 40 of 6 %, twice that cloudy (epa-p100sp1s)', () => {
    expect(told('wash --bleach 8.25').out).toContain('30 drops of 8.25 % bleach in 5 gal');
    expect(told('wash --bleach "6 %"').out).toContain('40 drops of 6 %');
    expect(told('wash --bleach "6 %" --cloudy').out).toContain('80 drops');
  });

  it('gives 1 1/4 tbsp of 5.25 % for 5 gal at 50 ppm, 18 ml in metric (bleach-bucket: 1.22 tbsp)', () => {
    const words = 'wash --bleach "5.25 %" --water "5 gal" --ppm 50';
    expect(told(words).out).toContain('1 1/4 tbsp of 5.25 %');
    expect(told(`${words} --measures metric`).out).toContain('18 ml of 5.25 %');
  });

  it('chooses no dose without a label, and shows what each label would take', () => {
    const { out } = told('wash');
    expect(out).toContain('Read the per cent');
    expect(out).toMatch(/8\.25 %\s+30 drops/);
    expect(out).toMatch(/5\.25 %\s+1 1\/2 tbsp/); // 3 gal at 100 ppm: 7.21 ml a gallon (kdhe-bleach)
  });

  it('names what is wrong: no such label, no water, no such strength', () => {
    for (const [words, wanted] of [
      ['wash --bleach "60 %"', 'per cent of sodium hypochlorite'],
      ['wash --bleach strong', '--bleach'],
      ['wash --water "0 l"', 'more than none'],
      ['wash --water "-3 gal"', '--water'],
      ['wash --ppm 1', '25 to 5000'],
      ['wash --height high', '--height'],
    ] as const) {
      const found = told(words);
      expect(found.exit, words).toBe(EXIT.wrongUse);
      expect(found.error, words).toContain(wanted);
    }
  });
});
