import { describe, expect, it } from 'vitest';
import { isRefusal } from '../notice/notice.ts';
import { readRecipeText } from './read-recipe.ts';

// The order of the work of a yeast bread (mix, rise, shape, second rise, oven) is common practice, no
// source; the texts are our own.

function read(text: string) {
  const found = readRecipeText(text);
  if (isRefusal(found)) throw new Error(found.code);
  return found;
}
const LOAF = 'Some loaf\n500 g bread flour\n325 g water\n10 g salt\n5 g instant yeast\n\n';
const work = (told: string) =>
  read(LOAF + told).recipe!.steps.map(({ kind, minutes, hands }) => `${kind} ${minutes} ${hands}`);
const kinds = (told: string) => work(told).map((step) => step.split(' ')[0]);
const putIn = (told: string) =>
  read(LOAF + told).notices.find(({ code }) => code === 'MENU_TEXT_STEPS');

describe('a yeast dough whose writer takes something for known', () => {
  it('rises again once it is shaped, and that is a doubt (common practice, no source)', () => {
    const told =
      'Knead 10 minutes, let it double, shape it. Bake at 425 F until the middle is 205 F.';
    expect(work(told).slice(0, 4)).toEqual([
      'mix 10 1',
      'rise 60 0',
      'shape 8 1',
      'second-rise 35 0',
    ]);
    expect(putIn(told)).toMatchObject({ level: 'doubt', values: { steps: /second-rise/ } });
  });

  it.each([
    ['Slash it and put the lid on the oven.', 'Slash'],
    ['Score the loaf in the pot.', 'Score'],
    ['Dock it all over.', 'Dock'],
  ])('is cut once risen, which is work on the dough and no loading: %s', (told, word) => {
    const { steps } = read(
      `${LOAF}Knead. Let rise 1 hour. Shape. Let rise 40 minutes. ${told} Bake 40 minutes at 425 F.`,
    ).recipe!;
    expect(steps.find(({ say }) => say.startsWith(word))?.kind).toBe('shape');
  });

  it.each([
    'Knead, let it double, shape it. Bake at once at 425 F.',
    'Knead, let it double, shape it. It needs no second rise. Bake at 425 F.',
    'Knead. Let rise 1 hour. Shape. Bake 40 minutes at 425 F straight away.',
  ])('is baked at once only where the writer says so: %s', (told) => {
    expect(kinds(told)).not.toContain('second-rise');
  });

  it('stands where it is told to stand: a rest of a quarter of an hour behind shaping is a rise', () => {
    expect(kinds('Knead. Let rise 1 hour. Shape, let rest 20 minutes. Bake 400 F.')).toEqual([
      'mix',
      'rise',
      'shape',
      'second-rise',
      'load',
      'cook',
      'take-out',
    ]);
    const cold = kinds('Knead. Let rise 1 hour. Shape, leave overnight in the fridge. Bake 400 F.');
    expect(cold).not.toContain('second-rise');
  });

  it('is mixed also where nothing is told, behind the yeast that wakes', () => {
    expect(kinds('')[0]).toBe('mix');
    expect(kinds('Dissolve the yeast in the water, let stand 10 minutes. Bake 400 F.')).toEqual([
      'prepare',
      'rest',
      'mix',
      'rise',
      'shape',
      'second-rise',
      'load',
      'cook',
      'take-out',
    ]);
    expect(putIn('')).toMatchObject({ level: 'doubt', values: { steps: /^mix/ } });
  });

  it('keeps the minutes of a writer who only has a word for the rise, beside what is reckoned', () => {
    const { writer } = read(
      `${LOAF}Mix in the evening, let rise overnight. Shape, prove 45 minutes. Bake.`,
    ).recipe!.target;
    expect(writer!.firstRise).toEqual([480, 720]);
    expect(writer!.secondRise).toEqual([45, 45]);
    expect(read(LOAF).recipe!.target.writer).toBeUndefined(); // what we put in is nobody's word
  });

  it('goes into a warm box behind a night in the cold, where the writer says nothing of it', () => {
    const { steps } = read(`${LOAF}Mix in the evening, leave overnight in the cold.`).recipe!;
    expect(steps.find(({ kind }) => kind === 'second-rise')?.keptAt).toBeCloseTo(300.15, 6);
  });
});

describe('several verbs in one sentence', () => {
  it.each([
    ['Shape, prove 45 minutes.', ['shape 8 1', 'second-rise 45 0']],
    ['Shape and prove for 45 minutes.', ['shape 8 1', 'second-rise 45 0']],
    [
      'Knock back, shape, prove 30 min, bake 35 minutes at 400 F.',
      ['shape 8 1', 'second-rise 30 0'],
    ],
  ])('each have their own work, and minutes go to the verb they stand by: %s', (told, expected) => {
    const all = work(`Knead well. Let rise 1 hour. ${told}`);
    const at = all.findIndex((step) => step.startsWith('shape'));
    expect(all.slice(at, at + 2)).toEqual(expected);
  });

  it('are told apart where one of them has a time', () => {
    const quick = 'Bread\n2 cups flour\n3/4 cup milk\n1 tbsp baking powder\n1 tbsp lard\n\n';
    const steps = read(`${quick}Grease the oven, mix for 4 minutes, then pat it out. Bake.`).recipe!
      .steps;
    const told = steps.map(({ kind, minutes }) => `${kind} ${minutes}`);
    expect(told.slice(0, 3)).toEqual(['prepare 8', 'mix 4', 'shape 8']);
  });
});
