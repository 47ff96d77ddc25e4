// `npm start`: from a fresh clone to the app in the browser, installing and building what is missing.
import { ensureInstalled, ensureNode, run } from './ensure.mjs';

ensureNode();
await ensureInstalled();
const { build } = await import('./build.mjs');
await build(['web', 'server']);
process.exitCode = run(process.execPath, ['dist/server.mjs', ...process.argv.slice(2)]);
