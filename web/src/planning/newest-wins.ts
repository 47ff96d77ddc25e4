// One question at a time; while it is being answered only the newest of the next ones is kept.

export interface NewestWins<Asked> {
  wish(question: Asked): void;
  /** No more answers after this. */
  stop(): void;
}

interface Listener<Asked, Answer> {
  readonly ask: (question: Asked) => Promise<Answer>;
  readonly onAnswer: (question: Asked, answer: Answer) => void;
  readonly onFailure: (question: Asked, reason: unknown) => void;
}

export function newestWins<Asked, Answer>(listener: Listener<Asked, Answer>): NewestWins<Asked> {
  let waiting: { readonly question: Asked } | undefined;
  let isBusy = false;
  let isStopped = false;

  async function work(first: Asked): Promise<void> {
    isBusy = true;
    let question: Asked | undefined = first;
    while (question !== undefined && !isStopped) {
      waiting = undefined;
      await answerOne(question);
      question = (waiting as { readonly question: Asked } | undefined)?.question;
    }
    isBusy = false;
  }

  async function answerOne(question: Asked): Promise<void> {
    try {
      const answer = await listener.ask(question);
      if (!isStopped) listener.onAnswer(question, answer);
    } catch (reason) {
      if (!isStopped) listener.onFailure(question, reason);
    }
  }

  return {
    wish(question) {
      if (isBusy) waiting = { question };
      else void work(question);
    },
    stop() {
      isStopped = true;
    },
  };
}
