// Everything that was guessed, as words on one line; each is a list to tap and change.

import { useId } from 'preact/hooks';
import type { AirWord, Ground, Measures, WindSign } from '#engine';
import { Field } from '../parts/Field.tsx';
import { readDecimal, writeNumber } from '../parts/read-text.ts';
import { PlaceMore } from '../place/PlaceMore.tsx';
import { useReader } from '../reader/ReaderContext.tsx';
import type { TonightHeight } from '../worker/messages.ts';
import type { OpenWish, WishChange } from './wish.ts';

interface ChoiceProps {
  readonly wish: OpenWish;
  readonly change: (part: WishChange) => void;
}

type Words<Value extends string> = Readonly<Record<Value, string>>;

const fuels: Words<NonNullable<OpenWish['fuel']>> = {
  briquettes: 'briquettes',
  'wood-coals': 'wood coals',
};
const airs: Words<AirWord> = {
  frost: 'frost',
  cold: 'cold air',
  mild: 'mild air',
  hot: 'hot air',
};
const winds: Words<WindSign> = {
  'smoke-rises-straight': 'smoke rises straight',
  'ash-drifts': 'ash drifts',
  'leaves-rustle': 'leaves rustle',
  'twigs-keep-moving': 'twigs keep moving',
  'ash-and-dust-fly': 'ash and dust fly',
  'small-trees-sway': 'small trees sway',
  'big-branches-move': 'big branches move',
  'whole-trees-move': 'whole trees move',
};
const grounds: Words<Ground> = {
  soil: 'bare soil',
  grass: 'grass',
  gravel: 'gravel',
  sand: 'sand',
  rock: 'rock',
  snow: 'snow',
  paving: 'paving',
};

const hands: Words<'1' | '2' | '3'> = {
  '1': 'one pair of hands',
  '2': 'two pairs of hands',
  '3': 'three pairs of hands',
};
const screens: Words<'0' | '1'> = { '0': 'no wind screen', '1': 'a wind screen' };
const starts: Words<'recipe' | 'hot' | 'cold'> = {
  recipe: 'oven hot or cold as the recipe wants',
  hot: 'hot oven at the start',
  cold: 'cold oven at the start',
};
const probes: Words<'no' | 'yes'> = { no: 'no thermometer', yes: 'a thermometer' };

interface GuessLineProps extends ChoiceProps {
  /** Only what a fire depends on: no hands, no thermometer, no start. */
  readonly isSpotOnly?: boolean;
}

export function GuessLine({ wish, change, isSpotOnly = false }: GuessLineProps) {
  return (
    <section className="guesses" aria-labelledby="guesses">
      <h2 id="guesses">Guessed, until you say</h2>
      <div className="guess-line">
        <Guess
          label="Fuel"
          words={fuels}
          usual="briquettes"
          value={wish.fuel}
          onChoose={(fuel) => change({ fuel })}
        />
        {wish.fuel === 'wood-coals' ? null : <PieceGuess wish={wish} change={change} />}
        <Guess
          label="Air"
          words={airs}
          usual="mild"
          value={wish.air}
          onChoose={(air) => change({ air })}
        />
        <Guess
          label="Wind"
          words={winds}
          usual="leaves-rustle"
          value={wish.wind}
          onChoose={(wind) => change({ wind })}
        />
        <Guess
          label="Wind screen"
          words={screens}
          usual="0"
          value={wordOrNot<'0' | '1'>(wish.windScreens)}
          onChoose={(count) => change({ windScreens: numberOrNot(count) })}
        />
        <Guess
          label="Ground"
          words={grounds}
          usual="soil"
          value={wish.ground}
          onChoose={(ground) => change({ ground })}
        />
        <HeightGuess wish={wish} change={change} />
        {isSpotOnly ? null : <CookGuesses wish={wish} change={change} />}
      </div>
      <HeightField wish={wish} change={change} />
      <PlaceMore wish={wish} change={change} />
      {isSpotOnly ? null : <p className="field-hint">The oven is greased.</p>}
    </section>
  );
}

function CookGuesses({ wish, change }: ChoiceProps) {
  return (
    <>
      <Guess
        label="Hands"
        words={hands}
        usual="1"
        value={wordOrNot<'1' | '2' | '3'>(wish.hands)}
        onChoose={(count) => change({ hands: numberOrNot(count) })}
      />
      <Guess
        label="Thermometer"
        words={probes}
        usual="no"
        value={wish.thermometer ? 'yes' : undefined}
        onChoose={(word) => change({ thermometer: word === 'yes' ? true : undefined })}
      />
      <Guess
        label="Oven at the start"
        words={starts}
        usual="recipe"
        value={wish.startsHot === undefined ? undefined : wish.startsHot ? 'hot' : 'cold'}
        onChoose={(word) => change({ startsHot: word === undefined ? undefined : word === 'hot' })}
      />
    </>
  );
}

const wordOrNot = <Word extends string>(value: number | undefined) =>
  value === undefined ? undefined : (String(value) as Word);

const numberOrNot = (word: string | undefined) => (word === undefined ? undefined : Number(word));

interface GuessProps<Value extends string> {
  readonly label: string;
  readonly words: Words<Value>;
  /** What is guessed; choosing it again goes back to guessing. */
  readonly usual: Value;
  readonly value: Value | undefined;
  readonly onChoose: (value: Value | undefined) => void;
}

function Guess<Value extends string>({ label, words, usual, value, onChoose }: GuessProps<Value>) {
  const id = useId();
  const choose = (word: Value) => onChoose(word === usual ? undefined : word);
  return (
    <span className={`guess ${value === undefined ? '' : 'is-changed'}`}>
      <label className="unseen" htmlFor={id}>
        {label}
      </label>
      <select
        id={id}
        value={value ?? usual}
        onChange={(event) => choose(event.currentTarget.value as Value)}
      >
        {Object.entries<string>(words).map(([each, word]) => (
          <option key={each} value={each}>
            {word}
          </option>
        ))}
      </select>
    </span>
  );
}

const OUNCE_GRAMS = 28.349523125;
const pieces = [16, 18, 20, 22, 25, 28, 32, 36];

function PieceGuess({ wish, change }: ChoiceProps) {
  const { measures } = useReader().reader;
  const words = Object.fromEntries(
    pieces.map((grams) => [String(grams), pieceWords(grams, measures)]),
  );
  return (
    <Guess
      label="One briquette weighs"
      words={words}
      usual="25"
      value={wordOrNot<string>(wish.pieceGrams)}
      onChoose={(grams) => change({ pieceGrams: numberOrNot(grams) })}
    />
  );
}

/** By ten, as a kitchen scale can tell them. */
const pieceWords = (grams: number, measures: Measures) =>
  measures === 'us'
    ? `ten weigh ${((grams * 10) / OUNCE_GRAMS).toFixed(1)} oz`
    : `ten weigh ${grams * 10} g`;

const heights: readonly {
  readonly metres: number;
  readonly us: string;
  readonly metric: string;
}[] = [
  { metres: 150, us: 'low ground', metric: 'low ground' },
  { metres: 600, us: 'about 2,000 ft', metric: 'about 600 m' },
  { metres: 1200, us: 'about 4,000 ft', metric: 'about 1200 m' },
  { metres: 1800, us: 'about 6,000 ft', metric: 'about 1800 m' },
  { metres: 2400, us: 'about 8,000 ft', metric: 'about 2400 m' },
  { metres: 3000, us: 'about 10,000 ft', metric: 'about 3000 m' },
];
const BY_BOIL = 'boil';
const USUAL_BOIL_KELVIN = 368.15;

function HeightGuess({ wish, change }: ChoiceProps) {
  const { measures } = useReader().reader;
  const words = {
    ...Object.fromEntries(heights.map((each) => [String(each.metres), each[measures]])),
    [BY_BOIL]: 'by how hot my water boils',
  };
  const choose = (chosen: string | undefined) => change({ height: heightFrom(chosen) });
  return (
    <Guess
      label="Height"
      words={words}
      usual="150"
      value={heightWord(wish.height)}
      onChoose={choose}
    />
  );
}

function heightFrom(chosen: string | undefined): TonightHeight | undefined {
  if (chosen === undefined) return undefined;
  return chosen === BY_BOIL ? { boilsKelvin: USUAL_BOIL_KELVIN } : { metres: Number(chosen) };
}

function heightWord(height: TonightHeight | undefined): string | undefined {
  if (height === undefined) return undefined;
  return 'metres' in height ? String(height.metres) : BY_BOIL;
}

const ZERO_CELSIUS_KELVIN = 273.15;

/** Where the cook goes by boiling water, its temperature. */
function HeightField({ wish, change }: ChoiceProps) {
  const isUs = useReader().reader.measures === 'us';
  const { height } = wish;
  if (height === undefined || !('boilsKelvin' in height)) return null;
  const bounds = isUs ? { lowest: 180, highest: 213 } : { lowest: 82, highest: 100.5 };
  const toKelvin = (degrees: number) =>
    (isUs ? (degrees - 32) / 1.8 : degrees) + ZERO_CELSIUS_KELVIN;
  const fromKelvin = (kelvin: number) => {
    const celsius = kelvin - ZERO_CELSIUS_KELVIN;
    return isUs ? celsius * 1.8 + 32 : celsius;
  };
  return (
    <Field
      label="My water boils at"
      value={height.boilsKelvin}
      write={(kelvin) => writeNumber(fromKelvin(kelvin), 1)}
      read={(text) => {
        const reading = readDecimal(text, bounds);
        return reading.ok ? { ok: true, value: toKelvin(reading.value) } : reading;
      }}
      onChange={(boilsKelvin) => change({ height: { boilsKelvin } satisfies TonightHeight })}
      takes={`a number from ${bounds.lowest} to ${bounds.highest}`}
      unit={isUs ? '°F' : '°C'}
      inputMode="decimal"
    />
  );
}
