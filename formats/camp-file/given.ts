// Optional keys: the engine leaves them out, a reader meets `undefined`.

type Given<Fields> = { [Key in keyof Fields]?: Exclude<Fields[Key], undefined> };

/** Only the keys that have a value: an absent key and `undefined` are the same in a file. */
export function given<Fields extends object>(
  fields: {
    readonly [Key in keyof Fields]: Fields[Key] | undefined;
  },
): Given<Fields> {
  return Object.fromEntries(
    Object.entries(fields).filter(([, value]) => value !== undefined),
  ) as Given<Fields>;
}
