// Recipes: amounts as the cook writes them.

import { Link, useLocation } from 'wouter-preact';
import { type DraftForm, troubleAt } from '../draft/DraftField.tsx';
import { More, OptionalQuantity, saidAt } from '../draft/OptionalField.tsx';
import { Field } from '../parts/Field.tsx';
import { BREADS } from './BenchWord.tsx';
import { ChangeGroup } from './ChangeForms.tsx';
import { InOvenFields, inOvenSaid } from './change-in-oven.tsx';
import { type Item, itemsAt, wordOf } from './draft-lists.ts';

export function RecipesGroup({ form }: { readonly form: DraftForm }) {
  const recipes = itemsAt(form.file, ['recipes']);
  return (
    <ChangeGroup title="Recipes" now={`${recipes.length}`}>
      {recipes.map((recipe, index) => (
        <details className="change-group" key={wordOf(recipe.id, String(index))}>
          <summary>
            {wordOf(recipe.name, 'A recipe')}
            <small>{wordOf(recipe.portions)} portions</small>
          </summary>
          <div className="change-body">
            {BREADS.includes(wordOf(recipe.kind)) ? <BenchLink recipe={wordOf(recipe.id)} /> : null}
            {itemsAt(form.file, ['recipes', index, 'ingredients']).map((ingredient, row) => (
              <Amount
                // biome-ignore lint/suspicious/noArrayIndexKey: the same food may stand twice
                key={row}
                form={form}
                ingredient={ingredient}
                path={['recipes', index, 'ingredients', row]}
              />
            ))}
            <RecipeMore form={form} index={index} name={wordOf(recipe.name, 'this recipe')} />
          </div>
        </details>
      ))}
    </ChangeGroup>
  );
}

interface RecipeMoreProps {
  readonly form: DraftForm;
  readonly index: number;
  readonly name: string;
}

function RecipeMore({ form, index, name }: RecipeMoreProps) {
  const path = ['recipes', index];
  const height = [...path, 'writtenAt'];
  return (
    <More of={name} said={inOvenSaid(form, path) + saidAt(form, [height])}>
      <InOvenFields form={form} path={path} unsaid="as its steps say" />
      <OptionalQuantity
        form={form}
        path={height}
        label="Written for a height of"
        kind="height"
        hint="its leavening is meant for it; empty: low ground"
      />
    </More>
  );
}

/** To the formula bench of this recipe; the camp is the one at this address. */
function BenchLink({ recipe }: { readonly recipe: string }) {
  const [path] = useLocation();
  const [, shelf, id] = path.split('/');
  return (
    <Link href={`/bench/${shelf}/${id}/${recipe}`} className="button">
      As a formula
    </Link>
  );
}

interface AmountProps {
  readonly form: DraftForm;
  readonly ingredient: Item;
  readonly path: readonly (string | number)[];
}

const IS_WEIGHT = /^\s*[\d.,/½¼¾\s]+\s*(g|kg|oz|lb|lbs|grams?|kilos?|ounces?|pounds?)\.?\s*$/i;

/**
 * One box for weight or measure. What is typed replaces both, so that an old weight never stands
 * beside a new measure.
 */
function Amount({ form, ingredient, path }: AmountProps) {
  const name = wordOf(ingredient.name, 'An ingredient');
  const shown = wordOf(ingredient.weight, wordOf(ingredient.measure));
  const both = ingredient.weight !== undefined && ingredient.measure !== undefined;
  const change = (text: string) =>
    form.setAll(
      IS_WEIGHT.test(text)
        ? [
            [[...path, 'weight'], text],
            [[...path, 'measure'], undefined],
          ]
        : [
            [[...path, 'measure'], text],
            [[...path, 'weight'], undefined],
          ],
    );
  return (
    <Field
      label={name}
      value={shown}
      write={(value) => value}
      read={(text) => ({ ok: true, value: text })}
      onChange={change}
      trouble={troubleAt(form, path)}
      hint={both ? `written as ${wordOf(ingredient.measure)}` : undefined}
    />
  );
}
