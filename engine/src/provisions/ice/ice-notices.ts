// What has to be said of cold boxes: too little ice, too little room, raw meat beside the rest.

import { type Notice, notice } from '../../notice/notice.ts';
import type { ColdBox, IcePlan } from './ice-plan.ts';

/**
 * @notice PROVISIONS_ICE_SHORT — the ice that goes in is gone before the last serving
 * @notice PROVISIONS_COOLER_FULL — food and ice want more room than the cooler has
 * @notice PROVISIONS_RAW_BESIDE_READY — one cooler holds raw meat and what is eaten as it is
 * @notice PROVISIONS_COOLER_ASSUMED — nobody named a cooler
 */
export function iceNotices(ice: IcePlan | undefined): readonly Notice[] {
  if (ice === undefined) return [];
  const isAssumed = ice.boxes.some((box) => box.isAssumed);
  return [
    ...ice.boxes.flatMap((box) => boxNotices(box, ice)),
    ...(isAssumed ? [notice('PROVISIONS_COOLER_ASSUMED', 'note', {}, { iceGrams: ice.ice })] : []),
  ];
}

function boxNotices(box: ColdBox, { minutes }: IcePlan): readonly Notice[] {
  const { cooler, holds, iceNeeded, lasts, fill } = box;
  const about = { cooler: cooler.name };
  return [
    ...(holds === 'both' ? [notice('PROVISIONS_RAW_BESIDE_READY', 'danger', {}, about)] : []),
    ...(lasts !== undefined && lasts < minutes
      ? [
          notice(
            'PROVISIONS_ICE_SHORT',
            'stop',
            {},
            {
              ...about,
              shortGrams: iceNeeded - (cooler.ice ?? 0),
              lastsMinutes: lasts,
              wantedMinutes: minutes,
            },
          ),
        ]
      : []),
    ...(1 < fill && !box.isAssumed
      ? [notice('PROVISIONS_COOLER_FULL', 'doubt', {}, { ...about, fillRatio: fill })]
      : []),
  ];
}
