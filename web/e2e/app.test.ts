import { gzipSync } from 'node:zlib';
import type { Page } from 'playwright-core';
import { expect, it } from 'vitest';
import {
  describeApp,
  describeInBrowser,
  desk,
  freshPage,
  openBrowser,
  openSheet,
  phone,
  serve,
  settledSheet,
} from './harness.ts';

/** Of all scripts that the front door loads until its first card, packed as they are sent. */
const MOST_SCRIPT_BYTES = 200 * 1024;

describeApp('the app', (app) => {
  const open = (path: string, options = desk) => app.open(path, options);

  const openDemo = async (name: RegExp, options = desk): Promise<Page> => {
    const page = await open('/camps', options);
    await page.getByRole('link', { name }).first().click();
    await settledSheet(page);
    return page;
  };

  it('goes from the front door to the dish card in three taps on a phone', async () => {
    const page = await open('/', phone);
    let taps = 0;
    const tap = async (name: string | RegExp) => {
      taps += 1;
      await page.getByRole('radio', { name }).tap();
    };
    await tap('Round loaf');
    await tap(/^10\b/);
    await tap('Start now');
    const card = await settledSheet(page);
    expect(taps).toBeLessThanOrEqual(8);
    expect(card).toContain('Round loaf');
    expect(card).toMatch(/above/);
    expect(await page.locator('.sheet-figure strong').first().textContent()).toMatch(/^\d+$/);
    expect(await page.locator('.sheet svg[role=img]').count()).toBeGreaterThan(1);
  });

  it('changes the card when a guess is changed, and shows no briquettes for wood coals', async () => {
    const page = await open('/');
    await page.getByRole('radio', { name: 'Round loaf' }).check();
    const before = await settledSheet(page);
    await page.getByLabel('Air', { exact: true }).selectOption('frost');
    const cold = await settledSheet(page);
    expect(cold).not.toBe(before);
    await page.getByLabel('Fuel', { exact: true }).selectOption('wood-coals');
    const wood = await settledSheet(page);
    expect(wood).toMatch(/shovel/i);
    expect(wood).not.toMatch(/briquette/i);
  });

  it('makes the recipe as written, then as many portions as are tapped for', async () => {
    const page = await open('/', phone);
    await page.getByRole('radio', { name: 'Soda bread' }).tap();
    const before = await settledSheet(page);
    await page.getByText(/in all, as the recipe makes it/).waitFor();
    expect(await page.locator('.amount-now').textContent()).toBe('8 portions');
    await page.getByRole('button', { name: 'One portion fewer' }).tap();
    await page.getByText(/in all; the recipe makes 8/).waitFor();
    expect(await settledSheet(page)).not.toBe(before);
    await page.getByRole('button', { name: 'Back to the recipe' }).tap();
    await expect.poll(() => settledSheet(page)).toBe(before);
  });

  it('says the clock beside the minutes on a dish card and beside each job of the day', async () => {
    const page = await openDemo(/loaf and baked apples/i);
    await openSheet(page, 'Meadow pot loaf');
    const onCard = await page.locator('.sheet-steps .step-when').allTextContents();
    expect(onCard).not.toEqual([]);
    for (const when of onCard) expect(when).toMatch(/\d+:\d\d\s[ap]m$/);
    expect(onCard.join()).toMatch(/\b0\smin \d+:\d\d\s[ap]m/);
    await openSheet(page, 'Day sheet');
    const jobs = await page.locator('.sheet-steps .step-when').allTextContents();
    expect(jobs.length).toBeGreaterThan(5);
    for (const when of jobs) expect(when).toMatch(/\d+:\d\d\s[ap]m$/);
  });

  it('lists the day before its lanes on a phone, and the lanes first at a desk', async () => {
    for (const [options, isListFirst] of [
      [phone, true],
      [desk, false],
    ] as const) {
      const page = await openDemo(/trail crew/i, options);
      await openSheet(page, 'Day sheet');
      const topOf = async (part: string) => (await page.locator(part).first().boundingBox())!.y;
      const lanes = isListFirst ? '.is-narrow' : '.is-lanes';
      expect((await topOf('.sheet-steps')) < (await topOf(lanes))).toBe(isListFirst);
      const label = page.locator(`${lanes} svg text`).first();
      expect((await label.boundingBox())!.height).toBeGreaterThan(10);
    }
  });

  it('takes the weather of the whole time in one block, and moves every hour by as much', async () => {
    const page = await openDemo(/loaf and baked apples/i);
    const before = await settledSheet(page);
    await page.locator('.change-group > summary', { hasText: 'Weather' }).click();
    await page.locator('.by-hour > summary').click();
    const hours = page.locator('.by-hour').getByLabel('Air', { exact: true });
    const airs = () =>
      hours.evaluateAll((boxes) =>
        boxes.map((box) => Number.parseInt((box as HTMLInputElement).value, 10)),
      );
    const [was, plain] = [await airs(), page.getByLabel('Air', { exact: true }).first()];
    const from = Number.parseInt(await plain.inputValue(), 10);
    await plain.fill('');
    await plain.pressSequentially(String(from - 18));
    await expect.poll(() => settledSheet(page)).not.toBe(before);
    const moved = (await airs()).map((air, index) => was[index]! - air);
    for (const by of moved) expect(Math.abs(by - 18)).toBeLessThanOrEqual(1);
    await page.getByLabel('Wind from', { exact: true }).first().fill('north');
    await settledSheet(page);
    expect(await page.getByText('can’t be read yet').count()).toBe(0);
  });

  it('shows an oven of a grown camp as the size it is made in', async () => {
    const page = await open('/');
    await page.getByRole('radio', { name: 'Soda bread' }).check();
    await settledSheet(page);
    await page.getByRole('button', { name: 'Make it a camp of my own' }).click();
    await page.waitForURL(/\/camp\//);
    await settledSheet(page);
    await page.locator('.change-group > summary', { hasText: 'Ovens' }).click();
    const size = page.getByLabel('Size', { exact: true });
    expect(await size.inputValue()).toBe('12 in');
    expect(await size.locator('option').allTextContents()).toEqual(
      [8, 10, 12, 14, 16].map((inches) => `${inches} inch`),
    );
  });

  it('grows into a camp with nothing typed again, which survives a reload', async () => {
    const page = await open('/');
    await page.getByRole('radio', { name: 'Soda bread' }).check();
    await settledSheet(page);
    await page.getByRole('button', { name: 'Make it a camp of my own' }).click();
    await page.waitForURL(/\/camp\//);
    await settledSheet(page);
    expect(await page.getByRole('heading', { level: 1 }).textContent()).toBe('Soda bread');
    await page.locator('summary', { hasText: 'Mouths' }).first().click();
    await page.getByLabel('How many').first().fill('7');
    await settledSheet(page);
    await page.reload();
    const sheet = await settledSheet(page);
    expect(sheet).toMatch(/7 mouths/);
    await page.goto(`${app.address}/camps`);
    await page.getByRole('link', { name: /Soda bread/ }).waitFor();
  });

  it('gives other amounts for other mouths, and keeps demo camps out of the own list', async () => {
    const page = await openDemo(/loaf and baked apples/i);
    await page.getByRole('link', { name: 'Provisions' }).click();
    const before = await settledSheet(page);
    await page.locator('summary', { hasText: 'Mouths' }).click();
    await page.getByLabel('How many').first().fill('9');
    await expect.poll(() => settledSheet(page)).not.toBe(before);
    await page.goto(`${app.address}/camps`);
    await page.getByText('None yet.').waitFor();
    await page
      .getByRole('link', { name: /loaf and baked apples/i })
      .first()
      .click();
    await page.getByRole('button', { name: 'Make it a camp of my own' }).click();
    await page.waitForURL(/\/camp\//);
    await page.goto(`${app.address}/camps`);
    await page.locator('section', { hasText: 'Your own' }).getByRole('link').first().waitFor();
  });

  it('keeps what was typed when it can’t be read, says what it takes, and keeps the sheet', async () => {
    const page = await openDemo(/loaf and baked apples/i);
    const before = await settledSheet(page);
    await page.locator('summary', { hasText: 'Mouths' }).click();
    const box = page.getByLabel('How many').first();
    await box.fill('a few');
    await page
      .getByText(/this takes a whole number/)
      .first()
      .waitFor();
    expect(await box.inputValue()).toBe('a few');
    expect(await box.getAttribute('aria-invalid')).toBe('true');
    expect(await settledSheet(page)).toBe(before);
    await box.fill('6');
    await expect.poll(() => settledSheet(page)).not.toBe(before);
    expect(await box.getAttribute('aria-invalid')).toBe('false');
  });

  it('reads in other measures and on the other clock at one choice, and remembers it', async () => {
    const page = await openDemo(/loaf and baked apples/i);
    await page.locator('.reading summary').click();
    await page.getByRole('radio', { name: 'Grams, °C' }).check();
    await page.getByRole('radio', { name: '18:30' }).check();
    await page.keyboard.press('Escape');
    await page.reload();
    await page.goto(`${app.address}/`);
    await page.getByRole('radio', { name: 'Round loaf' }).check();
    const card = await settledSheet(page);
    expect(card).toMatch(/°C/);
    expect(card).not.toMatch(/°F|\d [ap]m\b/);
  });

  it('opens a saved camp file again, and says what is wrong with a broken one', async () => {
    const page = await openDemo(/loaf and baked apples/i);
    const [saved] = await Promise.all([
      page.waitForEvent('download'),
      page.getByRole('button', { name: 'Save camp file' }).click(),
    ]);
    await page.goto(`${app.address}/camps`);
    const input = page.locator('input[type=file]');
    await input.setInputFiles({
      name: 'broken.json',
      mimeType: 'application/json',
      buffer: Buffer.from('{"emberwright":"camp","version":1'),
    });
    await page.getByText('can’t be opened as it stands').waitFor();
    await input.setInputFiles((await saved.path())!);
    await page.waitForURL(/\/camp\//);
    await settledSheet(page);
  });

  it('keeps to what is pinned on a dish card, judges it, and takes it off again', async () => {
    const page = await openDemo(/trail crew/i);
    await openSheet(page, 'Mountain round loaf');
    const before = await settledSheet(page);
    await page.locator('.pins > summary').click();
    await page.getByRole('textbox', { name: 'Coals above' }).fill('8');
    await page.getByRole('textbox', { name: 'Coals below' }).fill('8');
    await expect.poll(() => settledSheet(page)).not.toBe(before);
    expect(await page.locator('.sheet-figure strong').first().textContent()).toBe('8');
    await page.getByRole('textbox', { name: 'Minutes in the oven' }).fill('25');
    await page.locator('.pins [data-code^="COALS_PIN"]').waitFor();
    await page.locator('.pins [data-code^="BAKE_PIN"]').waitFor();
    expect(await page.locator('.pins > summary').textContent()).toContain('8 above, 8 below');
    await page.getByRole('button', { name: 'Un-pin everything' }).click();
    await expect.poll(() => settledSheet(page)).toBe(before);
    expect(await page.getByRole('textbox', { name: 'Coals above' }).inputValue()).toBe('');
  });

  it('adds a ready dish and takes one out, each with a way back', async () => {
    const page = await openDemo(/loaf and baked apples/i);
    const dishes = page.getByRole('navigation', { name: 'Sheets' });
    await page.locator('summary', { hasText: 'Dishes' }).click();
    await page.getByLabel('Another dish').selectOption({ label: 'Corn bread' });
    await page.getByRole('button', { name: 'Add this dish' }).click();
    await dishes.getByRole('link', { name: /Corn bread/ }).waitFor();
    await page.getByRole('button', { name: /Take out Corn bread/ }).click();
    await page.getByText('Corn bread was taken out.').waitFor();
    await dishes.getByRole('link', { name: /Corn bread/ }).waitFor({ state: 'detached' });
    await page.getByRole('button', { name: 'Undo' }).click();
    await dishes.getByRole('link', { name: /Corn bread/ }).waitFor();
  });

  it('takes a need, and says for whom a dish is not fit', async () => {
    const page = await openDemo(/loaf and baked apples/i);
    await page.locator('summary', { hasText: 'Needs' }).click();
    await page.getByRole('button', { name: 'Add a need' }).click();
    const who = page.getByLabel('Who', { exact: true }).filter({ visible: true }).last();
    await who.fill('the guest from the far valley');
    await expect.poll(() => settledSheet(page)).toContain('the guest from the far valley');
  });

  it('drops neither of two pages that change one camp: the later one goes on as a copy', async () => {
    const context = await app.browser.newContext(desk);
    const [one, other] = [await context.newPage(), await context.newPage()];
    await one.goto(app.address);
    await one.getByRole('radio', { name: 'Soda bread' }).check();
    await settledSheet(one);
    await one.getByRole('button', { name: 'Make it a camp of my own' }).click();
    await one.waitForURL(/\/camp\//);
    await settledSheet(one);
    await other.goto(one.url());
    await settledSheet(other);
    for (const [page, mouths] of [
      [one, '11'],
      [other, '12'],
    ] as const) {
      await page.bringToFront();
      await page.locator('summary', { hasText: 'Mouths' }).click();
      await page.getByLabel('How many').first().fill(mouths);
      await expect.poll(() => settledSheet(page)).toContain(`${mouths} mouths`);
    }
    await other.getByText('Both are kept').waitFor();
    expect(other.url()).not.toBe(one.url());
    for (const [page, mouths] of [
      [one, '11'],
      [other, '12'],
    ] as const) {
      await page.reload();
      expect(await settledSheet(page)).toContain(`${mouths} mouths`);
    }
    await context.close();
  });

  it('bakes a recipe of one’s own camp at the front door, with nothing typed', async () => {
    const page = await openDemo(/trail crew/i);
    await page.getByRole('button', { name: 'Make it a camp of my own' }).click();
    await page.waitForURL(/\/camp\//);
    await page.goto(app.address);
    await page.getByRole('radio', { name: 'A dough of my own' }).check();
    const recipe = 'Mountain roll and loaf dough';
    await page.getByLabel('Or a recipe from a camp').selectOption({ label: recipe });
    await page.locator('.sheet-title', { hasText: recipe }).waitFor();
    await page.getByLabel('Oven at the start').selectOption('cold');
    await settledSheet(page);
    await page.getByRole('button', { name: 'Make it a camp of my own' }).click();
    await page.waitForURL(/\/camp\//);
    await settledSheet(page);
    expect(await page.getByRole('heading', { level: 1 }).textContent()).toBe(recipe);
  });

  it('opens the front door without the parts that read camp files', async () => {
    const page = await freshPage(app.browser, phone);
    const scripts: string[] = [];
    const sizes: Promise<number>[] = [];
    page.context().on('response', (response) => {
      // What the service worker lays by for later isn't waited for.
      const isLaidBy = response.request().serviceWorker() !== null;
      if (isLaidBy || !response.url().endsWith('.js')) return;
      scripts.push(new URL(response.url()).pathname);
      sizes.push(response.body().then((body) => gzipSync(body).length));
    });
    await page.goto(app.address);
    await page.getByRole('radio', { name: 'Round loaf' }).check();
    await settledSheet(page);
    expect(scripts).not.toEqual([]);
    expect(scripts.filter((path) => /camp/i.test(path))).toEqual([]);
    expect(scripts.filter((path) => /worker/.test(path))).toHaveLength(1);
    const all = (await Promise.all(sizes)).reduce((sum, size) => sum + size, 0);
    expect(all).toBeLessThanOrEqual(MOST_SCRIPT_BYTES);
  });

  it('says so where a part of the app does not come over the network, and draws the rest', async () => {
    const page = await freshPage(app.browser, desk);
    await page.route(/\/assets\/CampsPage/, (route) => route.abort());
    await page.goto(`${app.address}/camps`);
    await page
      .getByRole('alert')
      .getByText(/did not come over the network/)
      .waitFor();
    await page.unroute(/\/assets\/CampsPage/);
    await page.getByRole('link', { name: 'Tonight' }).first().click();
    await page.getByRole('radio', { name: 'Round loaf' }).waitFor();
    await page.getByRole('link', { name: 'Camps' }).click();
    await page
      .getByRole('link', { name: /trail crew/i })
      .first()
      .waitFor();
  });

  it('sends a camp nowhere until the cook asks, and then only to its own server', async () => {
    const page = await freshPage(app.browser, desk);
    const sent: string[] = [];
    page.on('request', (request) => {
      const isOwn = request.url().startsWith(app.address);
      if (!isOwn && !request.url().startsWith('blob:')) sent.push(`foreign ${request.url()}`);
      if (request.method() !== 'GET') sent.push(`${request.method()} ${request.url()}`);
    });
    await page.goto(app.address);
    await page.getByRole('radio', { name: 'Corn bread' }).check();
    await settledSheet(page);
    await page.getByRole('button', { name: 'Make it a camp of my own' }).click();
    await page.waitForURL(/\/camp\//);
    await settledSheet(page);
    expect(sent).toEqual([]);
    await page.getByRole('button', { name: 'Keep a copy on this computer' }).click();
    await page.getByText('Kept on this computer, version 1.').waitFor();
    expect(sent).toHaveLength(1);
    await page.goto(`${app.address}/camps`);
    await page.getByRole('button', { name: /Corn bread.*version 1/s }).waitFor();
  });

  it('opens any screen without a server once it has been there', async () => {
    const own = await serve();
    const page = await freshPage(app.browser, phone);
    await page.goto(own.address);
    await page.evaluate(() => navigator.serviceWorker.ready.then(() => undefined));
    await page.getByRole('radio', { name: 'Round loaf' }).check();
    await settledSheet(page);
    await own.stop();
    await page.goto(`${own.address}/camps`);
    await page
      .getByRole('link', { name: /loaf and baked apples/i })
      .first()
      .click();
    await page.reload();
    await settledSheet(page);
    await page.goto(own.address);
    expect(await settledSheet(page)).toContain('Round loaf');
  });

  it('is worked by keys alone', async () => {
    const page = await open('/');
    await page.getByRole('radio', { name: 'Baking-powder biscuits' }).waitFor();
    await page.keyboard.press('Tab');
    expect(await page.evaluate(() => document.activeElement?.textContent)).toMatch(/Skip/);
    await page.getByRole('radio', { name: 'Baking-powder biscuits' }).focus();
    await page.keyboard.press('Space');
    await page.keyboard.press('ArrowDown');
    expect(await settledSheet(page)).toContain('Flat fire bread');
  });
});

describeInBrowser('the app without the native store', () => {
  it('plans a bread, and says that camps stay in the browser', async () => {
    const browser = await openBrowser();
    const served = await serve({ hasStore: false });
    try {
      await expect.poll(served.said).toMatch(/Camps stay in the browser/);
      const page = await freshPage(browser, phone);
      await page.goto(served.address);
      await page.getByRole('radio', { name: 'Round loaf' }).check();
      expect(await settledSheet(page)).toContain('Round loaf');
      await page.goto(`${served.address}/camps`);
      await page.getByText(/No store on this computer/).waitFor();
    } finally {
      await browser.close();
      await served.stop();
    }
  });
});
