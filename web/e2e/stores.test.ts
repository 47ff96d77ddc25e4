// Buying, packing and carrying in the app: typed once, kept, and on its sheets.

import type { Locator, Page } from 'playwright-core';
import { expect, it } from 'vitest';
import { describeApp, desk, openSheet, ownCamp, phone, settledSheet } from './harness.ts';

describeApp('stores', (app) => {
  const ours = (options = desk) => ownCamp(app, /trail crew/i, options);

  const stores = async (page: Page): Promise<Locator> => {
    const group = page.locator('.camp-changes .change-group').filter({
      has: page.locator(':scope > summary', { hasText: 'Stores' }),
    });
    await group.locator('> summary').click();
    return group;
  };

  it('buys a food in packs with its price, takes the larder off, and keeps it through a reload', async () => {
    const page = await ours();
    const group = await stores(page);
    await group.getByRole('button', { name: 'Add a food' }).click();
    await group.getByRole('button', { name: 'Add a pack' }).click();
    await group.getByLabel('Pack 1').fill('5 lb');
    await group.getByLabel('Its price').fill('4.20');
    await group.getByLabel('In the larder').fill('1 lb');
    await settledSheet(page);
    await openSheet(page, 'Shopping');
    const row = page.locator('.sheet-shopping tr', { hasText: /^bread flour/ }).first();
    expect(await row.textContent()).toMatch(/1 of 5\slb/);
    expect(await page.locator('.sheet-shopping').textContent()).toMatch(/4\.20/);
    await page.reload();
    await settledSheet(page);
    expect(await page.locator('.sheet-shopping').textContent()).toMatch(/4\.20/);
  });

  it('tells a pack of nothing at its place, and names what the mule can not carry', async () => {
    const page = await ours();
    const group = await stores(page);
    await group.getByRole('button', { name: 'Add a food' }).click();
    await group.getByRole('button', { name: 'Add a pack' }).click();
    await group.getByLabel('Pack 1').fill('0 lb');
    const trouble = group.locator('.field-trouble', { hasText: 'a weight between' });
    await trouble.waitFor();
    await group.getByLabel('Pack 1').fill('5 lb');
    await group.getByRole('button', { name: 'Add a carrier' }).click();
    await group.getByLabel('Carrier').selectOption('mule');
    await settledSheet(page);
    await openSheet(page, 'Boxes');
    expect(await page.locator('.sheet-boxes').textContent()).toMatch(/Too heavy by/);
  });

  it('counts a group that comes late and the part who take a dish, on the sheet of mouths', async () => {
    const page = await ours();
    const group = (title: string) =>
      page.locator('.camp-changes .change-group').filter({
        has: page.locator(':scope > summary', { hasText: title }),
      });
    await group('Mouths').locator('> summary').click();
    await group('Mouths').getByLabel('Comes late by').first().fill('45 min');
    await group('Dishes').locator('> summary').click();
    const slaw = group('Dishes').locator('li', { hasText: 'Vinegar slaw' });
    await slaw.locator('details.more > summary').click();
    await slaw.getByLabel('Part of the mouths who take it').fill('50');
    await settledSheet(page);
    await openSheet(page, 'Mouths and portions');
    const told = await page.locator('.sheet-mouths').textContent();
    expect(told).toMatch(/Of these late/);
    const row = page.locator('.sheet-mouths tr', { hasText: 'Vinegar slaw' }).first();
    expect(await row.locator('td').nth(1).textContent()).toBe('12');
  });

  it('keeps every new sheet within a phone', async () => {
    const page = await app.open('/camps', phone);
    await page
      .getByRole('link', { name: /trail crew/i })
      .first()
      .click();
    await settledSheet(page);
    for (const name of [
      'Shopping',
      'Bag labels',
      'Labels to stick on',
      'Boxes',
      'Mouths and portions',
      'Fuel, water and ice',
    ]) {
      await page.locator('.sheet-pick').selectOption({ label: name });
      await page.locator('.sheet-title', { hasText: name }).first().waitFor();
      const wide = await page.evaluate(() => document.documentElement.scrollWidth);
      expect(wide, name).toBeLessThanOrEqual(360);
    }
  });
});
