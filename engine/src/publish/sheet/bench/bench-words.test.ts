import { describe, expect, it } from 'vitest';
import { balanceOf } from '../../../formula/bench/balance.ts';
import { characterOf } from '../../../formula/bench/character.ts';
import { lineOf } from '../../../formula/bench/line.ts';
import { handlingFor } from '../../../formula/dough.ts';
import { sayFor } from '../../speak.ts';
import { handlingWords } from '../formula-part.ts';
import { sentenceCase } from '../phrases.ts';
import { feelBlock, figureBlocks } from './figures-part.ts';

function wordsOf(amounts: Readonly<Record<string, number>>): string {
  const lines = Object.entries(amounts).map(([key, mass]) => lineOf(key, mass));
  const character = characterOf(lines);
  if ('refused' in character) throw new RangeError(character.code);
  const balance = balanceOf(lines, character, 'yeast-bread');
  return JSON.stringify([feelBlock(character, balance), ...figureBlocks(character, balance, say)]);
}

const plan = { camp: { ovens: [], hands: [] }, menu: { dishes: [] } };
const say = sayFor({ measures: 'us', clock: '24', plan });

describe('the words of the bench', () => {
  it('never call a dough right over a list of what is apart', () => {
    const lean = { 'bread-flour': 500, water: 300, 'active-dry-yeast': 6 };
    const right = wordsOf({ ...lean, salt: 9 });
    expect(right).toContain('As published lean yeast breads are.');
    const apart = wordsOf({ ...lean, salt: 30 });
    expect(apart).not.toMatch(/right for its kind|yeast breads are\./i);
    expect(apart).toContain('Saltier than any of the published lean yeast breads');
  });

  it('hold a sweet braid beside enriched breads and see no slipped spoon (olderServiceCards)', () => {
    const braid = { 'bread-flour': 500, milk: 200, egg: 150, 'butter-unsalted': 75, sugar: 60 };
    const words = wordsOf({ ...braid, salt: 9, 'instant-yeast': 7 });
    expect(words).toContain('enriched yeast breads');
    expect(words).not.toMatch(/fatter than|sweeter than|slipped/i);
  });

  it('name the feel as a dish card does, and 61, 64, 72 and 75 % apart (hydrationClasses, 72 % from memory)', () => {
    const feelOf = (water: number) => {
      const words = wordsOf({ 'bread-flour': 500, water: 5 * water, salt: 9 });
      const handling = handlingWords[handlingFor(water / 100)];
      expect(words).toContain(sentenceCase(handling));
      return handling;
    };
    expect([55, 61, 64, 70, 75].map(feelOf)).toEqual([
      'a stiff dough',
      'a soft, smooth dough',
      'a soft, smooth dough',
      'a soft, tacky dough',
      'a sticky dough',
    ]);
  });
});
