import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
// @ts-expect-error plain JavaScript: it must run before anything is installed
import { nodeComplaint } from './ensure.mjs';

const text = (path: string) => readFileSync(new URL(`../${path}`, import.meta.url), 'utf8');
const manifest = JSON.parse(text('package.json'));

describe('the first commands', () => {
  it('tell a Node below the floor of package.json what is wanted, and let the floor itself pass', () => {
    expect(manifest.engines.node).toBe('>=20');
    expect(nodeComplaint('18.20.4')).toContain('Node 20 or newer; this is 18.20.4');
    expect(nodeComplaint('20.0.0')).toBeUndefined();
    expect(nodeComplaint('26.1.0')).toBeUndefined();
  });

  it('import nothing but Node and each other before node modules are there', () => {
    for (const name of readdirSync(new URL('.', import.meta.url))) {
      if (!name.endsWith('.mjs')) continue;
      const imported = [...text(`scripts/${name}`).matchAll(/^import .* from '([^']+)'/gm)];
      for (const [, from] of imported) expect(from, name).toMatch(/^(node:|\.\/)/);
    }
  });

  it('are the ones that the front page promises', () => {
    const page = text('README.md');
    for (const name of ['start', 'test']) {
      expect(page).toContain(`npm ${name}`);
      expect(manifest.scripts[name]).toBe(`node scripts/${name}.mjs`);
    }
  });

  it('leave the native store optional', () => {
    expect(Object.keys(manifest.optionalDependencies)).toEqual(['better-sqlite3']);
    expect(manifest.dependencies['better-sqlite3']).toBeUndefined();
  });
});

describe('documents', () => {
  const pages = [
    'README.md',
    'ARCHITECTURE.md',
    'CONTRIBUTING.md',
    'SECURITY.md',
    'NOTICE.md',
    'docs/glossary.md',
  ];

  it.each(pages)('%s links to files that are there', (page) => {
    const folder = page.includes('/') ? page.slice(0, page.lastIndexOf('/') + 1) : '';
    const links = [...text(page).matchAll(/\]\((?!https?:|#)([^)#]+)/g)].map(([, link]) => link!);
    for (const link of links) {
      const target = new URL(`../${folder}${link}`, import.meta.url);
      expect(() => readdirOrFile(target), link).not.toThrow();
    }
  });

  it('name no command of npm that is not in package.json', () => {
    for (const page of pages) {
      for (const [, name] of text(page).matchAll(/npm run ([a-z0-9-]+)/g)) {
        expect(Object.keys(manifest.scripts), page).toContain(name);
      }
    }
  });
});

function readdirOrFile(target: URL) {
  try {
    return readFileSync(target);
  } catch {
    return readdirSync(target);
  }
}
