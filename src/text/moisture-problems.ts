/** The texts about moisture readings, water and time that cannot be read, and how doubtful ones were. */

import type { Problem } from '../reply/reply.ts';
import { type Got, problem } from './got.ts';

export function notMoisture(got: Got, fix?: string): Problem {
  return problem(
    got,
    'Readings are figures with spaces between: wood in % moisture; concrete in lb (calcium chloride), % RH (probes in the slab) or % CM (carbide).',
    fix,
  );
}

export function notLikely(got: Got, least: number, most: number): Problem {
  return problem(got, `Readings of this method lie from ${least} to ${most}.`);
}

export function notALimit(got: Got): Problem {
  return problem(got, 'A limit is usual, or the maker’s own figure in the unit of the readings.');
}

/** A limit for wood that wood must stay below. */
export function limitTooWet(got: Got, keepBelow: number): Problem {
  return problem(got, `Wood is kept below ${keepBelow} %: no limit for a wood subfloor is as high.`);
}

const ON: Readonly<Record<'concrete' | 'gypsum' | 'screed' | 'tile', string>> = {
  concrete: 'concrete',
  gypsum: 'a calcium sulfate screed',
  screed: 'a screed',
  tile: 'the slab under the tile',
};

/** Readings on concrete, a screed or tile without the test that they come from. */
export function whichTest(got: Got, on: keyof typeof ON): Problem {
  return problem(
    got,
    `Which test on ${ON[on]}: probes in the slab (method: rh), calcium chloride (method: chloride) or carbide (method: cm)? The limit for wood does not hold there, and a pin or pinless meter on it only shows where it is wettest.`,
  );
}

/** A test for concrete where wood is told. */
export function methodForWood(got: Got): Problem {
  return problem(got, 'That test is for concrete, and a wood floor was told: which is it?');
}

/** A carbide test on a screed of a kind that is not told. */
export function whichScreed(got: Got): Problem {
  return problem(
    got,
    'Which screed is it: cement or concrete (at most 2 % CM), or calcium sulfate, also called anhydrite (at most 0.5 % CM)? If the flooring’s maker prints a limit, tell that as limit.',
  );
}

export function notABase(got: Got): Problem {
  return problem(got, 'What was measured: wood, concrete, a cement or anhydrite screed, or tile.');
}

/** What is taken where neither floor nor method is told, and nothing speaks of concrete. */
export const METHOD_TAKEN =
  'floor and method not told: read as a meter on a wood subfloor; on concrete, tell the test (method: rh, chloride or cm)';

export function notAMoistureShare(got: Got): Problem {
  return problem(got, 'The flooring’s moisture is a figure from 1 to 40 %, or none where it is vinyl.');
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

export function notAnAge(got: Got): Problem {
  return problem(got, 'Since when was it wet: hours or days, such as “30 hours” or “3 days”; none without a leak.');
}
