// What is folded away on screen is printed in full.

export function unfoldForPrint(page: Window): void {
  let unfolded: readonly HTMLDetailsElement[] = [];
  page.addEventListener('beforeprint', () => {
    const folded = page.document.querySelectorAll<HTMLDetailsElement>('.sheet-why:not([open])');
    unfolded = [...folded];
    for (const each of unfolded) each.open = true;
  });
  page.addEventListener('afterprint', () => {
    for (const each of unfolded) each.open = false;
    unfolded = [];
  });
}
