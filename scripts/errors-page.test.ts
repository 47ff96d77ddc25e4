import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { errorsPage } from './errors-page.ts';

describe('the manual of codes', () => {
  it('says what the lists of codes say (npm run errors writes it)', () => {
    const page = readFileSync(new URL('../docs/errors.md', import.meta.url), 'utf8');
    expect(page).toBe(errorsPage());
  });
});
