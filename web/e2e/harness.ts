// Starts the built server on a free port and drives it with the system's Chromium.
// Where Chromium is missing the checks are named NOT RUN; with CI=true that is a failure.

import { type ChildProcess, spawn } from 'node:child_process';
import { existsSync, mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join, resolve } from 'node:path';
import { fileURLToPath } from 'node:url';
import { type Browser, type BrowserContextOptions, chromium, type Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';

const root = dirname(dirname(dirname(fileURLToPath(import.meta.url))));
/** The built product; another folder can be named to try a build that isn't the shipped one. */
const dist = resolve(root, process.env.EMBERWRIGHT_DIST ?? 'dist');

const executablePath = ['chromium', 'chromium-browser', 'google-chrome']
  .map((name) => `/usr/bin/${name}`)
  .find((path) => existsSync(path));

/** A group of browser checks, or one line that says why it was not run. */
export function describeInBrowser(name: string, checks: () => void): void {
  if (executablePath !== undefined) describe(name, checks);
  else if (process.env.CI === 'true') {
    it(`${name}: needs Chromium`, () => {
      expect.fail('Chromium is missing: apt-get install -y chromium');
    });
  } else it.skip(`NOT RUN ${name}: Chromium is missing (apt-get install -y chromium)`, () => {});
}

export const openBrowser = (): Promise<Browser> =>
  chromium.launch({
    executablePath: executablePath!,
    args: [
      '--no-sandbox',
      '--disable-gpu',
      '--disable-quic',
      '--no-first-run',
      '--disable-background-networking',
      '--disable-component-update',
      '--disable-sync',
    ],
  });

export interface AppAt {
  readonly browser: Browser;
  readonly address: string;
  /** A browser of its own at this path of the app. */
  readonly open: (path: string, options: BrowserContextOptions) => Promise<Page>;
}

/** A group of checks on one browser and one served app, both ended behind it. */
export function describeApp(name: string, checks: (app: AppAt) => void): void {
  describeInBrowser(name, () => {
    let browser: Browser;
    let served: Served;
    beforeAll(async () => {
      browser = await openBrowser();
      served = await serve();
    });
    afterAll(async () => {
      await browser?.close();
      await served?.stop();
    });
    checks({
      get browser() {
        return browser;
      },
      get address() {
        return served.address;
      },
      open: async (path, options) => {
        const page = await freshPage(browser, options);
        await page.goto(served.address + path);
        return page;
      },
    });
  });
}

/** A demo made a camp of one's own, so that a reload shows what was kept. */
export async function ownCamp(app: AppAt, demo: RegExp, options = desk): Promise<Page> {
  const page = await app.open('/camps', options);
  await page.getByRole('link', { name: demo }).first().click();
  await settledSheet(page);
  await page.getByRole('button', { name: 'Make it a camp of my own' }).click();
  await page.waitForURL(/\/camp\//);
  await settledSheet(page);
  return page;
}

export interface Served {
  readonly address: string;
  /** Everything that the server said so far. */
  readonly said: () => string;
  readonly stop: () => Promise<void>;
}

/** Refuses to load the native store, as where it could not be built. */
const withoutStore = `data:text/javascript,${encodeURIComponent(
  `import { register } from 'node:module';
   register('data:text/javascript,' + encodeURIComponent(\`
     export async function resolve(name, context, next) {
       if (name === 'better-sqlite3') throw new Error('removed for this test');
       return next(name, context);
     }\`));`,
)}`;

export async function serve(options: { readonly hasStore?: boolean } = {}): Promise<Served> {
  if (!existsSync(join(dist, 'server.mjs'))) throw new Error('not built: run `npm run build`');
  const data = mkdtempSync(join(tmpdir(), 'emberwright-e2e-'));
  const flags = options.hasStore === false ? ['--import', withoutStore] : [];
  const words = [...flags, join(dist, 'server.mjs'), '--port', '0', '--data', data];
  const server = spawn(process.execPath, words, { stdio: ['ignore', 'pipe', 'pipe'] });
  let said = '';
  for (const stream of [server.stdout, server.stderr]) {
    stream.on('data', (part: Buffer) => {
      said += part.toString();
    });
  }
  const address = await addressOf(server, () => said);
  const stop = async () => {
    const gone = new Promise((resolve) => server.once('exit', resolve));
    server.kill('SIGTERM');
    await gone;
    rmSync(data, { recursive: true, force: true });
  };
  return { address, said: () => said, stop };
}

function addressOf(server: ChildProcess, said: () => string): Promise<string> {
  return new Promise((resolve, reject) => {
    server.once('exit', () => reject(new Error(`the server ended: ${said()}`)));
    const look = () => {
      const [, address] = /is at (http:\S+?)\/\s/.exec(said()) ?? [];
      if (address === undefined) setTimeout(look, 50);
      else resolve(address);
    };
    look();
  });
}

export const phone: BrowserContextOptions = {
  viewport: { width: 360, height: 740 },
  locale: 'en-US',
  hasTouch: true,
};
export const desk: BrowserContextOptions = {
  viewport: { width: 1280, height: 900 },
  locale: 'en-US',
};

/** A page in a browser of its own (nothing remembered); fails on any error in its console. */
export async function freshPage(browser: Browser, options: BrowserContextOptions): Promise<Page> {
  const context = await browser.newContext(options);
  const page = await context.newPage();
  page.setDefaultTimeout(30_000);
  page.on('pageerror', (error) => expect.fail(`error on the page: ${error.message}`));
  return page;
}

/** The sheet on screen, once it belongs to what was asked. */
export async function settledSheet(page: Page): Promise<string> {
  await page.locator('.sheet').first().waitFor();
  await page.locator('[aria-busy="false"] .sheet').first().waitFor();
  return (await page.locator('.sheet').first().textContent()) ?? '';
}

/** Goes to another sheet of a camp, by the list at a desk or the box on a phone. */
export async function openSheet(page: Page, name: string): Promise<void> {
  const sheets = page.getByRole('navigation', { name: 'Sheets' });
  const box = sheets.getByLabel('Sheet', { exact: true });
  if (await box.isVisible()) {
    const option = box.locator('option', { hasText: name }).first();
    await box.selectOption((await option.getAttribute('value'))!);
  } else {
    await sheets.getByRole('link', { name }).first().click();
  }
  await page.locator('.sheet-title', { hasText: name }).waitFor();
  await settledSheet(page);
}
