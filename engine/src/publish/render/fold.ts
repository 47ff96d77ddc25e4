// Lines of plain text no wider than a terminal.

/** Lines no wider than the room; a longer word stands alone on its line. */
export function fold(text: string, width: number, hang = ''): string {
  const lines: string[] = [];
  let line = '';
  for (const word of text.split(/[ \n]+/)) {
    const longer = line === '' ? word : `${line} ${word}`;
    if (longer.length > width && line !== '') {
      lines.push(line);
      line = hang + word;
    } else line = longer;
  }
  return [...lines, line].join('\n');
}
