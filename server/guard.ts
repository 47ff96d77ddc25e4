// Who may talk to the server: pages that it served itself. A page from elsewhere, open in the same
// browser, must neither read kept camps nor write any.

import { isIP } from 'node:net';
import { hostname } from 'node:os';
import type { MiddlewareHandler } from 'hono';
import { secureHeaders } from 'hono/secure-headers';
import { refuse } from './trouble.ts';

/** Everything from this server and nothing from anywhere else; no HSTS, for the plain http tier. */
export const pageHeaders = (): MiddlewareHandler =>
  secureHeaders({
    contentSecurityPolicy: {
      defaultSrc: ["'self'"],
      baseUri: ["'none'"],
      objectSrc: ["'none'"],
      formAction: ["'self'"],
      frameAncestors: ["'none'"],
    },
    strictTransportSecurity: false,
    xFrameOptions: 'DENY',
    referrerPolicy: 'no-referrer',
    permissionsPolicy: { camera: [], microphone: [], geolocation: ['self'], payment: [] },
  });

/** Refuses requests sent to a name that isn't this computer's (a rebound DNS name). */
export const onlyOurHost =
  (isOnNetwork: boolean): MiddlewareHandler =>
  async (context, next) => {
    const host = hostNameOf(context.req.header('host') ?? new URL(context.req.url).host);
    if (isOurHost(host, isOnNetwork)) return next();
    return refuse(context, 403, {
      code: 'SERVER_HOST_UNKNOWN',
      found: host,
      wanted: 'the address that the server printed when it started',
      next: 'Open that address in the browser.',
    });
  };

/** Refuses writing from a page that this server did not serve. */
export const onlyOurPages = (): MiddlewareHandler => async (context, next) => {
  if (context.req.method === 'GET' || context.req.method === 'HEAD') return next();
  const origin = context.req.header('origin');
  const host = context.req.header('host') ?? new URL(context.req.url).host;
  if (origin !== undefined && hostOfOrigin(origin) === host) return next();
  return refuse(context, 403, {
    code: 'SERVER_ORIGIN_FOREIGN',
    found: origin ?? 'no origin',
    wanted: `a page of ${host}`,
    next: 'Keep the camp from the app that this server serves.',
  });
};

function hostOfOrigin(origin: string): string | undefined {
  try {
    return new URL(origin).host;
  } catch {
    return undefined;
  }
}

function hostNameOf(host: string): string {
  return host
    .replace(/:\d+$/, '')
    .replace(/^\[|\]$/g, '')
    .toLowerCase();
}

function isOurHost(host: string, isOnNetwork: boolean): boolean {
  if (host === 'localhost' || host === '127.0.0.1' || host === '::1') return true;
  if (!isOnNetwork) return false;
  const ownName = hostname().toLowerCase();
  return isIP(host) !== 0 || host === ownName || host === `${ownName}.local`;
}
