import { describe, expect, it } from 'vitest';
import { forgetfulShelf, type OwnCamp } from './browser-store.ts';

const camp = (file: string): OwnCamp => ({
  id: 'supper',
  title: 'Supper',
  date: '2026-05-02',
  file,
  changedAt: 0,
});

describe('one camp kept from two pages', () => {
  it('counts its revisions, one with every keeping', async () => {
    const shelf = forgetfulShelf();
    expect(await shelf.keep(camp('one'))).toEqual({ revision: 1 });
    expect(await shelf.keep(camp('two'), 1)).toEqual({ revision: 2 });
    expect(await shelf.read('supper')).toMatchObject({ file: 'two', revision: 2 });
  });

  it('says so, and keeps the other page’s state, where that was kept in between', async () => {
    const shelf = forgetfulShelf();
    await shelf.keep(camp('one'));
    await shelf.keep(camp('theirs'), 1);
    expect(await shelf.keep(camp('mine'), 1)).toBe('changed-elsewhere');
    expect(await shelf.read('supper')).toMatchObject({ file: 'theirs', revision: 2 });
  });

  it('keeps what was typed where the other page has taken the camp out', async () => {
    const shelf = forgetfulShelf();
    await shelf.keep(camp('one'));
    await shelf.remove('supper');
    expect(await shelf.keep(camp('two'), 1)).toEqual({ revision: 2 });
    expect(await shelf.read('supper')).toMatchObject({ file: 'two' });
  });
});
