// The camp file, version 1: what a cook can read and edit. Every quantity is text with its unit;
// bare numbers only count things (and give latitude and longitude in decimal degrees).
// This is the saved shape: it changes only with a new version and a migration to it.

import * as z from 'zod';
import { clock, count, date, direction, id, listOf, quantity, text, utcOffset } from './fields.ts';
import { stores } from './stores-schema.ts';

const ALLERGENS = [
  'gluten',
  'wheat',
  'milk',
  'egg',
  'fish',
  'crustacean',
  'mollusc',
  'tree-nut',
  'peanut',
  'soy',
  'sesame',
  'celery',
  'mustard',
  'lupin',
  'sulphite',
] as const;

const allergens = () => listOf(z.enum(ALLERGENS), ALLERGENS.length);
const skill = () => z.enum(['new', 'steady', 'camp-cook']);
const minutes = (example: string) => quantity('duration', { example, least: '0 min', most: '3 d' });
const cooking = (example: string) =>
  quantity('temperature', { example, least: '0 °C', most: '400 °C' });
const ovenLength = (example: string, least: string, most: string) =>
  quantity('length', { example, least, most });

const place = z.strictObject({
  name: text(120),
  elevation: quantity('length', { example: '2100 m', least: '-430 m', most: '6000 m' }).optional(),
  ground: z.enum(['soil', 'grass', 'gravel', 'sand', 'rock', 'snow', 'paving']).optional(),
  hearth: z.enum(['ground', 'fire-pan', 'fire-table']).optional(),
  groundIs: z.enum(['dry', 'wet', 'frozen']).optional(),
  latitude: z.number().min(-90).max(90).optional(),
  longitude: z.number().min(-180).max(180).optional(),
  utcOffset: utcOffset()
    .optional()
    .meta({ description: 'The camp clock less universal time: with the place, when it is light.' }),
  water: text(200).optional(),
  restriction: z
    .enum(['unknown', 'none', 'stage-1', 'stage-2', 'coals-allowed-here'])
    .optional()
    .meta({ description: 'What the keeper of the place says about fire today.' }),
});

const weatherHour = z.strictObject({
  at: clock(),
  air: quantity('temperature', { example: '18 °C', least: '-60 °C', most: '60 °C' }),
  wind: quantity('speed', { example: '3 m/s', least: '0 m/s', most: '60 m/s' }).meta({
    description: 'As forecast: 10 m above open ground.',
  }),
  gust: quantity('speed', { example: '5 m/s', least: '0 m/s', most: '90 m/s' }).optional(),
  windFrom: direction().optional(),
  humidity: quantity('share', { example: '60 %', least: '0 %', most: '100 %' }).optional(),
  rain: quantity('length', { example: '2 mm', least: '0 mm', most: '50 mm' })
    .optional()
    .meta({ description: 'As forecast: what falls in that hour.' }),
  sun: quantity('share', { example: '50 %', least: '0 %', most: '100 %' })
    .optional()
    .meta({ description: 'Of a high, clear sun, on the ovens themselves.' }),
  sky: text(120).optional(),
});

const mouthGroup = z.strictObject({
  count: count(1, 5000),
  appetite: z.enum(['child', 'ordinary', 'hard-work', 'over-65']).optional(),
  who: text(120).optional(),
  late: quantity('duration', { example: '45 min', least: '0 min', most: '1 d' })
    .optional()
    .meta({ description: 'They come so long after the serving.' }),
});

const need = z.strictObject({
  who: text(120),
  kind: z.enum([...ALLERGENS, 'vegetarian', 'vegan']),
  strictness: z
    .enum(['preference', 'avoid', 'strict'])
    .meta({ description: 'strict: no cross-contact, so its own oven, its own tools, made first.' }),
});

const hand = z.strictObject({
  id: id(),
  name: text(80),
  skill: skill(),
  from: clock(),
  to: clock(),
  away: listOf(z.strictObject({ from: clock(), to: clock() }), 20)
    .optional()
    .meta({ description: 'Asleep or elsewhere in between, such as 22:00 to +1 06:30.' }),
});

const oven = z.strictObject({
  id: id(),
  name: text(80).optional(),
  diameter: ovenLength('12 in', '4 in', '40 in'),
  style: z.enum(['regular', 'deep']).optional(),
  depth: ovenLength('3 3/4 in', '1 in', '20 in').optional(),
  capacity: quantity('volume', { example: '6 qt', least: '200 ml', most: '100 l' }).optional(),
  weight: quantity('mass', { example: '20 lb', least: '500 g', most: '100 kg' }).optional(),
  floorDiameter: ovenLength('10 in', '3 in', '40 in').optional(),
  lidWeight: quantity('mass', { example: '8 lb', least: '200 g', most: '50 kg' }).optional(),
  lidDiameter: ovenLength('13 in', '4 in', '43 in').optional(),
  riser: ovenLength('2 in', '0 in', '8 in')
    .optional()
    .meta({ description: 'So much higher above the coals below than on its own legs.' }),
  count: count(1, 60).optional(),
  keptFreeOf: allergens().optional(),
  mark: text(80).optional(),
});

const briquettes = z.strictObject({
  kind: z.literal('briquettes'),
  /** One of `pieceWeight` and `tenWeigh`. */
  pieceWeight: quantity('mass', { example: '25 g', least: '5 g', most: '150 g' }).optional(),
  tenWeigh: quantity('mass', { example: '250 g', least: '50 g', most: '1.5 kg' }).optional(),
  onHand: quantity('mass', { example: '8 kg', least: '0 g', most: '2000 kg' }).optional(),
  onHandPieces: count(0, 100_000).optional(),
});

const woodCoals = z.strictObject({
  kind: z.literal('wood-coals'),
  lead: quantity('duration', { example: '60 min', least: '10 min', most: '8 h' })
    .optional()
    .meta({ description: 'From lighting the feeder fire to the first shovel of coals.' }),
});

const gear = z.strictObject({
  chimneys: count(0, 60).optional(),
  chimneyfulCoals: count(1, 400).optional(),
  lidStands: count(0, 100).optional(),
  tables: count(0, 100).optional(),
  windScreens: count(0, 100).optional(),
  thermometer: z.boolean().optional(),
  handWash: z.boolean().optional().meta({
    description: 'A hand-wash line: a can with a tap that stays open, soap, paper, a bucket.',
  }),
  bleach: quantity('share', { example: '6 %', least: '0.1 %', most: '20 %' })
    .optional()
    .meta({ description: 'Sodium hypochlorite, as the label says.' }),
  others: listOf(text(120), 200).optional(),
});

const inOven = z.strictObject({
  on: z.enum(['iron', 'paper', 'rack', 'tin', 'meal']).optional().meta({
    description:
      'What it rests on: the greased floor, paper, a rack, its own tin on a rack, or coarse meal.',
  }),
  lid: z.enum(['hot', 'cold']).optional().meta({
    description: 'hot: the lid is heated over the fire by itself first.',
  }),
  oven: z.enum(['preheated', 'cold']).optional(),
  pieces: z.enum(['touching', 'apart']).optional(),
  tin: z
    .strictObject({
      length: ovenLength('8 1/2 in', '1 in', '40 in'),
      width: ovenLength('4 1/2 in', '1 in', '40 in'),
      height: ovenLength('2 3/4 in', '1/2 in', '20 in'),
      round: z.boolean().optional(),
    })
    .optional(),
});

const dish = z.strictObject({
  id: id(),
  name: text(120).optional(),
  recipe: id(),
  serve: clock(),
  latest: clock().optional(),
  portions: z.number().min(0.25).max(20_000).optional(),
  share: quantity('share', { example: '50 %', least: '0.1 %', most: '100 %' }).optional(),
  reserve: quantity('share', { example: '10 %', least: '0 %', most: '100 %' })
    .optional()
    .meta({ description: 'Held back on top of what is eaten.' }),
  pieces: listOf(z.enum(['roll', 'round', 'biscuit', 'loaf']), 4, 1).optional(),
  mayWait: minutes('30 min').optional(),
  freeFrom: z.boolean().optional().meta({
    description: 'Kept free of what the strict needs name; made first, with its own tools.',
  }),
  pins: z
    .strictObject({
      oven: id().optional(),
      coalsAbove: count(0, 400).optional(),
      coalsBelow: count(0, 400).optional(),
      coalsOn: clock().optional(),
      bake: quantity('duration', { example: '40 min', least: '1 min', most: '24 h' }).optional(),
      preheat: z.boolean().optional().meta({
        description: 'true: into a hot oven; false: into a cold one, the coals come after it.',
      }),
      hand: id().optional(),
    })
    .optional(),
  inOven: inOven.optional().meta({ description: 'Comes before what the recipe says of it.' }),
});

const pantry = z.strictObject({
  powderFizz: z
    .enum(['hard', 'weak', 'none'])
    .optional()
    .meta({ description: 'Half a teaspoon of powder in a quarter cup of hot water.' }),
  powderOpenedMonths: z.number().min(0).max(600).optional(),
});

const PARTS = [
  'flour',
  'meal',
  'water',
  'liquid',
  'fat',
  'salt',
  'sugar',
  'egg',
  'yeast',
  'powder',
  'soda',
  'acid',
  'dry-milk',
  'meat',
  'poultry',
  'bean',
  'grain',
  'vegetable',
  'fruit',
  'nut',
  'cheese',
  'spice',
  'other',
] as const;

const ingredient = z.strictObject({
  name: text(120),
  measure: text(60).optional().meta({ description: 'As the cook wrote it: "3 3/4 cups".' }),
  weight: quantity('mass', { example: '450 g', least: '0.01 g', most: '2000 kg' }).optional(),
  unweighed: z
    .literal(true)
    .optional()
    .meta({ description: 'Nobody knows what it weighs: plans leave it out, and say so.' }),
  /** Only where the larder does not know the food, or is to be overruled. */
  food: id().optional(),
  part: z.enum(PARTS).optional(),
  contains: allergens().optional(),
  checkLabel: allergens().optional(),
  labelSaysFree: allergens()
    .optional()
    .meta({ description: 'The label has been read: free of these.' }),
  note: text(300).optional(),
});

const step = z.strictObject({
  id: id().optional(),
  kind: z.enum([
    'weigh',
    'prepare',
    'mix',
    'fold',
    'rise',
    'shape',
    'second-rise',
    'load',
    'brown',
    'cook',
    'stir',
    'take-out',
    'rest',
    'cut',
    'dress',
    'hold',
  ]),
  say: text(600),
  takes: minutes('15 min').optional(),
  hands: count(0, 6).optional(),
  skill: skill().optional(),
  table: z.boolean().optional(),
  keptAt: quantity('temperature', { example: '26 °C', least: '-5 °C', most: '50 °C' })
    .optional()
    .meta({ description: 'A rise in a box or beside the fire: as warm as this.' }),
  after: listOf(
    z.strictObject({
      step: id(),
      least: minutes('0 min').optional(),
      most: minutes('2 h').optional(),
    }),
    40,
  )
    .optional()
    .meta({ description: 'Left out: after the step above it. An empty list: after nothing.' }),
});

const recipe = z.strictObject({
  id: id(),
  name: text(120),
  kind: z.enum([
    'yeast-bread',
    'quick-bread',
    'biscuit',
    'corn-bread',
    'cobbler',
    'braise',
    'stew',
    'beans',
    'roast',
    'fruit',
    'cold-dish',
  ]),
  method: z.enum(['bake', 'roast', 'simmer', 'boil', 'fry', 'keep-warm', 'none']),
  portions: z.number().min(0.25).max(20_000),
  ingredients: listOf(ingredient, 100, 1),
  steps: listOf(step, 60).optional(),
  target: z
    .strictObject({
      oven: cooking('400 °F').optional(),
      core: cooking('200 °F').optional(),
      took: z.tuple([minutes('35 min'), minutes('45 min')]).optional(),
      canWait: minutes('30 min').optional(),
      rest: minutes('20 min').optional(),
      thickness: ovenLength('4 cm', '2 mm', '30 cm').optional(),
      coldOven: z
        .boolean()
        .optional()
        .meta({ description: 'It goes into an oven without coals; the coals come after it.' }),
      cookedBefore: z.boolean().optional(),
      writer: z
        .strictObject({
          oven: z.tuple([cooking('350 °F'), cooking('375 °F')]).optional(),
          took: z.tuple([minutes('35 min'), minutes('45 min')]).optional(),
          core: cooking('200 °F').optional(),
          firstRise: z.tuple([minutes('8 h'), minutes('12 h')]).optional(),
          secondRise: z.tuple([minutes('35 min'), minutes('45 min')]).optional(),
          coalsAbove: count(0, 99).optional(),
          coalsBelow: count(0, 99).optional(),
          coals: count(1, 199).optional(),
          coalsAboveShare: z.number().min(0).max(1).optional(),
        })
        .optional()
        .meta({
          description: 'How the writer baked it: shown beside the plan, not reckoned with.',
        }),
    })
    .optional(),
  division: listOf(
    z.strictObject({
      shape: z.enum(['roll', 'round', 'biscuit', 'loaf']),
      count: count(1, 5000),
      each: quantity('mass', { example: '66 g', least: '5 g', most: '20 kg' }),
      portionsEach: z.number().min(0.1).max(500).optional(),
    }),
    8,
  ).optional(),
  contains: allergens().optional(),
  inOven: inOven.optional(),
  writtenAt: quantity('length', { example: '5000 ft', least: '-430 m', most: '6000 m' })
    .optional()
    .meta({ description: 'Height that its leavening is meant for; left out: low ground.' }),
});

const amount = (most: number) => z.number().min(0).max(most);

/** A food of the cook's own, as its label says. */
const ownFood = z.strictObject({
  id: id(),
  name: text(120),
  alsoCalled: listOf(text(60), 20).optional(),
  part: z.enum(PARTS),
  label: z
    .enum(['us', 'eu'])
    .meta({ description: 'us: carbohydrate holds the fibre; eu: it does not.' }),
  of: quantity('mass', { example: '100 g', least: '1 g', most: '5 kg' })
    .optional()
    .meta({ description: 'What the numbers are of: 100 g, or one serving. Left out: 100 g.' }),
  kilocalories: amount(50_000),
  fat: amount(5000),
  carbohydrate: amount(5000),
  sugar: amount(5000).optional(),
  fibre: amount(5000).optional(),
  protein: amount(5000),
  sodiumMilligrams: amount(2_000_000).optional(),
  salt: amount(5000).optional(),
  water: amount(5000).optional(),
  measures: z
    .strictObject({
      cup: quantity('mass', { example: '140 g', least: '1 g', most: '2 kg' }).optional(),
      tbsp: quantity('mass', { example: '9 g', least: '0.1 g', most: '200 g' }).optional(),
      tsp: quantity('mass', { example: '3 g', least: '0.05 g', most: '100 g' }).optional(),
      each: quantity('mass', { example: '28 g', least: '0.1 g', most: '5 kg' }).optional(),
    })
    .optional(),
  contains: allergens()
    .optional()
    .meta({ description: 'As the label says. Left out: nobody has read it, so all are doubtful.' }),
  mayContain: allergens().optional(),
  labelSaysFree: allergens().optional(),
});

export const campFileSchema = z.strictObject({
  $schema: text(300).optional(),
  emberwright: z.literal('camp'),
  version: z.literal(1),
  id: id(),
  title: text(160),
  place,
  date: date().optional(),
  timeZone: text(64).optional(),
  weather: listOf(weatherHour, 200).optional(),
  mouths: listOf(mouthGroup, 100, 1),
  needs: listOf(need, 200).optional(),
  hands: listOf(hand, 60).optional(),
  ovens: listOf(oven, 60).optional(),
  fuel: z.discriminatedUnion('kind', [briquettes, woodCoals]).optional(),
  gear: gear.optional(),
  pantry: pantry.optional(),
  stores: stores.optional(),
  event: z
    .enum(['home', 'public'])
    .optional()
    .meta({ description: "public: food for strangers, under a health office's rules." }),
  inHand: quantity('duration', { example: '10 min', least: '0 min', most: '2 h' }).optional().meta({
    description: 'What comes from an oven is done so long before its time, if it may wait.',
  }),
  menu: listOf(dish, 60, 1),
  recipes: listOf(recipe, 60, 1),
  foods: listOf(ownFood, 60).optional(),
});

export type CampFile = z.infer<typeof campFileSchema>;
export type FileOven = z.infer<typeof oven>;
export type FileDish = z.infer<typeof dish>;
export type FileRecipe = z.infer<typeof recipe>;
export type FileFood = z.infer<typeof ownFood>;
export type FileIngredient = z.infer<typeof ingredient>;
export type FileInOven = z.infer<typeof inOven>;
export type FileStep = z.infer<typeof step>;
export type FileWeatherHour = z.infer<typeof weatherHour>;
export type FileFuel = z.infer<typeof briquettes> | z.infer<typeof woodCoals>;
export type FileGear = z.infer<typeof gear>;

export const NEWEST_VERSION = 1;
