// The front door: three choices and the dish card is there.

import { useEffect, useMemo, useState } from 'preact/hooks';
import { useLocation } from 'wouter-preact';
import type { SheetDocument } from '#engine';
import { Computing } from '../parts/Computing.tsx';
import { DocumentView } from '../parts/DocumentView.tsx';
import { Page } from '../parts/Page.tsx';
import { useAnswer } from '../planning/use-answer.ts';
import { useReader } from '../reader/ReaderContext.tsx';
import { useShelf } from '../storage/ShelfContext.tsx';
import type { Question, TonightWish } from '../worker/messages.ts';
import { EmptyOven } from './EmptyOven.tsx';
import { FoodChoice } from './FoodChoice.tsx';
import { GuessLine } from './GuessLine.tsx';
import { grownFrom, wishFor } from './grow.ts';
import { OvenChoice } from './OvenChoice.tsx';
import { WhenChoice } from './WhenChoice.tsx';
import {
  changedWish,
  type OpenWish,
  rememberedWish,
  rememberWish,
  type WishChange,
} from './wish.ts';

export function TonightPage() {
  const [wish, setWish] = useState(() => rememberedWish(localStorage));
  useEffect(() => rememberWish(localStorage, wish), [wish]);
  const change = (part: WishChange) => setWish((old) => changedWish(old, part));
  const question = useTonightQuestion(wish);
  const { answer, isStale, failure } = useAnswer(question);
  return (
    <Page
      title="Tonight: one bread, one oven"
      lead="Three choices, and the dish card is here. Everything else is guessed: the guesses stand on one line, tap one to change it."
    >
      <div className="tonight">
        <div className="tonight-choices">
          <FoodChoice wish={wish} change={change} planned={answer?.amount} />
          <OvenChoice wish={wish} change={change} />
          <WhenChoice wish={wish} change={change} />
          <GuessLine wish={wish} change={change} />
          {answer === undefined || wish.what === undefined ? null : <CardPeek card={answer.card} />}
        </div>
        <section
          id="card"
          className={`tonight-card ${isStale ? 'is-stale' : ''}`}
          aria-label="Dish card"
          aria-busy={isStale}
        >
          {wish.what === undefined ? (
            <EmptyOven />
          ) : (
            <>
              <Computing isBusy={isStale} failure={failure} />
              {answer === undefined ? null : (
                <>
                  <DocumentView document={answer.card} level={2} />
                  {answer.canGrow && question ? <GrowIntoCamp wish={question.wish} /> : null}
                </>
              )}
            </>
          )}
        </section>
      </div>
    </Page>
  );
}

/** Asked again with every change; "now" is the minute of the change. */
function useTonightQuestion(wish: OpenWish) {
  const { measures, clock } = useReader().reader;
  return useMemo((): Extract<Question, { ask: 'tonight' }> | undefined => {
    const { what } = wish;
    if (what === undefined) return undefined;
    return { ask: 'tonight', wish: wishFor(what, wish), voice: { measures, clock } };
  }, [wish, measures, clock]);
}

/** The counts of the card, one tap from it; only where the card lies below the choices. */
function CardPeek({ card }: { readonly card: SheetDocument }) {
  const figures = card.blocks.find((block) => block.type === 'figures')?.figures ?? [];
  return (
    <a className="card-peek" href="#card">
      {figures.slice(0, 2).map(({ figure, label }) => (
        <span key={label}>
          <b>{figure}</b> {label}
        </span>
      ))}
      <span>{figures.length === 0 ? `${card.title}: the card` : 'The card'}</span>
    </a>
  );
}

function GrowIntoCamp({ wish }: { readonly wish: TonightWish }) {
  const shelf = useShelf();
  const [, go] = useLocation();
  const grow = async (isToBench: boolean) => {
    const path = await grownFrom(wish, shelf, isToBench);
    if (path !== undefined) go(path);
  };
  return (
    <div className="grow no-print">
      <p>More mouths, dishes or ovens? It goes on from here with nothing typed again.</p>
      <div className="button-row">
        <button type="button" className="button is-main" onClick={() => void grow(false)}>
          Make it a camp of my own
        </button>
        <button type="button" className="button" onClick={() => void grow(true)}>
          Its formula, in a camp of my own
        </button>
        <button type="button" className="button" onClick={() => window.print()}>
          Print this card
        </button>
      </div>
    </div>
  );
}
