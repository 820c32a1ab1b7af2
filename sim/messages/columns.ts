/** What each column and grid of a record holds. */
import { columns } from './english/columns.ts';
import { section } from './section.ts';

export const columnMessages = section<ReturnType<typeof columns>>({ en: columns });
