// Says whether what is shown belongs to what was asked.

interface ComputingProps {
  readonly isBusy: boolean;
  readonly failure?: string | undefined;
  /** What is shown leaves out something that can't be read yet. */
  readonly isBehind?: boolean;
}

export function Computing({ isBusy, failure, isBehind = false }: ComputingProps) {
  if (failure !== undefined && !isBusy) {
    return (
      <p className="word is-trouble" role="alert">
        The plan could not be computed ({failure}). What you typed is kept; change anything to try
        again.
      </p>
    );
  }
  return (
    <p className={`computing no-print ${isBusy ? 'is-busy' : ''}`} role="status">
      {isBusy
        ? 'Working it out; the sheet below is from before'
        : isBehind
          ? 'Waiting'
          : 'Up to date'}
    </p>
  );
}
