// Hatching and dots, so that lanes read without colour: on a copier, at night, to any eye.

import { element, ink } from './svg.ts';

export interface Patterns {
  readonly defs: string;
  /** Work at the fire. */
  readonly hatch: string;
  /** Kept hot. */
  readonly dots: string;
}

/** `name` must be a word of its own on the page: one that is hidden takes its patterns with it. */
export function patternsFor(name: string): Patterns {
  const hatch = `hatch-${name}`;
  const dots = `dots-${name}`;
  const square = { patternUnits: 'userSpaceOnUse', width: 5, height: 5 };
  return {
    defs: element(
      'defs',
      {},
      element(
        'pattern',
        { id: hatch, ...square },
        element('rect', { width: 5, height: 5, fill: ink.sheet }),
        element('path', {
          d: 'M-1 1L1 -1M0 5L5 0M4 6L6 4',
          stroke: ink.ember,
          'stroke-width': 1.1,
        }),
      ),
      element(
        'pattern',
        { id: dots, ...square },
        element('rect', { width: 5, height: 5, fill: ink.sheet }),
        element('circle', { cx: 2.5, cy: 2.5, r: 1, fill: ink.ink }),
      ),
    ),
    hatch: `url(#${hatch})`,
    dots: `url(#${dots})`,
  };
}
