// Keeps one whole version of the app in the browser, so that it opens without a network. A page
// never gets files of two versions: a new version waits until the cook takes it.

declare const self: ServiceWorkerGlobalScope;
/** Filled in by the build: every file of this version, and a name made from their contents. */
declare const SHELL_FILES: readonly string[];
declare const SHELL_VERSION: string;

const SHELL = `emberwright-${SHELL_VERSION}`;

self.addEventListener('install', (event) => {
  event.waitUntil(caches.open(SHELL).then((shell) => shell.addAll([...SHELL_FILES])));
});

self.addEventListener('activate', (event) => {
  event.waitUntil(dropOlderVersions().then(() => self.clients.claim()));
});

self.addEventListener('message', ({ data }) => {
  if (data === 'take-over') void self.skipWaiting();
});

self.addEventListener('fetch', (event) => {
  const { request } = event;
  const url = new URL(request.url);
  const isOurs = url.origin === self.location.origin && !url.pathname.startsWith('/api/');
  if (request.method === 'GET' && isOurs) event.respondWith(fromShell(request));
});

/** Any screen is the same page; a file that isn't of this version is asked for as usual. */
async function fromShell(request: Request): Promise<Response> {
  const shell = await caches.open(SHELL);
  const kept = await shell.match(request.mode === 'navigate' ? '/' : request);
  return kept ?? fetch(request);
}

async function dropOlderVersions(): Promise<void> {
  const names = await caches.keys();
  const older = names.filter((name) => name.startsWith('emberwright-') && name !== SHELL);
  await Promise.all(older.map((name) => caches.delete(name)));
}

// A module to the compiler, so that its `self` is its own; the build makes it a plain script.
export {};
