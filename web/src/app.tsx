// The frame of every screen, and which screen stands at which address.

import { Link, Route, Switch, useLocation } from 'wouter-preact';
import { type BreadDoorName, breadDoors } from './bread/doors.ts';
import { type DoorName, doors } from './fire/doors.ts';
import { later } from './parts/later.tsx';
import { Mark } from './parts/Mark.tsx';
import { NewVersion } from './parts/NewVersion.tsx';
import { Page } from './parts/Page.tsx';
import { ReaderProvider } from './reader/ReaderContext.tsx';
import { ReadingPanel } from './reader/ReadingPanel.tsx';
import { ShelfProvider } from './storage/ShelfContext.tsx';
import { TonightPage } from './tonight/TonightPage.tsx';

const screen = <Props extends object>(load: Parameters<typeof later<Props>>[0]) =>
  later(load, 'computing is-busy');

// The front door opens without them; the service worker keeps them for offline use all the same.
const BenchPage = screen(() => import('./bench/BenchPage.tsx'));
const BreadPage = screen(() => import('./bread/BreadPage.tsx'));
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
        {({ door }) => <FirePage door={isDoor(door) ? door : 'what-now'} />}
      </Route>
      <Route path="/dough/:door?">
        {({ door }) => <BreadPage door={isBreadDoor(door) ? door : 'leaven'} />}
      </Route>
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

const isDoor = (door: string | undefined): door is DoorName =>
  (doors as readonly (string | undefined)[]).includes(door);

const isBreadDoor = (door: string | undefined): door is BreadDoorName =>
  (breadDoors as readonly (string | undefined)[]).includes(door);

function Masthead() {
  const [path] = useLocation();
  const isTonight = path === '/';
  const isFire = path.startsWith('/fire');
  const isDough = path.startsWith('/dough');
  return (
    <header className="masthead-rule">
      <div className="masthead">
        <Link href="/" className="wordmark">
          <Mark />
          <span>Emberwright</span>
        </Link>
        <nav aria-label="Screens">
          <ul>
            <li>
              <Link href="/" aria-current={isTonight ? 'page' : undefined}>
                Tonight
              </Link>
            </li>
            <li>
              <Link href="/fire" aria-current={isFire ? 'page' : undefined}>
                Fire
              </Link>
            </li>
            <li>
              <Link href="/dough" aria-current={isDough ? 'page' : undefined}>
                Dough
              </Link>
            </li>
            <li>
              <Link
                href="/camps"
                aria-current={isTonight || isFire || isDough ? undefined : 'page'}
              >
                Camps
              </Link>
            </li>
          </ul>
        </nav>
        <ReadingPanel />
      </div>
    </header>
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
