// The whole bibliography, in the order of the job. A key means one work everywhere.

import { bakeSources } from './bake.ts';
import { campSources } from './camp.ts';
import { coalsSources } from './coals.ts';
import { formulaSources } from './formula.ts';
import { larderSources } from './larder.ts';
import { menuSources } from './menu.ts';
import { numericsSources } from './numerics.ts';
import { provisionsSources } from './provisions.ts';
import { quantitySources } from './quantity.ts';
import { safetySources } from './safety.ts';
import type { Bibliography } from './source.ts';
import { timetableSources } from './timetable.ts';

/** One part a stage; sources.test.ts compares them with the files beside this one. */
export const bibliographies: Readonly<Record<string, Bibliography>> = {
  quantity: quantitySources,
  numerics: numericsSources,
  camp: campSources,
  larder: larderSources,
  menu: menuSources,
  formula: formulaSources,
  coals: coalsSources,
  bake: bakeSources,
  safety: safetySources,
  timetable: timetableSources,
  provisions: provisionsSources,
};

export const bibliography: Bibliography = Object.assign({}, ...Object.values(bibliographies));
