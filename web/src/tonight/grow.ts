// A wish of the front door becomes a camp of the cook's own, kept in this browser.

import { ask } from '../planning/planner.ts';
import type { CampShelf } from '../storage/browser-store.ts';
import { newCampId, renamedFile, todayOf } from '../storage/new-id.ts';
import type { TonightFood, TonightWish } from '../worker/messages.ts';
import { minuteOf, type OpenWish } from './wish.ts';

/** Where the camp stands, or its first recipe on the bench; undefined where the wish is refused. */
export async function grownFrom(
  wish: TonightWish,
  shelf: Promise<CampShelf>,
  isToBench: boolean,
): Promise<string | undefined> {
  const camp = await ask({ ask: 'grow', wish });
  if (camp === undefined) return undefined;
  const id = newCampId(camp.title);
  const file = renamedFile(camp.file, { id });
  await (await shelf).keep({ ...camp, id, file, changedAt: Date.now() });
  const recipe = isToBench ? firstRecipe(file) : undefined;
  return recipe === undefined ? `/camp/${id}` : `/bench/camp/${id}/${recipe}`;
}

const firstRecipe = (file: string): string | undefined =>
  (JSON.parse(file) as { readonly recipes?: readonly { readonly id: string }[] }).recipes?.[0]?.id;

/** This food in the oven and at the spot of the front door; "now" is the minute of asking. */
export function wishFor(what: TonightFood, wish: OpenWish): TonightWish {
  const now = new Date();
  const { timeZone } = Intl.DateTimeFormat().resolvedOptions();
  return { ...wish, what, today: todayOf(now), nowMinutes: minuteOf(now), timeZone };
}
