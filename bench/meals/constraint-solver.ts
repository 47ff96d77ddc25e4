// One run of the constraint solver on a model: the best found, and whether it is proven.
import { Worker } from 'node:worker_threads';

export interface Answer {
  /** 'best': proven. 'some': found, not proven. 'none': proven that there is none. 'unknown': gave up. */
  readonly status: 'best' | 'some' | 'none' | 'unknown';
  readonly values: Readonly<Record<string, unknown>> | undefined;
  readonly seconds: number;
}

/** Ends the worker after each run: a second run in one worker breaks off. */
export function solved(model: string, seconds: number): Promise<Answer> {
  const since = performance.now();
  const worker = new Worker(new URL('./constraint-worker.mjs', import.meta.url));
  return new Promise((resolve, reject) => {
    let values: Answer['values'];
    let status = 'UNKNOWN';
    const end = () => {
      clearTimeout(alarm);
      void worker.terminate();
      resolve({
        status: statusOf(status, values),
        values,
        seconds: (performance.now() - since) / 1000,
      });
    };
    const alarm = setTimeout(end, seconds * 1000);
    worker.on('error', reject);
    worker.on('message', (message) => {
      if (message.type === 'ready') worker.postMessage(runOf(model));
      else if (message.type === 'solution') values = message.output.json;
      else if (message.type === 'status') status = message.status;
      else if (message.type === 'error') reject(new Error(JSON.stringify(message).slice(0, 2000)));
      else if (message.type === 'exit') end();
    });
  });
}

const runOf = (model: string) => ({
  jsonStream: true,
  files: { 'model.mzn': model },
  args: ['-i', '--solver', 'chuffed', '-f', '--output-mode', 'json', 'model.mzn'],
});

function statusOf(status: string, values: Answer['values']): Answer['status'] {
  if (status === 'OPTIMAL_SOLUTION') return 'best';
  if (status === 'UNSATISFIABLE') return 'none';
  return values === undefined ? 'unknown' : 'some';
}
