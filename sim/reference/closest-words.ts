/** Fewest letters to change, add or drop to turn one word into another. */
export function distance(from: string, to: string): number {
  let row = Array.from({ length: to.length + 1 }, (_, column) => column);
  for (let i = 1; i <= from.length; i++) {
    const next = [i];
    for (let j = 1; j <= to.length; j++) {
      const swap = (row[j - 1] as number) + (from[i - 1] === to[j - 1] ? 0 : 1);
      next.push(Math.min(swap, (row[j] as number) + 1, (next[j - 1] as number) + 1));
    }
    row = next;
  }
  return row[to.length] as number;
}

/** The few words of a list nearest to a mistyped one, best first: those that hold its parts, then those a few letters off. */
export function closestWords(typed: string, known: readonly string[], most = 5): string[] {
  const wanted = typed.toLowerCase();
  const parts = wanted.split(/[^a-z0-9]+/).filter((part) => part.length > 2);
  const score = (word: string): number =>
    distance(wanted, word) - 4 * parts.filter((part) => word.includes(part)).length;
  return [...known].sort((a, b) => score(a) - score(b) || a.length - b.length || (a < b ? -1 : 1)).slice(0, most);
}
