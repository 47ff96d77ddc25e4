// How long do the small jobs take, and how exact must they be? Common practice, no source, except
// where said: a cook who is slower changes the recipe's own steps, not these.

/** Minutes of work. */
export const WASH_HANDS = 1;
export const FETCH_WATER = 15;
export const LIGHT_CHIMNEY = 2;
export const LIGHT_FEEDER = 5;
export const WIPE_OVEN = 3;
export const CHECK = 1;
export const TURN = 1;
export const STIR = 1;
export const PROBE = 1;
/**
 * Wash-up after a serving: so much, and so much more for each dish, oven and mouth. A judgement: three
 * minutes a dish, one an oven, a minute for eight plates and cups; longer than half an hour it is shared.
 */
export const washUpMinutes = (after: {
  readonly dishes: number;
  readonly ovens: number;
  readonly mouths: number;
}): number => Math.ceil(5 + 3 * after.dishes + after.ovens + after.mouths / 8);
export const WASH_UP_ALONE = 30;
/** Cutting into pieces: two seconds each, a stroke of the knife and a lift to the tray; a judgement. */
export const CUT_PIECE_MINUTES = 2 / 60;
export const ASH_OUT = 10;

/** Laying or adding coals: so much, and a minute more for every so many coals. */
export const LAY_COALS = 2;
export const COALS_A_MINUTE = 25;

/** A feeder fire is fed this often, two minutes of work each time; longer apart, it is said. */
export const TEND_FIRE = 2;
export const TEND_SOONEST = 15;
export const TEND_MOST = 25;
export const TEND_UNFED = 35;

/** A turn or an addition is done at its minute, give or take [min]. */
export const TO_THE_MINUTE = { early: 1, late: 1 };
/** A look, a stir; and turns and additions too where supper would be late otherwise, which is said. */
export const ABOUT = { early: 2, late: 4 };
/** A pot is stirred about then [min]. */
export const STIR_ROOM = { early: 5, late: 5 };
/** Taking out bread: this much later than reckoned, no more. */
export const OUT_LATE = 2;
export const POT_OUT_LATE = 10;

/** Between the end of one and the start of the next at most, where the recipe is silent. */
export const WASH_TO_WORK = 5;
export const GREASE_TO_OVEN = 30;
export const BATTER_WAITS = 20;
export const DOUGH_WAITS = 40;
export const SECOND_RISE_STRETCH = 15;
export const SHAPED_WAITS = 10;
export const COLD_LOAD_TO_COALS = 10;
export const OUT_TO_REST = 5;
/** Bread that has rested is cut, unless the recipe lets it stand. */
export const REST_TO_CUT = 5;

/** Browning starts when the floor is hot, this long after coals on. */
export const BROWN_FROM = 5;
export const BROWN_BY = 15;
export const BROWN_NEXT = 10;
/** The last touch of a pot, a slurry say, begins so long before it comes out at the latest [min]. */
export const LAST_STIR = 8;

export const STIR_EVERY = 25;
/** Empty and cooled enough to wipe. */
export const COOL_TO_WIPE = 3;
/** A pot is empty this long after serving. */
export const POT_EMPTIES = 20;
export const MEAL = 20;
/** Coals burn down before the ash is taken out. */
export const COALS_DOWN = 30;

/** Lit coals had better not wait longer than this. */
export const COALS_WAIT_LIKED = 20;
/** Coals may always wait this long, even if they then have to last a little past their life. */
export const COALS_WAIT_ALWAYS = 20;

/** Lit in a heap instead of a chimney: so much slower, and so many at once. */
export const HEAP_SLOWER = 1.5;
export const HEAP_COALS = 100;
/** Lit beside what is needed, where the chimney has room: some never catch. */
export const SPARE_SHARE = 0.1;
/**
 * Fewer than these do not draw in a chimney: a dozen, and a quarter of what it holds. A judgement, from
 * common practice, no source; what is not needed of them stays spare.
 */
export const DRAWS_FROM = 12;
export const DRAWS_SHARE = 0.25;

/** A two-person lift: deep ovens from here on, and any that is wider than 14 inches. */
export const HEAVY_DEEP_METRES = 0.35; // 14 inches are 0.3556 m
export const HEAVY_ANY_METRES = 0.4; // 16 inches are 0.4064 m
