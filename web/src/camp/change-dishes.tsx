// Which dishes are cooked: from a recipe of this camp, or a ready one.

import { useEffect, useId, useState } from 'preact/hooks';
import type { DraftForm } from '../draft/DraftField.tsx';
import { More, OptionalQuantity, saidAt } from '../draft/OptionalField.tsx';
import { TakeOut } from '../parts/TakeOut.tsx';
import { ask } from '../planning/planner.ts';
import type { ReadyRecipe } from '../worker/messages.ts';
import { ChangeGroup } from './ChangeForms.tsx';
import { InOvenFields, inOvenSaid } from './change-in-oven.tsx';
import { freshId, itemsAt, wordOf } from './draft-lists.ts';

export function DishesGroup({ form }: { readonly form: DraftForm }) {
  const dishes = itemsAt(form.file, ['menu']);
  return (
    <ChangeGroup title="Dishes" now={`${dishes.length}`}>
      <ul className="dish-rows">
        {dishes.map((dish, index) => (
          <li key={wordOf(dish.id, String(index))}>
            <div className="dish-row">
              <span>{dishName(form, dish)}</span>
              {dishes.length === 1 ? null : (
                <TakeOut what={dishName(form, dish)} onRemove={() => takeOut(form, index)} />
              )}
            </div>
            <More of={dishName(form, dish)} said={dishSaid(form, index)}>
              <OptionalQuantity
                form={form}
                path={['menu', index, 'share']}
                label="Part of the mouths who take it"
                kind="share"
                hint="empty: all of them"
              />
              <OptionalQuantity
                form={form}
                path={['menu', index, 'reserve']}
                label="Held back on top"
                kind="share"
                hint="empty: by the number who eat it"
              />
              <InOvenFields form={form} path={['menu', index]} unsaid="as its recipe says" />
            </More>
          </li>
        ))}
      </ul>
      <AddDish form={form} />
    </ChangeGroup>
  );
}

const dishSaid = (form: DraftForm, index: number) =>
  inOvenSaid(form, ['menu', index]) +
  saidAt(form, [
    ['menu', index, 'share'],
    ['menu', index, 'reserve'],
  ]);

type Dish = ReturnType<typeof itemsAt>[number];

function dishName(form: DraftForm, dish: Dish): string {
  const recipe = itemsAt(form.file, ['recipes']).find(({ id }) => id === dish.recipe);
  return wordOf(dish.name, wordOf(recipe?.name, wordOf(dish.id)));
}

/** Its recipe stays in the camp, so that the dish can be added again. */
function takeOut(form: DraftForm, index: number): void {
  const dish = itemsAt(form.file, ['menu'])[index] ?? {};
  form.setAll([[['menu', index], undefined]], `${dishName(form, dish)} was taken out`);
}

function AddDish({ form }: { readonly form: DraftForm }) {
  const id = useId();
  const [chosen, setChosen] = useState('');
  const readyRecipes = useReadyRecipes();
  const recipes = itemsAt(form.file, ['recipes']);
  const ready = readyRecipes.filter(
    (readyRecipe) => !recipes.some((each) => each.id === readyRecipe.id),
  );
  const add = async () => {
    await addDish(form, chosen);
    setChosen('');
  };
  return (
    <div className="field">
      <label className="field-label" htmlFor={id}>
        Another dish
      </label>
      <select id={id} value={chosen} onChange={(event) => setChosen(event.currentTarget.value)}>
        <option value="">Choose a recipe</option>
        <optgroup label="Recipes of this camp">
          {recipes.map((recipe, index) => (
            <option key={wordOf(recipe.id, String(index))} value={wordOf(recipe.id)}>
              {wordOf(recipe.name, wordOf(recipe.id))}
            </option>
          ))}
        </optgroup>
        <optgroup label="Ready recipes">
          {ready.map((readyRecipe) => (
            <option key={readyRecipe.id} value={readyRecipe.id}>
              {readyRecipe.name}
            </option>
          ))}
        </optgroup>
      </select>
      <div>
        <button
          type="button"
          className="button"
          disabled={chosen === ''}
          onClick={() => void add()}
        >
          Add this dish
        </button>
      </div>
    </div>
  );
}

function useReadyRecipes(): readonly ReadyRecipe[] {
  const [readyRecipes, setReadyRecipes] = useState<readonly ReadyRecipe[]>([]);
  useEffect(() => {
    void ask({ ask: 'ready-recipes' }).then(setReadyRecipes);
  }, []);
  return readyRecipes;
}

/** Served with the first dish, until the cook says when. */
async function addDish(form: DraftForm, recipeId: string): Promise<void> {
  const dishes = itemsAt(form.file, ['menu']);
  const recipes = itemsAt(form.file, ['recipes']);
  const known = recipes.find(({ id }) => id === recipeId);
  const recipe = known ?? (await ask({ ask: 'ready-recipe', id: recipeId }));
  if (recipe === undefined) return;
  const name = wordOf(recipe.name, recipeId);
  const isTaken = dishes.some(({ id }) => id === recipeId);
  const id = isTaken ? freshId(dishes, recipeId) : recipeId;
  const dish = { id, name, recipe: recipeId, serve: wordOf(dishes[0]?.serve, '18:30') };
  form.setAll(
    [
      [['menu'], [...dishes, dish]],
      ...(known === undefined ? [[['recipes'], [...recipes, recipe]] as const] : []),
    ],
    `${name} was added`,
  );
}
