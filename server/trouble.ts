// One shape for everything that the server refuses, so that the app can say it plainly.

import type { Context } from 'hono';
import type { ContentfulStatusCode } from 'hono/utils/http-status';

export interface Trouble {
  readonly code: string;
  readonly found: string;
  readonly wanted: string;
  /** What to do next. */
  readonly next: string;
}

/** Answers a request with what was found, what was wanted and what to do next. */
export const refuse = (context: Context, status: ContentfulStatusCode, trouble: Trouble) =>
  context.json(trouble, status);
