// From one question about a dough to the others.

import { QuestionDoors } from '../parts/QuestionPage.tsx';
import { type DoughDoorName, doughDoors, doughTitles } from './doors.ts';

export const DoughDoors = ({ open }: { readonly open: DoughDoorName }) => (
  <QuestionDoors
    root="/dough"
    doors={doughDoors.map((each) => [each, doughTitles[each]] as const)}
    open={open}
  />
);
