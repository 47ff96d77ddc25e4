// One command from its words to its exit code. Every trouble ends here, told for people.

import { CommanderError } from 'commander';
import { CommandTrouble, EXIT, type ExitCode } from './exit.ts';
import { program } from './program.ts';
import type { Shell } from './shell.ts';

export function run(words: readonly string[], shell: Shell): ExitCode {
  let ended: ExitCode = EXIT.fine;
  try {
    program(shell, (code) => {
      ended = code;
    }).parse([...words], { from: 'user' });
    return ended;
  } catch (error) {
    return told(error, shell);
  }
}

function told(error: unknown, shell: Shell): ExitCode {
  if (error instanceof CommanderError) {
    // Commander has already written its words; help and version are no trouble.
    return error.exitCode === 0 ? EXIT.fine : EXIT.wrongUse;
  }
  if (error instanceof CommandTrouble) {
    shell.error(`${error.message}\n`);
    return error.exit;
  }
  const fault = error instanceof Error ? (error.stack ?? error.message) : String(error);
  shell.error(
    `This is a fault of Emberwright, not yours. Your file is untouched. Please report it with these lines:\n${fault}\n`,
  );
  return EXIT.fault;
}
