// A formula's figures: as weighed, as cups may make it, and beside published formulas.

import type { Balance, BalancedFigure } from '../../../formula/bench/balance.ts';
import {
  type DoughCharacter,
  type DoughFigure,
  type FigureName,
  figureNames,
} from '../../../formula/bench/character.ts';
import type { FormulaKind } from '../../../formula/bench/published.ts';
import type { Block, FactRow } from '../../document.ts';
import type { Say } from '../../say.ts';
import { decimal, NO_BREAK } from '../../speak-number.ts';
import { paragraph } from '../door.ts';
import { handlingWords } from '../formula-part.ts';
import { sentenceCase } from '../phrases.ts';
import { adviceBlocks } from './advice-part.ts';

export const figureWords: Readonly<Record<FigureName, string>> = {
  hydration: 'Water',
  fat: 'Fat',
  salt: 'Salt',
  sugar: 'Sugar, with that of milk',
  powder: 'Baking powder',
  soda: 'Baking soda',
  yeast: 'Yeast, as active dry',
};

/** What it was held beside, so that nobody takes a sweet dough for a bad lean one. */
export const kindWords: Readonly<Record<FormulaKind, string>> = {
  biscuit: 'biscuits',
  'corn-bread': 'corn breads',
  'soda-bread': 'soda breads',
  'fire-bread': 'fire breads',
  'yeast-bread': 'lean yeast breads',
  'enriched-bread': 'enriched yeast breads',
};

/** Never "right" over a list of what is apart: then only its water is. */
function feelText({ feel, kind, figures }: Balance): string {
  if (kind === undefined || feel === undefined) return '';
  const published = `published ${kindWords[kind]}`;
  if (feel === 'slack') return ` Slack: wetter than any of the ${published}.`;
  if (feel === 'stiff') return ` Stiff: drier than any of the ${published}.`;
  return figures.every(({ verdict }) => verdict === 'inside')
    ? ` As ${published} are.`
    : ` As wet as ${published}; what else is apart stands below.`;
}

/** A percentage of flour, to a tenth. */
export const shareText = (share: number) => `${decimal(100 * share, 1)}${NO_BREAK}%`;

/** Grams as a scale shows them. */
export const gramsText = (mass: number) =>
  `${decimal(mass, Math.abs(mass) < 9.95 ? 1 : 0)}${NO_BREAK}g`;

/** `54 g, 1/4 cup`: one cell, so that a phone shows the whole row. */
export const weighedText = (mass: number, measure: string) =>
  measure === '' || /^[\d.]+ g$/.test(measure) ? gramsText(mass) : `${gramsText(mass)}, ${measure}`;

/** What it is in one sentence: thickness, what cups may make of it, and how it is for its kind. */
export function feelBlock({ handling, mayBe }: DoughCharacter, balance: Balance): Block {
  const other =
    mayBe.length === 0
      ? ''
      : ` Measured by cups it may turn out as ${mayBe.map((each) => handlingWords[each]).join(' or ')}.`;
  return {
    type: 'lead',
    parts: [
      { text: `${sentenceCase(handlingWords[handling])}.`, strong: true },
      { text: `${feelText(balance)}${other}` },
    ],
  };
}

/** One row a figure that is in it, or that its kind has. */
export function figureBlocks(
  character: DoughCharacter,
  balance: Balance,
  say: Say,
): readonly Block[] {
  const shown = figureNames.filter(
    (name) =>
      0 < character.figures[name].share || balance.figures.some(({ figure }) => figure === name),
  );
  const rows = shown.map((name): FactRow => {
    const balanced = balance.figures.find(({ figure }) => figure === name);
    const value = character.figures[name];
    const notes = [cupsText(value), balanced === undefined ? '' : besideText(balanced)];
    const note = notes.filter((each) => each !== '').join('; ');
    return {
      label: figureWords[name],
      value: shareText(value.share),
      ...(note === '' ? {} : { note }),
    };
  });
  return [
    { type: 'heading', text: 'For 100 of flour' },
    { type: 'facts', rows },
    ...adviceBlocks(balance, say),
    ...publishedBlocks(balance),
  ];
}

function cupsText({ share, low, high }: DoughFigure): string {
  if (share === 0 || high - low < 0.0005) return '';
  return `by cups and spoons ${shareText(low)} to ${shareText(high)}`;
}

const VERDICT = {
  inside: 'inside',
  below: 'below',
  above: 'above',
  unsure: 'at the edge',
} as const;

function besideText({ least, most, verdict, published }: BalancedFigure): string {
  const span =
    published.length === 1
      ? `the one published formula has ${shareText(least)}`
      : `published ${shareText(least)} to ${shareText(most)}`;
  return `${span}: ${VERDICT[verdict]}`;
}

/** Every published formula by itself: where they disagree it shows. */
function publishedBlocks({ figures, kind }: Balance): readonly Block[] {
  if (kind === undefined) {
    return [paragraph('No published formula of this kind was read, so nothing is held beside it.')];
  }
  const names = [...new Set(figures.flatMap(({ published }) => published.map(({ name }) => name)))];
  const items = names.map((name) => {
    const spans = figures.flatMap(({ figure, published }) => {
      const span = published.find((each) => each.name === name);
      return span === undefined || span.most === 0
        ? []
        : [`${figureWords[figure].toLowerCase()} ${spanText(span.least, span.most)}`];
    });
    const grade = figures
      .flatMap(({ published }) => published)
      .find((span) => span.name === name)?.grade;
    return `${sentenceCase(name)}${grade === 'D' ? ' (from memory)' : ''}: ${spans.join(', ')}`;
  });
  const question =
    names.length === 1
      ? 'Which published formula?'
      : 'Which published formulas, and where they differ';
  return [{ type: 'why', question, blocks: [{ type: 'list', items, tick: false }] }];
}

const spanText = (least: number, most: number) =>
  shareText(least) === shareText(most)
    ? shareText(least)
    : `${shareText(least)} to ${shareText(most)}`;
