// The checker's word on ovens: in one place at a time, as long as planned, wiped between dishes,
// loaded and emptied by somebody, pins kept.

import type { DaySheet, Job, OvenSpan, TimetableRequest, Violation } from './day-sheet.ts';

export function ovenRules(request: TimetableRequest, sheet: DaySheet): readonly Violation[] {
  return [
    ...onePlaceAtATime(sheet),
    ...oneActionAtATime(sheet),
    ...brownedInTheOpen(request, sheet),
    ...greasedBeforeItIsIn(sheet),
    ...request.dishes.flatMap((work) => work.loads.flatMap(({ load }) => loadJobs(sheet, load.id))),
    ...cookedLongEnough(request, sheet),
    ...wipedBetween(request, sheet),
    ...pinsKept(request, sheet),
  ];
}

/** A load is in its oven from loading, or coals on, to taking out, and a pot until served. */
function onePlaceAtATime(sheet: DaySheet): readonly Violation[] {
  return sheet.spans.flatMap((span, at) =>
    sheet.spans.slice(at + 1).flatMap((other) => {
      const isApart = span.to <= other.from || other.to <= span.from;
      if (span.oven !== other.oven || isApart) return [];
      const jobs = [span.load, other.load];
      return [{ rule: 'oven-in-one-place', jobs, found: other.from, wanted: span.to }];
    }),
  );
}

/** One pair of hands at one oven, but for a job that two do together. */
function oneActionAtATime(sheet: DaySheet): readonly Violation[] {
  const manned = sheet.jobs.filter((job) => job.oven !== undefined && job.hands.length > 0);
  return manned.flatMap((job, at) =>
    manned.slice(at + 1).flatMap((other) => {
      const isApart = other.end <= job.start || job.end <= other.start;
      if (other.oven !== job.oven || isApart) return [];
      const jobs = [job.id, other.id];
      return [{ rule: 'one-action-on-an-oven', jobs, found: other.start, wanted: job.end }];
    }),
  );
}

/** While a pot is browned with its lid off no coals lie above: they come when browning is over. */
function brownedInTheOpen(request: TimetableRequest, sheet: DaySheet): readonly Violation[] {
  const loads = request.dishes.flatMap((work) => work.loads);
  return loads.flatMap(({ load, coals }) => {
    if (coals.browning === undefined) return [];
    const own = sheet.jobs.filter((job) => job.load === load.id);
    const wanted = Math.max(0, ...own.filter((j) => j.kind === 'brown').map((job) => job.end));
    const lids = own.filter((job) => job.kind === 'add-coals' && Number(job.values.above) > 0);
    return lids.flatMap((job) =>
      job.start >= wanted
        ? []
        : [{ rule: 'browned-in-the-open', jobs: [job.id], found: job.start, wanted }],
    );
  });
}

/** An oven is greased and lined before anything is in it. */
function greasedBeforeItIsIn(sheet: DaySheet): readonly Violation[] {
  return sheet.jobs.flatMap((grease) => {
    if (grease.kind !== 'grease') return [];
    const load = sheet.jobs.find((job) => job.kind === 'load' && job.load === grease.load);
    if (load === undefined || grease.end <= load.start) return [];
    const jobs = [grease.id, load.id];
    return [{ rule: 'greased-first', jobs, found: grease.end, wanted: load.start }];
  });
}

const NEEDED: readonly Job['kind'][] = ['grease', 'lay-coals', 'load', 'take-out'];

function loadJobs(sheet: DaySheet, load: string): readonly Violation[] {
  return NEEDED.flatMap((kind) => {
    const found = sheet.jobs.filter((job) => job.load === load && job.kind === kind).length;
    return found === 1 ? [] : [{ rule: `${kind}-once`, jobs: [load], found, wanted: 1 }];
  });
}

/** Bread may overrun two minutes, a pot ten; nothing comes out early. */
function cookedLongEnough(request: TimetableRequest, sheet: DaySheet): readonly Violation[] {
  return request.dishes.flatMap((work) =>
    work.loads.flatMap(({ load, coals }) => {
      const spans = sheet.spans.filter((span) => span.load === load.id);
      const cooking = spans.find((span) => span.state === 'cooking');
      const plan = coals.outMinute - coals.loadInMinute;
      const wanted = Math.round(work.dish.pins.bakeMinutes ?? plan);
      const found = cooking === undefined ? 0 : cooking.to - cooking.from;
      const isPot = load.shape === 'pot' || work.recipe.method === 'simmer';
      const over = work.dish.pins.bakeMinutes !== undefined ? 0 : isPot ? 10 : 2;
      if (wanted - 1 <= found && found <= wanted + over + 1) return [];
      return [{ rule: 'minutes-in-the-oven', jobs: [load.id], found, wanted }];
    }),
  );
}

function wipedBetween(request: TimetableRequest, sheet: DaySheet): readonly Violation[] {
  return request.camp.ovens.flatMap((oven) => {
    const loads = loadSpans(sheet.spans.filter((span) => span.oven === oven.id));
    return loads.slice(1).flatMap((next, at) => {
      const before = loads[at]!;
      const between = (kind: Job['kind']) =>
        sheet.jobs.some(
          (job) =>
            job.oven === oven.id &&
            job.kind === kind &&
            before.to <= job.start &&
            job.end <= next.from + LAYING_MINUTES,
        );
      if (between('wipe-oven') && between('grease')) return [];
      const jobs = [before.load, next.load];
      return [{ rule: 'wiped-and-greased', jobs, found: 'none', wanted: 'wipe-oven, grease' }];
    });
  });
}

/** Spans start with coals on; laying itself lies just before. */
const LAYING_MINUTES = 0;

function loadSpans(spans: readonly OvenSpan[]) {
  const byLoad = new Map<string, { load: string; from: number; to: number }>();
  for (const { load, from, to } of spans) {
    const known = byLoad.get(load) ?? { load, from, to };
    byLoad.set(load, { load, from: Math.min(known.from, from), to: Math.max(known.to, to) });
  }
  return [...byLoad.values()].toSorted((a, b) => a.from - b.from);
}

function pinsKept(request: TimetableRequest, sheet: DaySheet): readonly Violation[] {
  return request.dishes.flatMap(({ dish, loads }) => {
    const violations: Violation[] = [];
    const own = sheet.jobs.filter((job) => job.dish === dish.id && job.load !== undefined);
    const first = own.find((job) => job.kind === 'lay-coals' && job.load === loads[0]?.load.id);
    const { coalsOnAt, hand } = dish.pins;
    if (coalsOnAt !== undefined && first !== undefined && first.end !== Math.round(coalsOnAt)) {
      const jobs = [first.id];
      violations.push({ rule: 'pinned-coals', jobs, found: first.end, wanted: coalsOnAt });
    }
    if (hand === undefined || !request.camp.hands.some((each) => each.id === hand)) {
      return violations;
    }
    for (const job of own) {
      const isOther = job.kind === 'wipe-oven' || job.hands.length === 0;
      if (isOther || job.hands.includes(hand)) continue;
      const found = job.hands.join(' ');
      violations.push({ rule: 'pinned-hand', jobs: [job.id], found, wanted: hand });
    }
    return violations;
  });
}
