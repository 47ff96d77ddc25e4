// The inside of a load beside what was measured and printed, badly fitting rows too.

import { type Compared, publishedTimes, rms, smallLoaf, tinLoaf } from './inside-series.ts';
import { practiceMinutes, practiceRows } from './practice-times.ts';

const figures = (all: readonly Compared[], digits: number) =>
  all.map(({ measured, ours }) => `${measured.toFixed(digits)}/${ours.toFixed(digits)}`).join(' ');

export function bakeReport(): string {
  const small = smallLoaf();
  const tin = tinLoaf();
  return [
    'Inside a load: measured / ours',
    '',
    'a. Small free loaf, 190 C (zhang-datta2005). It FITTED the three numbers of bake/inside/tuning.ts, the',
    '   gas left in a pore (physics.ts), and the radius of a ball that stands for it, 19.6 mm: no proof.',
    `   centre C, min 1 to 13 (rms ${rms(small.centre).toFixed(1)} K): ${figures(small.centre, 0)}`,
    `   skin C (rms ${rms(small.skin).toFixed(1)} K): ${figures(small.skin, 0)}`,
    `   water kg/kg dry (rms ${rms(small.moisture).toFixed(3)}): ${figures(small.moisture, 3)}`,
    '',
    'b. Tin loaf, 180 to 205 C (bread-study2025). It JUDGES: of the model nothing is fitted. Its files leave',
    '   out how wide the loaf was and where its probes sat; those are fitted here.',
    `   half-width ${(1000 * tin.halfWidth).toFixed(0)} mm, film ${tin.film} W/(m2 K); miss over the probes' own scatter ${tin.overScatter.toFixed(2)}`,
    ...tin.probes.map(
      ({ place, compared }, index) =>
        `   probe ${index + 5} at ${(100 * place).toFixed(0)} % of the way out (rms ${rms(compared).toFixed(1)} K): ${figures(compared, 0)}`,
    ),
    '   Any size between 38 and 54 mm fits with its own conduction: this series says the shape, not the size.',
    '',
    'c. Printed times (published-bake-times), kitchen oven. Three rows were in view when the model was fitted:',
    '   the two loaves chose between fits of (a) that are alike (steam in the pores a fifth, not whole),',
    '   biscuits set the mark of "brown". Bannock and soda bread judge.',
    `   ${'bread'.padEnd(40)} printed  through  brown  done  loss`,
    ...publishedTimes().map(
      (row) =>
        `   ${row.name.padEnd(40)} ${`${row.least}-${row.most}`.padStart(7)} ${row.through.toFixed(0).padStart(8)} ${row.brown.toFixed(0).padStart(6)} ${row.done.toFixed(0).padStart(5)} ${(100 * row.loss).toFixed(1).padStart(4)} %`,
    ),
    '',
    'd. Loaves and rolls as menu/ lays them, in an oven that stands at its heat (common practice, no source).',
    '   The rounds come out short: 900 g by a tenth or so, 700 g by a quarter. In a cold oven, over coals,',
    '   900 g take about 50 min.',
    ...practiceRows.map(
      (row) =>
        `   ${`${row.name}, ${row.inches} in, ${row.fahrenheit} F`.padEnd(40)} ${`${row.least}-${row.most}`.padStart(7)} ${practiceMinutes(row).toFixed(0).padStart(22)}`,
    ),
    '',
    '   Weight loss of bread is 9 to 10 % (a: 9.1 %; a bakery page: 10 %); ours is lower where crumb and colour',
    '   are reached soon, since no cook waits and nothing falls dry at the sides.',
  ].join('\n');
}
