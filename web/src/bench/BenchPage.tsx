// The formula bench: a recipe of a camp on one side, what it is as a dough on the other.

import { useEffect, useMemo, useRef, useState } from 'preact/hooks';
import { Link, useLocation } from 'wouter-preact';
import { type Draft, type DraftFile, useDraft } from '../draft/use-draft.ts';
import { Computing } from '../parts/Computing.tsx';
import { DocumentView } from '../parts/DocumentView.tsx';
import { Page } from '../parts/Page.tsx';
import { UndoWord } from '../parts/UndoWord.tsx';
import { useAnswer } from '../planning/use-answer.ts';
import { useReader } from '../reader/ReaderContext.tsx';
import type {
  BenchAnswer,
  BenchBeside,
  BenchQuestion,
  Proposal,
} from '../worker/bench-messages.ts';
import { itemsTaken } from '../worker/proposal.ts';
import { type BesideChoice, BesidePart, besideOf } from './BesidePart.tsx';
import './bench.css';
import { LinesPart } from './LinesPart.tsx';
import { ingredientsAt, recipeIndex, recipeName } from './recipe-in-file.ts';
import { TargetsPart, type TypedTargets, targetsFrom } from './TargetsPart.tsx';

interface BenchPageProps {
  readonly shelf: 'camp' | 'demo';
  readonly id: string;
  readonly recipe: string;
}

type OpenDraft = Extract<Draft, { state: 'open' }>;

export default function BenchPage({ shelf, id, recipe }: BenchPageProps) {
  const draft = useDraft(shelf, id);
  const back = `/${shelf}/${id}`;
  if (draft.state === 'opening') return <p className="computing is-busy">Opening the recipe</p>;
  if (draft.state === 'missing' || recipeIndex(draft.file, recipe) === -1) {
    return (
      <Page title="No such recipe in this browser">
        <p>
          <Link href={draft.state === 'missing' ? '/camps' : back}>Back to the camp</Link>
        </p>
      </Page>
    );
  }
  return <OpenBench draft={draft} recipe={recipe} back={back} />;
}

interface OpenBenchProps {
  readonly draft: OpenDraft;
  readonly recipe: string;
  readonly back: string;
}

function OpenBench({ draft, recipe, back }: OpenBenchProps) {
  const before = useRef(draft.file).current;
  const [beside, setBeside] = useState<BesideChoice>('before');
  const [targets, setTargets] = useState<TypedTargets>({ figures: {}, held: [] });
  const [swap, setSwap] = useState<BenchQuestion['swap']>();
  useCopyMove(draft.copyId, recipe);
  const besideAsked = useMemo(
    () => besideOf(beside, { before, file: draft.file, recipe }),
    [beside, before, draft.file, recipe],
  );
  const { answer, isStale, failure } = useBench({
    file: draft.file,
    recipe,
    beside: besideAsked,
    targets,
    swap,
  });
  const take = (proposal: Proposal, word: string) => {
    const path = ['recipes', recipeIndex(draft.file, recipe), 'ingredients'];
    draft.setAll([[path, itemsTaken(ingredientsAt(draft.file, recipe), proposal.items)]], word);
    setSwap(undefined);
    setTargets({ figures: {}, held: [] });
  };
  const last = useLastGood(answer);
  return (
    <Page
      title={recipeName(draft.file, recipe)}
      isCompact
      eyebrow={
        <>
          <span>
            Formula bench · <Link href={back}>{String(draft.file.title ?? 'the camp')}</Link>
          </span>
          <Computing
            isBusy={isStale}
            failure={failure}
            isBehind={(answer?.troubles.length ?? 0) > 0}
          />
        </>
      }
    >
      {draft.isKept ? null : <p className="word no-print">A demo: changes here are not kept.</p>}
      {draft.keepTrouble === undefined ? null : (
        <p className="word is-trouble" role="alert">
          This browser could not keep the last change ({draft.keepTrouble}).
        </p>
      )}
      <UndoWord undo={draft.undo} />
      <div className="bench">
        <div className="bench-lines no-print">
          <LinesPart
            form={{ ...draft, troubles: answer?.troubles ?? [] }}
            recipe={recipe}
            lines={last?.lines ?? []}
            flourGrams={last?.flourGrams}
            brief={last?.brief}
            swap={swap}
            onSwap={setSwap}
          />
        </div>
        <div className="bench-sheets" aria-busy={isStale}>
          <ProposalPart
            proposal={swap === undefined ? undefined : answer?.swap}
            label="Swap"
            onTake={(proposal) => take(proposal, 'The swap was made')}
            onLeave={() => setSwap(undefined)}
          />
          <ProposalPart
            proposal={targetsFrom(targets) === undefined ? undefined : answer?.target}
            label="Targets"
            onTake={(proposal) => take(proposal, 'The amounts were taken over')}
            onLeave={() => setTargets({ figures: {}, held: [] })}
          />
          {last?.sheet === undefined ? null : <DocumentView document={last.sheet} level={2} />}
        </div>
        <div className="bench-wishes no-print">
          <BesidePart file={draft.file} recipe={recipe} choice={beside} onChoose={setBeside} />
          <TargetsPart
            targets={targets}
            lines={last?.lines ?? []}
            ovens={last?.ovens ?? []}
            onChange={setTargets}
          />
        </div>
      </div>
    </Page>
  );
}

interface BenchState {
  readonly file: DraftFile;
  readonly recipe: string;
  readonly beside: BenchBeside | undefined;
  readonly targets: TypedTargets;
  readonly swap: BenchQuestion['swap'];
}

function useBench({ file, recipe, beside, targets, swap }: BenchState) {
  const { measures, clock } = useReader().reader;
  const question = useMemo((): BenchQuestion => {
    const wished = targetsFrom(targets);
    return {
      ask: 'bench',
      file: JSON.stringify(file),
      recipe,
      voice: { measures, clock },
      ...(beside === undefined ? {} : { beside }),
      ...(wished === undefined ? {} : { targets: wished }),
      ...(swap === undefined ? {} : { swap }),
    };
  }, [file, recipe, beside, targets, swap, measures, clock]);
  return useAnswer(question);
}

/** What could be worked out last stays, while something typed can't be read. */
function useLastGood(answer: BenchAnswer | undefined): BenchAnswer | undefined {
  const [last, setLast] = useState<BenchAnswer>();
  const isGood = answer?.sheet !== undefined;
  if (isGood && answer !== last) setLast(answer);
  return isGood ? answer : last;
}

/** Where another page kept this camp in between, what is typed here goes on as a copy. */
function useCopyMove(copyId: string | undefined, recipe: string): void {
  const [, go] = useLocation();
  useEffect(() => {
    if (copyId !== undefined) go(`/bench/camp/${copyId}/${recipe}`, { replace: true });
  }, [copyId, recipe, go]);
}

interface ProposalPartProps {
  readonly proposal: Proposal | undefined;
  readonly label: string;
  readonly onTake: (proposal: Proposal) => void;
  readonly onLeave: () => void;
}

/** Shown first; only a press takes it over. */
function ProposalPart({ proposal, label, onTake, onLeave }: ProposalPartProps) {
  return (
    <section
      className={`bench-proposal is-${label.toLowerCase()}`}
      aria-live="polite"
      aria-label={label}
    >
      {proposal === undefined ? null : (
        <>
          <DocumentView document={proposal.sheet} level={2} />
          <div className="button-row no-print">
            {proposal.items.length === 0 ? null : (
              <button type="button" className="button is-main" onClick={() => onTake(proposal)}>
                Take these amounts
              </button>
            )}
            <button type="button" className="button" onClick={onLeave}>
              Leave it as it was
            </button>
          </div>
        </>
      )}
    </section>
  );
}
