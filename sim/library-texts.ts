/** The second public face: texts of the library that no run needs, for a view to fetch when they are read. */
export { botanicalTexts } from './library/botanical-texts.ts';
