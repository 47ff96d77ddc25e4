// The doors that need no set-up: what is printed is what the engine says, in both measures and fuels.

import { describe, expect, it } from 'vitest';
import {
  assumedAge,
  fromFahrenheit,
  isRefusal,
  judgeLayout,
  layCoals,
  minutes,
  type OrRefusal,
  rescue,
  sayFor,
  usualLoad,
  whatCanIDoWith,
} from '#engine';
import { SYMPTOMS } from './commands/what-now.ts';
import { fireOf } from './fire.ts';
import { heard, testShell, UNSAYABLE } from './heard.ts';
import { lyingOf } from './lying.ts';

const command = (...words: readonly string[]) => heard(words);

const held = <Answer>(answer: OrRefusal<Answer>): Answer => {
  if (isRefusal(answer)) throw new Error(answer.code);
  return answer;
};

const TWELVE = ['--oven', '12 in'] as const;
const LAID = ['--above', '17', '--below', '8'] as const;
const LAID_WORDS: ReadonlySet<string> = new Set(LAID);
const WOOD = ['--fuel', 'wood'] as const;
const SHOVELS = ['--above', '2 1/2 shovels', '--below', '1 shovel'] as const;

const names = { camp: { ovens: [], hands: [] }, menu: { dishes: [] } };
const lying = (usual: number) =>
  lyingOf({ oven: '12 in', above: '17', below: '8' }, 'briquettes', usual).coals;

const says = (measures: 'us' | 'metric') => {
  const { oven, difference } = sayFor({ measures, clock: '24', plan: names });
  const plain = (speak: (kelvin: number) => string) => (kelvin: number) =>
    speak(kelvin).replaceAll('\u00a0', ' ');
  return { oven: plain(oven), difference: plain(difference) };
};

function twelve() {
  const fire = held(fireOf({ oven: '12 in' }, testShell));
  const { oven, air, camp, screened } = fire;
  const { place, fuel } = camp;
  const load = usualLoad(fire, 'bake');
  return { oven, air, place, screened, fuel, load, method: 'bake' as const };
}

describe('emberwright coals', () => {
  it('prints the count, the places, the reasons and the minutes of the engine', () => {
    const { method, load, ...spot } = twelve();
    const plan = held(
      layCoals({
        ...spot,
        load,
        loadId: 'food',
        wish: { method, wanted: fromFahrenheit(375), minutes: minutes(40), preheat: true },
        ironAtStart: spot.air.temperature,
        pins: {},
      }),
    );
    const { exit, flat } = command('coals', ...TWELVE, '--heat', '375 F', '--minutes', '40');
    expect(exit).toBe(0);
    expect(flat).toContain('Coals for 375 °F');
    expect(flat).toContain(`${plan.above.pieces} above: `);
    expect(flat).toContain(`${plan.below.pieces} below: `);
    const { above, below } = plan.reckoning.chart!;
    expect(flat).toContain(`the most reprinted chart: ${above} above, ${below} below`);
    for (const { above: more } of plan.additions)
      if (more > 0) expect(flat).toMatch(new RegExp(`add ${more} above`));
    expect(flat).toContain(`${plan.coalsInAll} in all`);
    expect(flat).toMatch(/Food out.*Checks: every count is only a start.*Too cool/);
    expect(flat).toMatch(/Coals never in a tent.*Assumed, change what is wrong: /);
    expect(flat).not.toMatch(UNSAYABLE);
  });

  it('counts shovels and no briquette for wood, and simmers without a heat that is said', () => {
    const wood = command('coals', ...TWELVE, '--heat', '350 F', ...WOOD);
    expect(wood.out).toMatch(/shovels? above/);
    expect(wood.out).not.toMatch(/briquette/i);
    const pot = command('coals', '--oven', '30 cm', '--method', 'simmer', '--minutes', '1 h');
    expect(pot.exit).toBe(0);
    expect(pot.out).toMatch(/°C/);
    expect(`${pot.out}${wood.out}`).not.toMatch(UNSAYABLE);
  });

  it('keeps a count of the cook’s own', () => {
    const { out } = command('coals', ...TWELVE, '--heat', '350 F', ...LAID);
    expect(out).toMatch(/17 above[\s\S]*as you pinned it: 17 above, 8 below/);
  });
});

describe('words at the fire', () => {
  it('put all that is done at one minute into one entry, and say when to light (chimneyMinutes: 15 to 25 min)', () => {
    const { out, flat } = command('coals', ...TWELVE, '--heat', '350 F', '--minutes', '60');
    const steps = out.slice(out.indexOf('When:'), out.indexOf('in all'));
    const whens = [...steps.matchAll(/^ {3}(\S.*?) {2,}\S/gm)].map(([, when]) => when);
    expect(whens.length).toBeGreaterThan(3);
    expect(new Set(whens).size).toBe(whens.length);
    expect(flat).toMatch(/(1[5-9]|2[0-5]) min before Light \d+ for the first set/);
  });

  it('say a pot’s own quarts or litres, and show its heat beside the oven’s', () => {
    const us = command('coals', ...TWELVE, '--method', 'simmer');
    expect(us.flat).toMatch(/a pot half full of stew, about [\d /]+ qt, that goes in at/);
    expect(us.flat).toMatch(/minute state the pot oven/);
    const metric = command('coals', '--oven', '30 cm', '--method', 'simmer');
    expect(metric.flat).toMatch(/about [\d.]+ l, that goes in at \d+ °C/);
    expect(us.flat).toMatch(/One printed page lays 8 above and 17 below for a simmer/);
  });

  it('take an age by --age, by the older word --lit, or by the look of the coals, and never two of them', () => {
    const judged = (...words: readonly string[]) =>
      command('layout', ...TWELVE, ...LAID, '--heat', '350 F', ...words);
    expect(judged('--lit', '40 min ago').out).toBe(judged('--age', '40').out);
    expect(judged('--looks', 'half-size').flat).toMatch(/half as wide as they were: lit about/);
    expect(judged('--looks', 'half-size', '--age', '20').exit).not.toBe(0);
    const left = (look: string) => command('left', ...TWELVE, '--coals', '22', '--looks', look).out;
    expect(left('glow')).not.toBe(left('small'));
  });

  it('speak of wood coals in shovels and rings, never of a chart or of whole coals (AT-THE-FIRE 13)', () => {
    const { out } = command('coals', ...TWELVE, '--heat', '350 F', ...WOOD);
    expect(out).not.toMatch(/chart|whole coals|briquette|chimney/i);
  });

  it('refuse in the measures that were asked for', () => {
    const us = command('coals', ...TWELVE, '--heat', '900 F');
    expect(us.error).toMatch(/°F/);
    expect(us.error).not.toMatch(/°C/);
    const metric = command('coals', '--oven', '30 cm', '--heat', '400 C');
    expect(metric.error).toMatch(/290\s°C/);
    expect(metric.error).not.toMatch(/°F/);
  });

  it('warn of a bottom that burns under a pin as under a layout, and tell two rings (splitByMethod, ringMethod)', () => {
    const pinned = (below: string, ...more: readonly string[]) =>
      command('coals', ...TWELVE, '--heat', '350 F', '--below', below, ...more).flat;
    const burns = /a third below is usual for bread, or the bottom burns/;
    expect(pinned('20')).toMatch(burns);
    expect(pinned('12', '--above', '12')).toMatch(burns);
    expect(command('layout', ...TWELVE, '--above', '12', '--below', '12').flat).toMatch(burns);
    expect(pinned('8')).not.toMatch(burns);
    expect(pinned('20', '--method', 'simmer')).not.toMatch(burns);
    expect(pinned('20')).toContain('20 below: two rings under rim, middle empty');
    expect(pinned('8')).toContain('8 below: ring under rim, middle empty');
    expect(pinned('13')).toContain('two rings under rim'); // twelve touch between the legs
    expect(pinned('12')).toContain('12 below: ring under rim');
  });

  it('set the few coals of practice beside ours where a dish is kept warm (common practice, no source)', () => {
    const { flat } = command('coals', ...TWELVE, '--method', 'keep-warm');
    expect(flat).toMatch(/Common practice, no source: three or four on the lid/);
    expect(flat).toMatch(/4 laid once keep this dish above 140 °F for (about|more than)/);
  });

  it('name what makes most of a wide range and what tells it', () => {
    const { flat } = command('coals', ...TWELVE, '--heat', '350 F');
    expect(flat).toMatch(/(Most|The largest part) of the range is how /);
  });
});

describe('emberwright layout', () => {
  it('prints the mean, the minutes held and the curve of the engine, in both measures', () => {
    const judged = held(
      judgeLayout({
        ...twelve(),
        coals: lying(30),
        wanted: fromFahrenheit(350),
        minutes: minutes(45),
        loadInMinute: minutes(15),
      }),
    );
    for (const measures of ['us', 'metric'] as const) {
      const { oven } = says(measures);
      const words = [...TWELVE, ...LAID, '--lit', '30 min ago', '--measures', measures];
      const { exit, flat } = command('layout', ...words);
      expect(exit).toBe(0);
      expect(flat).toContain(`On the whole ${oven(judged.mean)}`);
      expect(flat).toContain(`${judged.heldMinutes} min of 30 min`);
      const { oven: hot, low, high } = judged.curve[30]!;
      expect(flat).toContain(`30 min food in ${oven(hot)} ${oven(low)} to ${oven(high)}`);
      expect(flat).not.toMatch(UNSAYABLE);
    }
  });

  it('says one line first: it will do, too hot, too cool, or fades', () => {
    const verdict = (above: string, below: string) =>
      command('layout', ...TWELVE, '--above', above, '--below', below, '--wind', '0 m/s').flat;
    expect(verdict('40', '20')).toMatch(/Too hot: about/);
    expect(verdict('6', '3')).toMatch(/Too cool: about/);
    const metric = command(
      ...['layout', '--oven', '30 cm', ...LAID, '--wind', '0 m/s', '--minutes', '60 min'],
    ).out;
    expect(metric).toMatch(/fades after/); // coalLife: one set lasts 45 to 60 min
    expect(metric).not.toMatch(/°F/);
  });

  it('takes food that is in already, and wood by the shovel', () => {
    const inside = command('layout', ...TWELVE, ...LAID, '--minutes-in', '10 min');
    expect(inside.out).not.toMatch(/empty/);
    const wood = command('layout', ...TWELVE, ...SHOVELS, ...WOOD);
    expect(wood.out).toMatch(/2 1\/2 shovels above and 1 shovel below/i);
    expect(wood.out).not.toMatch(/briquette/i);
    expect(`${inside.out}${wood.out}`).not.toMatch(UNSAYABLE);
  });
});

describe('coals of several ages, and an oven that is hot', () => {
  const SETS = ['--coals', '17/8@50', '--coals', '4/2@15'] as const;

  it('are run as the engine runs them, with the oven as it reads now', () => {
    const coals = [
      { place: 'above', pieces: 17, litMinutesAgo: minutes(50) },
      { place: 'below', pieces: 8, litMinutesAgo: minutes(50) },
      { place: 'above', pieces: 4, litMinutesAgo: minutes(15) },
      { place: 'below', pieces: 2, litMinutesAgo: minutes(15) },
    ] as const;
    const judgement = held(
      judgeLayout({
        ...{ ...twelve(), coals, ironNow: fromFahrenheit(330) },
        ...{ loadInMinutesAgo: minutes(20), wanted: fromFahrenheit(350), minutes: minutes(45) },
      }),
    );
    const { flat } = command(
      ...['layout', ...TWELVE, ...SETS, '--minutes-in', '20 min', '--iron', '330 F'],
    );
    expect(flat).toContain('21 above and 10 below');
    expect(flat).toContain(`On the whole ${says('us').oven(judgement.mean)}`);
    expect(flat).not.toContain('coals lit');
  });

  it('are more than the old set alone, and shovels are written with "and"', () => {
    const mean = (...words: readonly string[]) =>
      Number(/On the whole (\d+)/.exec(command('layout', ...TWELVE, ...words).flat)?.[1]);
    expect(mean(...SETS)).toBeGreaterThan(mean('--coals', '17/8@50'));
    const wood = command('layout', ...TWELVE, ...WOOD, '--coals', '2 1/2 and 1 @ 30 min');
    expect(wood.flat).toContain('2 1/2 shovels above and 1 shovel below');
  });

  it('let what is left do more in a hot oven than in a cold one', () => {
    const held200 = (...words: readonly string[]) =>
      Number(/Hottest (\d+)/.exec(command('left', ...TWELVE, '--coals', '22', ...words).flat)?.[1]);
    expect(held200('--iron', '350 F')).toBeGreaterThan(held200());
  });

  it.each<[readonly string[], RegExp]>([
    [['--coals', '17'], /--coals: found "17"/],
    [['--coals', '17/8@30', '--above', '3'], /--coals: found --above or --below beside it/],
    [['--above', '17'], /--below: found nothing/],
    [['--coals', '17/8@soon'], /--coals: found "soon"/],
  ])('say what is wrong with %s', (words, said) => {
    const { exit, error } = command('layout', ...TWELVE, ...words);
    expect(exit).toBe(3);
    expect(error).toMatch(said);
  });
});

describe('emberwright left', () => {
  it('prints each way with the counts and the heat of the engine', () => {
    const { load: _load, method: _method, ...spot } = twelve();
    const { ways } = held(whatCanIDoWith({ ...spot, pieces: 22, litMinutesAgo: minutes(30) }));
    const { exit, flat } = command('left', ...TWELVE, '--coals', '22', '--age', '30 min');
    expect(exit).toBe(0);
    for (const { above, below, hottest } of ways) {
      const lay = `Lay ${above || 'none'} above and ${below || 'none'} below`;
      expect(flat).toContain(`${lay} Hottest ${says('us').oven(hottest)}`);
    }
    expect(flat).not.toMatch(UNSAYABLE);
  });

  it('lays what the dish bears, says what is left over, and holds no heat that it does not reach', () => {
    const hot = ['--coals', '30', '--age', '15', '--iron', '350 F', '--wind', '0 m/s'];
    const { flat } = command('left', '--oven', '10 in', ...hot);
    for (const [, degrees] of flat.matchAll(/Hottest (\d+) °F/g))
      expect(Number(degrees)).toBeLessThanOrEqual(475); // the charts' very hot, and a step
    expect(flat).toMatch(/Left over \d+: with more it gets too hot/);
    expect(flat).toMatch(/Enough for .*(biscuit|quick bread)/);
    for (const oven of ['12 in', '8 in'])
      expect(command('left', '--oven', oven, '--coals', '70', '--age', '15').flat).toMatch(
        /Left over \d+: more do not lie flat, heaped ones roll off/,
      );
    expect(flat).not.toMatch(/Holds/);
    expect(flat).toMatch(/Within a step of/);
  });

  it('says what more and fresher coals are enough for, and shovels for wood', () => {
    const many = command('left', ...TWELVE, '--coals', '40', '--age', '15', '--wind', '0 m/s');
    expect(many.out).toMatch(/Enough for +.*(bread|biscuit|stew|cobbler|fruit)/);
    const wood = command('left', ...TWELVE, '--coals', '3 shovels', ...WOOD);
    expect(wood.out).toMatch(/With 3 shovels left/);
    expect(wood.out).not.toMatch(/briquette|\d coals/i);
  });
});

describe('emberwright what-now', () => {
  it('prints the engine’s moves in their order, each with its effect and wait, for every symptom', () => {
    const usual = assumedAge('what-now', twelve(), 15);
    for (const symptom of SYMPTOMS) {
      const state = {
        ...twelve(),
        coals: lying(usual.minutes),
        agesAssumed: usual.how,
        loadInMinutesAgo: minutes(15),
      };
      const { moves } = held(rescue({ symptom, state }));
      const { exit, flat } = command('what-now', '--symptom', symptom, ...TWELVE, ...LAID);
      expect(exit).toBe(0);
      let from = 0;
      for (const { effect, after, sides } of moves) {
        const much = says('us').difference(Math.abs(sides?.before ?? effect));
        const felt = `about ${much} `;
        const found = flat.indexOf(felt, from);
        expect(found, `${symptom}: ${felt}`).toBeGreaterThan(from);
        expect(flat.slice(found, found + 90)).toContain(`in ${after} min`);
        from = found + 1;
      }
      expect(flat).not.toMatch(UNSAYABLE);
    }
  });

  it('takes coals that were counted as burning, and asks how they look (common practice, no source)', () => {
    for (const [symptom, method, inside] of [
      ['raw-middle', 'bake', '30'],
      ['bottom-dark', 'bake', '45'],
      ['top-pale', 'roast', '90'],
      ['late', 'simmer', '60'],
      ['coals-dying', 'bake', '30'],
    ] as const) {
      const asked = ['what-now', '--symptom', symptom, '--method', method, '--minutes-in', inside];
      for (const wind of ['0 m/s', '2 m/s', '8 m/s']) {
        const { flat } = command(...asked, ...TWELVE, ...LAID, '--wind', wind);
        expect(flat).not.toMatch(/no fire/i);
        expect(flat).toMatch(/ 1 [A-Z]/);
      }
      expect(command(...asked, ...TWELVE, ...LAID).flat).toMatch(/How do the coals look\?/);
    }
    const late = ['what-now', '--symptom', 'raw-middle', ...TWELVE, ...LAID, '--minutes-in', '30'];
    const judged = command('layout', ...TWELVE, ...LAID, '--minutes-in', '60').flat;
    expect(judged).not.toMatch(/no fire/i);
    for (const said of [
      ['--age', '120'],
      ['--coals', '17/8@120'],
    ]) {
      const words = said[0] === '--coals' ? late.filter((each) => !LAID_WORDS.has(each)) : late;
      expect(command(...words, ...said).flat).toMatch(/There is no fire to work with/);
    }
    expect(command(...late, '--looks', 'small').flat).not.toMatch(/How do the coals look/);
  });

  it('counts a new fire as the door of the counts does, at the heat that is wanted', () => {
    for (const heat of ['325 F', '375 F', '425 F']) {
      const laid = /(\d+) above.*? (\d+) below/.exec(
        command('coals', ...TWELVE, '--heat', heat).flat,
      );
      const { flat } = command('layout', ...TWELVE, ...LAID, '--age', '120', '--heat', heat);
      expect(flat).toContain(`to lay ${laid?.[1]} above and ${laid?.[2]} below`);
      const [degrees] = heat.split(' ');
      expect(flat).toMatch(
        new RegExp(`Laid then, they bring it to ${degrees} °F in \\d+ min more`),
      );
    }
  });

  it('says shovels for wood coals, whatever goes wrong', () => {
    for (const symptom of SYMPTOMS) {
      const { out } = command('what-now', '--symptom', symptom, ...TWELVE, ...SHOVELS, ...WOOD);
      expect(out).toMatch(/2 1\/2 shovels above and 1 shovel below/);
      expect(out).not.toMatch(/briquette|(add|take|move) [1-9]\d* (above|below|off|from)/i);
      expect(out).not.toMatch(UNSAYABLE);
    }
  });
});

describe('a fry, lid off (splitByMethod: none above)', () => {
  const fried = (...words: readonly string[]) =>
    command(...words, ...TWELVE, '--method', 'fry').flat;

  it('is judged by what lies below, and told that coals above do nothing', () => {
    const heat = (text: string) => Number(/On the whole (\d+)/.exec(text)?.[1]);
    const both = fried('layout', ...LAID);
    expect(both).toMatch(/Too cool: about/);
    expect(both).toMatch(/Coals above do nothing with the lid off.*Lay \d+ of them below/);
    expect(both).not.toMatch(/lie flat|does at first/);
    const bare = fried('layout', '--above', '0', '--below', '8');
    expect(heat(bare)).toBe(heat(both));
    expect(bare).not.toMatch(/Coals above/);
    expect(fried('layout', '--above', '0', '--below', '40')).toMatch(/lie flat under .*too many/);
  });

  it('is never helped by the lid, whatever goes wrong', () => {
    for (const symptom of SYMPTOMS) {
      const words = ['what-now', '--symptom', symptom, '--above', '4', '--below', '14'];
      const told = fried(...words);
      expect(told).toMatch(/Coals above do nothing with the lid off/);
      expect(told).not.toMatch(
        /to the lid \([^t]|Add \d+ above|off the lid \([^t]|lid about|lid on,|its lid/,
      );
      if (symptom === 'top-pale') expect(told).toMatch(/Turn the food over/);
    }
  });

  it('has one usual heat at every door', () => {
    expect(fried('coals')).toMatch(/Coals for 375 °F.*375 °F wanted/);
    expect(fried('layout', '--above', '0', '--below', '14')).toMatch(/375 °F wanted/);
  });
});

describe('a boil that is late', () => {
  it('is helped by coals on its lid, as its plan says (splitByMethod; run.ts)', () => {
    const boil = ['--method', 'boil'] as const;
    expect(command('coals', ...TWELVE, ...boil).flat).toMatch(/on its lid until it boils make it/);
    const { flat } = command(
      ...['what-now', '--symptom', 'late', ...TWELVE, ...boil, '--above', '0', '--below', '16'],
    );
    expect(flat).toMatch(/Add \d+ above \(food about \d+ °F hotter/);
    expect(flat).not.toMatch(/add above \(it would/);
  });
});

describe('every door', () => {
  it('names the place, what was found, what was wanted and what to write', () => {
    for (const [words, wanted] of [
      [['coals', '--oven', 'big', '--heat', '375 F'], /--oven: found "big", wanted .*Write --oven/],
      [['coals', ...TWELVE], /--heat: found nothing, wanted .*Write --heat "375 F"/],
      [['coals', ...TWELVE, '--heat', 'hot'], /--heat: found "hot"/],
      [['coals', ...TWELVE, '--heat', '375 F', '--minutes', 'soon'], /--minutes: found "soon"/],
      [['coals', ...TWELVE, '--heat', '375 F', '--method', 'steam'], /--method: found "steam"/],
      [['layout', ...TWELVE, '--above', 'many', '--below', '8'], /--above: found "many"/],
      [['layout', ...TWELVE, ...SHOVELS], /--fuel wood/],
      [['layout', ...TWELVE, ...SHOVELS, ...WOOD, '--below', '99'], /--below: found "99"/],
      [['layout', ...TWELVE, ...LAID, '--lit', 'a while ago'], /--lit: found/],
      [['layout', ...TWELVE, ...LAID, '--minutes', '10'], /--minutes: found 10 min/],
      [['layout', ...TWELVE, ...LAID, '--in-after', '5', '--minutes-in', '5'], /Leave one/],
      [['left', ...TWELVE], /--coals/],
      [['what-now', '--symptom', 'sad', ...TWELVE, ...LAID], /bottom-dark or top-pale/],
    ] as const) {
      const { exit, error } = command(...words);
      expect(error).toMatch(wanted);
      expect(exit, words.join(' ')).toBe(3);
    }
  });

  it('ends with 1 and says why where nothing can be planned', () => {
    for (const [door, ...rest] of [
      ['coals', '--heat', '375 F'],
      ['layout', ...LAID],
      ['left', '--coals', '22'],
      ['what-now', '--symptom', 'late', ...LAID],
    ] as const) {
      for (const stop of [
        ['--oven', '30 in'],
        [...TWELVE, '--wind', '200 m/s'],
        [...TWELVE, '--height', '-900 m'],
      ]) {
        const { exit, error } = command(door, ...rest, ...stop);
        expect(exit, `${door} ${stop}`).toBe(1);
        expect(error).toMatch(/^Stop: /);
        expect(error).not.toMatch(UNSAYABLE);
      }
    }
    const old = command('left', ...TWELVE, '--coals', '22', '--age', '20 h');
    expect([old.exit, old.error]).toEqual([1, expect.stringMatching(/^Stop: That age can not be/)]);
    expect(command('coals', ...TWELVE, '--heat', '900 F').exit).toBe(1);
  });

  it('has help with an example and the exit codes', () => {
    for (const door of ['coals', 'layout', 'left', 'what-now']) {
      const { exit, out } = command(door, '--help');
      expect(exit).toBe(0);
      expect(out).toMatch(new RegExp(`For example:\\s+emberwright ${door} `));
      expect(out).toContain('How it ends:');
    }
  });
});
