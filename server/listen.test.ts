import { Hono } from 'hono';
import { describe, expect, it } from 'vitest';
import { readCommand } from './command.ts';
import { listenFrom } from './listen.ts';

describe('taking a port', () => {
  it('takes the next free one when the port is in use', async () => {
    const first = await listenFrom(0, '127.0.0.1', new Hono());
    const second = await listenFrom(first.port, '127.0.0.1', new Hono());
    expect(second.port).toBeGreaterThan(first.port);
    first.server.close();
    second.server.close();
  });
});

describe('the command', () => {
  it('listens on this computer only, unless told otherwise', () => {
    expect(readCommand([])).toMatchObject({ host: '127.0.0.1', port: 4600 });
    expect(readCommand(['--host', '0.0.0.0'])).toMatchObject({ host: '0.0.0.0' });
  });

  it('says what a port is and which option is unknown', () => {
    expect(readCommand(['--port', 'ten'])).toMatchObject({ trouble: expect.stringMatching(/ten/) });
    expect(readCommand(['--prot', '1'])).toMatchObject({ trouble: expect.stringMatching(/prot/) });
  });
});
