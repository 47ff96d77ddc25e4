// Which known word did the cook most likely mean?

/** The known word that needs the fewest single-letter changes; undefined where none is near. */
export function nearestWord(word: string, known: readonly string[]): string | undefined {
  if (word.length > 60) return undefined;
  const ranked = known
    .map((candidate) => ({ candidate, changes: wordDistance(plain(word), plain(candidate)) }))
    .sort((a, b) => a.changes - b.changes);
  const best = ranked[0];
  const bearable = Math.max(2, Math.floor(word.length / 3));
  return best !== undefined && best.changes <= bearable ? best.candidate : undefined;
}

const plain = (word: string) => word.toLowerCase().replace(/[\s_-]/g, '');

/**
 * Letters to insert, drop, change or swap with their neighbour to turn one word into another.
 *
 * @source R. A. Wagner and M. J. Fischer, The String-to-String Correction Problem (1974), with the
 *         neighbour swap of F. J. Damerau (1964), optimal string alignment; both from memory
 */
export function wordDistance(from: string, to: string): number {
  let older: number[] = [];
  let old = Array.from({ length: to.length + 1 }, (_, j) => j);
  for (let i = 1; i <= from.length; i += 1) {
    const row = [i];
    for (let j = 1; j <= to.length; j += 1) {
      const change = from[i - 1] === to[j - 1] ? 0 : 1;
      let least = Math.min(row[j - 1]! + 1, old[j]! + 1, old[j - 1]! + change);
      const swapped = i > 1 && j > 1 && from[i - 1] === to[j - 2] && from[i - 2] === to[j - 1];
      if (swapped) least = Math.min(least, older[j - 2]! + 1);
      row.push(least);
    }
    older = old;
    old = row;
  }
  return old[to.length]!;
}
