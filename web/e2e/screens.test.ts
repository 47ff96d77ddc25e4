// Every screen on a phone and at a desk, on both grounds: nothing wider than the screen, and no
// serious fault that axe (WCAG 2.2 A and AA rules) can find.

import { join } from 'node:path';
import axe from 'axe-core';
import type { Page } from 'playwright-core';
import { expect, it } from 'vitest';
import { describeApp, desk, freshPage, openSheet, phone, settledSheet } from './harness.ts';

type Visit = (page: Page, address: string) => Promise<void>;

const demo =
  (path: string): Visit =>
  async (page, address) => {
    await page.goto(`${address}/camps`);
    const link = page.getByRole('link', { name: /trail crew/i }).first();
    await page.goto(address + (await link.getAttribute('href')) + path);
    await settledSheet(page);
  };

const screens: Readonly<Record<string, Visit>> = {
  'front door': async (page, address) => {
    await page.goto(address);
    await page.getByRole('radio', { name: 'Round loaf' }).waitFor();
  },
  'front door with everything open': async (page, address) => {
    await page.goto(address);
    await page.getByRole('radio', { name: 'A dough of my own' }).check();
    await page.getByRole('radio', { name: 'Eat at …' }).check();
    await page.getByLabel('Height', { exact: true }).selectOption('boil');
    await page.getByLabel('On the table at').fill('soon');
    await page.locator('.reading summary').click();
    await settledSheet(page);
  },
  camps: async (page, address) => {
    await page.goto(`${address}/camps`);
    await page
      .getByRole('link', { name: /trail crew/i })
      .first()
      .waitFor();
  },
  'the dough alone': async (page, address) => {
    await page.goto(`${address}/dough`);
    await page.getByLabel('Which bread').selectOption('biscuits');
  },
  'what fits': async (page, address) => {
    await page.goto(`${address}/dough/fits`);
    await page.getByLabel('What goes in').selectOption('wedges');
    await page.locator('summary', { hasText: 'More' }).click();
    await settledSheet(page);
  },
  'what raises it': async (page, address) => {
    await page.goto(`${address}/dough/leaven`);
    await page.getByLabel('Which bread').selectOption('biscuits');
    await settledSheet(page);
  },
  'how long it rises': async (page, address) => {
    await page.goto(`${address}/dough/rise`);
    await page.getByLabel('Which bread').selectOption('rolls');
    await page.getByRole('button', { name: 'It stands somewhere else' }).click();
    await page.getByRole('button', { name: 'Then another place' }).click();
    await page.getByLabel('The flour').fill('frozen');
    await settledSheet(page);
  },
  'as a dry mix': async (page, address) => {
    await page.goto(`${address}/dough/mix`);
    await page.getByLabel('Which bread').selectOption('biscuits');
    await settledSheet(page);
  },
  'more about the place': async (page, address) => {
    await page.goto(`${address}/fire/coals`);
    await page.locator('summary', { hasText: 'More about the place' }).click();
    await page.getByLabel('Rain in an hour').fill('wet');
    await settledSheet(page);
  },
  'no such screen': async (page, address) => {
    await page.goto(`${address}/nowhere`);
    await page.getByRole('heading', { name: 'Nothing at this address' }).waitFor();
  },
  meal: demo(''),
  'day sheet': demo('/day'),
  provisions: demo('/provisions'),
  shopping: demo('/shopping'),
  labels: demo('/labels'),
  boxes: demo('/boxes'),
  'fuel, water and ice': demo('/fuel-water-ice'),
  'mouths and portions': demo('/mouths'),
  'fire card': demo('/fire-card'),
  'safety log': demo('/safety-log'),
  'allergen cards': demo('/allergen-cards'),
  'dish card': async (page, address) => {
    await demo('')(page, address);
    await openSheet(page, 'Mountain rolls');
    for (const why of await page.locator('.sheet-why > summary').all()) await why.click();
  },
  'changing a camp': async (page, address) => {
    await demo('')(page, address);
    await openSheet(page, 'Mountain rolls');
    await page.evaluate(() => {
      for (const each of document.querySelectorAll('details')) each.open = true;
    });
  },
};

describeApp('every screen', (app) => {
  it('is looked at by a check that finds a fault where there is one', async () => {
    const page = await freshPage(app.browser, desk);
    await page.goto(app.address);
    await page.evaluate(() => {
      document.querySelector('main')!.append(document.createElement('button'));
    });
    expect((await seriousFaults(page)).join()).toMatch(/button-name/);
  });

  it('draws on a phone no word smaller than 11 px', async () => {
    const page = await freshPage(app.browser, phone);
    await page.goto(app.address);
    await page.getByRole('radio', { name: 'Round loaf' }).check();
    await settledSheet(page);
    const words = await page.locator('.sheet svg text').evaluateAll((all) =>
      all
        .map((each) => {
          const svg = (each as SVGTextElement).ownerSVGElement!;
          const scale = svg.getBoundingClientRect().width / svg.viewBox.baseVal.width;
          const size = Number.parseFloat(getComputedStyle(each).fontSize) * scale;
          return { text: each.textContent, size };
        })
        .filter(({ size }) => size > 0),
    );
    expect(words.length).toBeGreaterThan(40);
    expect(words.filter(({ size }) => size < 11)).toEqual([]);
    await page.context().close();
  });

  for (const [name, visit] of Object.entries(screens)) {
    it(`fits a phone and breaks no WCAG rule that axe checks: ${name}`, async () => {
      for (const [options, colorScheme] of [
        [phone, 'light'],
        [phone, 'dark'],
        [desk, 'light'],
        [desk, 'dark'],
      ] as const) {
        const page = await freshPage(app.browser, { ...options, colorScheme });
        await visit(page, app.address);
        const width = await page.evaluate(() => document.documentElement.scrollWidth);
        expect(width).toBeLessThanOrEqual(options.viewport!.width);
        expect(await seriousFaults(page)).toEqual([]);
        await takePicture(page, `${name} ${options.viewport!.width} ${colorScheme}`);
        await page.context().close();
      }
    });
  }
});

/** With EMBERWRIGHT_PICTURES=folder each screen is also kept as a picture, to be looked at. */
async function takePicture(page: Page, name: string): Promise<void> {
  const folder = process.env.EMBERWRIGHT_PICTURES;
  if (folder === undefined) return;
  await page.screenshot({ path: join(folder, `${name.replaceAll(' ', '-')}.png`) });
}

/** Faults that axe calls serious or critical, with the element that has each. */
async function seriousFaults(page: Page): Promise<readonly string[]> {
  await page.evaluate(axe.source);
  const violations = await page.evaluate(async () => {
    const { axe: runner } = globalThis as unknown as { axe: typeof axe };
    return (await runner.run(document)).violations;
  });
  return violations
    .filter(({ impact }) => impact === 'serious' || impact === 'critical')
    .flatMap(({ id, nodes }) =>
      nodes.slice(0, 3).map((node) => `${id}: ${node.html.slice(0, 160)}`),
    );
}
