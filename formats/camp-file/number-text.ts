// Which number did the cook write? `3 3/4`, `6,890`, `2½`, `-4`.

const FRACTION_SIGNS: Readonly<Record<string, string>> = { '½': '1/2', '¼': '1/4', '¾': '3/4' };

/** The number that a piece of text stands for; undefined where it is none, or not plainly one. */
export function readNumber(text: string): number | undefined {
  const plain = text
    .replace('−', '-')
    .replace(/[½¼¾]/, (sign) => ` ${FRACTION_SIGNS[sign]}`)
    .trim();
  const negative = plain.startsWith('-');
  const size = readSize(plain.replace(/^[-+]\s*/, ''));
  if (size === undefined || !Number.isFinite(size)) return undefined;
  return negative ? 0 - size : size;
}

function readSize(text: string): number | undefined {
  const fraction = /^(?:(\d{1,6})\s+)?(\d{1,4})\/(\d{1,4})$/.exec(text);
  if (fraction) return readFraction(fraction);
  // As quantity/ reads it: a comma before three digits parts thousands, any other is a decimal one.
  const isThousands = /^\d{1,3}(,\d{3})+(\.\d+)?$/.test(text);
  const number = isThousands ? text.replaceAll(',', '') : text.replace(',', '.');
  return /^(\d{1,12}(\.\d{1,17})?|\.\d{1,17})$/.test(number) ? Number(number) : undefined;
}

function readFraction([, whole, over, under]: RegExpExecArray): number | undefined {
  const divisor = Number(under);
  return divisor === 0 ? undefined : Number(whole ?? 0) + Number(over) / divisor;
}
