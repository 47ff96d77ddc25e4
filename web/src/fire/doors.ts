// The questions at the fire, as addresses name them. Apart, since the front door knows them too.

export const doors = ['what-now', 'layout', 'left', 'coals', 'stack'] as const;
export type DoorName = (typeof doors)[number];
