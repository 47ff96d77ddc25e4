// Sheets for people: how quantities are said, sentences for codes, document trees, drawings, pages.

export type {
  BigFigure,
  Block,
  FactRow,
  Part,
  SheetDocument,
  StepRow,
} from './document.ts';
export { noticeText, refusalText } from './notice-text.ts';
export { type Gathered, gathered } from './render/gather.ts';
export { type HtmlOptions, printBook, renderHtml, sheetHtml } from './render/html.ts';
export { SHEET_STYLE } from './render/style.ts';
export { renderText, type TextOptions } from './render/text.ts';
export type { Measures, Say, Sentence, Words } from './say.ts';
export { allergenCards } from './sheet/allergen-cards.ts';
export { assumedAgePhrase } from './sheet/assumed-age.ts';
export { bagLabels } from './sheet/bag-labels.ts';
export { type BenchAsked, benchSheet } from './sheet/bench/bench-sheet.ts';
export { portionSheet } from './sheet/bench/portion-sheet.ts';
export { swapSheet } from './sheet/bench/swap-sheet.ts';
export { targetSheet } from './sheet/bench/target-sheet.ts';
export { boxesSheet } from './sheet/boxes-sheet.ts';
export { coalsAloneSheet } from './sheet/coals-alone.ts';
export { coalsLeftSheet } from './sheet/coals-left.ts';
export { daySheet } from './sheet/day-sheet.ts';
export { dishCard } from './sheet/dish-card.ts';
export { coalsOnShovels, type Door } from './sheet/door.ts';
export { fireAndCareSheet } from './sheet/fire-and-care.ts';
export { fireCard } from './sheet/fire-card.ts';
export { fireChiefSheet } from './sheet/fire-chief.ts';
export { fitSheet, sizesSheet, spreadSheet } from './sheet/fits-sheet.ts';
export { fuelWaterIceSheet } from './sheet/fuel-water-ice.ts';
export { handColumns } from './sheet/hand-columns.ts';
export { handSheet } from './sheet/hand-sheet.ts';
export { ironAndAshSheet } from './sheet/iron-and-ash.ts';
export { labelGrid } from './sheet/label-grid.ts';
export { layoutSheet } from './sheet/layout-judged.ts';
export { mealSummary } from './sheet/meal-summary.ts';
export { type MixAsked, mixSheet } from './sheet/mix-sheet.ts';
export { mouthsSheet } from './sheet/mouths-sheet.ts';
export { assumedOfBread, leavenSheet, type OneBread, riseSheet } from './sheet/one-bread.ts';
export { pocketCards } from './sheet/pocket-cards.ts';
export { provisionsSheet } from './sheet/provisions-sheet.ts';
export { type ReadingsAsked, readingsSheet } from './sheet/readings-sheet.ts';
export { recipeReadSheet } from './sheet/recipe-read-sheet.ts';
export { type ReplanShown, replanSheet } from './sheet/replan-sheet.ts';
export { safetyLogSheet } from './sheet/safety-log.ts';
export { shoppingSheet } from './sheet/shopping-sheet.ts';
export { type StackAsked, stackSheet } from './sheet/stack-sheet.ts';
export { turnPicture } from './sheet/turn-part.ts';
export { usualFood } from './sheet/usual-food.ts';
export { wallList } from './sheet/wall-list.ts';
export { usualBucket, usualCan, washSheet, waterAndWashSheet } from './sheet/water-and-wash.ts';
export { whatNowSheet } from './sheet/what-now.ts';
export { type Names, type SayOptions, sayFor } from './speak.ts';
export { voiceFor } from './voice.ts';
export { allWords } from './words/index.ts';
export { jobName, jobSentence } from './words/jobs.ts';
export { tonightWords } from './words/tonight.ts';
