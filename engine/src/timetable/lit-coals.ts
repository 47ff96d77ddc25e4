// How many coals are lit at each minute that something changes: waiting in chimneys or the feeder's
// pile, and lying on ovens. Coals on an oven are counted until its load is out or they are past use.

import { clockMinutes } from '../quantity/unit.ts';
import type { Job, Lighting, LitCoals, TimetableRequest } from './day-sheet.ts';

export function litCoals(
  request: TimetableRequest,
  jobs: readonly Job[],
  lightings: readonly Lighting[],
): readonly LitCoals[] {
  const waiting = new Map<number, number>();
  const onOvens = new Map<number, number>();
  const change = (map: Map<number, number>, at: number, by: number) =>
    map.set(at, (map.get(at) ?? 0) + by);
  const jobOf = new Map(jobs.map((job) => [job.id, job]));
  const outOf = new Map(
    jobs.flatMap((job) => (job.kind === 'take-out' ? [[job.load ?? '', job.start] as const] : [])),
  );
  for (const lighting of lightings) {
    for (const use of lighting.uses) {
      const job = jobOf.get(use.job);
      if (job === undefined) continue;
      change(waiting, lighting.readyAt, use.coals);
      change(waiting, job.start, -use.coals);
      change(onOvens, job.start, use.coals);
      const spent = job.start + request.coalLife;
      const gone = Math.min(spent, outOf.get(job.load ?? '') ?? spent);
      // In a plan that breaks its order the load may be out before its coals are laid.
      change(onOvens, Math.max(job.start, gone), -use.coals);
    }
  }
  return running(waiting, onOvens);
}

function running(
  waiting: ReadonlyMap<number, number>,
  onOvens: ReadonlyMap<number, number>,
): readonly LitCoals[] {
  const times = [...new Set([...waiting.keys(), ...onOvens.keys()])].sort((a, b) => a - b);
  let inWait = 0;
  let onOven = 0;
  return times.map((at) => {
    inWait += waiting.get(at) ?? 0;
    onOven += onOvens.get(at) ?? 0;
    return { at: clockMinutes(at), waiting: inWait, onOvens: onOven };
  });
}
