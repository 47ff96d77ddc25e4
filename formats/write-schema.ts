// Writes the camp file's JSON Schema for editors and other tools: `npx tsx formats/write-schema.ts`.

import { writeFileSync } from 'node:fs';
import { campFileJsonSchema } from './camp-file/json-schema.ts';

const target = new URL('./camp-file.schema.json', import.meta.url);
writeFileSync(target, `${JSON.stringify(campFileJsonSchema(), null, 2)}\n`);
