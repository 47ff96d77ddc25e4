interface TakeOutProps {
  /** What is taken out, as a reader that can not see it is told. */
  readonly what: string;
  readonly onRemove: () => void;
}

export const TakeOut = ({ what, onRemove }: TakeOutProps) => (
  <div>
    <button type="button" className="button is-quiet" onClick={onRemove}>
      Take out <span className="unseen">{what}</span>
    </button>
  </div>
);
