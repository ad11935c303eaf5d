/** Figures for asbestos in old floors. */

import { LAST_SUSPECT_YEAR } from '../core/safety/suspect.ts';
import type { Cited } from './cited.ts';

export const ASBESTOS_YEAR: Cited<number> = {
  name: 'Old resilient floor and its glue presumed to hold asbestos',
  said: 'laid up to 1980, unless tested',
  value: LAST_SUSPECT_YEAR,
  source: { title: 'Asbestos standards: questions and answers', publisher: 'OSHA', standing: 'reported' },
};

export const ASBESTOS_DEEDS: Cited<string> = {
  name: 'What is never done to such a floor',
  said: 'sand, dry sweep, dry scrape, drill, saw, or chip it by machine',
  value: 'recommended work practices',
  source: { title: 'Recommended Work Practices for resilient floors', publisher: 'RFCI', standing: 'published' },
};

export const ASBESTOS_FIGURES: readonly Cited<unknown>[] = [ASBESTOS_YEAR, ASBESTOS_DEEDS];
