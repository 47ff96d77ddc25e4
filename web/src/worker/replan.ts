// A day that slipped: the camp as it was planned, and how it can go on from now.

import {
  clockMinutes,
  jobName,
  type MealPlan,
  replan,
  replanSheet,
  type Say,
  sayFor,
  timetableRequestOf,
} from '#engine';
import { readCampFile } from '#formats';
import { plannedBefore } from './meal-sheets.ts';
import type { ReplanAnswer, ReplanChoices, ReplanQuestion } from './replan-messages.ts';

export function replanAnswer({ file, nowMinutes, slips, voice }: ReplanQuestion): ReplanAnswer {
  const read = readCampFile(file);
  if (!read.ok) return { troubles: read.troubles };
  const { camp, menu, assumed } = read;
  const plan = plannedBefore(camp, menu, assumed);
  const say = sayFor({ ...voice, plan });
  const now = clockMinutes(nowMinutes);
  const request = timetableRequestOf(plan);
  const replanned = replan({ request, sheet: plan.daySheet, now, slips });
  return {
    troubles: [],
    sheet: replanSheet({ plan, now, replanned }, say),
    choices: choicesIn(plan, now, say),
  };
}

const LIGHT_SOON = 15;

function choicesIn({ menu, camp, daySheet }: MealPlan, now: number, say: Say): ReplanChoices {
  const running = daySheet.jobs.filter(
    ({ kind, end }) => end > now && (kind === 'rise' || kind === 'second-rise' || kind === 'cook'),
  );
  const lightings = daySheet.lightings.filter(
    ({ at, readyAt }) => at <= now + LIGHT_SOON && now - LIGHT_SOON <= readyAt,
  );
  const used = new Set(daySheet.spans.map(({ oven }) => oven));
  return {
    dishes: menu.dishes.map(({ id, name }) => ({ id, label: name })),
    ovens: camp.ovens.filter(({ id }) => used.has(id)).map(({ id, name }) => ({ id, label: name })),
    hands: camp.hands.map(({ id, name }) => ({ id, label: name })),
    lightings: lightings.map(({ id, at, chimney }) => ({
      id,
      label: `${chimney === undefined ? 'fire' : `chimney ${chimney}`}, lit at ${say.clock(at)}`,
    })),
    running: running.map((job) => ({
      id: job.id,
      label: `${job.kind === 'cook' ? 'bake' : jobName(job)}, ${say.dish(job.dish ?? '')}, from ${say.clock(job.start)}`,
    })),
  };
}
