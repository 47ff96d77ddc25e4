// The planning worker: reads camps, plans meals, and hands back finished sheets.

import { answerTo } from './answer.ts';
import type { Posted, Returned } from './messages.ts';

declare const self: DedicatedWorkerGlobalScope;

self.onmessage = async ({ data }: MessageEvent<Posted>) =>
  self.postMessage(await returnedFor(data));

async function returnedFor({ id, question }: Posted): Promise<Returned> {
  try {
    return { id, ok: true, answer: await answerTo(question) };
  } catch (error) {
    return { id, ok: false, reason: error instanceof Error ? error.message : String(error) };
  }
}
