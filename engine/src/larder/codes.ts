// larder/ answers or does not know; what that means is said by the stages that ask.

import type { CodeList } from '../notice/notice.ts';

export const larderCodes = {} satisfies CodeList;
