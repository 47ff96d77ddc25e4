// One 40-minute bake of a loaf: the engine's implicit graded slices beside the same equations by plain
// explicit finite volumes (bake-explicit.ts). The reference is the explicit answer run finer until it
// stands still; the explicit grid that is timed is the coarsest that is as near to it as the engine is.
import assert from 'node:assert/strict';
import { bakeInside, insidePhysics, minuteReached } from '../engine/src/bake/inside/index.ts';
import { pascals } from '../engine/src/quantity/unit.ts';
import { type PlainAnswer, type PlainLoaf, plainBake } from './bake-explicit.ts';
import { timed } from './measure.ts';

const MINUTES = 40;
const LEAST_RATIO = 20;
const MOST_MILLISECONDS = 10;
/** The two finest explicit runs stand this near to each other. */
const STILL = 0.01;
/** How near ours must be to the reference. */
const NEAR = 0.03;
const COARSE_FIRST = [20, 28, 40, 56, 80];
const FINE = [80, 113];

const LOAF: PlainLoaf = {
  metres: 0.06,
  density: 400,
  water: 0.75,
  rise: 1.25,
  startKelvin: 295.15,
  contact: 60,
  ovenKelvin: 477.15,
  film: 5,
  lidKelvin: 508.15,
  emissivity: 0.9,
  steamShare: 0.5,
};

type Answer = Omit<PlainAnswer, 'steps'>;

export function bakeLoafBench(): void {
  const physics = insidePhysics(pascals(101_325));
  const [coarse, fine] = FINE.map((count) => plainBake(LOAF, physics, { count, minutes: MINUTES }));
  assert.ok(coarse && fine);
  const still = apart(coarse, fine);
  const reference = extrapolated(coarse, fine);
  assert.ok(still < STILL, `the reference stands still: ${still}`);
  let answer: Answer = coarse;
  const ours = timed(() => byEngine(physics), {
    runs: 40,
    warmUp: 20,
    consume: (found) => {
      answer = found;
    },
  });
  const near = apart(answer, reference);
  const count = COARSE_FIRST.find(
    (each) => apart(plainBake(LOAF, physics, { count: each, minutes: MINUTES }), reference) <= near,
  );
  const equal = count ?? COARSE_FIRST.at(-1)!;
  let theirs: PlainAnswer = coarse;
  const plain = timed(() => plainBake(LOAF, physics, { count: equal, minutes: MINUTES }), {
    runs: 3,
    warmUp: 1,
    consume: (found) => {
      theirs = found;
    },
  });
  const ratio = plain.medianMilliseconds / ours.medianMilliseconds;
  process.stdout.write(
    `  ours ${ours.medianMilliseconds.toFixed(2)} ms (worst ${ours.worstMilliseconds.toFixed(2)}), explicit ${plain.medianMilliseconds.toFixed(0)} ms with ${equal} slices and ${theirs.steps} steps: ratio ${ratio.toFixed(0)}\n` +
      `  off the reference: ours ${percent(near)}, explicit ${percent(apart(theirs, reference))}; its two finest runs ${percent(still)} apart\n` +
      `  through ${answer.throughMinute.toFixed(2)} min (${reference.throughMinute.toFixed(2)}), loss ${percent(answer.loss)} (${percent(reference.loss)}), top ${answer.topColour.toFixed(1)} (${reference.topColour.toFixed(1)})\n`,
  );
  assert.ok(near < NEAR, `within ${percent(NEAR)} of the reference`);
  assert.ok(ours.medianMilliseconds <= MOST_MILLISECONDS, `at most ${MOST_MILLISECONDS} ms`);
  assert.ok(ratio >= LEAST_RATIO, `at least ${LEAST_RATIO} times faster`);
}

const percent = (share: number) => `${(100 * share).toFixed(2)} %`;

/** Largest of the three misses: minutes, loss and colour, each over the whole. */
const apart = (one: Answer, other: Answer) =>
  Math.max(
    Math.abs(one.throughMinute / other.throughMinute - 1),
    Math.abs(one.loss / other.loss - 1),
    Math.abs(one.topColour / other.topColour - 1),
  );

/** Misses of even slices fall with their width: the finer run's is taken off by the ratio of widths. */
function extrapolated(coarse: Answer, fine: Answer): Answer {
  const [few, many] = FINE as [number, number];
  const beyond = (one: number, other: number) => other + ((other - one) * few) / (many - few);
  return {
    throughMinute: beyond(coarse.throughMinute, fine.throughMinute),
    loss: beyond(coarse.loss, fine.loss),
    topColour: beyond(coarse.topColour, fine.topColour),
  };
}

function byEngine(physics: ReturnType<typeof insidePhysics>): Answer {
  const run = bakeInside({
    body: { shape: 'slab', ...LOAF },
    physics,
    faces: (_, bottom, top) => {
      bottom.contact = LOAF.contact;
      bottom.contactKelvin = LOAF.ovenKelvin;
      top.film = LOAF.film;
      top.airKelvin = LOAF.ovenKelvin;
      top.emissivity = LOAF.emissivity;
      top.shiningFourth = LOAF.lidKelvin ** 4;
      top.steamShare = LOAF.steamShare;
      top.isOpen = true;
    },
    minutes: MINUTES,
  });
  const last = run.moments.at(-1);
  assert.ok(last);
  return {
    throughMinute: minuteReached(run.moments, (now) => now.coreKelvin, 363.15) ?? Number.NaN,
    loss: last.loss,
    topColour: last.topColour,
  };
}
