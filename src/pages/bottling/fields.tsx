/** Fields of what is bottled. */
import { bottling, changeBottling } from '../../state/bottling-store.ts';
import { amountOf } from '../parts/fields.tsx';

export const Amount = amountOf(bottling, changeBottling);
