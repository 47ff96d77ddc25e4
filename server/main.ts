// Starts the server: `node dist/server.mjs [--port 4600] [--host 127.0.0.1] [--data folder]`.

import { existsSync, readFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import type { ServerType } from '@hono/node-server';
import { makeApp } from './app.ts';
import { checkCamp } from './check-camp.ts';
import { helpText, readCommand, type ServerCommand } from './command.ts';
import { listenFrom } from './listen.ts';
import type { StoreState } from './store/camp-store.ts';
import { openStore } from './store/open-store.ts';

const here = dirname(fileURLToPath(import.meta.url));
const say = (text: string) => process.stdout.write(`${text}\n`);

const command = readCommand(process.argv.slice(2));
if (command === 'help') say(helpText);
else if ('trouble' in command) {
  process.stderr.write(`${command.trouble}\n\n${helpText}`);
  process.exitCode = 2;
} else {
  await serveUntilStopped(command);
}

async function serveUntilStopped({ port, host, data }: ServerCommand): Promise<void> {
  const state = await openStore(data);
  const isOnNetwork = !['127.0.0.1', 'localhost', '::1'].includes(host);
  const now = () => new Date();
  const app = makeApp({ state, checkCamp, now, version: version(), webFolder: web(), isOnNetwork });
  try {
    const listening = await listenFrom(port, host, app);
    sayWhereWeAre({ asked: port, taken: listening.port, host, isOnNetwork });
    sayWhatIsKept(state, data);
    stopOnSignal(listening.server, state);
  } catch (error) {
    process.stderr.write(`Can't start: ${error instanceof Error ? error.message : error}.\n`);
    if (state.kind === 'sqlite') state.store.close();
    process.exitCode = 1;
  }
}

interface Where {
  readonly asked: number;
  readonly taken: number;
  readonly host: string;
  readonly isOnNetwork: boolean;
}

function sayWhereWeAre({ asked, taken, host, isOnNetwork }: Where): void {
  if (asked !== 0 && asked !== taken) say(`Port ${asked} is in use; took ${taken}.`);
  const name = host === '0.0.0.0' || host === '::' ? 'localhost' : host;
  say(`Emberwright is at http://${name.includes(':') ? `[${name}]` : name}:${taken}/`);
  if (isOnNetwork) {
    say('Others on this network can open it too, and see and add the camps kept here.');
  }
}

function sayWhatIsKept(state: StoreState, data: string): void {
  if (state.kind === 'sqlite') say(`Camps you ask to keep are written to ${data}`);
  else say(`Camps stay in the browser, none is kept on this computer: ${state.why}.`);
  say('Ctrl-C stops it.');
}

function stopOnSignal(server: ServerType, state: StoreState): void {
  const stop = () => {
    server.close(() => {
      if (state.kind === 'sqlite') state.store.close();
      process.exit(0);
    });
    // Browsers hold connections open; those that are idle go now, the rest get two seconds.
    if ('closeIdleConnections' in server) server.closeIdleConnections();
    setTimeout(() => 'closeAllConnections' in server && server.closeAllConnections(), 2000).unref();
  };
  process.once('SIGINT', stop);
  process.once('SIGTERM', stop);
}

/** The package file stands one folder up, from the source as from the bundle. */
function version(): string {
  const file = JSON.parse(readFileSync(join(here, '../package.json'), 'utf8')) as {
    version: string;
  };
  return file.version;
}

/** Beside the bundle, or where the build puts it when run from the source. */
function web(): string {
  const beside = join(here, 'web');
  return existsSync(join(beside, 'index.html')) ? beside : join(here, '../dist/web');
}
