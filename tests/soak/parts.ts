import { forecasts } from './forecasts.ts';
import { hostileText } from './hostile-text.ts';
import { laws } from './laws.ts';
import { linksAndStores } from './links-and-stores.ts';
import type { Part } from './part.ts';
import { wholeStills } from './whole-stills.ts';

export const PARTS: readonly Part[] = [wholeStills, ...hostileText, ...linksAndStores, laws, forecasts];
