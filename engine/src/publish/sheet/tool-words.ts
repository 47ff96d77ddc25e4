// What the tools and the gear of the ovens are called, one and many.

import type { Tool } from '../../bake/index.ts';
import type { GearThing } from '../../provisions/boxes/packing.ts';

type Words = readonly [one: string, many: string];

export const TOOL: Readonly<Record<Tool, Words>> = {
  gloves: ['pair of gloves to the forearm', 'pairs of gloves to the forearm'],
  'lid-lifter': ['lid lifter', 'lid lifters'],
  'lid-stand': ['lid stand', 'lid stands'],
  'fat-and-brush': ['fat, and a brush or cloth for it', 'fat, and brushes for it'],
  'baking-paper': ['circle of baking paper with tabs', 'circles of baking paper with tabs'],
  'oven-rack': [
    'rack that fits on the floor of the oven',
    'racks that fit on the floor of an oven',
  ],
  tin: ['tin', 'tins'],
  'coarse-meal': ['bag of coarse meal for the floor', 'bags of coarse meal for the floor'],
  fork: ['fork', 'forks'],
  'thin-knife': ['thin knife', 'thin knives'],
  'broad-blade': ['broad blade', 'broad blades'],
  board: ['board', 'boards'],
  'cooling-rack': ['rack to cool bread on', 'racks to cool bread on'],
  'bread-knife': ['bread knife', 'bread knives'],
  'dry-cloth': ['dry cloth to keep bread in', 'dry cloths to keep bread in'],
};

export const GEAR: Readonly<Record<GearThing, Words>> = {
  chimney: ['chimney', 'chimneys'],
  'lid-stand': ['lid stand', 'lid stands'],
  table: ['table', 'tables'],
  'wind-screen': ['wind screen', 'wind screens'],
  thermometer: ['thermometer', 'thermometers'],
};

/** `2 chimneys`. */
export const countedWord = (count: number, [one, many]: Words) =>
  `${count} ${count === 1 ? one : many}`;
