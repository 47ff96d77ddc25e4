// Sentences for the codes of larder/: it has none of its own so far. A food that is not found is
// said where it matters, by formula/ and menu/.

import type { Words } from '../say.ts';

export const larderWords: Words = {};
