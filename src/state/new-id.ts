let given = 0;

/** An id that nothing else has, in this window or another, and that comes after those this window gave before. */
export const newId = (): string => {
  const [chance = 0] = crypto.getRandomValues(new Uint32Array(1));
  return `${Date.now().toString(36)}-${String((given += 1)).padStart(6, '0')}-${chance.toString(36)}`;
};
