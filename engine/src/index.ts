// The public surface, in the order of the job. Shells import from here and nowhere deeper.

export * from './quantity/unit.ts';
export * from './notice/notice.ts';
