// The checker's word on fire: no heat before the first fire, no coals before their chimneyful has
// ashed over, none past their life, no more chimneys than there are.

import type { DaySheet, Job, Lighting, TimetableRequest, Violation } from './day-sheet.ts';

export function coalRules(request: TimetableRequest, sheet: DaySheet): readonly Violation[] {
  return [
    ...sheet.jobs.flatMap((job) => supplied(request, sheet, job)),
    ...sheet.lightings.flatMap((lighting) => lit(request, sheet, lighting)),
    ...chimneysAtOnce(request, sheet),
    ...firstFire(sheet),
    ...asPlanned(request, sheet),
    ...fireFed(request, sheet),
    ...litAsCounted(sheet),
  ];
}

function supplied(request: TimetableRequest, sheet: DaySheet, job: Job): readonly Violation[] {
  if (job.kind !== 'lay-coals' && job.kind !== 'add-coals') return [];
  const isFed = request.camp.fuel.kind === 'wood-coals';
  const wanted = Math.round(Number(job.values.above) + Number(job.values.below));
  const found = sheet.lightings
    .filter((each) => each.readyAt <= job.start)
    .filter((each) => isFed || job.start - each.readyAt <= request.coalLife)
    .flatMap((each) => each.uses.filter((use) => use.job === job.id))
    .reduce((sum, use) => sum + use.coals, 0);
  return found === wanted ? [] : [{ rule: 'coals-ready', jobs: [job.id], found, wanted }];
}

function lit(request: TimetableRequest, sheet: DaySheet, lighting: Lighting): readonly Violation[] {
  const { fuel, gear } = request.camp;
  const jobs = [lighting.id];
  const violations: Violation[] = [];
  const isHeap = fuel.kind === 'briquettes' && gear.chimneys < 1;
  // A heap has no draught: half as long again (common practice, no source).
  const ashOver = isHeap ? Math.floor(request.ashOver * 1.5) : request.ashOver;
  const least = fuel.kind === 'wood-coals' ? fuel.lead : ashOver;
  const burns = lighting.readyAt - lighting.at;
  if (burns < least) violations.push({ rule: 'ash-over', jobs, found: burns, wanted: least });
  const isOverfull =
    fuel.kind === 'briquettes' && !isHeap && lighting.coals > Math.max(1, gear.chimneyfulCoals);
  if (isOverfull) {
    const { coals: found } = lighting;
    violations.push({ rule: 'chimneyful', jobs, found, wanted: gear.chimneyfulCoals });
  }
  // A dozen draw in a chimney, fewer do not (common practice, no source).
  const draws = Math.min(12, Math.max(1, gear.chimneyfulCoals));
  if (lighting.chimney !== undefined && lighting.coals < draws)
    violations.push({ rule: 'chimney-draws', jobs, found: lighting.coals, wanted: draws });
  const work = sheet.jobs.find((job) => job.id === lighting.id);
  if (work === undefined || work.start !== lighting.at) {
    violations.push({ rule: 'lighting-is-work', jobs, found: 'none', wanted: lighting.at });
  }
  return violations;
}

/** From lighting until ashed over a chimney holds its coals and can hold no others. */
function chimneysAtOnce(request: TimetableRequest, sheet: DaySheet): readonly Violation[] {
  const inChimney = sheet.lightings.filter((each) => each.chimney !== undefined);
  const most = Math.max(1, request.camp.gear.chimneys);
  return inChimney.flatMap((each) => {
    const burning = inChimney.filter((other) => other.at <= each.at && each.at < other.readyAt);
    const isSame = burning.some((other) => other !== each && other.chimney === each.chimney);
    if (burning.length <= most && !isSame && each.chimney! <= most) return [];
    const jobs = burning.map((other) => other.id);
    return [{ rule: 'chimneys', jobs, found: burning.length, wanted: most }];
  });
}

function firstFire(sheet: DaySheet): readonly Violation[] {
  const first = sheet.firstFire ?? Number.POSITIVE_INFINITY;
  return sheet.spans.flatMap((span) => {
    const isHot = span.state !== 'second-rise';
    if (!isHot || span.from >= first) return [];
    return [{ rule: 'no-heat-before-fire', jobs: [span.load], found: span.from, wanted: first }];
  });
}

/** Each turn, check and addition of the coal plan is there, near its minute after coals on. */
function asPlanned(request: TimetableRequest, sheet: DaySheet): readonly Violation[] {
  return request.dishes.flatMap((work) =>
    work.loads.flatMap(({ load, coals }) => {
      const own = sheet.jobs.filter((job) => job.load === load.id);
      const zero = own.find((job) => job.kind === 'lay-coals')?.end ?? Number.NaN;
      const out = own.find((job) => job.kind === 'take-out')?.start ?? Number.NaN;
      const wanted = [
        ...coals.turns.map(({ minute }) => ({ kind: 'turn', minute })),
        ...coals.additions.map(({ minute }) => ({ kind: 'add-coals', minute })),
      ];
      return wanted.flatMap(({ kind, minute }) => {
        if (minute >= out - zero - 5) return [];
        const near = own.find(
          (job) => job.kind === kind && Math.abs(job.start - zero - minute) <= NEAR_MINUTES,
        );
        if (near !== undefined) return [];
        return [{ rule: `${kind}-at-its-minute`, jobs: [load.id], found: 'none', wanted: minute }];
      });
    }),
  );
}

/** A turn or an addition a few minutes off does no harm (common practice, no source). */
const NEAR_MINUTES = 5;

/** A feeder fire gets wood at least every 35 minutes until its last coals are taken (practice). */
function fireFed(request: TimetableRequest, sheet: DaySheet): readonly Violation[] {
  const isSaid = sheet.notices.some((each) => each.code === 'TIMETABLE_FIRE_UNFED');
  if (request.camp.fuel.kind !== 'wood-coals' || isSaid) return [];
  return sheet.lightings.flatMap((lighting) => {
    const lastUse = Math.max(
      ...lighting.uses.map((use) => sheet.jobs.find((job) => job.id === use.job)?.start ?? 0),
    );
    // A fire that was let out and lit anew has its own feedings.
    const fed = sheet.jobs
      .filter((job) => job.kind === 'tend-fire')
      .map((job) => job.start)
      .filter((at) => lighting.at <= at && at <= lastUse);
    const times = [lighting.at, ...fed.toSorted((a, b) => a - b), lastUse];
    return times.slice(1).flatMap((time, at) => {
      const found = time - times[at]!;
      return found <= 42 ? [] : [{ rule: 'fire-fed', jobs: [lighting.id], found, wanted: 35 }];
    });
  });
}

/** Nobody can have fewer than no coals. */
function litAsCounted(sheet: DaySheet): readonly Violation[] {
  return sheet.lit.flatMap(({ at, waiting, onOvens }) => {
    const found = Math.min(waiting, onOvens);
    return found >= 0 ? [] : [{ rule: 'coals-counted', jobs: [], found, wanted: at }];
  });
}
