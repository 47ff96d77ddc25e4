// What timetable/ offers, in the order of the job.

export { checkTimetable } from './check-timetable.ts';
export { timetableCodes } from './codes.ts';
export { type DayJudge, dayJudge } from './day-judge.ts';
export type * from './day-sheet.ts';
export type * from './doubt/doubt.ts';
export { firstSheet } from './first-sheet.ts';
export { USUAL_IN_HAND } from './in-hand.ts';
export { adviseDay, planTimetable, type TimetableOptions } from './plan-timetable.ts';
export { jobMeant, lightingMeant } from './replan/meant.ts';
export { replan } from './replan/replan.ts';
export type * from './replan/slip.ts';
