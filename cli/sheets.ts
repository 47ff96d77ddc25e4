// A folder of pages to print: one for every sheet, one book of all, an index that leads to them.

import { createRequire } from 'node:module';
import { dirname, join } from 'node:path';
import {
  allergenCards,
  bagLabels,
  boxesSheet,
  daySheet,
  dishCard,
  fireAndCareSheet,
  fireCard,
  fireChiefSheet,
  fuelWaterIceSheet,
  handColumns,
  handSheet,
  ironAndAshSheet,
  labelGrid,
  type MealPlan,
  mealSummary,
  mouthsSheet,
  pocketCards,
  printBook,
  provisionsSheet,
  renderHtml,
  type Say,
  type SheetDocument,
  safetyLogSheet,
  sheetHtml,
  shoppingSheet,
  wallList,
  waterAndWashSheet,
} from '#engine';
import type { Shell } from './shell.ts';

const LABELS = 'labels.html';

interface NamedSheet {
  readonly file: string;
  readonly document: SheetDocument;
}

/** Writes everything and says which files. */
export function writeSheets(
  folder: string,
  plan: MealPlan,
  say: Say,
  shell: Shell,
): readonly string[] {
  const fontFaces = writeFonts(folder, shell);
  const sheets = allSheets(plan, say);
  const summary = mealSummary(plan, say);
  for (const { file, document } of sheets) {
    shell.write(join(folder, file), renderHtml(document, { fontFaces }));
  }
  // Labels go on paper of their own.
  const bound = sheets.filter(({ file }) => file !== LABELS);
  const documents = [summary, ...bound.map(({ document }) => document)];
  shell.write(join(folder, 'book.html'), printBook(plan.camp.title, documents, { fontFaces }));
  shell.write(join(folder, 'index.html'), indexPage(summary, sheets, fontFaces));
  return ['index.html', 'book.html', ...sheets.map(({ file }) => file)];
}

function allSheets(plan: MealPlan, say: Say): readonly NamedSheet[] {
  return [
    { file: 'day-sheet.html', document: daySheet(plan, say) },
    ...plan.menu.dishes.map(({ id }) => ({
      file: `dish-${fileName(id)}.html`,
      document: dishCard(plan, id, say),
    })),
    ...plan.camp.hands.map(({ id }) => ({
      file: `hand-${fileName(id)}.html`,
      document: handSheet(plan, id, say),
    })),
    { file: 'wall-list.html', document: wallList(plan, say) },
    { file: 'hand-columns.html', document: handColumns(plan, say) },
    { file: 'pocket-cards.html', document: pocketCards(plan, say) },
    { file: 'fire-chief.html', document: fireChiefSheet(plan, say) },
    { file: 'fire-and-care.html', document: fireAndCareSheet(plan, say) },
    { file: 'fire-card.html', document: fireCard(plan, say) },
    { file: 'safety-log.html', document: safetyLogSheet(plan, say) },
    { file: 'allergen-cards.html', document: allergenCards(plan, say) },
    { file: 'water-and-wash.html', document: waterAndWashSheet(plan, say) },
    { file: 'iron-and-ash.html', document: ironAndAshSheet(plan, say) },
    { file: 'provisions.html', document: provisionsSheet(plan, say) },
    { file: 'mouths.html', document: mouthsSheet(plan, say) },
    { file: 'shopping.html', document: shoppingSheet(plan, say) },
    { file: 'bag-labels.html', document: bagLabels(plan, say) },
    { file: LABELS, document: labelGrid(plan, say) },
    { file: 'boxes.html', document: boxesSheet(plan, say) },
    { file: 'fuel-water-ice.html', document: fuelWaterIceSheet(plan, say) },
  ];
}

/** An id can hold anything; a file name can't. */
const fileName = (id: string) => id.toLowerCase().replaceAll(/[^a-z0-9]+/g, '-');

function indexPage(
  summary: SheetDocument,
  sheets: readonly NamedSheet[],
  fontFaces: string,
): string {
  const links = [
    { file: 'book.html', title: 'All sheets in one, to print' },
    ...sheets.map(({ file, document }) => ({ file, title: document.title })),
  ].map(({ file, title }) => `<li><a href="${file}">${escaped(title)}</a></li>`);
  const nav = `<nav class="sheet index"><h2>Sheets</h2><ul>${links.join('')}</ul></nav>`;
  const page = renderHtml(summary, { fontFaces });
  return page.replace(sheetHtml(summary), () => `${sheetHtml(summary)}\n${nav}`);
}

const escaped = (text: string) =>
  text.replaceAll('&', '&amp;').replaceAll('<', '&lt;').replaceAll('>', '&gt;');

const FONTS = [
  {
    family: 'Bitter Variable',
    weights: '100 900',
    package: '@fontsource-variable/bitter',
    file: 'bitter-latin-wght-normal.woff2',
  },
  {
    family: 'Source Sans 3 Variable',
    weights: '200 900',
    package: '@fontsource-variable/source-sans-3',
    file: 'source-sans-3-latin-wght-normal.woff2',
  },
] as const;

/** Type beside the pages; where it is not installed the pages fall back to what the machine has. */
function writeFonts(folder: string, shell: Shell): string {
  const require = createRequire(import.meta.url);
  return FONTS.map(({ family, weights, package: name, file }) => {
    try {
      const from = join(dirname(require.resolve(`${name}/package.json`)), 'files', file);
      shell.write(join(folder, 'type', file), shell.readBytes(from));
    } catch {
      return ''; // no font, no rule: the fallback in the style sheet stands
    }
    return `@font-face { font-family: '${family}'; font-weight: ${weights}; font-display: swap; src: url('type/${file}') format('woff2'); }\n`;
  }).join('');
}
