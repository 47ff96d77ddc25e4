// A place in a camp file, and a file with that place changed.

export type Path = readonly (string | number)[];

/** `ovens[2].diameter`, as troubles name it. */
export const pathText = (path: Path) =>
  path.reduce<string>((text, step) => {
    if (typeof step === 'number') return `${text}[${step}]`;
    return text === '' ? step : `${text}.${step}`;
  }, '');

export function valueAt(file: unknown, path: Path): unknown {
  return path.reduce<unknown>(
    (value, step) => (value as Record<string | number, unknown> | undefined)?.[step],
    file,
  );
}

/** A copy with one place changed; `undefined` takes the place out. Groups on the way are made. */
export function withValueAt<File>(file: File, path: Path, value: unknown): File {
  const [step, ...rest] = path;
  if (step === undefined) return value as File;
  const next = withValueAt((file as Record<string | number, unknown>)?.[step], rest, value);
  if (Array.isArray(file)) {
    if (next === undefined) return file.filter((_, index) => index !== step) as File;
    return file.with(step as number, next) as File;
  }
  const { [step as string]: _, ...others } = (file ?? {}) as Record<string, unknown>;
  if (next === undefined) return others as File;
  return { ...(file as object), [step]: next } as File;
}

/** One place and what it is to hold; `undefined` takes the place out. */
export type Edit = readonly [Path, unknown];

export const withEdits = <File>(file: File, edits: readonly Edit[]): File =>
  edits.reduce((next, [path, value]) => withValueAt(next, path, value), file);

/** `Peach cobbler was taken out`, where one of the edits takes an item out of a list. */
export function takenOutWord(file: unknown, edits: readonly Edit[]): string | undefined {
  const [path] =
    edits.find(([each, value]) => value === undefined && typeof each.at(-1) === 'number') ?? [];
  if (path === undefined) return undefined;
  const item = (valueAt(file, path) ?? {}) as Readonly<Record<string, unknown>>;
  const name = [item.name, item.who, item.at, item.id].find(
    (word) => typeof word === 'string' && word !== '',
  );
  return `${name ?? 'One group'} was taken out`;
}
