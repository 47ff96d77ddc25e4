// A household measure as a person says it: a whole number and a fraction of a cup, spoon or piece.

export interface CookMeasure {
  /** 2.75 for "2 3/4". Always a multiple of the measure's smallest honest step. */
  readonly amount: number;
  readonly measure: 'cup' | 'tbsp' | 'tsp' | 'each';
}
