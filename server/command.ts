// What can be said after the command that starts the server.

import { homedir } from 'node:os';
import { join, resolve } from 'node:path';
import { parseArgs } from 'node:util';

export interface ServerCommand {
  readonly port: number;
  readonly host: string;
  readonly data: string;
}

export const helpText = `Serves Emberwright on this computer.

  --port <number>   where to listen; the next free port is taken if it is in use (4600)
  --host <address>  127.0.0.1 for this computer only; 0.0.0.0 lets others on the network in
  --data <folder>   where camps are kept that you ask to keep (.emberwright in your home folder)
  --help            this text
`;

/**
 * The options as they were typed.
 *
 * @returns the command, 'help', or a sentence that says what is wrong
 */
export function readCommand(
  words: readonly string[],
): ServerCommand | 'help' | { readonly trouble: string } {
  try {
    const { values } = parseArgs({
      args: [...words],
      options: {
        port: { type: 'string', default: '4600' },
        host: { type: 'string', default: '127.0.0.1' },
        data: { type: 'string', default: join(homedir(), '.emberwright') },
        help: { type: 'boolean', default: false },
      },
    });
    if (values.help) return 'help';
    const port = Number(values.port);
    if (!Number.isInteger(port) || port < 0 || 65_535 < port) {
      return { trouble: `--port takes a whole number from 0 to 65535; found “${values.port}”.` };
    }
    return { port, host: values.host, data: resolve(values.data) };
  } catch (error) {
    return { trouble: error instanceof Error ? error.message : String(error) };
  }
}
