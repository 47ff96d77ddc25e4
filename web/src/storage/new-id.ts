// Names for camps of one's own. Works on plain http too, where the browser hides its own maker.

/** `supper-k3f9x2`: from the title, with six random letters so that copies don't collide. */
export function newCampId(title: string): string {
  const stem = title
    .toLowerCase()
    .replace(/[^\p{L}\p{N}]+/gu, '-')
    .replace(/^-+|-+$/g, '')
    .slice(0, 28);
  const letters = Array.from(crypto.getRandomValues(new Uint8Array(6)), (byte) =>
    (byte % 36).toString(36),
  );
  return `${stem === '' ? 'camp' : stem}-${letters.join('')}`;
}

/** The same camp file under another name. */
export function renamedFile(
  file: string,
  change: { readonly id: string; readonly title?: string },
) {
  return JSON.stringify({ ...(JSON.parse(file) as object), ...change });
}

/** `2026-05-02`, on the device's own calendar. */
export function todayOf(now: Date): string {
  const two = (value: number) => String(value).padStart(2, '0');
  return `${now.getFullYear()}-${two(now.getMonth() + 1)}-${two(now.getDate())}`;
}
