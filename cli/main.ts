// The command line: words in, sheets out. All it does is in run.ts; here it meets the machine.

import { run } from './run.ts';
import { realShell } from './shell.ts';

// A reader that closes early (`| head`) is no fault of ours.
process.stdout.on('error', (error: NodeJS.ErrnoException) => {
  if (error.code !== 'EPIPE') throw error;
  process.exit(0);
});

process.exitCode = run(process.argv.slice(2), realShell());
