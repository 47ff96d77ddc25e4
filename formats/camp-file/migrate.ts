// Files of every older version, carried over step by step. A migration is never changed once it
// has shipped; it takes whatever it is given and leaves what it does not know for the schema to
// complain of.

import { NEWEST_VERSION } from './v1.ts';

export interface Migrated {
  readonly value: unknown;
  /** Version it was saved in, where that was an older one. */
  readonly from?: number;
}

type Group = Readonly<Record<string, unknown>>;

const MIGRATIONS: readonly ((file: Group) => Group)[] = [from0to1];

/** The file in the newest version. Only for a whole version from 0 to the newest. */
export function migrate(file: Group, version: number): Migrated {
  if (version === NEWEST_VERSION) return { value: file };
  const value = MIGRATIONS.slice(version).reduce<Group>((older, step) => step(older), file);
  return { value, from: version };
}

/**
 * Version 0, the first draft: mouths as one plain number, sizes of ovens as bare inches under
 * `diameterInches`, the height as bare metres under `elevationMetres`.
 */
function from0to1(file: Group): Group {
  return {
    ...file,
    version: 1,
    ...(typeof file.mouths === 'number' ? { mouths: [{ count: file.mouths }] } : {}),
    ...(Array.isArray(file.ovens) ? { ovens: file.ovens.map(inchesToText) } : {}),
    ...(isGroup(file.place) ? { place: metresToText(file.place) } : {}),
  };
}

const inchesToText = (oven: unknown) => renamed(oven, 'diameterInches', 'diameter', 'in');
const metresToText = (place: unknown) => renamed(place, 'elevationMetres', 'elevation', 'm');

function renamed(group: unknown, old: string, now: string, unit: string): unknown {
  if (!isGroup(group) || typeof group[old] !== 'number') return group;
  const { [old]: value, ...rest } = group;
  return { ...rest, [now]: `${String(value)} ${unit}` };
}

const isGroup = (value: unknown): value is Group =>
  typeof value === 'object' && value !== null && !Array.isArray(value);
