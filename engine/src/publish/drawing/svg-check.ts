// Test only: is a drawing well-formed, and is all its text inside the view box? A small reader of
// our own, so that the engine's tests need no browser.

import { textWidth } from './svg.ts';

const TOKEN = /<(\/?)([a-zA-Z][\w-]*)((?:\s+[\w:-]+="[^"<]*")*)\s*(\/?)>|([^<]+)/g;

/** What is wrong with the text as XML; empty if nothing. */
export function malformed(svg: string): readonly string[] {
  const troubles: string[] = [];
  const open: string[] = [];
  let end = 0;
  for (const match of svg.matchAll(TOKEN)) {
    if (match.index !== end) troubles.push(`stray text at ${end}: ${svg.slice(end, end + 40)}`);
    end = match.index + match[0].length;
    const [, closing, name = '', , alone, text] = match;
    if (text !== undefined) {
      if (/&(?!(amp|lt|gt|quot);)/.test(text)) troubles.push(`bare ampersand in ${text}`);
    } else if (closing === '/') {
      if (open.pop() !== name) troubles.push(`</${name}> closes something else`);
    } else if (alone !== '/') open.push(name);
  }
  if (end !== svg.length) troubles.push(`unread rest: ${svg.slice(end, end + 40)}`);
  return [...troubles, ...open.map((name) => `<${name}> is never closed`)];
}

const TEXT = /<text ([^>]*)>([^<]*)<\/text>/g;

/** Lines of text that leave the view box; none of our texts is inside a transform. */
export function textsOutside(svg: string): readonly string[] {
  const box = /viewBox="0 0 ([\d.]+) ([\d.]+)"/.exec(svg);
  const width = Number(box?.[1]);
  const height = Number(box?.[2]);
  return [...svg.matchAll(TEXT)].flatMap(([, attributes = '', escaped = '']) => {
    const read = (name: string) => new RegExp(`(?:^| )${name}="([^"]*)"`).exec(attributes)?.[1];
    const text = escaped.replaceAll('&amp;', '&').replaceAll('&lt;', '<').replaceAll('&gt;', '>');
    const size = Number(read('font-size'));
    const wide = textWidth(text, size, read('font-weight') !== undefined);
    const shift = { middle: 0.5, end: 1 }[read('text-anchor') ?? ''] ?? 0;
    const from = Number(read('x')) - wide * shift;
    const y = Number(read('y'));
    const isInside = -1 <= from && from + wide <= width + 1 && size * 0.7 <= y && y <= height;
    return isInside
      ? []
      : [
          `"${text}" at ${from.toFixed(0)}…${(from + wide).toFixed(0)}, ${y} of ${width} × ${height}`,
        ];
  });
}
