// Takes a port: the one asked for, or the next free one.

import type { AddressInfo } from 'node:net';
import { createAdaptorServer, type ServerType } from '@hono/node-server';
import type { Hono } from 'hono';

export interface Listening {
  readonly server: ServerType;
  readonly port: number;
}

const MOST_TRIES = 50;

/**
 * Listens on `port`, or on the first free port after it.
 *
 * @throws Error — no free port in the next fifty, or the address isn't this computer's
 */
export async function listenFrom(port: number, host: string, app: Hono): Promise<Listening> {
  for (let tried = 0; tried < MOST_TRIES; tried += 1) {
    const server = createAdaptorServer({ fetch: app.fetch });
    const taken = await listenOnce(server, port === 0 ? 0 : port + tried, host);
    if (taken !== undefined) return { server, port: taken };
  }
  throw new Error(`ports ${port} to ${port + MOST_TRIES - 1} are all in use`);
}

/** The port, or undefined where it is in use. */
function listenOnce(server: ServerType, port: number, host: string): Promise<number | undefined> {
  return new Promise((resolve, reject) => {
    server.once('error', (error: NodeJS.ErrnoException) => {
      if (error.code === 'EADDRINUSE') resolve(undefined);
      else reject(error);
    });
    server.listen(port, host, () => resolve((server.address() as AddressInfo).port));
  });
}
