// The doors to the fire: no set-up, an answer under each question, by finger, keyboard and reader.

import type { Page } from 'playwright-core';
import { expect, it } from 'vitest';
import { describeApp, desk, phone, settledSheet } from './harness.ts';

describeApp('at the fire', (app) => {
  const open = (path: string, options = phone) => app.open(path, options);
  const isSideways = (page: Page) =>
    page.evaluate(() => document.documentElement.scrollWidth > window.innerWidth + 1);

  it('answers "what now?" two taps from the front door, and follows each further tap', async () => {
    const page = await open('/');
    await page.getByRole('link', { name: 'Fire', exact: true }).tap();
    const first = await settledSheet(page);
    expect(first).toContain('Bottom dark');
    await page.getByRole('radio', { name: 'One side hot' }).tap();
    await page.locator('.sheet-title', { hasText: 'One side hot' }).waitFor();
    expect(await settledSheet(page)).toMatch(/half turn|another cause|Look for/);
    expect(await isSideways(page)).toBe(false);
  });

  it('judges a layout, takes typed and stepped counts, and keeps them through a reload and another door', async () => {
    const page = await open('/fire/layout');
    expect(await settledSheet(page)).toContain('17 above and 8 below');
    await page.getByRole('button', { name: 'On the lid: more' }).tap();
    await page.locator('.sheet-title', { hasText: '18 above and 8 below' }).waitFor();
    await page.getByLabel('Below', { exact: true }).and(page.locator('input')).fill('10');
    await page.locator('.sheet-title', { hasText: '18 above and 10 below' }).waitFor();
    await page.getByLabel('The food').selectOption('20');
    expect(await settledSheet(page)).toMatch(/food in/);
    await page.reload();
    await page.locator('.sheet-title', { hasText: '18 above and 10 below' }).waitFor();
    await page.getByRole('link', { name: 'What now?' }).tap();
    expect(await settledSheet(page)).toContain('With 18 above and 10 below');
  });

  it('takes rain and a riser under a fold, typed in either measure, and keeps them', async () => {
    const page = await open('/fire/layout');
    const dry = await settledSheet(page);
    await page.locator('summary', { hasText: 'More about the place' }).tap();
    const rain = page.getByLabel('Rain in an hour');
    await rain.fill('plenty');
    await page.getByText('this takes 0 in to').waitFor();
    expect(await settledSheet(page)).toBe(dry);
    await rain.fill('5 mm');
    await page.getByLabel('The ground is').selectOption('wet');
    await page.getByLabel('Riser under the legs').fill('2');
    await page.locator('summary', { hasText: '3 said' }).waitFor();
    await expect.poll(() => settledSheet(page)).not.toBe(dry);
    await page.reload();
    await page.locator('summary', { hasText: '3 said' }).tap();
    expect(await page.getByLabel('Rain in an hour').inputValue()).toBe('0.2 in');
    expect(await page.getByLabel('Riser under the legs').inputValue()).toBe('2 in');
    expect(await isSideways(page)).toBe(false);
  });

  it('speaks shovels for wood and both measures', async () => {
    const page = await open('/fire/left');
    await page.getByLabel('Fuel', { exact: true }).selectOption('wood-coals');
    const wood = await settledSheet(page);
    expect(wood).toMatch(/shovel/);
    expect(wood).not.toMatch(/briquette/i);
    expect(wood).toMatch(/°F/);
    await page.locator('.reading summary').tap();
    await page.getByRole('radio', { name: 'Grams, °C' }).tap();
    await expect.poll(() => settledSheet(page)).toMatch(/°C/);
  });

  it('draws two stacked ovens with a count for each layer', async () => {
    const page = await open('/fire/stack', desk);
    await settledSheet(page);
    const counts = await page.locator('.sheet-figure strong').allTextContents();
    expect(counts).toHaveLength(3);
    for (const count of counts) expect(count).toMatch(/^\d+$/);
    const alt = await page.locator('.sheet svg[role=img]').first().getAttribute('aria-label');
    for (const count of counts) expect(alt).toContain(count);
  });

  it('goes by keyboard alone, and every target is a finger wide', async () => {
    const page = await open('/fire/coals');
    await settledSheet(page);
    const small = await page
      .locator('main :is(a, button, select, input:not([type=radio]), .choice-option label):visible')
      .evaluateAll((all) =>
        all
          .filter(
            (each) => each.closest('.sheet') === null && each.closest('.count-step input') === null,
          )
          .map((each) => ({ box: each.getBoundingClientRect(), text: each.textContent ?? '' }))
          .filter(({ box }) => box.height < 43.5)
          .map(({ box, text }) => `${text.slice(0, 30)} ${box.height}`),
      );
    expect(small).toEqual([]);
    const door = page.getByRole('link', { name: 'What is left' });
    await door.focus();
    await page.keyboard.press('Enter');
    await page.waitForURL(/\/fire\/left/);
    expect(await settledSheet(page)).toContain('22');
    const count = page.getByRole('textbox', { name: 'Still glowing' });
    await count.focus();
    await page.keyboard.press('ControlOrMeta+a');
    await page.keyboard.type('30');
    await expect.poll(() => settledSheet(page)).toContain('30');
  });

  it.each(['what-now', 'layout', 'left', 'coals', 'stack'])(
    'shows %s without running off a phone or a desk',
    async (door) => {
      for (const options of [phone, { ...desk, viewport: { width: 1440, height: 900 } }]) {
        const page = await open(`/fire/${door}`, options);
        await settledSheet(page);
        expect(await isSideways(page)).toBe(false);
        const shots = process.env.EMBERWRIGHT_SHOTS;
        const width = options.viewport?.width;
        if (shots !== undefined)
          await page.screenshot({ path: `${shots}/${door}-${width}.png`, fullPage: true });
        await page.context().close();
      }
    },
  );
});
