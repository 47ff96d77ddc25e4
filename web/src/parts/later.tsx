// A part of the app that is fetched when it is first drawn. The service worker keeps all of them, so
// it comes offline too.

import type { ComponentType } from 'preact';
import { useEffect, useState } from 'preact/hooks';

interface Wanted<Props> {
  readonly load: () => Promise<{ readonly default: ComponentType<Props> }>;
  /** Of the word that stands there until the part has come. */
  readonly waitingClass: string;
  /** Once fetched, drawn at once wherever it stands. */
  part?: ComponentType<Props>;
}

/** Draws what the module exports by default. */
export function later<Props extends object>(
  load: Wanted<Props>['load'],
  waitingClass: string,
): (props: Props) => ReturnType<typeof Later<Props>> {
  const wanted: Wanted<Props> = { load, waitingClass };
  return (props) => <Later wanted={wanted} given={props} />;
}

interface LaterProps<Props> {
  readonly wanted: Wanted<Props>;
  readonly given: Props;
}

function Later<Props extends object>({ wanted, given }: LaterProps<Props>) {
  const [isMissing, setMissing] = useState(false);
  const [, setFetched] = useState(wanted.part !== undefined);
  useEffect(() => {
    if (wanted.part !== undefined) return;
    const here = (module: { readonly default: ComponentType<Props> }) => {
      wanted.part = module.default;
      setFetched(true);
    };
    wanted.load().then(here, () => setMissing(true));
  }, [wanted]);
  const Part = wanted.part;
  if (Part !== undefined) return <Part {...given} />;
  if (isMissing) return <p role="alert">{MISSING}</p>;
  return <p className={wanted.waitingClass}>Opening</p>;
}

const MISSING = 'This part did not come over the network. Open it again when there is one.';
