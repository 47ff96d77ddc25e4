// One bread as dry mixes, without a camp: bags to weigh at home, or a tin without flour.

import type { WeighedIngredient } from '../../formula/index.ts';
import type { DryMix } from '../../provisions/index.ts';
import type { Block, SheetDocument } from '../document.ts';
import type { Say } from '../say.ts';
import { thousands } from '../speak-number.ts';
import { homeSteps, keepsPhrase, lineWord, scoopPhrase, tinDose } from './bag-labels.ts';
import { allergenWord } from './free-from.ts';
import { listed } from './phrases.ts';

export interface MixAsked extends DryMix {
  readonly name: string;
  readonly bags: number;
}

export function mixSheet(asked: MixAsked, say: Say): SheetDocument {
  return {
    kind: 'mix',
    title: `${asked.name} as a dry mix`,
    blocks: [...bagBlocks(asked, say), ...tinBlocks(asked, say)],
  };
}

function bagBlocks({ bags, contents, add, keeps, scoop }: MixAsked, say: Say): readonly Block[] {
  const each = contents.reduce((sum, line) => sum + line.grams, 0);
  const names = contents.map(({ ingredient }) => ingredient.name);
  const allergens = [...new Set(contents.flatMap(({ ingredient }) => ingredient.allergens))];
  return [
    { type: 'heading', text: `Bags: ${bags} of ${scaleMass(each, say)}` },
    {
      type: 'table',
      caption: 'Weigh at home',
      head: ['', 'a bag', bags === 1 ? '' : `${bags} bags`],
      rows: contents.map(({ ingredient, grams }) => [
        ingredient.name,
        `${oneTenth(grams)} g`,
        bags === 1 ? '' : `${oneTenth(grams * bags)} g`,
      ]),
      numeric: [false, true, true],
    },
    paragraph(`Add at camp: ${add.map(lineWord).join(', ')}.`),
    ...(scoop === undefined ? [] : [paragraph(scoopPhrase(scoop))]),
    paragraph(keepsPhrase(keeps).trim()),
    paragraph(
      allergens.length === 0
        ? 'No allergen known in the bag.'
        : `The bag contains ${listed(allergens.map(allergenWord))}: write it on the label.`,
    ),
    {
      type: 'list',
      tick: true,
      items: homeSteps({ bags, dishes: 1, mass: each * bags, contents: names, keeps }, say),
    },
  ];
}

function tinBlocks({ tin, contents, add }: MixAsked, say: Say): readonly Block[] {
  if (tin === undefined) return [paragraph(noTin([...contents, ...add]))];
  const rows = tin.contents.map(({ ingredient, grams }) => [
    ingredient.name,
    `${oneTenth(grams)} g`,
    `${oneTenth(grams * tin.bakes)} g`,
  ]);
  return [
    { type: 'heading', text: 'Or a tin without flour' },
    {
      type: 'facts',
      rows: [
        { label: 'For one bake', value: tinDose(tin) },
        {
          label: 'It holds',
          value: `${tin.bakes} bakes, ${scaleMass(tin.mass, say)} in ${say.volume(tin.tin)}`,
          note: 'shake it before each use',
        },
        { label: 'Add each time', value: tin.add.map(lineWord).join(', ') },
        {
          label: 'Keeps',
          value: keepsPhrase(tin.keeps)
            .trim()
            .replace(/^Keeps /, ''),
        },
      ],
    },
    {
      type: 'table',
      caption: 'Fill it at home',
      head: ['', 'one bake', 'the tin'],
      rows,
      numeric: [false, true, true],
    },
  ];
}

/** Why there is none: whoever asked for one is not left without an answer. */
const noTin = (lines: readonly WeighedIngredient[]) =>
  lines.some(({ ingredient }) => ingredient.part === 'yeast')
    ? 'No tin without flour for a yeast bread: yeast that lies in salt loses its strength, and it is weighed to the hours of its rise, not by the spoon. Carry yeast in its packet.'
    : 'No tin without flour: nothing in this bread is powder or soda that a spoon could measure.';

/** In grams, as the table has it; and as the reader says it, where that is something else. */
function scaleMass(mass: number, say: Say): string {
  const onScale = `${thousands(Math.round(mass))} g`;
  return say.measures === 'metric' ? onScale : `${onScale} (${say.mass(mass)})`;
}

const paragraph = (text: string): Block => ({ type: 'paragraph', parts: [{ text }] });
const oneTenth = (grams: number) =>
  grams < 9.95 ? Math.round(grams * 10) / 10 : Math.round(grams);
