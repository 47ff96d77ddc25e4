// How the writer of the recipe baked it, beside how this plan does: neither is hidden.

import type { RisePlan } from '../../formula/index.ts';
import type { DishPlan, LoadPlan } from '../../meal.ts';
import type { WriterCoals, WriterSaid } from '../../menu/recipe.ts';
import type { Block, FactRow } from '../document.ts';
import type { Say } from '../say.ts';

/** Where the recipe says heat, minutes, core or coals of its own. */
export function writerBlocks(
  { recipe, leavening }: Pick<DishPlan, 'recipe' | 'leavening'>,
  part: LoadPlan | undefined,
  say: Say,
): readonly Block[] {
  const { writer } = recipe.target;
  if (writer === undefined) return [];
  const rows = [
    ...riseRows(writer, leavening?.rise, say),
    ...saidRows(writer, say),
    ...coalRows(writer),
  ];
  return [
    { type: 'heading', text: 'As the writer bakes it', half: true },
    { type: 'facts', rows: rows.map((row) => withOurs(row, part, say)) },
    {
      type: 'paragraph',
      parts: [{ text: "The writer's oven, air and wind are not known: this plan is for yours." }],
    },
  ];
}

/** A rise goes by its dough and the air: the writer's minutes stand beside what was reckoned. */
function riseRows(
  { firstRise, secondRise }: WriterSaid,
  rise: RisePlan | undefined,
  say: Say,
): readonly FactRow[] {
  const { estimate, cold } = rise ?? {};
  const row = (label: string, said: typeof firstRise, ours: number | undefined) =>
    said === undefined
      ? []
      : [{ label, value: spanSaid(said, say.minutes), ...noteFor(said, ours) }];
  const noteFor = (said: readonly [number, number], ours: number | undefined) =>
    ours === undefined ? {} : { note: riseNote(said, ours, say) };
  const first = row('First rise', firstRise, estimate?.first);
  const isCold = cold?.isFirstRise === true;
  return [
    ...(isCold ? first.map((each) => ({ ...each, note: coldNote(cold.minutes, say) })) : first),
    ...row('Second rise', secondRise, estimate?.second),
  ];
}

const coldNote = (minutes: number, say: Say) =>
  `in the cold it goes by the clock: planned as ${say.minutes(minutes)}`;

function riseNote([low, high]: readonly [number, number], ours: number, say: Say): string {
  const isAlike = low <= ours && ours <= high;
  const said = `here likely ${say.minutes(ours)}`;
  return isAlike ? said : `${said}, by this dough and this air: planned so`;
}

function saidRows({ oven, minutes, core }: WriterSaid, say: Say): readonly FactRow[] {
  return [
    ...(oven === undefined ? [] : [{ label: HEAT, value: spanSaid(oven, say.oven) }]),
    ...(minutes === undefined ? [] : [{ label: MINUTES, value: spanSaid(minutes, say.minutes) }]),
    ...(core === undefined ? [] : [{ label: CORE, value: say.degrees(core) }]),
  ];
}

const HEAT = 'Heat in the oven';
const MINUTES = 'Time in the oven';
const CORE = 'Done inside at';
const COALS = 'Coals';

const coalRows = ({ coals }: WriterSaid): readonly FactRow[] =>
  coals === undefined ? [] : [{ label: COALS, value: writerLaid(coals) }];

/** Our own figure beside the writer's, where there is one to compare. */
function withOurs(row: FactRow, part: LoadPlan | undefined, say: Say): FactRow {
  if (part === undefined) return row;
  const { reckoning, above } = part.coals;
  if (row.label === COALS && above.shovels === undefined) {
    return { ...row, note: `here ${reckoning.above} above and ${reckoning.below} below` };
  }
  if (row.label === MINUTES)
    return { ...row, note: `here likely ${say.minutes(part.bake.minutes)}` };
  return row;
}

/** "17 above and 8 below"; a total or a share where the text says no more. */
export function writerLaid({ above, below, total, aboveShare }: WriterCoals): string {
  const sides = [
    ...(above === undefined ? [] : [`${above} above`]),
    ...(below === undefined ? [] : [`${below} below`]),
  ];
  if (0 < sides.length) return sides.join(' and ');
  if (total !== undefined) return `${total} in all`;
  return `${Math.round(100 * (aboveShare ?? 0))} % of them on the lid`;
}

/** A range as a cook says it, both ends once where they are alike. */
export function spanSaid(
  [low, high]: readonly [number, number],
  said: (value: number) => string,
): string {
  return said(low) === said(high) ? said(low) : `${said(low)} to ${said(high)}`;
}
