// What one key alone can't show: ids that stand twice, names that refer to nothing, steps in a
// circle, times the wrong way round.

import { readClock } from './clock-text.ts';
import { nearestWord } from './nearest.ts';
import { readQuantity } from './quantity-text.ts';
import { stepIds } from './steps-to-engine.ts';
import { type FileTrouble, type PathStep, trouble } from './trouble.ts';
import type { CampFile, FileDish, FileRecipe } from './v1.ts';

/** Everything that does not fit together in a file whose parts are each well-formed. */
export function checkTogether(file: CampFile): readonly FileTrouble[] {
  return [
    ...idsTwice(file.hands ?? [], ['hands']),
    ...ovenIdsTwice(file),
    ...idsTwice(file.menu, ['menu']),
    ...idsTwice(file.recipes, ['recipes']),
    ...handsBackwards(file),
    ...weatherBackwards(file),
    ...file.menu.flatMap((dish, index) => dishTroubles(file, dish, ['menu', index])),
    ...file.recipes.flatMap((recipe, index) => recipeTroubles(recipe, ['recipes', index])),
  ];
}

type Path = readonly PathStep[];

function idsTwice(list: readonly { readonly id: string }[], path: Path): readonly FileTrouble[] {
  const seen = new Map<string, number>();
  return list.flatMap(({ id }, index) => {
    const first = seen.get(id);
    if (first === undefined) seen.set(id, index);
    return first === undefined
      ? []
      : [
          trouble('FILE_ID_TWICE', [...path, index, 'id'], {
            found: id,
            wanted: `another id than ${String(path.at(-1))}[${first}] has`,
          }),
        ];
  });
}

/** The ids that the plan will know: an oven with a count stands for several. */
export function ovenIds(file: CampFile): readonly string[] {
  return (file.ovens ?? []).flatMap(({ id, count = 1 }) =>
    count === 1 ? [id] : Array.from({ length: count }, (_, index) => `${id}-${index + 1}`),
  );
}

function ovenIdsTwice(file: CampFile): readonly FileTrouble[] {
  const twice = idsTwice(file.ovens ?? [], ['ovens']);
  const ids = ovenIds(file);
  if (twice.length > 0 || new Set(ids).size === ids.length) return twice;
  return [
    trouble('FILE_ID_TWICE', ['ovens'], {
      found: ids.find((id, index) => ids.indexOf(id) !== index),
      wanted: 'ids that stay apart when an oven with a "count" is numbered',
    }),
  ];
}

const handsBackwards = (file: CampFile) =>
  (file.hands ?? []).flatMap(({ from, to }, index) =>
    readClock(from)! < readClock(to)!
      ? []
      : [wrongOrder(['hands', index, 'to'], to, `a time after "from", ${from}`)],
  );

function weatherBackwards(file: CampFile): readonly FileTrouble[] {
  const hours = file.weather ?? [];
  return hours.flatMap((hour, index) => {
    const before = hours[index - 1];
    const gust = hour.gust === undefined ? undefined : readQuantity('speed', hour.gust)!;
    return [
      ...(before !== undefined && readClock(hour.at)! <= readClock(before.at)!
        ? [wrongOrder(['weather', index, 'at'], hour.at, `a time after ${before.at}`)]
        : []),
      ...(gust !== undefined && gust < readQuantity('speed', hour.wind)!
        ? [wrongOrder(['weather', index, 'gust'], hour.gust, `no less than "wind", ${hour.wind}`)]
        : []),
    ];
  });
}

const wrongOrder = (path: Path, found: unknown, wanted: string) =>
  trouble('FILE_ORDER_WRONG', path, { found, wanted });

function dishTroubles(file: CampFile, dish: FileDish, path: Path): readonly FileTrouble[] {
  const recipes = file.recipes.map(({ id }) => id);
  const hands = file.hands?.map(({ id }) => id) ?? ['cook'];
  const isBackwards = dish.latest !== undefined && readClock(dish.latest)! < readClock(dish.serve)!;
  return [
    ...unknownName(dish.recipe, recipes, [...path, 'recipe']),
    ...unknownName(dish.pins?.oven, ovenIds(file), [...path, 'pins', 'oven']),
    ...unknownName(dish.pins?.hand, hands, [...path, 'pins', 'hand']),
    ...(isBackwards
      ? [wrongOrder([...path, 'latest'], dish.latest, `no earlier than "serve", ${dish.serve}`)]
      : []),
    ...unknownPieces(file, dish, path),
  ];
}

function unknownName(
  name: string | undefined,
  known: readonly string[],
  path: Path,
): readonly FileTrouble[] {
  if (name === undefined || known.includes(name)) return [];
  const near = nearestWord(name, known);
  return [
    trouble('FILE_REFERENCE_UNKNOWN', path, {
      found: name,
      wanted: known.length === 0 ? 'nothing: there are none' : `one of ${known.join(', ')}`,
      ...(near === undefined ? {} : { next: `Did you mean "${near}"?` }),
    }),
  ];
}

function unknownPieces(file: CampFile, dish: FileDish, path: Path): readonly FileTrouble[] {
  const recipe = file.recipes.find(({ id }) => id === dish.recipe);
  if (recipe === undefined) return [];
  const shapes = (recipe.division ?? []).map(({ shape }) => shape);
  return (dish.pieces ?? []).flatMap((piece, index) =>
    shapes.includes(piece)
      ? []
      : [
          trouble('FILE_PIECES_UNKNOWN', [...path, 'pieces', index], {
            found: piece,
            wanted: shapes.length === 0 ? `a "division" in ${recipe.id}` : shapes.join(' or '),
          }),
        ],
  );
}

function recipeTroubles(recipe: FileRecipe, path: Path): readonly FileTrouble[] {
  const steps = recipe.steps ?? [];
  const ids = stepIds(steps);
  const named = steps.map((step, index) => ({ id: ids[index]!, step }));
  const unknown = named.flatMap(({ step, id }, index) =>
    (step.after ?? []).flatMap((lag, at) =>
      unknownName(
        lag.step,
        ids.filter((other) => other !== id),
        [...path, 'steps', index, 'after', at, 'step'],
      ),
    ),
  );
  return [
    ...idsTwice(named, [...path, 'steps']),
    ...unknown,
    ...(unknown.length > 0 ? [] : circle(recipe, ids, path)),
    ...steps.flatMap((step, index) => lagsBackwards(step.after ?? [], [...path, 'steps', index])),
    ...tookBackwards(recipe, path),
  ];
}

/** Steps are done in rounds; a round in which none can start has found the circle. */
function circle(recipe: FileRecipe, ids: readonly string[], path: Path): readonly FileTrouble[] {
  const steps = recipe.steps ?? [];
  const waitsFor = steps.map(
    (step, index) => step.after?.map((lag) => lag.step) ?? ids.slice(Math.max(0, index - 1), index),
  );
  const done = new Set<string>();
  for (let round = 0; round < steps.length; round += 1) {
    const ready = ids.filter(
      (id, at) => !done.has(id) && waitsFor[at]!.every((on) => done.has(on)),
    );
    for (const id of ready) done.add(id);
    if (ready.length === 0) break;
  }
  const stuck = ids.filter((id) => !done.has(id));
  return stuck.length === 0
    ? []
    : [
        trouble('FILE_STEPS_CIRCLE', [...path, 'steps'], {
          found: stuck.join(', '),
          wanted: 'steps of which one can come first',
        }),
      ];
}

const lagsBackwards = (
  lags: NonNullable<NonNullable<FileRecipe['steps']>[number]['after']>,
  path: Path,
) =>
  lags.flatMap((lag, index) => {
    const least = readQuantity('duration', lag.least ?? '0 min')!;
    const most = lag.most === undefined ? least : readQuantity('duration', lag.most)!;
    return least <= most
      ? []
      : [
          wrongOrder(
            [...path, 'after', index, 'most'],
            lag.most,
            `no less than "least", ${lag.least}`,
          ),
        ];
  });

function tookBackwards(recipe: FileRecipe, path: Path): readonly FileTrouble[] {
  const took = recipe.target?.took;
  if (took === undefined) return [];
  const [short, long] = took;
  return readQuantity('duration', short)! <= readQuantity('duration', long)!
    ? []
    : [wrongOrder([...path, 'target', 'took', 1], long, `no less than ${short}`)];
}
