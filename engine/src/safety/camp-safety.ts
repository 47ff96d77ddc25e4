// May coals be lit here, and what has everybody to mind?

import type { Camp, FireRestriction } from '../camp/camp.ts';
import type { Menu } from '../menu/menu.ts';
import { type Notice, notice } from '../notice/notice.ts';
import type { CampSafety } from './care.ts';
import { foodLimits } from './food-limits.ts';
import { unfitIn } from './kept-apart.ts';
import { byDanger } from './order.ts';
import { roofCautions } from './under-roof.ts';
import { boilMinutes } from './water.ts';
import { windCautions } from './wind.ts';

/**
 * Fire, the strip for every card, cautions for the camp, and who can't eat which dish.
 *
 * @source fire-stages, cpsc-5012, usfs-campfire, burns-first-aid, nc-dph; local orders override
 */
export function campSafety(asked: { readonly camp: Camp; readonly menu: Menu }): CampSafety {
  const { camp, menu } = asked;
  const unfit = unfitIn(camp, menu);
  const cautions = [
    ...fireCautions(camp),
    ...windCautions(camp.weather),
    ...placeCautions(camp),
    ...roofCautions(camp, menu),
    ...peopleCautions(camp),
    ...eventCautions(camp),
    ...unfit.map((each) =>
      notice(
        'SAFETY_UNFIT',
        'danger',
        { dish: each.dish },
        { who: each.who, because: each.because },
      ),
    ),
    ...hungry(camp, menu, unfit),
  ];
  return { fire: FIRE[camp.restriction], strip: STRIP, cautions: cautions.sort(byDanger), unfit };
}

/**
 * Stage 1 leaves charcoal only in built-in rings and grates, which the camp file does not claim;
 * whoever has one says 'coals-allowed-here' (fire-stages).
 */
const FIRE: Readonly<Record<FireRestriction, CampSafety['fire']>> = {
  none: 'allowed',
  'coals-allowed-here': 'allowed',
  unknown: 'ask',
  'stage-1': 'forbidden',
  'stage-2': 'forbidden',
};

function fireCautions(camp: Camp): readonly Notice[] {
  const said: Readonly<Record<FireRestriction, readonly Notice[]>> = {
    none: [],
    'coals-allowed-here': [notice('SAFETY_FIRE_COALS_ALLOWED', 'note')],
    unknown: [notice('SAFETY_FIRE_ASK', 'danger')],
    'stage-1': [notice('SAFETY_FIRE_STAGE_ONE', 'danger')],
    'stage-2': [notice('SAFETY_FIRE_STAGE_TWO', 'danger')],
  };
  return said[camp.restriction];
}

const FEET_METRES = 0.3048;
/** The fixed strip, danger first. */
const STRIP: readonly Notice[] = [
  notice('SAFETY_CARBON_MONOXIDE', 'danger'), // cpsc-5012
  notice('SAFETY_HOT_IRON', 'danger'), // common practice, no source
  notice(
    'SAFETY_CLEAR_GROUND',
    'danger',
    {},
    {
      circleMetres: 10 * FEET_METRES, // usfs-campfire: circle 10 ft across, 15 ft from tents
      gearMetres: 15 * FEET_METRES,
    },
  ),
  notice('SAFETY_WATER_AT_HAND', 'danger'), // usfs-campfire
];

function placeCautions(camp: Camp): readonly Notice[] {
  const { ground, hearth, elevation, water } = camp.place;
  const onGround = hearth === 'ground';
  return [
    ...(onGround && ground === 'grass' ? [notice('SAFETY_FIRE_PAN', 'danger')] : []),
    ...(onGround && ground === 'snow' ? [notice('SAFETY_SNOW_MELTS', 'stop')] : []),
    ...(camp.fuel.kind === 'wood-coals' ? [notice('SAFETY_TREATED_WOOD', 'note')] : []),
    ...(water !== undefined && WILD_WATER.test(water)
      ? [treatWater(water, boilMinutes(elevation))]
      : []),
    notice('SAFETY_ASH', 'danger'), // usfs-campfire, fire-departments
  ];
}

/** Water that somebody says is filtered or treated wants no boil: a filter is then trusted. */
function treatWater(water: string, minutesOfBoil: number): Notice {
  const isTreated = /\b(filtered|treated|boiled|purified|disinfected)\b/i.test(water);
  const values = { boilMinutes: minutesOfBoil, isTreated: isTreated ? 'yes' : 'no' };
  return notice('SAFETY_TREAT_WATER', isTreated ? 'note' : 'danger', {}, values);
}

const WILD_WATER = /\b(spring|creek|stream|brook|river|lake|pond|snow|rain|cistern)\b/i;

function peopleCautions(camp: Camp): readonly Notice[] {
  const atRisk = camp.mouths
    .filter((group) => group.appetite === 'child' || group.appetite === 'over-65')
    .reduce((sum, group) => sum + group.count, 0);
  return [
    ...(atRisk > 0 ? [notice('SAFETY_HIGH_RISK', 'note', {}, { people: atRisk })] : []),
    notice('SAFETY_WASH_HANDS', 'note', {}, { seconds: 20 }), // nc-dph
    notice('SAFETY_ILL_HANDS', 'note', {}, { hours: 48 }), // nc-dph
    notice('SAFETY_BURNS', 'note', {}, { minutes: 20 }), // burns-first-aid
  ];
}

/** What a health office looks for first (public-event-rules, sf-handwash). */
function eventCautions({ event, gear }: Camp): readonly Notice[] {
  if (event !== 'public') return [];
  const own = foodLimits('public', 'own');
  const kept = foodLimits('public');
  const hasHandWash = gear.handWash ?? gear.others.some((each) => HAND_WASH_WORDS.test(each));
  return [
    ...(hasHandWash ? [] : [notice('SAFETY_PUBLIC_NO_HAND_WASH', 'stop')]),
    ...(gear.thermometer ? [] : [notice('SAFETY_PUBLIC_NO_THERMOMETER', 'stop')]),
    notice(
      'SAFETY_PUBLIC_EVENT',
      'note',
      {},
      {
        codeHotKelvin: own.hotHold,
        codeColdKelvin: own.coldHold,
        hotKelvin: kept.hotHold,
        coldKelvin: kept.coldHold,
      },
    ),
  ];
}

const HAND_WASH_WORDS = /\bhand[- ]?wash/i;

/** People for whom no dish of the menu is left. */
function hungry(camp: Camp, menu: Menu, unfit: CampSafety['unfit']): readonly Notice[] {
  const dishes = new Set(menu.dishes.map((dish) => dish.id));
  if (dishes.size === 0) return [];
  const people = new Set(camp.needs.map((need) => need.who));
  return [...people].flatMap((who) => {
    const without = new Set(unfit.filter((each) => each.who === who).map((each) => each.dish));
    return without.size < dishes.size
      ? []
      : [notice('SAFETY_NOTHING_TO_EAT', 'danger', {}, { who })];
  });
}
