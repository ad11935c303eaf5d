/** The texts about tubes, paint and nails that cannot be read. */

import type { Problem } from '../reply/reply.ts';
import { quoted } from './asks.ts';
import type { Got } from './got.ts';

export function volumeUnread({ option, got }: Got, fix: string): Problem {
  return { option, got: quoted(got), expected: 'What a tube holds, from its label: 10.1 fl oz, or 300 ml.', fix };
}

export function coverageUnread({ option, got }: Got, fix: string): Problem {
  return {
    option,
    got: quoted(got),
    expected: 'What paint covers, from its label: 350 sq ft per gallon, or 10 m² per litre.',
    fix,
  };
}

export function nailUnread({ option, got }: Got, fix: string): Problem {
  return {
    option,
    got: quoted(got),
    expected: 'The length of your nails: 2 in, 50 mm, or a penny size up to 20d.',
    fix,
  };
}

/** How a penny size was read. */
export function pennyRead(typed: string, length: string): string {
  return `${typed} nails read as ${length} long`;
}

/** A nail that ends before the stud. */
export function nailTooShort(got: string, least: string, fix: string): Problem {
  return {
    option: 'nail',
    got,
    expected: `It does not hold in the stud: trim, wallboard and grip take at least ${least}.`,
    fix,
  };
}
