// What does it bring to knock the ash off? Every page says to do it, none says how much it does.
// Source: ashKnocked (one report, of a smoker), bergman2011 (the upper end, reckoned).
// Weak spot: nobody has measured it on a camp oven. A guess with a wide range, told as such.

import type { CoalGroup, RunSetting } from './run.ts';

/**
 * How much stronger a coal burns once its ash is off; the range is meant as an 80 % one.
 *
 * Likely: the air of a smoker rose from 234 to 255 °F in two minutes; above air of 70 °F that is 185
 * by 164. Least: nothing. Most: air reaches the coal through a film of about 4 mm (a sphere in its
 * own draught has a Sherwood number near 12, bergman2011 eq. 9.35); loose ash 1 mm thick, half of it
 * open and crooked, hinders as 1.5 mm of film more: 5.5 by 4. How thick it lies is ours.
 *
 * @source  ashKnocked (grade C); bergman2011 eq. 9.35 for the film; thickness: no source
 */
export const ASH_GAIN = { least: 1, likely: 1.13, most: 1.4 } as const;

/** Half an hour after lighting in still air, when cards say to clear ash first; as in feeding.ts. */
const ASHY_BURNT = 0.37;

/** Live coals with ash worth knocking off. */
export const hasAsh = (coals: readonly CoalGroup[]): boolean =>
  coals.some(
    ({ burnt, count, isClear }) => count > 0 && ASHY_BURNT <= burnt && burnt < 1 && !isClear,
  );

/** The same coals bared: stronger, and burned up as much sooner, so that no heat is made of nothing. */
export const withAshOff = (setting: RunSetting, gain: number = ASH_GAIN.likely): RunSetting => ({
  ...setting,
  strengthAbove: setting.strengthAbove * gain,
  strengthBelow: setting.strengthBelow * gain,
  burnoutMinutes: setting.burnoutMinutes / gain,
});
