// The app's own print, as a browser puts it on paper: sheets that must fit a board or a pocket stay
// within their pages, on Letter and on A4.

import type { Page } from 'playwright-core';
import { expect, it } from 'vitest';
import { describeApp, desk, freshPage, openSheet, settledSheet } from './harness.ts';

/** Most pages of each sheet of the larger demo camp. Ours; a bread with two checks runs to four. */
const MOST_PAGES = [
  ['Day sheet', 7],
  ['Fire chief', 1],
  ['Wall list', 3],
  ['Hands side by side', 2],
  ['Pocket cards', 3],
  ['Provisions', 3],
  ['Mouths and portions', 1],
  ['Shopping', 3],
  ['Bag labels', 3],
  ['Boxes', 3],
  ['Fuel, water and ice', 2],
  ['Fire card', 1],
  ['Safety log', 1],
  ['Allergen cards', 2],
  ['Water and wash', 1],
  ['Iron and ash', 1],
  ['Mountain round loaf', 3],
  ['Blue-cord cornbread', 4],
  ['Saddle beef and root stew', 2],
  ['Pinto and squash pot', 2],
  ['Mountain rolls', 3],
  ['Vinegar slaw', 1],
  ['Peach cobbler', 2],
] as const;

/** The meal at a glance, before all others. */
const MEAL_PAGES = 1;

const PAPERS = ['Letter', 'A4'] as const;
/** Less 9 mm on either side, as in print.css. */
const PRINTED_WIDTH_PIXELS = {
  Letter: Math.floor((8.5 - 18 / 25.4) * 96),
  A4: Math.floor(((210 - 18) / 25.4) * 96),
};

describeApp('on paper', (app) => {
  const openTrailCrew = async () => {
    const page = await freshPage(app.browser, desk);
    await page.goto(`${app.address}/camps`);
    const link = page.getByRole('link', { name: /trail crew/i });
    await link.first().click();
    await settledSheet(page);
    return page;
  };

  it('keeps each sheet of a camp within its pages', async () => {
    const page = await openTrailCrew();
    const tooLong: string[] = [];
    for (const [name, most] of MOST_PAGES) {
      await openSheet(page, name);
      for (const format of PAPERS) {
        const pages = pagesIn(await page.pdf({ format, preferCSSPageSize: false }));
        if (pages === 0 || most < pages) tooLong.push(`${name}, ${format}: ${pages} of ${most}`);
      }
    }
    expect(tooLong).toEqual([]);
  });

  it('prints every sheet of a camp as one, the boards too, in no more pages than they have singly', async () => {
    const page = await openTrailCrew();
    await page.getByRole('link', { name: 'All, to print' }).click();
    await page.getByRole('button', { name: 'Print all sheets' }).waitFor();
    await settledSheet(page);
    const titles = await page.locator('.sheet-stack .sheet-title').allTextContents();
    const named = MOST_PAGES.map(([name]) => name);
    const missing = named.filter((name) => !titles.some((title) => title.includes(name)));
    expect(missing).toEqual([]);
    const most = MOST_PAGES.reduce((sum, [, pages]) => sum + pages, MEAL_PAGES);
    for (const format of PAPERS) {
      const pages = pagesIn(await page.pdf({ format, preferCSSPageSize: false }));
      expect(pages, format).toBeGreaterThan(named.length);
      expect(pages, format).toBeLessThanOrEqual(most);
    }
  });

  it('sticks ten labels on a page of 2 x 4 inches, none cut off, none across an edge', async () => {
    const page = await openTrailCrew();
    await openOnPaper(page, 'Labels to stick on');
    const labels = await page.locator('.sheet-card').evaluateAll((cards) =>
      cards.map((card) => {
        const { width, height } = card.getBoundingClientRect();
        return { width, height, isCut: card.clientHeight + 1 < card.scrollHeight };
      }),
    );
    expect(labels.length).toBeGreaterThan(4);
    const isA4 = Math.abs((labels[0]?.height ?? 0) - (67.7 / 25.4) * 96) < 2;
    for (const { width, height, isCut } of labels) {
      expect(isCut).toBe(false);
      expect(width / 96).toBeCloseTo(isA4 ? 99.1 / 25.4 : 4, 1);
      expect(height / 96).toBeCloseTo(isA4 ? 67.7 / 25.4 : 2, 1);
    }
    const pages = pagesIn(await page.pdf({ preferCSSPageSize: true }));
    expect(pages).toBe(Math.ceil(labels.length / (isA4 ? 8 : 10)));
  });

  it('cuts no word off a pocket card as wide as on its paper, carbon monoxide first', async () => {
    const page = await openTrailCrew();
    await openOnPaper(page, 'Pocket cards');
    for (const [paper, width] of Object.entries(PRINTED_WIDTH_PIXELS)) {
      await page.setViewportSize({ width, height: 1000 });
      const cards = await page.locator('.sheet-card').evaluateAll((all) =>
        all.map((card) => {
          const { top, height } = card.getBoundingClientRect();
          const ends = [...card.querySelectorAll('*')].map(
            (each) => each.getBoundingClientRect().bottom,
          );
          const care = card.querySelector('.sheet-text');
          return {
            name: `${card.querySelector('h3')?.textContent}`,
            heightMillimetres: (height / 96) * 25.4,
            endMillimetres: ((Math.max(...ends) - top) / 96) * 25.4,
            care: care?.textContent ?? '',
            isCareFirst: care !== null && care.getBoundingClientRect().top - top < height / 4,
          };
        }),
      );
      expect(cards.length, paper).toBeGreaterThan(4);
      for (const { name, heightMillimetres, endMillimetres, care, isCareFirst } of cards) {
        expect(care, name).toContain('carbon monoxide');
        expect(isCareFirst, name).toBe(true);
        expect(heightMillimetres, `${name}, ${paper}`).toBeLessThan(132);
        expect(endMillimetres, `${name}, ${paper}`).toBeLessThan(130);
      }
    }
  });

  it('lays no text of a dish card over another', async () => {
    const page = await openTrailCrew();
    await openOnPaper(page, 'Mountain round loaf');
    const boxes = await page
      .locator('.sheet-laid > :is(.sheet-text, .sheet-placement)')
      .evaluateAll((texts) => texts.map((text) => text.getBoundingClientRect().toJSON()));
    expect(boxes.length).toBeGreaterThan(1);
    boxes.sort((one, other) => one.top - other.top);
    for (const [index, { top }] of boxes.slice(1).entries())
      expect(top).toBeGreaterThanOrEqual(boxes[index].bottom - 1);
  });
});

/** Sheets are chosen on the screen: paper has no choices. */
async function openOnPaper(page: Page, name: string): Promise<void> {
  await page.emulateMedia({ media: 'screen' });
  await openSheet(page, name);
  await page.emulateMedia({ media: 'print' });
}

/** The browser writes one plain object for each page of a PDF. */
const pagesIn = (pdf: Buffer): number =>
  pdf.toString('latin1').match(/\/Type\s*\/Page\b(?!s)/g)?.length ?? 0;
