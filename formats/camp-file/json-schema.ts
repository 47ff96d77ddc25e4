// The camp file for tools that know JSON Schema (draft 2020-12). Ranges of quantities and names
// that refer to one another are checked by the reader alone; a schema can't say them.

import * as z from 'zod';
import { campFileSchema } from './v1.ts';

export function campFileJsonSchema(): Readonly<Record<string, unknown>> {
  const { $schema, ...schema } = z.toJSONSchema(campFileSchema, { io: 'input' });
  return {
    $schema,
    title: 'Emberwright camp file, version 1',
    description:
      'A camp: place, weather, mouths, hands, ovens, fuel, menu and recipes. Quantities are text ' +
      'with their unit; bare numbers count things.',
    ...schema,
  };
}
