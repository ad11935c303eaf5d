/** The texts about moisture readings, water and time that cannot be read, and how doubtful ones were. */

import type { Problem } from '../reply/problem.ts';
import { type Got, problem } from './got.ts';

export function notMoisture(got: Got, fix: string): Problem {
  return problem(
    got,
    'Readings are figures with spaces between: wood in % moisture, concrete in lb (calcium chloride) or % RH.',
    fix,
  );
}

export function notLikely(got: Got, least: number, most: number, fix: string): Problem {
  return problem(got, `Readings of this method lie from ${least} to ${most}.`, fix);
}

export function notALimit(got: Got, fix: string): Problem {
  return problem(got, 'A limit is usual, or the maker’s own figure in the unit of the readings.', fix);
}

/** A limit for wood at which wood decays. */
export function limitTooWet(got: Got, decay: number): Problem {
  return problem(got, `Wood decays at ${decay} % and more: no limit for a wood subfloor is as high.`, 'usual');
}

export function notAMoistureShare(got: Got, fix: string): Problem {
  return problem(got, 'The flooring’s moisture is a figure from 1 to 40 %, or none where it is vinyl.', fix);
}

export function methodUnit(method: string, unit: string, fix: string): Problem {
  return {
    option: 'method',
    got: method,
    expected: `Readings in ${unit} are not of that method.`,
    fix,
  };
}

export function methodRead(unit: string, method: string): string {
  return `readings in ${unit}: method read as ${method}`;
}

export function notWater(got: Got): Problem {
  return problem(
    got,
    'What water was it: none, clean (supply, rain), grey (washing machine, dishwasher), or sewage (toilet, drain, flood)? If you cannot tell, type “unsure”.',
    'unsure',
  );
}

export function notAnAge(got: Got, fix: string): Problem {
  return problem(
    got,
    'Since when was it wet: hours or days, such as “30 hours” or “3 days”; none without a leak.',
    fix,
  );
}
