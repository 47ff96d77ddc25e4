// How a time is taken: warm up, repeat, report the median, and consume the result.

export interface Timing {
  readonly medianMilliseconds: number;
  readonly worstMilliseconds: number;
  readonly runs: number;
}

/** Median and worst time of `work`; `consume` sees each result, so that nothing is optimised away. */
export function timed<Result>(
  work: () => Result,
  options: {
    readonly runs: number;
    readonly warmUp: number;
    readonly consume: (result: Result) => void;
  },
): Timing {
  for (let run = 0; run < options.warmUp; run += 1) options.consume(work());
  const times: number[] = [];
  for (let run = 0; run < options.runs; run += 1) {
    const start = performance.now();
    const result = work();
    times.push(performance.now() - start);
    options.consume(result);
  }
  times.sort((one, other) => one - other);
  return {
    medianMilliseconds: times[Math.floor(times.length / 2)] ?? Number.NaN,
    worstMilliseconds: times.at(-1) ?? Number.NaN,
    runs: times.length,
  };
}

export const milliseconds = (value: number) => `${value.toFixed(1)} ms`;
