// The public surface, in the order of the job. Shells import from here and nowhere deeper.

export * from './quantity/unit.ts';
export * from './notice/notice.ts';
export type * from './camp/camp.ts';
export type * from './larder/food.ts';
export type * from './menu/recipe.ts';
export type * from './menu/menu.ts';
export type * from './meal.ts';
export type * from './publish/say.ts';
