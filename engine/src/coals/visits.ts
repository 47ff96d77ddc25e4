// One oven is gone to at most once in five minutes: what is to be done near another act joins it.
// Source: common practice, no source; a person has other ovens to see to.

/** Nobody goes to an oven twice within so many minutes. */
export const ONE_VISIT_MINUTES = 5;

/**
 * The minute nearest to the wished one that is a visit already or far enough from all of them;
 * undefined where the span between `after` and `before` holds none.
 */
export const visitNear = (
  wished: number,
  visits: readonly number[],
  within: { readonly after: number; readonly before: number },
): number | undefined => {
  const isFree = (minute: number) =>
    visits.every((visit) => visit === minute || Math.abs(visit - minute) >= ONE_VISIT_MINUTES);
  const near = Array.from({ length: 4 * ONE_VISIT_MINUTES + 1 }, (_, index) => {
    const half = Math.ceil(index / 2);
    return wished + (index % 2 === 0 ? half : -half);
  });
  return near.find((minute) => within.after < minute && minute < within.before && isFree(minute));
};
