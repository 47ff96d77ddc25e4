// The app's side of the planning worker: a question goes over, an answer comes back.

import type { AnswerTo, Posted, Question, Returned } from '../worker/messages.ts';

interface Waiting {
  readonly resolve: (answer: never) => void;
  readonly reject: (reason: Error) => void;
}

const waiting = new Map<number, Waiting>();
let worker: Worker | undefined;
let lastId = 0;

/** The worker's answer; rejects only where the worker itself failed. */
export function ask<Asked extends Question>(question: Asked): Promise<AnswerTo<Asked>> {
  worker ??= startWorker();
  lastId += 1;
  const posted: Posted = { id: lastId, question };
  const answer = new Promise<AnswerTo<Asked>>((resolve, reject) => {
    waiting.set(posted.id, { resolve, reject });
  });
  worker.postMessage(posted);
  return answer;
}

function startWorker(): Worker {
  const started = new Worker(new URL('../worker/plan.worker.ts', import.meta.url), {
    type: 'module',
  });
  started.onmessage = ({ data }: MessageEvent<Returned>) => {
    const { resolve, reject } = waiting.get(data.id) ?? {};
    waiting.delete(data.id);
    if (data.ok) resolve?.(data.answer as never);
    else reject?.(new Error(data.reason));
  };
  started.onerror = (event) => failAll(event.message || 'the planning worker could not start');
  return started;
}

/** A worker that broke down is started anew with the next question. */
function failAll(reason: string): void {
  worker?.terminate();
  worker = undefined;
  for (const each of waiting.values()) each.reject(new Error(reason));
  waiting.clear();
}
