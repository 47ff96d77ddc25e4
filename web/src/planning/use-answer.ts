// Keeps the newest question answered; an older answer stays on screen, marked, until then.

import { useEffect, useRef, useState } from 'preact/hooks';
import type { AnswerTo, Question } from '../worker/messages.ts';
import { type NewestWins, newestWins } from './newest-wins.ts';
import { ask } from './planner.ts';

export interface Answered<Answer> {
  readonly answer?: Answer;
  /** True while the answer on screen belongs to an older question. */
  readonly isStale: boolean;
  readonly failure?: string;
}

/** `question` must keep its identity while it means the same. */
export function useAnswer<Asked extends Question>(
  question: Asked | undefined,
): Answered<AnswerTo<Asked>> {
  const [state, setState] = useState<State<Asked>>({});
  const edits = useRef<NewestWins<Asked>>(undefined);
  useEffect(() => {
    const started = newestWins<Asked, AnswerTo<Asked>>({
      ask,
      onAnswer: (asked, answer) => setState({ asked, answer }),
      onFailure: (asked, reason) =>
        setState((old) => ({ ...old, asked, failure: reasonText(reason) })),
    });
    edits.current = started;
    return () => started.stop();
  }, []);
  useEffect(() => {
    if (question !== undefined) edits.current?.wish(question);
  }, [question]);
  return {
    ...(state.answer === undefined ? {} : { answer: state.answer }),
    ...(state.failure === undefined ? {} : { failure: state.failure }),
    isStale: question !== undefined && state.asked !== question,
  };
}

interface State<Asked extends Question> {
  readonly asked?: Asked;
  readonly answer?: AnswerTo<Asked>;
  readonly failure?: string;
}

const reasonText = (reason: unknown) => (reason instanceof Error ? reason.message : String(reason));
