// The server as a function from request to answer; main.ts gives it a port.

import { existsSync } from 'node:fs';
import { serveStatic } from '@hono/node-server/serve-static';
import { Hono, type MiddlewareHandler } from 'hono';
import { compress } from 'hono/compress';
import { type CampRoutes, campRoutes } from './camps.ts';
import { onlyOurHost, onlyOurPages, pageHeaders } from './guard.ts';
import { refuse } from './trouble.ts';

export interface AppOptions extends CampRoutes {
  readonly version: string;
  /** The built app: `index.html` and `assets/`. */
  readonly webFolder: string;
  /** True where other computers can reach the server. */
  readonly isOnNetwork: boolean;
}

/** Serves the app, its status and the kept camps. */
export function makeApp(options: AppOptions): Hono {
  const app = new Hono();
  app.use(pageHeaders());
  app.use(onlyOurHost(options.isOnNetwork));
  app.use('/api/*', onlyOurPages(), async (context, next) => {
    await next();
    context.header('Cache-Control', 'no-store');
  });
  app.get('/api/status', (context) => context.json(statusOf(options)));
  app.route('/api/camps', campRoutes(options));
  app.all('/api/*', (context) =>
    refuse(context, 404, {
      code: 'SERVER_NO_SUCH_PATH',
      found: context.req.path,
      wanted: '/api/status or /api/camps',
      next: 'Open the app itself at /.',
    }),
  );
  serveApp(app, options.webFolder);
  app.onError((error, context) => {
    process.stderr.write(`${context.req.method} ${context.req.path}: ${error.message}\n`);
    return refuse(context, 500, {
      code: 'SERVER_FAILED',
      found: 'a fault in the server',
      wanted: 'an answer',
      next: 'Nothing was changed. Try again; the terminal shows what went wrong.',
    });
  });
  return app;
}

function statusOf({ state, version }: AppOptions) {
  const crew =
    'Crew sync is off, other phones don’t follow a camp: to hand one on, save its camp file and open it there.';
  const why = state.kind === 'none' ? `No store on this computer: ${state.why}. ${crew}` : crew;
  return { version, store: state.kind, crewSync: 'off', why };
}

function serveApp(app: Hono, webFolder: string): void {
  if (!existsSync(webFolder)) {
    app.get('*', (context) =>
      refuse(context, 503, {
        code: 'SERVER_APP_NOT_BUILT',
        found: 'no built app beside the server',
        wanted: 'dist/web',
        next: 'Run `npm start`; it builds what is missing.',
      }),
    );
    return;
  }
  app.use(compress(), setCaching);
  app.use('*', serveStatic({ root: webFolder }));
  // A file that isn't there is said to be missing; any other path is a screen of the app.
  app.get('/assets/*', (context) => context.notFound());
  app.get('*', serveStatic({ root: webFolder, path: 'index.html' }));
}

/** Built assets carry their content in their name; everything else is asked for again. */
const setCaching: MiddlewareHandler = async (context, next) => {
  await next();
  const isForever = context.req.path.startsWith('/assets/') && context.res.ok;
  context.header('Cache-Control', isForever ? 'public, max-age=31536000, immutable' : 'no-cache');
};
