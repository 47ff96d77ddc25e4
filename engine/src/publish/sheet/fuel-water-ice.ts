// How much fuel, water and ice the day takes, each with what it is made of, so that a cook can strike
// what does not apply.

import type { MealPlan } from '../../meal.ts';
import type { ColdBox, IcePlan } from '../../provisions/ice/ice-plan.ts';
import type { Block, FactRow, SheetDocument } from '../document.ts';
import { noticeBlocks } from '../notice-text.ts';
import type { Say } from '../say.ts';
import { fuelName, fuelRows, waterRows } from './fuel-water-rows.ts';
import { sentenceCase } from './phrases.ts';

const OURS = /^PROVISIONS_(FUEL|DRINKING|WATER|ICE|COOLER|RAW)/;

export function fuelWaterIceSheet(plan: MealPlan, say: Say): SheetDocument {
  const { fuel, water, waterInAll, ice, notices } = plan.provisions;
  return {
    kind: 'fuel-water-ice',
    title: ice === undefined ? 'Fuel and water' : 'Fuel, water and ice',
    camp: plan.camp.title,
    blocks: [
      {
        type: 'figures',
        figures: [
          { figure: say.mass(fuel.massWithSpare), label: fuelName(fuel) },
          { figure: say.volume(waterInAll), label: 'water' },
          ...(ice === undefined ? [] : [{ figure: say.mass(ice.ice), label: 'ice' }]),
        ],
      },
      ...noticeBlocks(
        notices.filter(({ code }) => OURS.test(code)),
        say,
      ),
      { type: 'heading', text: 'Fuel' },
      { type: 'facts', rows: fuelRows(fuel, say) },
      { type: 'heading', text: 'Water' },
      { type: 'facts', rows: waterRows(water, say) },
      { type: 'paragraph', parts: [{ text: waterSource(say) }] },
      ...(ice === undefined ? [] : iceBlocks(ice, say)),
    ],
  };
}

/** camping-gallon and sphere-water, in the reader's measures. */
const waterSource = (say: Say) =>
  `Camping pages give ${say.volume(0.003785)} a person for a whole day of drinking and cooking, relief ` +
  `handbooks ${say.volume(0.0075)} to ${say.volume(0.015)} with washing. Hands, wash-up and ash are ` +
  'common practice, no source.';

function iceBlocks(ice: IcePlan, say: Say): readonly Block[] {
  return [
    { type: 'heading', text: 'Ice' },
    {
      type: 'paragraph',
      parts: [
        {
          text: `For ${say.minutes(ice.minutes)} from closed boxes to the last serving, ${say.degrees(ice.air)} in the shade. Food goes in cold: a cooler keeps, it does not chill.`,
        },
      ],
    },
    ...ice.boxes.map(
      (box): Block => ({
        type: 'card',
        title: `${sentenceCase(box.cooler.name)} · ${HOLDS[box.holds]}`,
        blocks: [{ type: 'facts', rows: coolerRows(box, say) }],
      }),
    ),
    {
      type: 'facts',
      rows: [
        { label: 'Read every four hours', value: '____ at ____   ____ at ____   ____ at ____' },
        { label: 'Keep it at or under', value: say.degrees(277.55) }, // 40 °F, foodsafety-chart
      ],
    },
  ];
}

const WARM = 293.15; // a kitchen, 20 °C; as provisions/ice reckons

const HOLDS = {
  'raw-meat': 'raw meat',
  ready: 'ready to eat',
  both: 'raw meat and ready to eat',
} as const;

function coolerRows(box: ColdBox, say: Say): readonly FactRow[] {
  const { cooler, food, iceNeeded, iceIfWarm, lasts, leak, isAssumed, fill } = box;
  const { length, width, height } = cooler.inside;
  const size = `${say.volume(length * width * height)} inside, wall ${say.length(cooler.wall)}`;
  return [
    { label: 'Holds', value: say.mass(food) },
    { label: 'Ice until the end', value: say.mass(iceNeeded), note: 'what walls and lid let in' },
    ...(cooler.ice === undefined
      ? []
      : [
          {
            label: 'Ice that goes in',
            value: say.mass(cooler.ice),
            ...(lasts === undefined ? {} : { note: `lasts ${say.minutes(lasts)}` }),
          },
        ]),
    {
      label: 'If the food went in warm',
      value: `${say.mass(iceIfWarm)} more`,
      note: `from ${say.degrees(WARM)}`,
    },
    { label: 'Reckoned for', value: size, ...(isAssumed ? { note: 'assumed' } : {}) },
    { label: 'Walls let in', value: `${leak.toFixed(1)} W` },
    { label: 'Full to', value: say.percent(fill) },
  ];
}
