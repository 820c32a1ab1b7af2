/** A still of somebody else: it comes to the bench as a visitor, and the reader's own stays as it was. */
import type { Bench } from '../state/bench.ts';
import { fileName, saveJson, saveText } from '../state/downloads.ts';
import type { ParsedFile } from '../state/files.ts';
import { newStill, type Visit } from '../state/kept-still.ts';
import { readShareHash } from '../state/share-link.ts';
import type { Told } from './told.ts';

/** A visitor that follows another stands beside the same still. */
const visitor = (bench: Bench, from: Visit['from']) => {
  const { id, touched, visit } = bench.desk().still;
  return newStill(false, { from, home: visit?.home ?? id, isOwn: visit?.isOwn ?? touched });
};

const NOT_OPENED = 'was not opened, and your work is as it was.';

/** Resolves with why it was not opened. */
export async function openFileVisitor(bench: Bench, parsed: ParsedFile): Promise<Told | null> {
  const problem = parsed.ok ? await bench.load(parsed.json, visitor(bench, 'file')) : parsed.message;
  return problem === null ? null : { message: `The file ${NOT_OPENED} ${problem}` };
}

/** The address is free of the link by now, so that what does not open here is offered as a file. */
export async function openLinkVisitor(bench: Bench, hash: string): Promise<Told | null> {
  const link = await readShareHash(hash);
  const problem = link.ok ? await bench.load(link.json, visitor(bench, 'link')) : link.message;
  if (problem === null) return null;
  return {
    message: `The link ${NOT_OPENED} ${problem}`,
    action: link.ok
      ? { words: 'Save what it holds', act: () => saveJson(link.json, fileName('json', 'still of a link')) }
      : {
          words: 'Save the link',
          act: () =>
            saveText(`${new URL(hash, location.href).href}\n`, 'text/plain', fileName('txt', 'link to a still')),
        },
  };
}
