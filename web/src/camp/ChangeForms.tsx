// Everything about a camp that can be changed here, in the order of the job.

import type { ComponentChildren } from 'preact';
import { useState } from 'preact/hooks';
import type { DraftForm } from '../draft/DraftField.tsx';
import { TakeOut } from '../parts/TakeOut.tsx';
import type { FoodWord } from '../worker/messages.ts';
import { DishesGroup } from './change-dishes.tsx';
import { FuelGroup, OvensGroup } from './change-fire.tsx';
import { FoodsGroup } from './change-foods.tsx';
import { NeedsGroup } from './change-needs.tsx';
import { PantryGroup } from './change-pantry.tsx';
import { HandsGroup, MouthsGroup, PlaceGroup, ServingGroup } from './change-people.tsx';
import { RecipesGroup } from './change-recipes.tsx';
import { StoresGroup } from './change-stores.tsx';
import { WeatherGroup } from './change-weather.tsx';

interface ChangeFormsProps {
  readonly form: DraftForm;
  readonly foodWords: readonly FoodWord[];
}

export function ChangeForms({ form, foodWords }: ChangeFormsProps) {
  const [isOpen] = useState(() => window.matchMedia('(min-width: 66rem)').matches);
  return (
    <aside className="camp-changes no-print" aria-label="Change this camp">
      <details open={isOpen}>
        <summary className="changes-head">Change this camp</summary>
        <MouthsGroup form={form} />
        <NeedsGroup form={form} />
        <DishesGroup form={form} />
        <ServingGroup form={form} />
        <HandsGroup form={form} />
        <WeatherGroup form={form} />
        <OvensGroup form={form} />
        <FuelGroup form={form} />
        <RecipesGroup form={form} />
        <FoodsGroup form={form} said={foodWords} />
        <PantryGroup form={form} />
        <StoresGroup form={form} />
        <PlaceGroup form={form} />
      </details>
    </aside>
  );
}

interface ChangeGroupProps {
  readonly title: string;
  /** What stands there now, in few words. */
  readonly now: string;
  readonly children: ComponentChildren;
}

export function ChangeGroup({ title, now, children }: ChangeGroupProps) {
  return (
    <details className="change-group">
      <summary>
        {title} <small>{now}</small>
      </summary>
      <div className="change-body">{children}</div>
    </details>
  );
}

interface ChangeItemProps {
  readonly name: string;
  readonly children: ComponentChildren;
  readonly onRemove?: (() => void) | undefined;
}

export function ChangeItem({ name, children, onRemove }: ChangeItemProps) {
  return (
    <fieldset className="change-item">
      <legend>{name}</legend>
      {children}
      {onRemove === undefined ? null : <TakeOut what={name} onRemove={onRemove} />}
    </fieldset>
  );
}

export function AddButton({ what, onAdd }: { readonly what: string; readonly onAdd: () => void }) {
  return (
    <div>
      <button type="button" className="button" onClick={onAdd}>
        Add {what}
      </button>
    </div>
  );
}
