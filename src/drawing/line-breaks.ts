/** Breaks words into lines of at most so many letters; a word longer than a line stands alone. */
export function breakLines(words: string, letters: number): string[] {
  const lines: string[] = [];
  for (const word of words.split(' ')) {
    const last = lines[lines.length - 1];
    if (last !== undefined && last.length + 1 + word.length <= letters) lines[lines.length - 1] = `${last} ${word}`;
    else lines.push(word);
  }
  return lines;
}

/** The same in as few lines, and those of about one length. */
export function breakEvenly(words: string, letters: number): string[] {
  const fewest = breakLines(words, letters);
  for (let shorter = letters - 1; shorter > 0; shorter--) {
    const lines = breakLines(words, shorter);
    if (lines.length > fewest.length || lines.some((line) => line.length > shorter))
      return breakLines(words, shorter + 1);
  }
  return fewest;
}
