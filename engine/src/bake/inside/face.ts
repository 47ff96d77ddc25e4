// What a face meets: iron that it touches, air, and iron that shines on it.

/** One face at one moment; filled again for every step, so that nothing is made in the loop. */
export interface Face {
  /** To something that it touches [W/(m2 K)], and how hot that is or would be untouched [K]. */
  contact: number;
  contactKelvin: number;
  /**
   * What it touches is iron of this heat [J/(m2 K)], fed towards `contactKelvin` [W/(m2 K)]: cold dough
   * cools it. 0: it stays as hot as it is.
   */
  ironJoules: number;
  ironFeed: number;
  /** To air [W/(m2 K)], and how hot that is [K]. */
  film: number;
  airKelvin: number;
  /** Emissivity of both together, and the fourth power of what shines [K4]. */
  emissivity: number;
  shiningFourth: number;
  /** Share of the pressure that steam has in that air, 0 … 1. */
  steamShare: number;
  /** Steam can leave a skin that does not boil yet. */
  isOpen: boolean;
}

export const shutFace = (): Face => ({
  contact: 0,
  contactKelvin: 300,
  ironJoules: 0,
  ironFeed: 0,
  film: 0,
  airKelvin: 300,
  emissivity: 0,
  shiningFourth: 0,
  steamShare: 0,
  isOpen: false,
});

/** Writes both faces as they are at this second; the bottom of a bar or a ball is never asked. */
export type FacesAt = (seconds: number, bottom: Face, top: Face) => void;
