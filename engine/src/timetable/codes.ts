// Everything the timetable has to say beside its times.

import type { CodeList } from '../notice/notice.ts';

export const timetableCodes = {
  TIMETABLE_NO_HANDS: {
    kind: 'notice',
    when: 'nobody is down as hands in the camp',
    next: 'Put in at least one pair of hands with its hours.',
  },
  TIMETABLE_SERVING_PAST: {
    kind: 'refusal',
    when: 'a serving time lies before the time planned from',
    next: 'Set a later serving time; the sheet shows the soonest it can be.',
  },
  TIMETABLE_BEFORE_FIRST_TASK: {
    kind: 'refusal',
    when: 'a dish is to be served before anybody is there to begin it',
    next: 'Serve it later, or let somebody come sooner.',
  },
  TIMETABLE_NOBODY_THERE: {
    kind: 'refusal',
    when: 'work has to be done at an hour when nobody who may do it is there, proven by adding up',
    next: 'Let somebody stay or come for that hour, or serve at another time.',
  },
  TIMETABLE_TOO_SOON: {
    kind: 'refusal',
    when: 'the work of a dish is longer than the time left before its serving, whoever helps',
    next: 'Serve it later, or cook something quicker.',
  },
  TIMETABLE_RISE_TOO_LONG: {
    kind: 'refusal',
    when: 'a dough has to rise for longer than there is between the first hands and its serving',
    next: 'Mix it the day before, give it more yeast or a warmer place, or serve it later.',
  },
  TIMETABLE_COALS_TOO_LATE: {
    kind: 'refusal',
    when: 'the first coals can not have ashed over when the dish needs them',
    next: 'Serve it later, or have somebody light a chimney sooner.',
  },
  TIMETABLE_COALS_TOO_FEW: {
    kind: 'refusal',
    when: 'more coals are needed by some hour than the chimneys can have made, proven by adding up',
    next: 'One more chimney, a sooner start, or fewer ovens at once.',
  },
  TIMETABLE_OVEN_TWICE: {
    kind: 'refusal',
    when: 'one oven would have to hold two dishes at once, whichever of them goes first',
    next: 'Give one of them another oven or another time.',
  },
  TIMETABLE_TABLE_TOO_SMALL: {
    kind: 'refusal',
    when: 'work at the table adds up to more than its room, proven by adding up',
    next: 'One more table, or work begun sooner.',
  },
  TIMETABLE_CONTRADICTION: {
    kind: 'refusal',
    when: 'times in a recipe or pins contradict each other, proven by adding them up',
    next: 'Change one of the steps or pins named.',
  },
  TIMETABLE_HOURS_TOO_SHORT: {
    kind: 'refusal',
    when: 'the work adds up to more than all hands have hours, proven by adding up',
    next: 'More hands, longer hours or fewer dishes.',
  },
  TIMETABLE_LATE: {
    kind: 'notice',
    when: 'no plan was found that serves the dish in time; this does not prove that there is none',
    next: 'Look at the advice on the sheet, or serve later.',
  },
  TIMETABLE_PAST_LATEST: {
    kind: 'notice',
    when: 'a dish comes out later than the latest that was given for it, or its turn-in window',
    next: 'Begin it sooner, leave something else out, or ask for a later window.',
  },
  TIMETABLE_NOT_KEPT: {
    kind: 'notice',
    when: 'a job stands where hands, oven or coals are not to be had',
    next: 'Move or share out the job named, or ask one more to help.',
  },
  TIMETABLE_PIN_NOT_KEPT: {
    kind: 'notice',
    when: 'a pinned time stands although something else does not fit with it',
    next: 'Move the pin, or what it clashes with.',
  },
  TIMETABLE_PIN_WAITS: {
    kind: 'notice',
    when: 'coals pinned so early that the dish waits longer than it should',
    next: 'Pin the coals later, or let the dish be served sooner.',
  },
  TIMETABLE_OVEN_WAITS: {
    kind: 'notice',
    when: 'a bread comes out early because its oven bakes again for the same serving',
    next: 'Keep it wrapped and warm, or give one of them another oven.',
  },
  TIMETABLE_LIFT_ALONE: {
    kind: 'notice',
    when: 'a heavy oven is loaded before a second pair of hands is there',
    next: 'Set the oven in its place empty, then fill it there.',
  },
  TIMETABLE_FIRE_UNFED: {
    kind: 'notice',
    when: 'nobody is free to feed the feeder fire for more than 35 minutes',
    next: 'Give it a thick log before, or ask somebody to look after it.',
  },
  TIMETABLE_PIN_UNKNOWN_HAND: {
    kind: 'notice',
    when: 'a dish is pinned to somebody who is not among the hands',
    next: 'Put that person in, or pin somebody else.',
  },
  TIMETABLE_ONLY_LESS_SKILLED: {
    kind: 'notice',
    when: 'work that wants a steadier hand is given to the best there is',
    next: 'Stand beside them for it, or ask somebody who has done it before.',
  },
  TIMETABLE_TOO_FEW_HANDS: {
    kind: 'notice',
    when: 'a job wants more people at once than there are',
    next: 'Ask a mouth to lend a hand for that minute.',
  },
  TIMETABLE_FREE_FROM_NOT_FIRST: {
    kind: 'notice',
    when: 'a dish kept free of something can not be made before the others without spoiling',
    next: 'Cover the flour, wash hands and table, use its own tools.',
  },
  TIMETABLE_RISE_HURRIED: {
    kind: 'notice',
    when: 'supper is in time only if the dough rises quicker than likely, but within its band',
    next: 'Warmer water, a warmer place, or serve later.',
  },
  TIMETABLE_RISE_NOT_AS_WRITTEN: {
    kind: 'notice',
    when: 'a rise is written far longer or shorter than this dough is likely to take at its warmth',
    next: 'Go by the dough; look at its yeast and at the temperature that were written.',
  },
  TIMETABLE_LEFT: {
    kind: 'notice',
    when: 'work that can be left found no free hand within their hours',
    next: 'Do it whenever there is a moment.',
  },
  TIMETABLE_DISH_UNPLANNED: {
    kind: 'notice',
    when: 'a dish can not be served within six hours of its wish, or only the next day',
    next: 'Another time, another oven or another dish; the rest is planned without it.',
  },
  TIMETABLE_HANDS_NOT_WASHED: {
    kind: 'notice',
    when: 'hands go from wheat, raw meat or charcoal to food that has to be kept from it, with no minute between',
    next: 'Wash all the same, a minute late, or let somebody with clean hands do it.',
  },
  TIMETABLE_OFF_MINUTE: {
    kind: 'notice',
    when: 'a turn or an addition stands a few minutes off its own minute, hands being busy',
    next: 'Nothing: a few minutes do no harm; one more pair of hands puts it right.',
  },
  TIMETABLE_NO_CHIMNEY: {
    kind: 'notice',
    when: 'coals are wanted and no chimney is in the gear; one heap at a time is reckoned',
    next: 'Light them in a heap on the fire pan and give them longer.',
  },
  TIMETABLE_COALS_OLD: {
    kind: 'notice',
    when: 'coals have to last longer than their life before fresh ones are added',
    next: 'Look at them early and have some spare ones lit.',
  },
  TIMETABLE_REPLAN_PIN: {
    kind: 'notice',
    when: 'a pinned minute can not be kept any more on a day that slipped',
    next: 'Take the new minute, or change what it clashes with.',
  },
  TIMETABLE_REPLAN_LOAD_LOST: {
    kind: 'notice',
    when: 'an oven fails while something is in it',
    next: 'Save what can be saved; the offers go on without it.',
  },
  TIMETABLE_REPLAN_NO_OVEN: {
    kind: 'notice',
    when: 'an oven fails and no other is as wide and free of the same',
    next: 'Cook it in a smaller one by a card of its own, or leave it out.',
  },
  TIMETABLE_REPLAN_OTHER_OVEN: {
    kind: 'notice',
    when: 'an oven fails before its dish is in it, and another takes it',
    next: 'Look at the coals: they were counted for the other oven.',
  },
  TIMETABLE_BEFORE_LIGHT: {
    kind: 'notice',
    when: 'work begins before first light at the place of the camp',
    next: 'Bring a lamp that leaves both hands free, or serve later.',
  },
  TIMETABLE_AFTER_DARK: {
    kind: 'notice',
    when: 'work goes on after dark at the place of the camp',
    next: 'Bring a lamp that leaves both hands free, or serve sooner.',
  },
} as const satisfies CodeList;
