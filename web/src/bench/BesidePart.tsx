// What the recipe is held beside: itself as it was, another of the camp, a ready one.

import { useId } from 'preact/hooks';
import type { DraftFile } from '../draft/use-draft.ts';
import { useAnswer } from '../planning/use-answer.ts';
import type { BenchBeside } from '../worker/bench-messages.ts';
import type { Question } from '../worker/messages.ts';
import { recipesIn } from './recipe-in-file.ts';

/** `before`, `none`, `camp:<recipe>` or `ready:<recipe>`. */
export type BesideChoice = string;

interface Around {
  /** The camp as it was when the bench was opened. */
  readonly before: DraftFile;
  readonly file: DraftFile;
  readonly recipe: string;
}

export function besideOf(choice: BesideChoice, around: Around): BenchBeside | undefined {
  const { before, file, recipe } = around;
  if (choice === 'before') {
    return before === file
      ? undefined
      : { file: JSON.stringify(before), recipe, name: 'As it was' };
  }
  if (choice.startsWith('camp:')) {
    return { file: JSON.stringify(file), recipe: choice.slice('camp:'.length) };
  }
  return choice.startsWith('ready:') ? { recipe: choice.slice('ready:'.length) } : undefined;
}

interface BesidePartProps {
  readonly file: DraftFile;
  readonly recipe: string;
  readonly choice: BesideChoice;
  readonly onChoose: (choice: BesideChoice) => void;
}

const READY: Extract<Question, { ask: 'ready-recipes' }> = { ask: 'ready-recipes' };
const BREADS = ['yeast-bread', 'quick-bread', 'biscuit', 'corn-bread', 'cobbler'];

export function BesidePart({ file, recipe, choice, onChoose }: BesidePartProps) {
  const id = useId();
  const ready = useAnswer(READY).answer ?? [];
  const own = recipesIn(file).filter(
    (each) => each.id !== recipe && BREADS.includes(String(each.kind)),
  );
  return (
    <section aria-labelledby={`${id}-head`}>
      <h2 id={`${id}-head`}>Beside it</h2>
      <div className="field">
        <label className="field-label" htmlFor={id}>
          Hold it beside
        </label>
        <select id={id} value={choice} onChange={(event) => onChoose(event.currentTarget.value)}>
          <option value="before">itself, as it was when I came</option>
          <option value="none">nothing</option>
          {own.map((each) => (
            <option key={String(each.id)} value={`camp:${String(each.id)}`}>
              {String(each.name ?? each.id)}, of this camp
            </option>
          ))}
          {ready
            .filter((each) => BREADS.includes(each.kind))
            .map((each) => (
              <option key={each.id} value={`ready:${each.id}`}>
                {each.name}, ready recipe
              </option>
            ))}
        </select>
      </div>
    </section>
  );
}
