// What may be left out: each in a fold of its form, kept as typed, and told at its place when wrong.

import type { Locator, Page } from 'playwright-core';
import { expect, it } from 'vitest';
import { describeApp, desk, ownCamp, phone, settledSheet } from './harness.ts';

describeApp('what may be left out', (app) => {
  const open = (path: string, options = desk) => app.open(path, options);

  const ours = (options = desk) => ownCamp(app, /loaf and baked apples/i, options);

  const groupOf = async (page: Page, title: string): Promise<Locator> => {
    const group = page.locator('.camp-changes .change-group').filter({
      has: page.locator(':scope > summary', { hasText: title }),
    });
    const changes = page.locator('.camp-changes > details');
    if ((await changes.getAttribute('open')) === null) await page.locator('.changes-head').click();
    await group.first().locator('> summary').click();
    return group.first();
  };

  const more = async (group: Locator, at = 0): Promise<Locator> => {
    const fold = group.locator('details.more').nth(at);
    await fold.locator('> summary').click();
    return fold;
  };

  const settled = async (page: Page) => {
    const text = await settledSheet(page);
    expect(await page.getByText('can’t be read yet').count()).toBe(0);
    return text;
  };

  it('says wet ground, rain, sun and a riser, plans with them, and keeps them through a reload', async () => {
    const page = await ours();
    const before = await settled(page);
    const place = await more(await groupOf(page, 'Place and name'));
    await place.getByLabel('The ground is').selectOption('wet');
    const weather = await more(await groupOf(page, 'Weather'));
    await weather.getByLabel('Rain in an hour').fill('0.1');
    await weather.getByLabel('Sun on the ovens').fill('30');
    const ovens = await more(await groupOf(page, 'Ovens'));
    await ovens.getByLabel('Riser under it').fill('2 1/2');
    await ovens.getByLabel('The lid weighs').fill('8');
    await ovens.getByLabel('Across the lid').fill('13');
    expect(await settled(page)).not.toBe(before);
    await page.reload();
    await settled(page);
    const again = await groupOf(page, 'Ovens');
    expect(await again.locator('details.more > summary').first().textContent()).toMatch(/3 said/);
    const fold = await more(again);
    expect(await fold.getByLabel('Riser under it').inputValue()).toBe('2 1/2 in');
    expect(await fold.getByLabel('The lid weighs').inputValue()).toBe('8 lb');
    await page.locator('.reading summary').click();
    await page.getByRole('radio', { name: 'Grams, °C' }).check();
    await page.reload();
    await settled(page);
    const metric = await groupOf(page, 'Ovens');
    const metricFold = await more(metric);
    expect(await metricFold.getByLabel('The lid weighs').inputValue()).toBe('3.6 kg');
    expect(await metricFold.getByLabel('Across the lid').inputValue()).toBe('33 cm');
    await metricFold.getByLabel('Riser under it').fill('');
    await settled(page);
    expect(await metric.locator('details.more > summary').first().textContent()).toMatch(/2 said/);
  });

  it('says what is wrong at the field, and keeps what was typed', async () => {
    const page = await ours();
    const ovens = await more(await groupOf(page, 'Ovens'));
    const riser = ovens.getByLabel('Riser under it');
    await riser.fill('5 feet');
    const trouble = ovens
      .locator('.field', { hasText: 'Riser under it' })
      .locator('.field-trouble');
    await trouble.waitFor();
    expect(await trouble.textContent()).toMatch(/this takes/);
    expect(await riser.getAttribute('aria-invalid')).toBe('true');
    expect(await riser.inputValue()).toBe('5 feet');
  });

  it('lays a dish on paper or into a tin of three measures, by keyboard alone', async () => {
    const page = await ours();
    const before = await settled(page);
    const dishes = await groupOf(page, 'Dishes');
    const summary = dishes.locator('details.more > summary').first();
    expect(await summary.textContent()).toMatch(/^More of /);
    await summary.focus();
    await page.keyboard.press('Enter');
    const fold = dishes.locator('details.more').first();
    const isThere = () =>
      fold.getByLabel('It rests on').evaluate((box) => box === document.activeElement);
    // Who takes it and what is held back come first.
    for (let tabs = 0; tabs < 6 && !(await isThere()); tabs += 1) await page.keyboard.press('Tab');
    expect(await isThere()).toBe(true);
    await fold.getByLabel('It rests on').selectOption('tin');
    await fold.getByLabel('Tin, length inside').fill('8 1/2');
    await fold.locator('.field-trouble').first().waitFor();
    await fold.getByLabel('Tin, width inside').fill('4 1/2');
    await fold.getByLabel('Tin, height').fill('2 3/4');
    await expect.poll(() => fold.locator('.field-trouble').count()).toBe(0);
    await settled(page);
    await fold.getByLabel('Tin, its shape').selectOption('round');
    await settled(page);
    for (const side of ['length inside', 'width inside', 'height'])
      await fold.getByLabel(`Tin, ${side}`).fill('');
    await fold.getByLabel('It rests on').selectOption('');
    await expect.poll(() => settled(page)).toBe(before);
  });

  it('takes the height that a recipe was written for', async () => {
    const page = await ours();
    const recipes = await groupOf(page, 'Recipes');
    await recipes.locator('.change-group > summary').first().click();
    const fold = await more(recipes);
    await fold.getByLabel('Written for a height of').fill('5000');
    await settled(page);
    expect(await fold.getByLabel('Written for a height of').inputValue()).toBe('5000');
  });

  it('takes a food by its label, says what is doubtful of it, and what can not be', async () => {
    const page = await ours();
    const foods = await groupOf(page, 'Own foods');
    await foods.getByRole('button', { name: 'Add a food of your own' }).click();
    await foods.getByLabel(/^Its name/).fill('Mill mix');
    const fill = async (label: string, text: string) => {
      const box = foods.getByLabel(label, { exact: true });
      await box.fill('');
      await box.pressSequentially(text);
    };
    // A plain flour of 364 kcal, 1.0, 76.3, 2.7 and 10.3 g in 100 g: sr28 NDB 20081.
    await fill('Energy, kcal', '364');
    await fill('Fat, g', '0.98');
    await fill('Carbohydrate, g', '76.3');
    await fill('Fibre, g', '2.7');
    await fill('Protein, g', '10.3');
    await settled(page);
    const words = foods.locator('.food-words');
    await expect.poll(() => words.textContent()).toMatch(/nothing is said about allergens/);
    const fold = await more(foods);
    await fold.getByLabel('The label says: contains').fill('wheat, tree nuts');
    await fold.getByLabel('A cup of it weighs').fill('125');
    await settled(page);
    await expect.poll(() => words.textContent()).not.toMatch(/nothing is said about allergens/);
    await fold.getByLabel('The label says: contains').fill('wheat, whaet');
    await fold.locator('.field-trouble').first().waitFor();
    await fold.getByLabel('The label says: contains').fill('wheat');
    await fill('Energy, kcal', '90');
    await expect.poll(() => words.textContent()).toMatch(/90 kcal/);
    await fill('Fat, g', '180');
    await foods.getByText(/Look at the label again/).waitFor();
    await fill('Fat, g', '0.98');
    await fill('Energy, kcal', '364');
    await settled(page);
    const camp = page.url();
    await page.goto(`${app.address}/paste`);
    await page.getByLabel('The recipe', { exact: true }).fill('2 cups mill mix\n1 cup milk\nBake.');
    // Two cups of 125 g each, as was typed above: 8.82 oz, to the quarter.
    await page.locator('.paste-line', { hasText: /Mill mix, 8\s3\/4\soz/ }).waitFor();
    await page.getByLabel('Put it into a camp').selectOption({ index: 1 });
    await page.waitForURL(camp);
    await settled(page);
    await groupOf(page, 'Own foods');
    expect(await foods.locator('.change-item').count()).toBe(1);
    await foods.getByRole('button', { name: /^Take out/ }).click();
    await settled(page);
    expect(await foods.locator('.change-item').count()).toBe(0);
  });

  it('counts coals of two ages together, and takes an oven that is hot already', async () => {
    const page = await open('/fire/layout', phone);
    await settledSheet(page);
    await page.getByLabel('The coals were lit').selectOption('50');
    const old = await settledSheet(page);
    await page.locator('details.more > summary', { hasText: 'another age' }).tap();
    await page.getByRole('button', { name: 'Add coals of another age' }).tap();
    await page.locator('.sheet-title', { hasText: '21 above and 10 below' }).waitFor();
    expect(await settledSheet(page)).not.toBe(old);
    expect(await page.getByLabel('Set 2 was lit').inputValue()).toBe('5');
    await page.getByRole('button', { name: 'On the lid, set 2: more' }).tap();
    await page.locator('.sheet-title', { hasText: '22 above and 10 below' }).waitFor();
    const cold = await settledSheet(page);
    const iron = page.getByLabel('The oven itself is at');
    await iron.fill('warm');
    await page.getByText(/this takes -40 °F to/).waitFor();
    await iron.fill('330');
    await expect.poll(() => settledSheet(page)).not.toBe(cold);
    await page.reload();
    await page.locator('.sheet-title', { hasText: '22 above and 10 below' }).waitFor();
    await page.locator('details.more > summary', { hasText: 'another age' }).tap();
    expect(await page.getByLabel('The oven itself is at').inputValue()).toBe('330 °F');
    await page.getByRole('button', { name: 'Take out set 2' }).tap();
    await page.locator('.sheet-title', { hasText: '17 above and 8 below' }).waitFor();
  });

  it('reads a pasted recipe line by line and brings it to tonight’s card', async () => {
    const page = await open('/paste', phone);
    await page
      .getByLabel('The recipe', { exact: true })
      .fill(
        'Ridge biscuits\n2 cups flour\n1 tbsp baking powder\n1/2 tsp salt\n1 dollop moonshine\n' +
          '1 cup milk\nMix. Cut rounds. Bake 15 min at 425 F. Makes 12 biscuits.',
      );
    await page.locator('.paste-line').nth(6).waitFor();
    expect(await page.locator('.paste-line.is-understood').count()).toBe(6);
    expect(await page.locator('.paste-line.is-open').allTextContents()).toEqual([
      expect.stringContaining('moonshine'),
    ]);
    expect(await page.locator('.paste-line').nth(1).textContent()).toContain('all-purpose flour');
    await page.getByRole('button', { name: 'Cook it tonight' }).tap();
    await page.waitForURL(`${app.address}/`);
    await expect.poll(() => settledSheet(page)).toContain('Ridge biscuits');
  });

  it('fits a phone, with every target a finger wide', async () => {
    const shots = process.env.EMBERWRIGHT_SHOTS;
    const shoot = async (page: Page, name: string) => {
      expect(
        await page.evaluate(() => document.documentElement.scrollWidth > window.innerWidth + 1),
      ).toBe(false);
      const small = await page
        .locator('details.more :is(summary, button, select, input):visible')
        .evaluateAll((all) =>
          all
            .filter((each) => each.closest('.count-step input') === null)
            .map((each) => ({
              box: each.getBoundingClientRect(),
              text: each.id || each.textContent,
            }))
            .filter(({ box }) => box.height < 43.5 || box.width < 43.5)
            .map(({ box, text }) => `${text} ${box.width} × ${box.height}`),
        );
      expect(small).toEqual([]);
      if (shots !== undefined)
        await page.screenshot({ path: `${shots}/${name}-360.png`, fullPage: true });
    };
    const camp = await ours(phone);
    for (const title of ['Dishes', 'Weather', 'Ovens', 'Own foods', 'Place and name']) {
      const group = await groupOf(camp, title);
      if (title === 'Own foods')
        await group.getByRole('button', { name: 'Add a food of your own' }).tap();
      const fold = await more(group);
      if (title === 'Dishes') await fold.getByLabel('It rests on').selectOption('tin');
      await settledSheet(camp);
      await shoot(camp, title.replaceAll(' ', '-').toLowerCase());
      await group.locator('> summary').tap();
    }
    const fire = await open('/fire/layout', phone);
    await settledSheet(fire);
    await fire.locator('details.more > summary', { hasText: 'another age' }).tap();
    await fire.getByRole('button', { name: 'Add coals of another age' }).tap();
    await settledSheet(fire);
    await shoot(fire, 'fire');
  });
});
