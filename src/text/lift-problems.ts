/** The texts about lifting options that cannot be read. */

import type { Problem } from '../reply/reply.ts';
import { quoted } from './asks.ts';
import type { Got } from './got.ts';

export function notALiftWay({ option, got }: Got): Problem {
  return {
    option,
    got: quoted(got),
    expected:
      'The equation is for cartons or boxes, two hands, standing. Rolls, one hand, kneeling, carrying and the like are not worked out.',
    fix: undefined,
  };
}

export function notATwist({ option, got }: Got): Problem {
  return { option, got: quoted(got), expected: 'A twist of the body from 0 to 180 degrees.', fix: undefined };
}

export function notAPace({ option, got }: Got): Problem {
  return {
    option,
    got: quoted(got),
    expected: 'How often: “1 a minute”, “3 a minute”, “every 5 minutes”, up to 30 a minute.',
    fix: undefined,
  };
}

export function notAStretch({ option, got }: Got): Problem {
  return { option, got: quoted(got), expected: 'How long you lift in one stretch: up to 8 h.', fix: undefined };
}
