// Kept camps over HTTP. Nothing arrives here by itself: the app sends a camp only when the cook
// presses "keep a copy on this computer".

import { Hono } from 'hono';
import { bodyLimit } from 'hono/body-limit';
import type { StoreState } from './store/camp-store.ts';
import { refuse } from './trouble.ts';

/** The largest camp file we take; the demo camps are well under a tenth of it. */
export const MOST_BYTES = 1024 * 1024;

/** What reading a camp file as JSON says about it. */
export type CampCheck =
  | { readonly ok: true; readonly id: string; readonly title: string; readonly date: string }
  | { readonly ok: false; readonly troubles: readonly FileTrouble[] };

export interface FileTrouble {
  readonly code: string;
  readonly path: string;
  readonly found: string;
  readonly wanted: string;
}

export interface CampRoutes {
  readonly state: StoreState;
  readonly checkCamp: (file: string) => CampCheck;
  readonly now: () => Date;
}

/** `GET /`, `GET /:id`, `PUT /:id`. */
export function campRoutes({ state, checkCamp, now }: CampRoutes): Hono {
  const routes = new Hono();
  routes.use(async (context, next) => {
    if (state.kind === 'sqlite') return next();
    return refuse(context, 503, {
      code: 'SERVER_STORE_MISSING',
      found: state.why,
      wanted: 'a store for camps on this computer',
      next: 'Camps stay in the browser. Use “Save camp file” to take one elsewhere.',
    });
  });
  if (state.kind === 'none') return routes;
  const { store } = state;
  routes.get('/', (context) => context.json({ camps: store.list() }));
  routes.get('/:id', (context) => {
    const version = versionFrom(context.req.query('version'));
    const file = Number.isNaN(version) ? undefined : store.read(context.req.param('id'), version);
    if (file !== undefined) return context.body(file, 200, { 'Content-Type': 'application/json' });
    return refuse(context, 404, {
      code: 'SERVER_CAMP_UNKNOWN',
      found: context.req.path,
      wanted: 'a camp that was kept on this computer',
      next: 'Look under “Camps” for the ones that were.',
    });
  });
  routes.put('/:id', limitBody(), async (context) => {
    if (!/^application\/json\b/i.test(context.req.header('content-type') ?? '')) {
      return refuse(context, 415, {
        code: 'SERVER_NOT_JSON',
        found: context.req.header('content-type') ?? 'no content type',
        wanted: 'application/json',
        next: 'Send the camp file as JSON.',
      });
    }
    const file = await context.req.text();
    const check = checkCamp(file);
    const id = context.req.param('id');
    if (!check.ok) return context.json(unreadable(check.troubles), 422);
    if (check.id !== id) {
      return refuse(context, 422, {
        code: 'SERVER_CAMP_OTHER_ID',
        found: check.id,
        wanted: id,
        next: 'Send the camp under its own id.',
      });
    }
    const { title, date } = check;
    return context.json(store.keep({ id, title, date, file, keptAt: now().toISOString() }));
  });
  return routes;
}

const versionFrom = (query: string | undefined): number | undefined =>
  query === undefined ? undefined : /^[1-9]\d{0,8}$/.test(query) ? Number(query) : Number.NaN;

const limitBody = () =>
  bodyLimit({
    maxSize: MOST_BYTES,
    onError: (context) =>
      refuse(context, 413, {
        code: 'SERVER_FILE_TOO_BIG',
        found: 'a camp file over 1 MiB',
        wanted: 'at most 1 MiB',
        next: 'Take out what does not belong in the camp.',
      }),
  });

function unreadable(troubles: readonly FileTrouble[]) {
  const first = troubles[0];
  return {
    code: first?.code ?? 'SERVER_CAMP_UNREADABLE',
    found: first ? `${first.path}: ${first.found}` : 'a file that is no camp',
    wanted: first?.wanted ?? 'a camp file',
    next: 'Mend the named place and keep it again; nothing was changed.',
    troubles,
  };
}
