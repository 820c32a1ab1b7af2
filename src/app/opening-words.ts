/** What is said when the work kept on this device does not open. */
import { fileName, saveJson } from '../state/downloads.ts';
import type { Trouble } from '../state/opening.ts';
import { scenarioIn } from '../state/still-names.ts';
import type { Told } from './told.ts';

const WORDS: Readonly<Record<Trouble['kind'], string>> = {
  unread:
    'The still kept on this device can’t be read by this version, so an example stands here instead. It stays kept.',
  failed: 'The calculation of the still kept on this device failed, so an example stands here instead. It stays kept.',
  blocked: 'This browser keeps nothing for this page, so download what you want to keep.',
};

export const openingTold = ({ kind, value }: Trouble): Told => ({
  message: WORDS[kind],
  ...(value === undefined
    ? {}
    : {
        action: { words: 'Save it as a file', act: () => saveJson(scenarioIn(value), fileName('json', 'kept still')) },
      }),
});
