// A day that slipped, in a browser: from the day sheet to the ways on.

import axe from 'axe-core';
import { expect, it } from 'vitest';
import { describeApp, freshPage, phone } from './harness.ts';

describeApp('a slipped day', (app) => {
  it('is reached from the day sheet; guests who are late are told to the whole day', async () => {
    const page = await freshPage(app.browser, phone);
    await page.goto(`${app.address}/demo/pilcrow-creek/day`);
    await page.getByRole('link', { name: 'Something slipped' }).click();
    await page.getByRole('textbox', { name: 'It is' }).fill('9:00');
    await page.locator('.sheet-replan').waitFor();
    await expect.poll(() => page.locator('.sheet-replan').textContent()).toContain('still holds');
    await page.getByLabel('What', { exact: true }).selectOption('guests-late');
    await page.getByRole('textbox', { name: 'By' }).fill('30');
    await page.getByRole('button', { name: 'Add it' }).click();
    await expect.poll(() => page.locator('.sheet-replan').textContent()).toContain('What moves');
    expect(await page.getByRole('list', { name: 'What has happened' }).textContent()).toContain(
      'guests 30 min late',
    );
    await page.evaluate(axe.source);
    const found = await page.evaluate(() =>
      (globalThis as unknown as { axe: typeof axe }).axe.run(document, {
        runOnly: ['wcag2a', 'wcag2aa'],
      }),
    );
    expect(found.violations.map(({ id, nodes }) => [id, nodes[0]?.html])).toEqual([]);
    const wide = await page.evaluate(
      () => document.documentElement.scrollWidth - document.documentElement.clientWidth,
    );
    expect(wide).toBeLessThanOrEqual(0);
    await page.getByRole('button', { name: 'Not so' }).click();
    await expect.poll(() => page.locator('.sheet-replan').textContent()).toContain('still holds');
    await page.context().close();
  });
});
