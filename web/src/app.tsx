// The frame of every screen, and which screen stands at which address.

import { Link, Route, Switch, useLocation } from 'wouter-preact';
import { type BreadDoorName, breadDoors, doughTitles } from './bread/doors.ts';
import { type DoorName, doors } from './fire/doors.ts';
import { later } from './parts/later.tsx';
import { Mark } from './parts/Mark.tsx';
import { NewVersion } from './parts/NewVersion.tsx';
import { Page } from './parts/Page.tsx';
import { type Section, sectionOf } from './parts/section.ts';
import { ReaderProvider } from './reader/ReaderContext.tsx';
import { ReadingPanel } from './reader/ReadingPanel.tsx';
import { ShelfProvider } from './storage/ShelfContext.tsx';
import { TonightPage } from './tonight/TonightPage.tsx';

const screen = <Props extends object>(load: Parameters<typeof later<Props>>[0]) =>
  later(load, 'computing is-busy');

// The front door opens without them; the service worker keeps them for offline use all the same.
const BenchPage = screen(() => import('./bench/BenchPage.tsx'));
const BreadPage = screen(() => import('./bread/BreadPage.tsx'));
const DoughPage = screen(() => import('./bread/DoughPage.tsx'));
const FitsPage = screen(() => import('./bread/FitsPage.tsx'));
const CampPage = screen(() => import('./camp/CampPage.tsx'));
const FirePage = screen(() => import('./fire/FirePage.tsx'));
const PastePage = screen(() => import('./paste/PastePage.tsx'));
const ReplanPage = screen(() => import('./replan/ReplanPage.tsx'));
const CampsPage = screen(() => import('./camps/CampsPage.tsx'));

export function App() {
  return (
    <ReaderProvider>
      <ShelfProvider>
        <a className="skip" href="#main">
          Skip to the screen
        </a>
        <Masthead />
        <div className="page-notice">
          <NewVersion />
        </div>
        <main className="page" id="main" tabIndex={-1}>
          <Screens />
        </main>
        <footer className="colophon">
          Everything is computed and kept in this browser. Nothing leaves it unless you send it.
        </footer>
      </ShelfProvider>
    </ReaderProvider>
  );
}

function Screens() {
  return (
    <Switch>
      <Route path="/" component={TonightPage} />
      <Route path="/camps">
        <CampsPage />
      </Route>
      <Route path="/paste">
        <PastePage />
      </Route>
      <Route path="/fire/:door?">
        {({ door = 'what-now' }) => (isDoor(door) ? <FirePage door={door} /> : <NothingHere />)}
      </Route>
      <Route path="/dough/:door?">{({ door }) => <DoughScreen door={door} />}</Route>
      <Route path="/bench/:shelf/:id/:recipe">
        {({ shelf, id, recipe }) =>
          shelf === 'camp' || shelf === 'demo' ? (
            <BenchPage key={`${shelf}/${id}/${recipe}`} shelf={shelf} id={id} recipe={recipe} />
          ) : (
            <NothingHere />
          )
        }
      </Route>
      <Route path="/slip/:shelf/:id">
        {({ shelf, id }) =>
          shelf === 'camp' || shelf === 'demo' ? (
            <ReplanPage key={`${shelf}/${id}`} shelf={shelf} id={id} />
          ) : (
            <NothingHere />
          )
        }
      </Route>
      <Route path="/:shelf/:id/*?">
        {({ shelf, id }) =>
          shelf === 'camp' || shelf === 'demo' ? (
            <CampPage key={`${shelf}/${id}`} shelf={shelf} id={id} />
          ) : (
            <NothingHere />
          )
        }
      </Route>
      <Route component={NothingHere} />
    </Switch>
  );
}

function DoughScreen({ door }: { readonly door: string | undefined }) {
  if (door === undefined) return <DoughPage />;
  if (door === 'fits') return <FitsPage />;
  return isBreadDoor(door) ? <BreadPage key={door} door={door} /> : <NoSuchQuestion />;
}

const isDoor = (door: string | undefined): door is DoorName =>
  (doors as readonly (string | undefined)[]).includes(door);

const isBreadDoor = (door: string | undefined): door is BreadDoorName =>
  (breadDoors as readonly (string | undefined)[]).includes(door);

const SCREENS: readonly (readonly [Section, string, string])[] = [
  ['tonight', '/', 'Tonight'],
  ['fire', '/fire', 'Fire'],
  ['dough', '/dough', 'Dough'],
  ['camps', '/camps', 'Camps'],
];

function Masthead() {
  const [path] = useLocation();
  const section = sectionOf(path);
  return (
    <header className="masthead-rule">
      <div className="masthead">
        <Link href="/" className="wordmark">
          <Mark />
          <span>Emberwright</span>
        </Link>
        <nav aria-label="Screens">
          <ul>
            {SCREENS.map(([each, href, name]) => (
              <li key={each}>
                <Link href={href} aria-current={currentAt(path, href, section === each)}>
                  {name}
                </Link>
              </li>
            ))}
          </ul>
        </nav>
        <ReadingPanel />
      </div>
    </header>
  );
}

/** The page itself, or a page further in. */
const currentAt = (path: string, href: string, isIn: boolean) =>
  isIn ? (path === href ? 'page' : 'true') : undefined;

function NoSuchQuestion() {
  return (
    <Page title="No such question about a dough">
      <p>
        {Object.entries(doughTitles).map(([door, title]) => (
          <>
            <Link href={`/dough/${door}`}>{title}</Link>
            {' · '}
          </>
        ))}
        <Link href="/dough">the dough alone</Link>.
      </p>
    </Page>
  );
}

function NothingHere() {
  return (
    <Page title="Nothing at this address">
      <p>
        <Link href="/">Tonight: one bread, one oven</Link> or <Link href="/camps">the camps</Link>.
      </p>
    </Page>
  );
}
