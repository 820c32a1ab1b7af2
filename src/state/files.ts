/** Scenario files that are opened. */

/** Larger files are refused unread: a scenario is a few kilobytes. */
const LARGEST_FILE_BYTES = 2_000_000;

export type ParsedFile =
  { readonly ok: true; readonly json: unknown } | { readonly ok: false; readonly message: string };

export function parseScenarioText(text: string): ParsedFile {
  try {
    return { ok: true, json: JSON.parse(text) as unknown };
  } catch (error) {
    const reason = error instanceof Error ? error.message : String(error);
    return { ok: false, message: `This file is not JSON, so it holds no scenario (${reason}).` };
  }
}

export async function readScenarioFile(file: Blob): Promise<ParsedFile> {
  if (file.size > LARGEST_FILE_BYTES)
    return { ok: false, message: 'This file is larger than two megabytes, so it is not a scenario.' };
  try {
    return parseScenarioText(await file.text());
  } catch {
    return { ok: false, message: 'This file could not be read from the disk.' };
  }
}
