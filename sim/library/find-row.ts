/** The row with this id; a wrong id is answered with the ids there are. */
export const findRow = <Row extends { readonly id: string }>(what: string, rows: readonly Row[], id: string): Row => {
  const row = rows.find((candidate) => candidate.id === id);
  if (row === undefined)
    throw new RangeError(`${what} “${id}” is not in the library; known: ${rows.map((known) => known.id).join(', ')}`);
  return row;
};
