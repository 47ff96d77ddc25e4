// The fire hand's sheet: may it be lit, when what is lit, laid and added, ash, iron, who eats what.

import type { Allergen } from '../../camp/camp.ts';
import { allAllergens } from '../../larder/allergens.ts';
import type { DishPlan, MealPlan } from '../../meal.ts';
import type { Block, SheetDocument } from '../document.ts';
import { noticeBlocks } from '../notice-text.ts';
import type { Say } from '../say.ts';
import { jobBrief, jobSentence } from '../words/jobs.ts';
import { lightingBlocks, turnOnce } from './day-sheet.ts';
import { stripBlocks } from './dish-card.ts';
import { allergenWord } from './free-from.ts';
import { listed } from './phrases.ts';
import { unfitBlocks, withoutUnfit } from './unfit.ts';

export function fireAndCareSheet(plan: MealPlan, say: Say): SheetDocument {
  return {
    kind: 'fire-and-care',
    title: 'Fire and care',
    camp: plan.camp.title,
    blocks: [
      ...stripBlocks(plan, say),
      { type: 'lead', parts: [{ text: FIRE[plan.safety.fire], strong: true }] },
      ...noticeBlocks(withoutUnfit(plan.safety.cautions), say),
      ...lightingBlocks(plan, say),
      ...fireWork(plan, say),
      ...ovenCare(plan),
      ...allergenBlocks(plan, say),
      {
        type: 'facts',
        rows: [
          { label: 'Who said coals may be lit', value: '____________________' },
          { label: 'When, and on what ground', value: '____________________' },
          { label: 'Ash felt cold at', value: '____________________' },
        ],
      },
    ],
  };
}

const FIRE = {
  allowed: 'Coals may be lit here, as far as the camp says.',
  forbidden: 'No coals may be lit here. Cook what needs no fire.',
  ask: 'Ask before you light: nobody has said yet that coals are allowed.',
} as const;

/** Laying, turning and adding by quarter hours: one walk round does all that is due. */
function fireWork(plan: MealPlan, say: Say): readonly Block[] {
  const work = plan.daySheet.jobs.filter(({ kind }) =>
    ['lay-coals', 'turn', 'add-coals'].includes(kind),
  );
  if (work.length === 0) return [];
  return [
    { type: 'heading', text: 'Rounds', half: true },
    {
      type: 'paragraph',
      parts: [{ text: `One walk round each quarter hour does all that is due.${turnOnce(plan)}` }],
    },
    {
      type: 'steps',
      rows: work.map((job, index) => {
        const isNewRound = roundOf(job.start) !== roundOf(work[index - 1]?.start ?? -1e6);
        return {
          when: isNewRound ? say.clock(roundOf(job.start)) : '',
          clock: say.clock(job.start),
          what: (job.kind === 'turn' ? jobBrief : jobSentence)(job, plan, say),
        };
      }),
    },
  ];
}

const QUARTER = 15;
const roundOf = (at: number) => Math.floor(at / QUARTER) * QUARTER;

function ovenCare({ camp }: MealPlan): readonly Block[] {
  const free = camp.ovens.filter(({ keptFreeOf }) => keptFreeOf.length > 0);
  return [
    { type: 'heading', text: 'Care of the ovens', half: true },
    {
      type: 'list',
      tick: true,
      items: [
        'Scrape with wood, wipe with hot water, dry over the last coals, a thin film of oil while warm.',
        'Never cold water into a hot oven, never a hot oven on wet ground: it cracks.',
        ...free.map(
          ({ name, mark, keptFreeOf }) =>
            `Oven ${name}${mark === undefined ? '' : ` (${mark})`}: own cloth, own scraper, free of ${listed(keptFreeOf.map(allergenWord))}; washed first.`,
        ),
      ],
    },
  ];
}

function allergenBlocks(plan: MealPlan, say: Say): readonly Block[] {
  const rows = plan.dishes.map(({ dish, recipe, safety }) => {
    const inIt = [
      ...new Set([...recipe.contains, ...recipe.ingredients.flatMap(({ allergens }) => allergens)]),
    ];
    const label = [...new Set(recipe.ingredients.flatMap(({ checkLabel }) => checkLabel))];
    return [
      dish.name,
      inIt.length === 0 ? 'none known' : listed(inIt.map(allergenWord)),
      toRead(label.filter((each) => !inIt.includes(each))),
      listed(safety.freeFrom.map(allergenWord)),
    ];
  });
  return [
    { type: 'heading', text: 'Allergens' },
    {
      type: 'table',
      caption:
        'Known from the ingredients as written. A label that has not been read is not "none".',
      head: ['dish', 'contains', 'read the label for', 'kept free of'],
      rows,
      numeric: [],
    },
    ...unfitBlocks(plan, say),
    ...holdBlocks(plan, say),
  ];
}

/** Of a food that nobody knows everything is open: said in one word. */
const toRead = (open: readonly Allergen[]) =>
  open.length > allAllergens.length / 2 ? 'everything' : listed(open.map(allergenWord));

const isLimited = ({ safety }: DishPlan) => safety.isKeptDry !== true || safety.least !== undefined;

function holdBlocks(plan: MealPlan, say: Say): readonly Block[] {
  // Plain bread has no limit of this kind; a table of "kept dry" would only hide the others.
  const rows = plan.dishes
    .filter(isLimited)
    .map(({ dish, safety }) => [
      dish.name,
      safety.least === undefined
        ? ''
        : `${say.degrees(safety.least.core)}, rest ${say.minutes(safety.least.rest)}`,
      safety.isKeptDry ? 'kept dry' : say.degrees(safety.hotHold),
      safety.isKeptDry ? '' : say.degrees(safety.coldHold),
      say.minutes(safety.outLimit),
    ]);
  if (rows.length === 0) return [];
  return [
    { type: 'heading', text: 'Hot, cold and how long' },
    {
      type: 'table',
      caption: '',
      head: [
        'dish',
        'middle at least',
        'kept hot above',
        'kept cold below',
        'between, no longer than',
      ],
      rows,
      numeric: [false, true, true, true, true],
    },
  ];
}
