/** Messages of the sheet to build from. */
import { buildingSheet } from './english/building-sheet.ts';
import { section } from './section.ts';

export const buildingSheetMessages = section<ReturnType<typeof buildingSheet>>({ en: buildingSheet });
