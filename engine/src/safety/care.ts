// Limits that no plan may break, and the cautions that go with a dish or a camp.

import type { Notice } from '../notice/notice.ts';
import type { Kelvin, Minutes } from '../quantity/unit.ts';

export interface DishSafety {
  readonly dish: string;
  /** Least core temperature for health; undefined where no meat, egg or re-heating is in it. */
  readonly least?: SafeCore;
  /** Hot food waits at this or above. */
  readonly hotHold: Kelvin;
  readonly coldHold: Kelvin;
  /** Plain bread: it is kept dry, neither hot nor cold, so the two holds do not apply. */
  readonly isKeptDry?: boolean;
  /** It may stand between cold and hot no longer than this, all told. */
  readonly outLimit: Minutes;
  /** A simmered pot must come to a full boil this long (kidney beans). */
  readonly fullBoil?: Minutes;
  /** Free of, and how it is kept so. */
  readonly freeFrom: readonly string[];
  readonly cautions: readonly Notice[];
}

export interface SafeCore {
  readonly core: Kelvin;
  readonly rest: Minutes;
  readonly food: string;
  readonly source: string;
}

export interface CampSafety {
  /** May coals be lit here today, as far as the camp file says? */
  readonly fire: 'allowed' | 'forbidden' | 'ask';
  /** Fixed strip for every card, danger first. */
  readonly strip: readonly Notice[];
  readonly cautions: readonly Notice[];
  /** Dish by dish: who can't eat it. */
  readonly unfit: readonly {
    readonly dish: string;
    readonly who: string;
    readonly because: string;
  }[];
}
