// What every first command shares: the Node floor, and installing what is missing, saying so.
// Plain Node, no packages, no shell habits: it runs before anything is installed.
import { spawn, spawnSync } from 'node:child_process';
import { createHash } from 'node:crypto';
import { existsSync, mkdirSync, readFileSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';

export const root = dirname(dirname(fileURLToPath(import.meta.url)));
const LEAST_NODE = 20;

export function say(text) {
  process.stdout.write(`${text}\n`);
}

/** What is said to a Node that is too old to run us; undefined for one that is not. */
export function nodeComplaint(version) {
  if (LEAST_NODE <= Number(version.split('.')[0])) return undefined;
  return (
    `Emberwright needs Node ${LEAST_NODE} or newer; this is ${version}. ` +
    'Install a newer Node and run the same command again.'
  );
}

/** Ends the process with a sentence if this Node is too old to run us. */
export function ensureNode() {
  const complaint = nodeComplaint(process.versions.node);
  if (complaint === undefined) return;
  process.stderr.write(`${complaint}\n`);
  process.exit(1);
}

/** Runs a program and returns its exit code; its output goes straight through. */
export function run(program, parameters, options = {}) {
  const result = spawnSync(program, parameters, { cwd: root, stdio: 'inherit', ...options });
  if (result.error) process.stderr.write(`${program}: ${result.error.message}\n`);
  return result.status ?? 1;
}

/** Runs npm without a shell, by the npm that started us or the one beside this Node; says how long it takes. */
function runNpm(parameters) {
  const besideNode = [
    join(dirname(process.execPath), 'node_modules', 'npm', 'bin', 'npm-cli.js'),
    join(dirname(process.execPath), '..', 'lib', 'node_modules', 'npm', 'bin', 'npm-cli.js'),
  ];
  const npm = [process.env.npm_execpath, ...besideNode].find((path) => path && existsSync(path));
  const isWindows = process.platform === 'win32';
  const child = npm
    ? spawn(process.execPath, [npm, ...parameters], { cwd: root, stdio: 'inherit' })
    : spawn(isWindows ? 'npm.cmd' : 'npm', parameters, {
        cwd: root,
        stdio: 'inherit',
        shell: isWindows,
      });
  const since = Date.now();
  const ticking = setInterval(() => {
    say(
      `  still installing, ${Math.round((Date.now() - since) / 1000)} s; the store is compiled once ...`,
    );
  }, 20_000);
  return new Promise((resolve) => {
    child.on('error', (error) => {
      process.stderr.write(`npm: ${error.message}\n`);
      resolve(1);
    });
    child.on('close', (code) => resolve(code ?? 1));
  }).finally(() => clearInterval(ticking));
}

const lock = join(root, '.build', 'installing');

/** True while another of our commands installs: two at once would spoil each other's node modules. */
function isInstallingElsewhere() {
  if (!existsSync(lock)) return false;
  try {
    process.kill(Number(readFileSync(lock, 'utf8')), 0);
    return true;
  } catch {
    return false;
  }
}

async function waitForOtherInstall() {
  if (!isInstallingElsewhere()) return;
  say('Another Emberwright command is installing; waiting for it ...');
  while (isInstallingElsewhere()) await new Promise((resolve) => setTimeout(resolve, 500));
}

const stamp = join(root, 'node_modules', '.emberwright-installed');
const lockHash = () =>
  createHash('sha256')
    .update(readFileSync(join(root, 'package-lock.json')))
    .digest('hex');
const npmsOwnRecord = join(root, 'node_modules', '.package-lock.json');

function isInstalled() {
  if (existsSync(stamp)) return readFileSync(stamp, 'utf8') === lockHash();
  // Somebody ran npm by hand: trust it if it is not older than the lock file.
  if (!existsSync(npmsOwnRecord)) return false;
  if (statSync(npmsOwnRecord).mtimeMs < statSync(join(root, 'package-lock.json')).mtimeMs)
    return false;
  writeFileSync(stamp, lockHash());
  return true;
}

/** Installs node modules if the lock file says other than what is there. */
export async function ensureInstalled() {
  await waitForOtherInstall();
  if (isInstalled()) return;
  say('Installing what Emberwright needs (node modules; a few minutes the first time) ...');
  mkdirSync(dirname(lock), { recursive: true });
  writeFileSync(lock, String(process.pid));
  const code = await runNpm(['ci', '--no-audit', '--no-fund']);
  rmSync(lock, { force: true });
  if (code !== 0) {
    process.stderr.write(
      'Could not install the node modules: the lines above say why. Most often the network is missing; ' +
        'then run the same command again.\n',
    );
    process.exit(code);
  }
  writeFileSync(stamp, lockHash());
}

/** A program of an installed package, run by this Node. */
export function runTool(path, parameters, options) {
  return run(
    process.execPath,
    [join(root, 'node_modules', ...path.split('/')), ...parameters],
    options,
  );
}
