// The formula bench in a browser: an edit, a percent, a swap, a target, kept in the camp.

import { join } from 'node:path';
import axe from 'axe-core';
import type { Browser, Page } from 'playwright-core';
import { expect, it } from 'vitest';
import { describeApp, desk, freshPage, phone } from './harness.ts';

const wide = { ...desk, viewport: { width: 1440, height: 1000 } };

describeApp('the formula bench', (app) => {
  it('is reached from a camp of one’s own, and an edit there shows at once and is kept', async () => {
    const page = await ownCamp(app.browser, app.address);
    await openBench(page);
    const water = page.getByRole('textbox', { name: /water/i }).first();
    const before = Number(await water.inputValue());
    await water.fill(String(before + 50));
    await settled(page);
    const sheet = page.locator('.bench-sheets .sheet-bench');
    expect(await sheet.textContent()).toContain('As it was');
    await page.getByRole('radio', { name: 'percent' }).check();
    const percent = page.getByRole('textbox', { name: /water/i }).first();
    await percent.fill('60');
    await settled(page);
    await page.getByRole('radio', { name: 'weight' }).check();
    const grams = await page.getByRole('textbox', { name: /water/i }).first().inputValue();
    await page.reload();
    await settled(page);
    expect(await page.getByRole('textbox', { name: /water/i }).first().inputValue()).toBe(grams);
    await page.context().close();
  });

  it('shows a swap with its allergen first, takes it, and can take it back', async () => {
    const page = await ownCamp(app.browser, app.address);
    await openBench(page);
    const names = () => page.locator('.bench-list > li').allTextContents();
    const first = await names();
    await page
      .getByLabel(/^Swap (lard|shortening|butter|.*oil).* for/)
      .first()
      .selectOption({ index: 1 });
    await page.getByRole('button', { name: 'Take these amounts' }).waitFor();
    expect(await page.locator('.bench-proposal').first().textContent()).toContain('was');
    await page.getByRole('button', { name: 'Take these amounts' }).click();
    await settled(page);
    await expect.poll(names).not.toEqual(first);
    await page.getByRole('button', { name: 'Undo' }).click();
    await settled(page);
    await expect.poll(names).toEqual(first);
    await page.context().close();
  });

  it('solves a target and names the two wishes that fight', async () => {
    const page = await ownCamp(app.browser, app.address);
    await openBench(page);
    const wish = (name: string) =>
      page.locator('.bench-wishes').getByRole('textbox', { name, exact: true });
    await wish('Water').fill('62');
    await wish('Whole dough').fill('540');
    await page.getByRole('button', { name: 'Take these amounts' }).waitFor();
    expect(await page.getByRole('region', { name: 'Targets' }).textContent()).toMatch(/62\s%/);
    await wish('Whole dough').fill('');
    await page.getByLabel('Fills an oven').selectOption({ index: 1 });
    await wish('How thick, raw').fill('1/2 in');
    await expect
      .poll(() => page.getByRole('region', { name: 'Targets' }).textContent())
      .toContain('as you said');
    await wish('Water').fill('300');
    await expect
      .poll(() => page.getByRole('region', { name: 'Targets' }).textContent())
      .toContain('is no dough');
    await page.context().close();
  });

  for (const [name, options] of [
    ['phone', phone],
    ['desk', wide],
  ] as const) {
    it(`fits a ${name}, breaks no WCAG rule that axe checks, and works by keyboard`, async () => {
      const page = await ownCamp(app.browser, app.address, options);
      await openBench(page);
      await page
        .getByLabel(/^Swap /)
        .first()
        .selectOption({ index: 2 });
      await page.getByRole('button', { name: 'Leave it as it was' }).waitFor();
      await settled(page);
      const width = await page.evaluate(() => document.documentElement.scrollWidth);
      expect(width).toBeLessThanOrEqual(options.viewport!.width);
      expect(await seriousFaults(page)).toEqual([]);
      await takePicture(page, `bench ${options.viewport!.width}`);
      await page.getByRole('button', { name: 'Leave it as it was' }).focus();
      await page.keyboard.press('Enter');
      await page.getByRole('button', { name: 'Leave it as it was' }).waitFor({ state: 'detached' });
      await page.context().close();
    });
  }
});

/** A demo made one's own, so that edits are kept. */
async function ownCamp(browser: Browser, address: string, options = phone): Promise<Page> {
  const page = await freshPage(browser, options);
  await page.goto(`${address}/camps`);
  const link = page.getByRole('link', { name: /trail crew/i }).first();
  await page.goto(address + (await link.getAttribute('href')));
  await page.getByRole('button', { name: 'Make it a camp of my own' }).click();
  await page.waitForURL(/\/camp\//);
  await page.locator('.camp-actions').waitFor({ state: 'detached' });
  return page;
}

async function openBench(page: Page): Promise<void> {
  await page.locator('[aria-busy="false"] .sheet').first().waitFor();
  await page.evaluate(() => {
    for (const each of document.querySelectorAll('details')) each.open = true;
  });
  await page.getByRole('link', { name: 'As a formula' }).first().click();
  await page.waitForURL(/\/bench\//);
  await settled(page);
}

const settled = (page: Page) =>
  page.locator('.bench-sheets[aria-busy="false"] .sheet-bench').first().waitFor();

async function seriousFaults(page: Page): Promise<readonly string[]> {
  await page.evaluate(axe.source);
  const faults = await page.evaluate(async () => {
    const found = await (window as unknown as { axe: typeof axe }).axe.run(document, {
      runOnly: ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa'],
    });
    return found.violations
      .filter(({ impact }) => impact === 'serious' || impact === 'critical')
      .map(({ id, nodes }) => `${id}: ${nodes[0]?.html ?? ''}`);
  });
  return faults;
}

async function takePicture(page: Page, name: string): Promise<void> {
  const folder = process.env.EMBERWRIGHT_PICTURES;
  if (folder === undefined) return;
  await page.screenshot({ path: join(folder, `${name.replaceAll(' ', '-')}.png`), fullPage: true });
}
