// The dough screens: one bread, no camp and no oven, by finger, keyboard and in both measures.

import type { Page } from 'playwright-core';
import { expect, it } from 'vitest';
import { describeApp, desk, phone, settledSheet } from './harness.ts';

describeApp('the dough alone', (app) => {
  const open = (path: string, options = phone) => app.open(path, options);
  const isSideways = (page: Page) =>
    page.evaluate(() => document.documentElement.scrollWidth > window.innerWidth + 1);

  it('is one tap from the front door, and each question one more', async () => {
    const page = await open('/');
    await page.getByRole('radio', { name: 'Round loaf' }).waitFor();
    await page.getByRole('link', { name: 'The dough alone' }).tap();
    await page.getByLabel('Which bread').selectOption('rolls');
    await page.getByRole('link', { name: /What raises it/ }).tap();
    await page.locator('.sheet-title', { hasText: 'What raises' }).waitFor();
    await page.getByRole('link', { name: 'How long does it rise?' }).tap();
    await page.locator('.sheet-title', { hasText: 'The rise of' }).waitFor();
    await page.getByRole('link', { name: 'As a dry mix' }).tap();
    await page.locator('.sheet-title', { hasText: 'as a dry mix' }).waitFor();
    await page.getByRole('link', { name: 'What fits?' }).tap();
    await page.locator('.sheet-title', { hasText: 'Rolls in this oven' }).waitFor();
    expect(await isSideways(page)).toBe(false);
  });

  it('cuts the powder for a height typed in feet, unless the recipe was written for it', async () => {
    const page = await open('/dough/leaven');
    await page.getByLabel('Which bread').selectOption('biscuits');
    await page.getByLabel('Height above the sea').fill('6500');
    await expect.poll(() => settledSheet(page)).toContain('19.7 g');
    await page.getByLabel('The recipe was written for a height of').fill('6500 ft');
    await expect.poll(() => settledSheet(page)).not.toContain('19.7 g');
    await page.getByLabel('Height above the sea').fill('high up');
    await page.getByText('Not in the plan yet').waitFor();
    await page.reload();
    await page.getByLabel('Which bread').waitFor();
    expect(await page.getByLabel('Height above the sea').inputValue()).toBe('6500 ft');
  });

  it('follows a dough from a cold morning into a warm box, by keyboard', async () => {
    const page = await open('/dough/rise', desk);
    await page.getByLabel('Which bread').selectOption('rolls');
    const first = await settledSheet(page);
    await page.getByRole('button', { name: 'It stands somewhere else' }).focus();
    await page.keyboard.press('Enter');
    await expect.poll(() => settledSheet(page)).not.toBe(first);
    const cold = await settledSheet(page);
    await page.getByRole('button', { name: 'Then another place' }).focus();
    await page.keyboard.press('Enter');
    await expect.poll(() => settledSheet(page)).not.toBe(cold);
    expect(await page.getByLabel('Warmth of place 2').inputValue()).toBe('82 °F');
  });

  it('weighs bags and a tin, and says what can not be mixed dry', async () => {
    const page = await open('/dough/mix');
    await page.getByLabel('Which bread').selectOption('biscuits');
    await page.getByRole('button', { name: 'Bags: more' }).tap();
    await expect.poll(() => settledSheet(page)).toContain('Bags: 2 of');
    await page.getByLabel('A tin without flour holds').selectOption('2');
    await expect.poll(() => settledSheet(page)).toMatch(/It holds/);
    await page.locator('.reading summary').tap();
    await page.getByRole('radio', { name: 'Grams, °C' }).tap();
    await expect.poll(() => settledSheet(page)).toMatch(/ml/);
  });

  it('asks for the bread before it answers, and takes the one that was pasted', async () => {
    const page = await open('/dough/leaven');
    await page.getByText('Choose the bread').waitFor();
    expect(await page.locator('.sheet').count()).toBe(0);
    await page.goto(`${app.address}/paste`);
    await page
      .getByLabel('The recipe', { exact: true })
      .fill('Ridge bread\n3 cups flour\n1 tbsp baking powder\n1 tsp salt\n1 1/4 cups milk');
    await page.getByRole('button', { name: 'The dough alone' }).tap();
    await page.getByRole('link', { name: /What raises it/ }).tap();
    await expect.poll(() => settledSheet(page)).toContain('ridge bread');
    await page.getByLabel('Which bread').selectOption('biscuits');
    await expect.poll(() => settledSheet(page)).not.toContain('ridge bread');
    await page.getByLabel('Which bread').selectOption({ label: 'Ridge bread, as pasted' });
    await expect.poll(() => settledSheet(page)).toContain('ridge bread');
  });

  it('says what fits: into an oven, so much of it, over two, or which oven', async () => {
    const page = await open('/dough/fits');
    await page.getByLabel('What goes in').selectOption('rolls');
    await expect.poll(() => settledSheet(page)).toContain('they grow together');
    await page
      .getByRole('img', { name: /rolls side by side/ })
      .first()
      .waitFor();
    await page.getByLabel('What goes in').selectOption('round');
    await page.getByRole('radio', { name: 'How so much lies in it' }).check();
    await page.getByLabel('How much there is').fill('570 g');
    await page.getByLabel('How thick, raw').fill('1/2 in');
    await page
      .getByRole('img', { name: /floor free around it|wall to wall/ })
      .first()
      .waitFor();
    expect(await settledSheet(page)).toMatch(/Risen/);
    await page.getByRole('button', { name: 'Share it with another oven' }).tap();
    await expect.poll(() => settledSheet(page)).toContain('Nothing is left over');
    await page.getByRole('radio', { name: 'Which oven for so much' }).check();
    await expect.poll(() => settledSheet(page)).toMatch(/which oven\?/);
    expect(await isSideways(page)).toBe(false);
  });

  it('says that there is no such question, and which there are', async () => {
    const page = await open('/dough/bubbles');
    await page.getByRole('heading', { name: 'No such question about a dough' }).waitFor();
    await page.getByRole('link', { name: 'What fits?' }).tap();
    await page.getByLabel('What goes in').waitFor();
    const current = page.getByRole('navigation', { name: 'Screens' }).locator('[aria-current]');
    expect(await current.textContent()).toBe('Dough');
    await page.goto(`${app.address}/fire/bubbles`);
    await page.getByRole('heading', { name: 'Nothing at this address' }).waitFor();
  });
});
