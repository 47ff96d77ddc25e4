// Danger is read first.

import type { Notice, NoticeLevel } from '../notice/notice.ts';

const ORDER: readonly NoticeLevel[] = ['danger', 'stop', 'doubt', 'note'];

export const byDanger = (one: Notice, other: Notice) =>
  ORDER.indexOf(one.level) - ORDER.indexOf(other.level);
