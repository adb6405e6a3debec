import { entryCodes } from './entries.ts';
import { fileCodes } from './files.ts';
import { profileCodes } from './profiles.ts';
import { valueCodes } from './values.ts';

/** What can be wrong with the text of a file, before anything is understood. */
export const readingCodes = { ...fileCodes, ...entryCodes, ...valueCodes, ...profileCodes } as const;
