// More about the place and the oven: what few fires need said. A fold on the front door and at the
// fire; its fields are fetched when it is opened.

import { useState } from 'preact/hooks';
import { later } from '../parts/later.tsx';
import type { OpenWish, WishChange } from '../tonight/wish.ts';

const PlaceFields = later(() => import('./PlaceFields.tsx'), 'field-hint');

interface PlaceMoreProps {
  readonly wish: OpenWish;
  readonly change: (part: WishChange) => void;
}

export function PlaceMore({ wish, change }: PlaceMoreProps) {
  const [isOpened, setOpened] = useState(false);
  const said = [
    wish.rainMillimetres,
    wish.sunRatio,
    wish.groundIs,
    wish.hearth,
    wish.riserMetres,
    wish.lidGrams,
  ].filter((each) => each !== undefined).length;
  return (
    <details className="more" onToggle={(event) => event.currentTarget.open && setOpened(true)}>
      <summary>
        More about the place
        <small>: rain, sun, wet ground, riser, lid{said === 0 ? '' : ` · ${said} said`}</small>
      </summary>
      <div className="change-body">
        {isOpened ? <PlaceFields wish={wish} change={change} /> : null}
      </div>
    </details>
  );
}
