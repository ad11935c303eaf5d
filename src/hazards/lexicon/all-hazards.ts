/** All lexicons, compiled once. */

import { compiled, type Lexicon, type Tables } from '../tables.ts';
import { CARBON_MONOXIDE, CLEANERS, FUMES } from './air.ts';
import { WOUND } from './body.ts';
import { FIRST_AID } from './first-aid.ts';
import { GAS } from './gas.ts';
import { DROPPINGS, MOISTURE_WORDS, MOLD } from './growth.ts';
import { COMMON, COMMON_LOOKALIKES } from './hazard-words.ts';
import { LANGUAGES } from './languages.ts';
import { ASBESTOS, LEAD, SILICA } from './materials.ts';
import { ELECTRIC, FIRE } from './power.ts';
import { HEATED_FLOOR, OPENING, SLAB, STRUCTURE } from './structure.ts';
import { PLUMBING, SEWAGE, WATER } from './water.ts';

export const LEXICONS: readonly Lexicon[] = [
  GAS,
  CARBON_MONOXIDE,
  FIRE,
  ELECTRIC,
  WOUND,
  CLEANERS,
  WATER,
  SEWAGE,
  FUMES,
  STRUCTURE,
  ASBESTOS,
  LEAD,
  PLUMBING,
  HEATED_FLOOR,
  SLAB,
  OPENING,
  MOISTURE_WORDS,
  MOLD,
  DROPPINGS,
  SILICA,
];

/** Classes recognized by numbers instead of words. */
const YEARS = {
  OLD_YEAR: '',
  LEAD_YEAR: '',
  NEW_YEAR: '',
  HIGH_HUMIDITY: '',
  HIGH_MOISTURE: '',
  LOW_READING: '',
} as const;

export const TABLES: Tables = compiled({ ...COMMON, ...YEARS }, [
  ...LEXICONS.map((one, i) => (i === 0 ? { ...one, lookalikes: `${one.lookalikes ?? ''} ${COMMON_LOOKALIKES}` } : one)),
  FIRST_AID,
  ...LANGUAGES,
]);
