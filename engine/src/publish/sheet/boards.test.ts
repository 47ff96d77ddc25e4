// The boards and pocket cards of a day: nothing is lost between the day sheet and what is carried, and a
// wood camp hears no count of briquettes (AT-THE-FIRE 13).

import { describe, expect, it } from 'vitest';
import type { MealPlan } from '../../meal.ts';
import type { Block, SheetDocument } from '../document.ts';
import { fixturePlan } from '../fixture.ts';
import { renderText } from '../render/text.ts';
import { sayFor } from '../speak.ts';
import { jobBrief, jobSentence } from '../words/jobs.ts';
import { daySheet } from './day-sheet.ts';
import { fireChiefSheet } from './fire-chief.ts';
import { handColumns } from './hand-columns.ts';
import { numberedJobs, ovensInARow, ownPart } from './job-list.ts';
import { pocketCards } from './pocket-cards.ts';
import { shortWork } from './short-work.ts';
import { wallList } from './wall-list.ts';

const plans: readonly (readonly [string, MealPlan])[] = [
  ['briquettes', fixturePlan()],
  ['wood coals', fixturePlan('wood-coals')],
];
const sayOf = (plan: MealPlan) => sayFor({ measures: 'metric', clock: '24', plan });
const rowsIn = (blocks: readonly Block[]) =>
  blocks.flatMap((block) => (block.type === 'steps' ? block.rows : []));
const tablesIn = ({ blocks }: SheetDocument) =>
  blocks.flatMap((block) => (block.type === 'table' ? [block] : []));

describe.each(plans)('the boards of a camp on %s', (_name, plan) => {
  const say = sayOf(plan);
  const ownJobs = (hand: string) => numberedJobs(plan).flatMap((each) => ownPart(each, hand) ?? []);

  it('put every job of a pair of hands on its pocket cards, by the clock', () => {
    const cards = pocketCards(plan, say).blocks;
    const shown = cards.flatMap((card) => (card.type === 'card' ? rowsIn(card.blocks) : []));
    const wanted = plan.camp.hands.flatMap(({ id }) => ownJobs(id));
    expect(shown.map(({ when }) => when)).toEqual(wanted.map(({ job }) => say.clock(job.start)));
    expect(wanted.length).toBeGreaterThan(10);
  });

  it('say on every pocket card first that coals under a roof make carbon monoxide', () => {
    for (const card of pocketCards(plan, say).blocks) {
      const first = card.type === 'card' ? card.blocks[0] : undefined;
      expect(JSON.stringify(first)).toMatch(/No coals under a fly.*carbon monoxide/);
    }
  });

  it('say with every turn how far', () => {
    const turns = numberedJobs(plan).filter(({ job }) => job.kind === 'turn');
    expect(turns.length).toBeGreaterThan(0);
    for (const turn of turns)
      expect(shortWork(turn, plan, say)).toMatch(/quarter|half|sixth|eighth|third|degrees/);
  });

  it('light each chimney of one minute with its own number and coals', () => {
    const { daySheet } = plan;
    const [first] = daySheet.lightings;
    if (first?.chimney === undefined) return;
    const lit = daySheet.jobs.find(({ id }) => id === first.id)!;
    const other = { ...first, id: 'lighting-beside', chimney: 7, coals: 11 };
    const job = { ...lit, id: other.id, values: { ...lit.values, coals: 11, chimney: 7 } };
    const beside = {
      ...plan,
      daySheet: { ...daySheet, jobs: [lit, job], lightings: [first, other] },
    };
    for (const words of [jobSentence, jobBrief])
      expect(words(job, beside, say)).toBe('Light chimney 7 with 11 coals');
  });

  it('put every job of a pair of hands into its column', () => {
    const cells = tablesIn(handColumns(plan, say)).flatMap(({ rows }) =>
      rows.flatMap((row) => row.slice(1)),
    );
    const lines = cells.flatMap((cell) => cell.split('\n')).filter((line) => line !== '');
    const wanted = plan.camp.hands.flatMap(({ id }) => ownJobs(id));
    expect(lines).toHaveLength(wanted.length);
  });

  it('call every dish on the wall', () => {
    const rows = rowsIn(wallList(plan, say).blocks);
    const calls = rows.filter(({ strong }) => strong === true);
    const wanted = plan.daySheet.jobs.filter(({ kind }) => kind === 'call');
    expect(calls).toHaveLength(wanted.length);
  });

  it('light on the fire chief’s sheet all that is lit, chimneys by their numbers', () => {
    const [watch] = tablesIn(fireChiefSheet(plan, say));
    const lights = watch!.rows.flatMap((row) => row[1]!.split('\n')).join(' | ');
    for (const { chimney, coals } of plan.daySheet.lightings)
      expect(lights).toContain(
        chimney === undefined ? 'feeder fire' : `himney ${chimney}: ${coals}`,
      );
  });
});

describe('a day without hands', () => {
  it('has no serving time, and no comma where one would be', () => {
    const plan = fixturePlan();
    const { firstFire: _, ...day } = plan.daySheet;
    const bare = { ...plan, daySheet: { ...day, jobs: [], lightings: [], servings: [], lit: [] } };
    const text = renderText(daySheet(bare, sayOf(plan)), { width: 200 });
    expect(text).not.toMatch(/table ?,/);
    expect(text).toContain('on the table at no time.');
  });
});

describe('a wood camp', () => {
  it('reads shovels, and neither briquettes nor chimneys', () => {
    const plan = fixturePlan('wood-coals');
    const say = sayOf(plan);
    const text = [fireChiefSheet, wallList, handColumns, pocketCards]
      .map((sheet) => renderText(sheet(plan, say), { width: 100 }))
      .join('\n');
    expect(text).toMatch(/shovels?/);
    expect(text).not.toMatch(/chimney|briquette|\d+ coals/i);
  });
});

describe('ovens named in one breath', () => {
  it.each([
    [['bread 1', 'bread 2', 'bread 3'], 'bread 1 to 3'],
    [['bread 1', 'bread 3'], 'bread 1 and bread 3'],
    [['pot 9', 'pot 10', 'pot 11'], 'pot 9 to 11'],
    [['the red one', 'the blue one'], 'the red one and the blue one'],
    [['Oven A'], 'Oven A'],
  ])('%j as "%s"', (names, said) => {
    expect(ovensInARow(names)).toBe(said);
  });
});
