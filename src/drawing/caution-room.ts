/** Room the layout keeps for a caution: lines, and letters in a line. */
export const CAUTION_LETTERS = 29;
export const CAUTION_LINES = 3;
