// Fire card, log, allergen cards, wash and ash in the app: what the camp says of its event is on them.

import type { Page } from 'playwright-core';
import { expect, it } from 'vitest';
import { describeApp, desk, openSheet, ownCamp, phone, settledSheet } from './harness.ts';

const SHEETS = ['Fire card', 'Safety log', 'Allergen cards', 'Water and wash', 'Iron and ash'];

describeApp('safety sheets', (app) => {
  const ours = (options = desk) => ownCamp(app, /trail crew/i, options);

  const mouths = async (page: Page) => {
    const group = page.locator('.camp-changes .change-group').filter({
      has: page.locator(':scope > summary', { hasText: 'Mouths' }),
    });
    await group.locator('> summary').click();
    await group.locator('summary', { hasText: 'the event and the wash line' }).click();
    return group;
  };

  it('ask a public event for its hand-wash line, and dose bleach by the label (epa-p100sp1s)', async () => {
    const page = await ours();
    const group = await mouths(page);
    await group.getByLabel('Who is fed').selectOption('public');
    await group.getByLabel('Hand-wash line').selectOption('no');
    await group.getByLabel('Bleach, by its label').selectOption('8.25 %');
    await settledSheet(page);
    await openSheet(page, 'Safety log');
    const log = page.locator('.sheet-safety-log');
    expect(await log.textContent()).toContain('needs a hand-wash line');
    await openSheet(page, 'Water and wash');
    const wash = page.locator('.sheet-water-and-wash');
    expect(await wash.textContent()).toMatch(/30 drops/); // 6 a gallon, five gallons
    await page.reload();
    await settledSheet(page);
    expect(await wash.textContent()).toMatch(/30 drops/);
  });

  it('fit a phone of 360 px, or scroll inside themselves', async () => {
    const page = await ours(phone);
    for (const name of SHEETS) {
      await openSheet(page, name);
      const wide = await page.evaluate(
        () => document.documentElement.scrollWidth - document.documentElement.clientWidth,
      );
      expect(wide, name).toBeLessThanOrEqual(0);
    }
  });
});
