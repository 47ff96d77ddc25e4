// A recipe that the cook already has: in a camp of their own, or in a camp file.

import type { ComponentChildren } from 'preact';
import { useEffect, useId, useState } from 'preact/hooks';
import { ask } from '../planning/planner.ts';
import { useShelf } from '../storage/ShelfContext.tsx';
import type { OwnRecipe } from '../worker/messages.ts';
import { recipesIn } from './recipes-in.ts';

interface RecipeFromCampProps {
  readonly chosen: OwnRecipe | undefined;
  /** `undefined` goes back to kind, thickness and amount. */
  readonly onChoose: (recipe: OwnRecipe | undefined) => void;
  /** What holds where none is chosen. */
  readonly none?: string;
}

interface CampRecipes {
  readonly title: string;
  readonly recipes: readonly OwnRecipe[];
}

export function RecipeFromCamp({ chosen, onChoose, none }: RecipeFromCampProps) {
  const own = useOwnRecipes();
  const [opened, setOpened] = useState<CampRecipes>();
  const [trouble, setTrouble] = useState<string>();
  const open = async (file: File | undefined) => {
    if (file === undefined) return;
    const read = await ask({ ask: 'open', text: await file.text() });
    const recipes = read.ok ? recipesIn(read.camp.file) : [];
    setTrouble(read.ok ? undefined : read.troubles[0]?.wanted);
    if (read.ok) setOpened({ title: read.camp.title, recipes });
    if (recipes.length === 1) onChoose(recipes[0]);
  };
  const camps = opened === undefined ? own : [opened, ...own];
  return (
    <div className="own-recipe">
      <RecipeBox camps={camps} chosen={chosen} onChoose={onChoose} none={none} />
      <FileBox onOpen={(file) => void open(file)}>
        {trouble === undefined ? null : (
          <span className="field-trouble" role="alert">
            It can’t be read as a camp file: wanted {trouble}.
          </span>
        )}
      </FileBox>
    </div>
  );
}

interface RecipeBoxProps extends Omit<RecipeFromCampProps, 'none'> {
  readonly none: string | undefined;
  readonly camps: readonly CampRecipes[];
}

function RecipeBox({ camps, chosen, onChoose, none }: RecipeBoxProps) {
  const id = useId();
  const all = camps.flatMap(({ recipes }) => recipes);
  const isListed = chosen === undefined || all.some((each) => isSame(each, chosen));
  if (all.length === 0 && chosen === undefined) return null;
  return (
    <div className="field">
      <label className="field-label" htmlFor={id}>
        Or a recipe from a camp
      </label>
      <select
        id={id}
        value={chosen === undefined ? '' : keyOf(chosen)}
        onChange={(event) =>
          onChoose(all.find((each) => keyOf(each) === event.currentTarget.value))
        }
      >
        <option value="">{none ?? 'none: by kind, thickness and amount'}</option>
        {isListed ? null : <option value={keyOf(chosen)}>{chosen.name}</option>}
        {camps.map(({ title, recipes }, index) => (
          // biome-ignore lint/suspicious/noArrayIndexKey: two camps may have one title
          <optgroup key={index} label={title}>
            {recipes.map((recipe) => (
              <option key={keyOf(recipe)} value={keyOf(recipe)}>
                {recipe.name}
              </option>
            ))}
          </optgroup>
        ))}
      </select>
    </div>
  );
}

const keyOf = ({ camp, recipe }: OwnRecipe) => `${recipe} ${camp}`;

const isSame = (one: OwnRecipe, other: OwnRecipe) => keyOf(one) === keyOf(other);

interface FileBoxProps {
  readonly onOpen: (file: File | undefined) => void;
  readonly children: ComponentChildren;
}

function FileBox({ onOpen, children }: FileBoxProps) {
  const id = useId();
  return (
    <div className="field">
      <label className="field-label" htmlFor={id}>
        Or open a camp file with your recipe
      </label>
      <input
        id={id}
        type="file"
        accept=".json,application/json"
        onChange={(event) => onOpen(event.currentTarget.files?.[0])}
      />
      {children}
    </div>
  );
}

function useOwnRecipes(): readonly CampRecipes[] {
  const shelf = useShelf();
  const [camps, setCamps] = useState<readonly CampRecipes[]>([]);
  useEffect(() => {
    void shelf.then(async (open) => {
      const found = await open.list();
      setCamps(
        found
          .map(({ title, file }) => ({ title, recipes: recipesIn(file) }))
          .filter(({ recipes }) => recipes.length > 0),
      );
    });
  }, [shelf]);
  return camps;
}
