// The planning worker: reads camps, plans meals, and hands back finished sheets.

import { answerTo } from './answer.ts';
import type { Posted, Returned } from './messages.ts';

declare const self: DedicatedWorkerGlobalScope;

self.onmessage = ({ data }: MessageEvent<Posted>) => self.postMessage(returnedFor(data));

function returnedFor({ id, question }: Posted): Returned {
  try {
    return { id, ok: true, answer: answerTo(question) };
  } catch (error) {
    return { id, ok: false, reason: error instanceof Error ? error.message : String(error) };
  }
}
