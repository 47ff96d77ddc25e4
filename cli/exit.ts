// What the number a command ends with means. The list is in --help and docs/cli.md.

export const EXIT = {
  fine: 0,
  /** The plan was made, but something stops it: late, refused, fire forbidden. */
  stopped: 1,
  /** The file can't be read, or is no camp file. */
  unreadable: 2,
  /** A command or option that we don't know, or a value we can't read. */
  wrongUse: 3,
  /** Our own fault. */
  fault: 70,
} as const;

export type ExitCode = (typeof EXIT)[keyof typeof EXIT];

/** Ends a command with words for the cook; caught in one place. */
export class CommandTrouble extends Error {
  readonly exit: ExitCode;

  constructor(exit: ExitCode, message: string) {
    super(message);
    this.name = 'CommandTrouble';
    this.exit = exit;
  }
}

/** `path: found …, wanted …. What to do.` */
export const wrongUse = (where: string, found: string, wanted: string, next: string) =>
  new CommandTrouble(EXIT.wrongUse, `${where}: found ${found}, wanted ${wanted}. ${next}`);

export const EXIT_HELP = `How it ends:
   0  fine
   1  planned, but something stops it: late, a dish refused, fire forbidden
   2  the file can not be read, or is no camp file
   3  a command, option or value that is not known
  70  a fault of ours`;
