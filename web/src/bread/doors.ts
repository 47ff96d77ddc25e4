// The questions about one dough, as addresses name them. Apart, since the front door knows them too.

export const breadDoors = ['leaven', 'rise', 'mix'] as const;
export type BreadDoorName = (typeof breadDoors)[number];

export const breadTitles: Readonly<Record<BreadDoorName, string>> = {
  leaven: 'What raises it?',
  rise: 'How long does it rise?',
  mix: 'As a dry mix',
};
