// `emberwright tonight`: one bread, one oven; a dish card with every assumption said.

import {
  type Assumption,
  clockMinutes,
  type DishPins,
  dishCard,
  FLOOR_CONTACTS,
  isRefusal,
  type Metres,
  metres,
  noticeText,
  planTonight,
  type Recipe,
  type Refusal,
  readyRecipes,
  refusalText,
  renderHtml,
  renderText,
  sayFor,
  type TonightAnswers,
} from '#engine';
import { amountOf } from '../amount.ts';
import { EXIT, type ExitCode, wrongUse } from '../exit.ts';
import { FEEDER_LEAD_MINUTES, fuelOf } from '../fuel-reading.ts';
import { outcomeOf } from '../outcome.ts';
import {
  airOf,
  clockOf,
  countOf,
  directionOf,
  GROUNDS,
  heightOf,
  oneOf,
  quantityOf,
  type ReaderOptions,
  readerOf,
  windOf,
} from '../reading.ts';
import { recipeFrom } from '../recipe-reading.ts';
import type { Shell } from '../shell.ts';

interface TonightOptions extends ReaderOptions {
  readonly what: string;
  readonly oven: string;
  readonly deep?: true;
  readonly eatAt?: string;
  readonly now?: string;
  readonly amount?: string;
  readonly air?: string;
  readonly wind?: string;
  readonly windFrom?: string;
  readonly height?: string;
  readonly fuel?: string;
  readonly coalMass?: string;
  readonly chimneys?: string;
  readonly hands?: string;
  readonly ground?: string;
  readonly coldOven?: true;
  readonly hotOven?: true;
  readonly on?: string;
  readonly hotLid?: true;
  readonly touching?: true;
  readonly floor?: string;
  readonly depth?: string;
  readonly screens?: string;
  readonly thermometer?: true;
  readonly above?: string;
  readonly below?: string;
  readonly page?: string;
}

export function tonight(options: TonightOptions, shell: Shell): ExitCode {
  const isInches = /in|"|ft/i.test(options.oven);
  const reader = readerOf(options, isInches ? 'us' : 'metric');
  const answers = answersOf(options, shell);
  const planned = planTonight(answers, { assumed: leadAssumed(answers) });
  if (isRefusal(planned)) return refused(planned, reader, shell);
  const { plan: meal, tonight: asked } = planned;
  const say = sayFor({ ...reader, plan: meal });
  const id = asked.menu.dishes[0]?.id ?? '';
  const card = dishCard(meal, id, say);
  shell.out(renderText(card, { width: shell.columns }));
  for (const refusal of meal.refusals) shell.error(`Stop: ${refusalText(refusal, say)}\n`);
  for (const notice of asked.notices) shell.out(`\nDoubt: ${noticeText(notice, say)}\n`);
  if (options.page !== undefined) {
    shell.write(options.page, renderHtml(card));
    shell.out(`\nThe card is in ${options.page}, to print.\n`);
  }
  return outcomeOf(meal);
}

/** A cook who says wood has not said how long before the first shovel its fire is lit. */
function leadAssumed({ fuel }: TonightAnswers): readonly Assumption[] {
  if (fuel?.kind !== 'wood-coals') return [];
  const hours = FEEDER_LEAD_MINUTES / 60;
  return [{ what: 'fuel', value: `feeder fire lit ${hours} h before its first shovel` }];
}

function answersOf(options: TonightOptions, shell: Shell): TonightAnswers {
  const now = options.now === undefined ? shell.nowMinutes : clockOf('--now', options.now);
  const what = whatOf(options.what, shell);
  return {
    what,
    oven: {
      diameterMetres: quantityOf('--oven', options.oven, 'length', '12 in'),
      ...(options.deep ? { style: 'deep' as const } : {}),
      ...startOf(options),
      ...measuredOf(options),
    },
    ...restingOf(options),
    when:
      options.eatAt === undefined
        ? {}
        : { serveAt: clockMinutes(clockOf('--eat-at', options.eatAt)) },
    date: shell.today,
    timeZone: shell.timeZone,
    now: clockMinutes(now),
    weather: {
      ...(options.air === undefined ? {} : { airKelvin: airOf(options.air) }),
      ...(options.wind === undefined ? {} : { windMetresPerSecond: windOf(options.wind) }),
      ...(options.windFrom === undefined
        ? {}
        : { windFromDegrees: directionOf('--wind-from', options.windFrom) }),
    },
    ...(options.amount === undefined ? {} : { amount: amountOf(options.amount, what) }),
    ...(options.height === undefined ? {} : { elevation: heightOf(options.height) }),
    ...fuelOf(options),
    ...(options.chimneys === undefined
      ? {}
      : { chimneys: countOf('--chimneys', options.chimneys) }),
    ...(options.hands === undefined ? {} : { hands: countOf('--hands', options.hands) }),
    ...(options.ground === undefined ? {} : { ground: oneOf('--ground', options.ground, GROUNDS) }),
    ...(options.screens === undefined
      ? {}
      : { windScreens: countOf('--screens', options.screens) }),
    ...(options.thermometer ? { thermometer: true } : {}),
    pins: pinsOf(options),
  };
}

/** A ready recipe by its name, else a file with a recipe in it. */
function whatOf(text: string, shell: Shell): Recipe {
  const ready = readyRecipes.find(({ id }) => id === text.trim().toLowerCase());
  return ready ?? recipeFrom(text, shell);
}

const lengthOf = (where: string, text: string, example: string): Metres => {
  const read = quantityOf(where, text, 'length', example);
  if (!(0 < read && read < 0.5)) {
    throw wrongUse(
      where,
      `"${text}"`,
      'a size that an oven can have',
      `Write ${where} "${example}".`,
    );
  }
  return metres(read);
};

/** The owner's own measurements win over the table. */
const measuredOf = ({ floor, depth }: TonightOptions) => ({
  ...(floor === undefined ? {} : { floorDiameter: lengthOf('--floor', floor, '10 in') }),
  ...(depth === undefined ? {} : { depth: lengthOf('--depth', depth, '4 in') }),
});

function restingOf({ on, hotLid, touching }: TonightOptions): Pick<TonightAnswers, 'inOven'> {
  const inOven = {
    ...(on === undefined ? {} : { contact: oneOf('--on', on, FLOOR_CONTACTS) }),
    ...(hotLid ? { lid: 'hot' as const } : {}),
    ...(touching ? { pieces: 'touching' as const } : {}),
  };
  return Object.keys(inOven).length === 0 ? {} : { inOven };
}

function startOf({ coldOven, hotOven }: TonightOptions): { readonly startsHot?: boolean } {
  if (coldOven && hotOven) {
    throw wrongUse('--cold-oven', 'both', '--cold-oven or --hot-oven', 'Leave one of the two out.');
  }
  return coldOven || hotOven ? { startsHot: hotOven === true } : {};
}

function pinsOf({ above, below }: TonightOptions): DishPins {
  return {
    ...(above === undefined ? {} : { coalsAbove: countOf('--above', above) }),
    ...(below === undefined ? {} : { coalsBelow: countOf('--below', below) }),
  };
}

function refused(
  refusal: Refusal,
  reader: Pick<Parameters<typeof sayFor>[0], 'measures' | 'clock'>,
  shell: Shell,
): ExitCode {
  const plan = { camp: { ovens: [], hands: [] }, menu: { dishes: [] } };
  shell.error(`Stop: ${refusalText(refusal, sayFor({ ...reader, plan }))}\n`);
  return EXIT.stopped;
}
