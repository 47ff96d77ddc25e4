// What is saved and read: the camp file, its versions, the demo camps. Shells import from here.

// Quantities as people write them
export { readClock, readDirection, writeClock } from './camp-file/clock-text.ts';
// Reading and writing
export { fromEngine, recipeToFile } from './camp-file/from-engine.ts';
export { type QuantityKind, readQuantity, writeQuantity } from './camp-file/quantity-text.ts';
export {
  type CampNotRead,
  type CampRead,
  readCampFile,
} from './camp-file/read.ts';
export type { FileTrouble } from './camp-file/trouble.ts';
export { type CampFile, campFileSchema, NEWEST_VERSION } from './camp-file/v1.ts';
// Codes
export { type FileCode, fileCodes } from './codes.ts';
// Demo camps
export { demoCamps, demoIds } from './demo.ts';
export { fileWords, troubleSentence } from './words.ts';
