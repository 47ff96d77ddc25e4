// Our mark: a lid from above, its handle and four coals.

export function Mark() {
  return (
    <svg viewBox="0 0 64 64" aria-hidden="true">
      <circle cx="32" cy="32" r="30" fill="var(--iron)" stroke="var(--edge)" />
      <circle cx="32" cy="32" r="26" fill="none" stroke="var(--on-iron)" stroke-width="1.5" />
      <rect x="22" y="28.5" width="20" height="7" rx="3.5" fill="var(--on-iron)" />
      <g fill="var(--ash)" stroke="var(--glow)" stroke-width="2.5">
        <rect x="27.5" y="8" width="9" height="9" rx="2.5" />
        <rect x="27.5" y="47" width="9" height="9" rx="2.5" />
        <rect x="8" y="27.5" width="9" height="9" rx="2.5" />
        <rect x="47" y="27.5" width="9" height="9" rx="2.5" />
      </g>
    </svg>
  );
}
