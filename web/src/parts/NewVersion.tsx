// Offline use and new versions: the service worker is started once the page is up; a version that
// waits is offered, never forced. Everything typed is kept at once, so nothing is lost by taking it.

import { useEffect, useState } from 'preact/hooks';

export function NewVersion() {
  const waiting = useWaitingVersion();
  if (waiting === undefined) return null;
  return (
    <p className="word no-print" role="status">
      A newer Emberwright is ready.{' '}
      <button
        type="button"
        className="button is-quiet"
        onClick={() => waiting.postMessage('take-over')}
      >
        Use it now
      </button>
    </p>
  );
}

function useWaitingVersion(): ServiceWorker | undefined {
  const [waiting, setWaiting] = useState<ServiceWorker>();
  useEffect(() => {
    // Absent on plain http from another computer: the app then works while its page stays open.
    const { serviceWorker } = navigator;
    if (serviceWorker === undefined || !import.meta.env.PROD) return;
    const hadOne = serviceWorker.controller !== null;
    const reload = () => hadOne && location.reload();
    serviceWorker.addEventListener('controllerchange', reload);
    serviceWorker.register('/service-worker.js').then(
      (registration) => watch(registration, setWaiting),
      () => undefined,
    );
    return () => serviceWorker.removeEventListener('controllerchange', reload);
  }, []);
  return waiting;
}

function watch(
  registration: ServiceWorkerRegistration,
  onWaiting: (worker: ServiceWorker) => void,
): void {
  const look = () => {
    const isUpdate = navigator.serviceWorker.controller !== null;
    if (registration.waiting !== null && isUpdate) onWaiting(registration.waiting);
  };
  look();
  registration.addEventListener('updatefound', () => {
    registration.installing?.addEventListener('statechange', look);
  });
}
