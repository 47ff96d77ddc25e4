// What stands where the card will be: an oven from the side, no coals laid yet.

export function EmptyOven() {
  return (
    <div className="empty-card">
      <svg viewBox="0 0 240 130" aria-hidden="true">
        <path d="M20 118H220" stroke="var(--ink)" stroke-width="3" />
        <path
          d="M62 100V118M120 100V118M178 100V118"
          stroke="var(--iron)"
          stroke-width="7"
          stroke-linecap="square"
        />
        <path
          d="M48 46H192L184 102H56Z"
          fill="var(--iron)"
          stroke="var(--edge)"
          stroke-width="1.5"
        />
        <path
          d="M40 46V34H46V40H194V34H200V46Z"
          fill="var(--iron)"
          stroke="var(--edge)"
          stroke-width="1.5"
        />
        <path d="M106 40C106 26 134 26 134 40" fill="none" stroke="var(--edge)" stroke-width="5" />
      </svg>
      <p>Choose what goes in. The coals, the minutes and the checks are then drawn here.</p>
    </div>
  );
}
