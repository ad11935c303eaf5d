/** The texts about tear-out options that cannot be read, and how doubtful ones were read. */

import type { Problem } from '../reply/reply.ts';
import { quoted } from './asks.ts';
import type { Got } from './got.ts';

function tearoutProblem({ option, got }: Got, expected: string, fix?: string): Problem {
  return { option, got: quoted(got), expected, fix };
}

export function notACovering(got: Got): Problem {
  return tearoutProblem(
    got,
    'Tear-out is worked out for carpet, sheet vinyl, vinyl plank, laminate and ceramic tile.',
    'carpet',
  );
}

export function notTested(got: Got): Problem {
  return tearoutProblem(
    got,
    'Type “clear” only where a laboratory’s report says so for the floor, its backing and its glue; “asbestos” where it found some; else “no”.',
    'no',
  );
}

export function notDoorways(got: Got): Problem {
  return tearoutProblem(
    got,
    'Doorways are “one a room”, how many and how wide (“2 x 30 in”), their widths (“30 in, 36 in”), or none.',
    'one a room',
  );
}

export function doorwaysTooWide(got: Got): Problem {
  return tearoutProblem(got, 'These doorways are wider than all the walls together.', 'one a room');
}

export function notTrim(got: Got): Problem {
  return tearoutProblem(
    got,
    'Trim to take off is its length and height, such as “40 ft x 3 in; 36 in x 1 in”, or none.',
    'none',
  );
}

export function notAHaul(got: Got): Problem {
  return tearoutProblem(
    got,
    'Debris leaves by pickup, by container, or by a trailer with its size: “trailer 3 cu yd” or “trailer 5 x 8 x 2 ft”.',
    'pickup',
  );
}

export function notAWeight(got: Got, least: string, most: string): Problem {
  return tearoutProblem(got, `A weight from ${least} to ${most}.`);
}

export function notALaidWeight(got: Got): Problem {
  return tearoutProblem(
    got,
    'What the floor weighs is “usual”, or a weight an area: “8 lb/sq yd”, “1.5 lb/sq ft” or “4 kg/m²”.',
    'usual',
  );
}

export function tooHeavy(got: Got): Problem {
  return tearoutProblem(
    got,
    'A floor as heavy as that is not cut into rolls that one person lifts: is the unit right?',
    'usual',
  );
}

export function weightReadIn(got: string, unit: string): string {
  return `${got} read as ${got} ${unit}`;
}

export function coveringRead(typed: string, covering: string): string {
  return `“${quoted(typed)}” read as ${covering}`;
}

export function yearUnknown(typed: string): string {
  return `“${quoted(typed)}” tells no year for sure: the house is taken as an old one`;
}

export function yearRead(typed: string, year: number): string {
  return `“${quoted(typed)}” read as built in ${year} at the earliest`;
}

export function beneathDoubtful(typed: string): string {
  return `“${quoted(typed)}” below is not known to be free of asbestos`;
}
