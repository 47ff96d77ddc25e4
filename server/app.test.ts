import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { demoCamps } from '#formats';
import { type AppOptions, makeApp } from './app.ts';
import { type CampCheck, MOST_BYTES } from './camps.ts';
import { checkCamp as checkCampFile } from './check-camp.ts';
import { type LoadSqlite, openStore } from './store/open-store.ts';

let folder: string;
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'emberwright-server-'));
  mkdirSync(join(folder, 'web/assets'), { recursive: true });
  writeFileSync(join(folder, 'web/index.html'), '<!doctype html><title>app</title>');
  writeFileSync(join(folder, 'web/assets/app-1a2b.js'), 'export {};');
});
afterEach(() => rmSync(folder, { recursive: true, force: true }));

/** A stand-in for the reader of camp files, which has tests of its own. */
function checkCamp(file: string): CampCheck {
  try {
    const camp = JSON.parse(file) as { id: string; title: string; date: string };
    if (typeof camp.id === 'string') return { ok: true, ...camp };
  } catch {
    // falls through to the same answer as any other file that is no camp
  }
  const trouble = { code: 'FILE_SHAPE', path: 'id', found: 'nothing', wanted: 'a camp' };
  return { ok: false, troubles: [trouble] };
}

async function appWith(options: Partial<AppOptions> & { load?: LoadSqlite } = {}) {
  const state = await openStore(join(folder, 'data'), options.load);
  const app = makeApp({
    version: '0.1.0',
    webFolder: join(folder, 'web'),
    isOnNetwork: false,
    now: () => new Date('2026-05-01T12:00:00Z'),
    checkCamp,
    state,
    ...options,
  });
  return { app, state };
}

const home = 'http://localhost:4600';
const own = { origin: home, host: 'localhost:4600', 'content-type': 'application/json' };
const campFile = (title: string) => JSON.stringify({ id: 'supper', title, date: '2026-05-02' });
const put = (title = 'Supper', headers: Record<string, string> = own) =>
  new Request(`${home}/api/camps/supper`, { method: 'PUT', headers, body: campFile(title) });

describe('serving the app', () => {
  it('answers every screen with the app and every asset with its own type', async () => {
    const { app } = await appWith();
    const screen = await app.request(`${home}/camp/supper`);
    expect(screen.status).toBe(200);
    expect(screen.headers.get('content-type')).toContain('text/html');
    expect(screen.headers.get('cache-control')).toBe('no-cache');
    const script = await app.request(`${home}/assets/app-1a2b.js`);
    expect(script.headers.get('content-type')).toContain('javascript');
    expect(script.headers.get('cache-control')).toContain('immutable');
    expect((await app.request(`${home}/assets/gone.js`)).status).toBe(404);
  });

  it('lets a page load from this server only, and never asks for https for good', async () => {
    const { app } = await appWith();
    const { headers } = await app.request(`${home}/`);
    expect(headers.get('content-security-policy')).toContain("default-src 'self'");
    expect(headers.get('content-security-policy')).not.toContain('unsafe');
    expect(headers.get('strict-transport-security')).toBeNull();
    expect(headers.get('x-content-type-options')).toBe('nosniff');
  });

  it('never serves a file from outside the app', async () => {
    writeFileSync(join(folder, 'secret.txt'), 'secret');
    const { app } = await appWith();
    for (const path of ['/..%2fsecret.txt', '/assets/..%2f..%2fsecret.txt', '/%2e%2e/secret.txt']) {
      expect(await (await app.request(`${home}${path}`)).text()).not.toContain('secret');
    }
  });

  it('refuses a name that is not this computer’s', async () => {
    const { app } = await appWith();
    const answer = await app.request('http://rebound.example/', {
      headers: { host: 'rebound.example' },
    });
    expect(answer.status).toBe(403);
    expect(await answer.json()).toMatchObject({ code: 'SERVER_HOST_UNKNOWN' });
  });
});

describe('kept camps', () => {
  it('keeps every version and gives the newest', async () => {
    const { app } = await appWith();
    expect(await (await app.request(put('First'))).json()).toMatchObject({ version: 1 });
    expect(await (await app.request(put('Second'))).json()).toMatchObject({ version: 2 });
    const list = await (await app.request(`${home}/api/camps`)).json();
    expect(list).toEqual({
      camps: [
        {
          id: 'supper',
          version: 2,
          title: 'Second',
          date: '2026-05-02',
          keptAt: '2026-05-01T12:00:00.000Z',
        },
      ],
    });
    const read = (query: string) => app.request(`${home}/api/camps/supper${query}`);
    expect(await (await read('')).text()).toBe(campFile('Second'));
    expect(await (await read('?version=1')).text()).toBe(campFile('First'));
    expect((await read('?version=x')).status).toBe(404);
  });

  it('are still there after the store was closed and opened again', async () => {
    const first = await appWith();
    await first.app.request(put('First'));
    if (first.state.kind === 'sqlite') first.state.store.close();
    const again = await appWith();
    const answer = await again.app.request(`${home}/api/camps/supper`);
    expect(await answer.text()).toBe(campFile('First'));
  });

  it('are there after the process went without closing the store', async () => {
    const first = await appWith();
    await first.app.request(put('First'));
    const again = await appWith();
    expect((await again.app.request(`${home}/api/camps/supper`)).status).toBe(200);
  });

  it('can be added to but neither changed nor removed, even by SQL', async () => {
    const { app } = await appWith();
    await app.request(put());
    const { default: Database } = await import('better-sqlite3');
    const database = new Database(join(folder, 'data/camps.sqlite'));
    expect(() => database.exec("UPDATE camp_version SET title = 'x'")).toThrow(/only added/);
    expect(() => database.exec('DELETE FROM camp_version')).toThrow(/only added/);
    expect(database.pragma('journal_mode', { simple: true })).toBe('wal');
    database.close();
  });

  it('refuses a page from elsewhere, and one that does not say where it is from', async () => {
    const { app } = await appWith();
    const foreign = await app.request(put('X', { ...own, origin: 'https://elsewhere.example' }));
    expect(foreign.status).toBe(403);
    const { origin: _, ...silent } = own;
    expect((await app.request(put('X', silent))).status).toBe(403);
    expect((await app.request(`${home}/api/camps/supper`)).status).toBe(404);
  });

  it('says what is wrong with a file that is no camp, is too big or is not JSON', async () => {
    const { app } = await appWith();
    const send = (body: string, type = 'application/json') =>
      app.request(`${home}/api/camps/supper`, {
        method: 'PUT',
        headers: { ...own, 'content-type': type },
        body,
      });
    const bad = await send('{}');
    expect(bad.status).toBe(422);
    expect(await bad.json()).toMatchObject({ found: 'id: nothing', wanted: 'a camp' });
    expect((await send('{"id":"other"}')).status).toBe(422);
    expect((await send(' '.repeat(MOST_BYTES + 1))).status).toBe(413);
    expect((await send('{}', 'text/plain')).status).toBe(415);
  });
});

describe('the reader of camp files', () => {
  it('lets a demo camp be kept, and names the place that is wrong in a spoilt one', async () => {
    const { app } = await appWith({ checkCamp: checkCampFile });
    const { file } = demoCamps('2026-05-02')[0]!;
    const send = (camp: object) =>
      app.request(`${home}/api/camps/${file.id}`, {
        method: 'PUT',
        headers: own,
        body: JSON.stringify(camp),
      });
    expect((await send(file)).status).toBe(200);
    const spoilt = await send({ ...file, mouths: [{ count: -1 }] });
    expect(spoilt.status).toBe(422);
    expect(await spoilt.json()).toMatchObject({
      found: expect.stringMatching(/mouths\[0\].count/),
    });
  });
});

describe('without the native store', () => {
  const load: LoadSqlite = () => Promise.reject(new Error('not built'));

  it('serves the whole app and says how a camp is handed on', async () => {
    const { app } = await appWith({ load });
    expect((await app.request(`${home}/`)).status).toBe(200);
    const status = (await (await app.request(`${home}/api/status`)).json()) as { why: string };
    expect(status).toMatchObject({ version: '0.1.0', store: 'none', crewSync: 'off' });
    expect(status.why).toMatch(/not installed/);
    expect(status.why).toMatch(/save its camp file/);
  });

  it('answers a wish to keep a camp with what to do instead', async () => {
    const { app } = await appWith({ load });
    const answer = await app.request(put());
    expect(answer.status).toBe(503);
    expect(await answer.json()).toMatchObject({ code: 'SERVER_STORE_MISSING' });
  });

  it('does the same where the folder can’t be written', async () => {
    writeFileSync(join(folder, 'data'), 'a file where the folder should be');
    const { state } = await appWith();
    expect(state).toMatchObject({ kind: 'none', why: expect.stringMatching(/can't be opened/) });
  });
});
