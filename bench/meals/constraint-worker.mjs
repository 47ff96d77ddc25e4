// Runs the browser build of the constraint solver in a worker of this process: the worker gets a
// browser's globals, and no `process`, so that it does not look for a program on this machine.
import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { runInThisContext } from 'node:vm';
import { parentPort } from 'node:worker_threads';

const require = createRequire(import.meta.url);
const program = readFileSync(require.resolve('minizinc/minizinc-worker.js'), 'utf8');
const files = {
  'minizinc.wasm': readFileSync(require.resolve('minizinc/minizinc.wasm')),
  'minizinc.data': readFileSync(require.resolve('minizinc/minizinc.data')),
};

Object.defineProperty(globalThis, 'process', { value: undefined, configurable: true });
globalThis.self = globalThis;
globalThis.WorkerGlobalScope = class {};
globalThis.location = { href: 'http://localhost/', pathname: '/' };
globalThis.postMessage = (message) => parentPort.postMessage(message);
globalThis.fetch = async (address) => {
  const name = String(address).split('/').at(-1);
  const type = name.endsWith('.wasm') ? 'application/wasm' : 'application/octet-stream';
  return new Response(files[name], { headers: { 'content-type': type } });
};

const listeners = [];
globalThis.addEventListener = (kind, listener) => {
  if (kind === 'message') listeners.push(listener);
};
const hear = (data) => {
  for (const listener of listeners) listener({ data });
};

runInThisContext(program);
parentPort.on('message', hear);
hear({ wasmURL: 'minizinc.wasm', dataURL: 'minizinc.data' });
