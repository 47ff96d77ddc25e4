// The app's own print, as a browser puts it on paper: sheets that must fit a board or a pocket stay
// within their pages, on Letter and on A4.

import { expect, it } from 'vitest';
import { describeApp, desk, freshPage, openSheet, settledSheet } from './harness.ts';

/** Most pages of one sheet of the larger demo camp. Ours; a bread with two checks runs to four. */
const MOST_PAGES = [
  ['Day sheet', 7],
  ['Fire chief', 1],
  ['Wall list', 3],
  ['Hands side by side', 2],
  ['Pocket cards', 2],
  ['Provisions', 3],
  ['Mountain round loaf', 3],
  ['Blue-cord cornbread', 4],
  ['Saddle beef and root stew', 2],
  ['Peach cobbler', 2],
] as const;

const PAPERS = ['Letter', 'A4'] as const;

describeApp('on paper', (app) => {
  it('keeps each sheet of a camp within its pages', async () => {
    const page = await freshPage(app.browser, desk);
    await page.goto(`${app.address}/camps`);
    await page
      .getByRole('link', { name: /trail crew/i })
      .first()
      .click();
    await settledSheet(page);
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
});

/** The browser writes one plain object for each page of a PDF. */
const pagesIn = (pdf: Buffer): number =>
  pdf.toString('latin1').match(/\/Type\s*\/Page\b(?!s)/g)?.length ?? 0;
