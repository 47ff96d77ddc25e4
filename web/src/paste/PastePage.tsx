// Paste a recipe: it is read line by line, nothing is lost, and it goes into tonight or into a camp.

import { useEffect, useId, useState } from 'preact/hooks';
import { useLocation } from 'wouter-preact';
import type { RecipeCorrections, RecipeKind } from '#engine';
import { rememberBread, rememberedBread } from '../bread/answers.ts';
import { FormulaButton } from '../bread/FormulaButton.tsx';
import { Computing } from '../parts/Computing.tsx';
import { DocumentView } from '../parts/DocumentView.tsx';
import { Field } from '../parts/Field.tsx';
import { Page } from '../parts/Page.tsx';
import { readDecimal, writeNumber } from '../parts/read-text.ts';
import { useAnswer } from '../planning/use-answer.ts';
import { useShelf } from '../storage/ShelfContext.tsx';
import { changedWish, rememberedWish, rememberWish } from '../tonight/wish.ts';
import type { FileFoodItem, PasteAnswer } from '../worker/paste-messages.ts';
import { PasteLines } from './PasteLines.tsx';
import './paste.css';
import { type Pasted, rememberedPaste, rememberPaste, withLine, withRecipe } from './pasted.ts';
import { usePasteQuestion } from './use-pasted.ts';

export default function PastePage() {
  const [pasted, setPasted] = useState(() => rememberedPaste(localStorage));
  useEffect(() => rememberPaste(localStorage, pasted), [pasted]);
  const [gone, setGone] = useState<Pasted>();
  const retyped = (text: string) => {
    if (text === '') setGone(pasted);
    setPasted({ text, corrections: {} });
  };
  const question = usePasteQuestion(pasted);
  const { answer, isStale, failure } = useAnswer(question);
  const shown = question === undefined ? undefined : answer;
  return (
    <Page
      title="Paste a recipe"
      lead="As somebody wrote it: a list, a letter, an old page. It is read line by line; what is not understood stays as it stands."
    >
      <TextBox text={pasted.text} onChange={retyped} />
      {gone === undefined || pasted.text !== '' ? null : (
        <button type="button" className="button" onClick={() => setPasted(gone)}>
          Bring the text back
        </button>
      )}
      <Computing isBusy={isStale} failure={failure} />
      {shown === undefined ? null : shown.ok ? (
        <Reading read={shown} pasted={pasted} onChange={setPasted} />
      ) : (
        <p role="alert" className="field-trouble">
          {shown.text}
        </p>
      )}
    </Page>
  );
}

interface TextBoxProps {
  readonly text: string;
  readonly onChange: (text: string) => void;
}

function TextBox({ text, onChange }: TextBoxProps) {
  const id = useId();
  return (
    <div className="field paste-box">
      <label className="field-label" htmlFor={id}>
        The recipe
      </label>
      <textarea
        id={id}
        rows={text === '' ? 10 : 5}
        value={text}
        spellcheck={false}
        onInput={(event) => onChange(event.currentTarget.value)}
      />
      {text === '' ? null : (
        <button type="button" className="button" onClick={() => onChange('')}>
          Clear the text
        </button>
      )}
    </div>
  );
}

interface ReadingProps {
  readonly read: Extract<PasteAnswer, { ok: true }>;
  readonly pasted: Pasted;
  readonly onChange: (pasted: Pasted) => void;
}

function Reading({ read, pasted, onChange }: ReadingProps) {
  const correct = (corrections: RecipeCorrections) =>
    onChange({ ...pasted, corrections: { ...pasted.corrections, ...corrections } });
  const { foods, roles } = pasted.corrections;
  return (
    <>
      <WholeRecipe read={read} correct={correct} />
      <section aria-label="Line by line" className="paste-part">
        <h2>Line by line</h2>
        <p>Tap a line to put it right.</p>
        <PasteLines
          lines={read.lines}
          onText={(piece, text) => onChange(withLine(pasted, read.lines, { piece, text }))}
          onFood={(piece, food) => correct({ foods: { ...foods, [piece]: food } })}
          onRole={(piece, role) => correct({ roles: { ...roles, [piece]: role } })}
        />
      </section>
      <TakeItOn read={read} />
      <DocumentView document={read.sheet} level={2} />
    </>
  );
}

const KINDS: readonly (readonly [RecipeKind, string])[] = [
  ['yeast-bread', 'Yeast bread'],
  ['quick-bread', 'Quick bread'],
  ['biscuit', 'Biscuits'],
  ['corn-bread', 'Corn bread'],
  ['cobbler', 'Cobbler'],
  ['stew', 'Stew'],
  ['braise', 'Braise'],
  ['beans', 'Beans'],
  ['roast', 'Roast'],
  ['fruit', 'Baked fruit'],
  ['cold-dish', 'Cold dish'],
];

interface WholeProps {
  readonly read: ReadingProps['read'];
  readonly correct: (corrections: RecipeCorrections) => void;
}

function WholeRecipe({ read, correct }: WholeProps) {
  const id = useId();
  return (
    <div className="field-row">
      <div className="field">
        <label className="field-label" htmlFor={id}>
          What it is
        </label>
        <select
          id={id}
          value={read.kind}
          onChange={(event) => correct({ kind: event.currentTarget.value as RecipeKind })}
        >
          {KINDS.map(([kind, label]) => (
            <option key={kind} value={kind}>
              {label}
            </option>
          ))}
        </select>
      </div>
      {read.portions === undefined ? null : (
        <Field
          label="Feeds"
          value={read.portions}
          write={(portions) => writeNumber(portions, 1)}
          read={(text) => readDecimal(text, { lowest: 0.5, highest: 2000 })}
          onChange={(portions) => correct({ portions })}
          takes="a number from 0.5 to 2000"
          unit="portions"
          inputMode="decimal"
        />
      )}
    </div>
  );
}

function TakeItOn({ read }: Pick<ReadingProps, 'read'>) {
  const [, go] = useLocation();
  const { recipe, file } = read;
  if (recipe === undefined || file === undefined) {
    return <p>No ingredient is read yet: write each on a line of its own, its amount first.</p>;
  }
  const cookTonight = () => {
    rememberWish(localStorage, changedWish(rememberedWish(localStorage), { what: recipe }));
    go('/');
  };
  const askOfIt = () => {
    rememberBread(localStorage, { ...rememberedBread(localStorage), what: recipe });
    go('/dough');
  };
  return (
    <div className="button-row paste-next no-print">
      {read.kind === 'cold-dish' ? null : (
        <button type="button" className="button is-main" onClick={cookTonight}>
          Cook it tonight
        </button>
      )}
      {read.kind === 'cold-dish' ? null : <FormulaButton what={recipe} />}
      {read.kind === 'cold-dish' ? null : (
        <button type="button" className="button" onClick={askOfIt}>
          The dough alone
        </button>
      )}
      <IntoCamp file={file} foods={read.foods} />
    </div>
  );
}

interface IntoCampProps {
  readonly file: string;
  readonly foods: readonly FileFoodItem[];
}

function IntoCamp({ file, foods }: IntoCampProps) {
  const shelf = useShelf();
  const [camps, setCamps] = useState<readonly { readonly id: string; readonly title: string }[]>(
    [],
  );
  const [, go] = useLocation();
  useEffect(() => {
    void shelf.then((open) => open.list()).then(setCamps);
  }, [shelf]);
  const put = async (id: string) => {
    const open = await shelf;
    const camp = await open.read(id);
    if (camp === undefined) return;
    await open.keep({ ...camp, file: withRecipe(camp.file, file, foods), changedAt: Date.now() });
    go(`/camp/${id}`);
  };
  if (camps.length === 0) return null;
  return (
    <select
      value=""
      aria-label="Put it into a camp"
      onChange={(event) => void put(event.currentTarget.value)}
    >
      <option value="">Put it into a camp</option>
      {camps.map(({ id, title }) => (
        <option key={id} value={id}>
          {title}
        </option>
      ))}
    </select>
  );
}
