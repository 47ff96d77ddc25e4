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
