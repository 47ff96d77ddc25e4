// What more or less of something does to a bread, by whoever says so.
// Sources: beside each code; where nobody was read, nothing is said.

import { type Notice, notice } from '../../notice/notice.ts';
import type { FigureName } from './character.ts';

/** Undefined where no source was read. */
export function effectOf(
  figure: FigureName,
  wasRatio: number,
  nowRatio: number,
): Notice | undefined {
  const isMore = wasRatio < nowRatio;
  const values = { wasRatio, nowRatio };
  switch (figure) {
    case 'hydration':
      return isMore
        ? notice('FORMULA_EFFECT_WETTER', 'note', {}, { ...values, source: 'hydrationClasses' })
        : notice('FORMULA_EFFECT_STIFFER', 'note', {}, { ...values, source: 'hydrationClasses' });
    case 'fat':
      return isMore
        ? notice('FORMULA_EFFECT_FAT_MORE', 'note', {}, { ...values, source: 'fatShortens' })
        : notice('FORMULA_EFFECT_FAT_LESS', 'note', {}, { ...values, source: 'fatShortens' });
    case 'salt':
      return isMore
        ? notice('FORMULA_EFFECT_SALT_MORE', 'note', {}, { ...values, source: 'breadIngredients' })
        : undefined;
    case 'sugar':
      return isMore
        ? notice('FORMULA_EFFECT_SUGAR_MORE', 'note', {}, { ...values, source: 'breadIngredients' })
        : undefined;
    case 'powder':
      return isMore
        ? notice('FORMULA_EFFECT_POWDER_MORE', 'note', {}, { ...values, source: 'lloyd2004' })
        : notice('FORMULA_EFFECT_POWDER_LESS', 'note', {}, { ...values, source: 'lloyd2004' });
    default:
      return undefined;
  }
}
