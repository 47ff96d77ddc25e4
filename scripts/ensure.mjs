// What every first command shares: the Node floor, and installing what is missing, saying so.
// Plain Node, no packages, no shell habits: it runs before anything is installed.
import { spawnSync } from 'node:child_process';
import { createHash } from 'node:crypto';
import { existsSync, readFileSync, statSync, writeFileSync } from 'node:fs';
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

/** Runs npm without a shell: by the npm that started us, or the one beside this Node. */
function runNpm(parameters) {
  const besideNode = [
    join(dirname(process.execPath), 'node_modules', 'npm', 'bin', 'npm-cli.js'),
    join(dirname(process.execPath), '..', 'lib', 'node_modules', 'npm', 'bin', 'npm-cli.js'),
  ];
  const npm = [process.env.npm_execpath, ...besideNode].find((path) => path && existsSync(path));
  if (npm) return run(process.execPath, [npm, ...parameters]);
  const isWindows = process.platform === 'win32';
  return run(isWindows ? 'npm.cmd' : 'npm', parameters, { shell: isWindows });
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
export function ensureInstalled() {
  if (isInstalled()) return;
  say('Installing what Emberwright needs (node modules; a few minutes the first time) ...');
  const code = runNpm(['ci', '--no-audit', '--no-fund']);
  if (code !== 0) {
    process.stderr.write(
      'Could not install the node modules. Check the network, then run the same command again.\n',
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
