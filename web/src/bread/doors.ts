// The questions about one dough, as addresses name them. Apart, since the front door knows them too.

/** What one bread is asked. */
export const breadDoors = ['leaven', 'rise', 'mix'] as const;
export type BreadDoorName = (typeof breadDoors)[number];

/** All that is asked about a dough; `fits` also without a recipe. */
export const doughDoors = [...breadDoors, 'fits'] as const;
export type DoughDoorName = (typeof doughDoors)[number];

export const doughTitles: Readonly<Record<DoughDoorName, string>> = {
  leaven: 'What raises it?',
  rise: 'How long does it rise?',
  mix: 'As a dry mix',
  fits: 'What fits?',
};

export const doughHints: Readonly<Record<DoughDoorName, string>> = {
  leaven: 'Powder, soda or yeast: how much to weigh here, at this height',
  rise: 'In this air, with this water; what hurries it, what slows it down',
  mix: 'Bags and a tin to weigh at home, and what is added at camp',
  fits: 'How much goes into an oven and how it lies, or which oven for so much',
};
