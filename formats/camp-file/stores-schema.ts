// Buying, packing and carrying, as a camp file holds them. The schema stands by itself: what writes a
// file must not load the validator.

import * as z from 'zod';
import { clock, count, listOf, quantity, text } from './fields.ts';

const mass = (example: string, least: string, most: string) =>
  quantity('mass', { example, least, most });
const side = (example: string) => quantity('length', { example, least: '2 in', most: '3 m' });

const pack = z.strictObject({
  size: mass('5 lb', '1 g', '500 kg'),
  price: z.number().min(0).max(1_000_000).optional().meta({ description: 'Of one pack.' }),
});

const storeFood = z.strictObject({
  food: text(120).meta({ description: 'As it stands on the shopping list.' }),
  packs: listOf(pack, 6).optional(),
  shop: text(80).optional(),
  have: mass('2 kg', '0 g', '2000 kg').optional(),
  usable: quantity('share', { example: '82 %', least: '1 %', most: '100 %' })
    .optional()
    .meta({ description: 'So much of what is bought goes into the dish.' }),
});

const carrier = z.strictObject({
  kind: z.enum(['person', 'mule', 'boat', 'car']),
  name: text(80).optional(),
  count: count(1, 200).optional(),
  limit: mass('20 kg', '1 kg', '20000 kg').optional(),
});

const cooler = z.strictObject({
  name: text(80).optional(),
  volume: quantity('volume', { example: '36 qt', least: '2 l', most: '1000 l' }).optional(),
  length: side('20 in').optional(),
  width: side('14 in').optional(),
  height: side('12 in').optional(),
  wall: quantity('length', { example: '3 cm', least: '5 mm', most: '20 cm' }).optional(),
  openings: count(0, 500).optional().meta({ description: 'Times a day.' }),
  ice: mass('10 lb', '0 g', '500 kg').optional(),
});

export const stores = z.strictObject({
  foods: listOf(storeFood, 300).optional(),
  money: text(8).optional().meta({ description: 'As prices are written: "€", "USD".' }),
  box: z
    .strictObject({
      limit: mass('20 kg', '2 kg', '200 kg'),
      weight: mass('2 kg', '0 g', '50 kg').optional(),
    })
    .optional()
    .meta({ description: 'What one box may weigh full, and what it weighs empty.' }),
  carriers: listOf(carrier, 40).optional(),
  coolers: listOf(cooler, 20).optional(),
  packedAt: clock().optional().meta({ description: 'When boxes are closed: ice melts from then.' }),
});

export type FileStores = z.infer<typeof stores>;
