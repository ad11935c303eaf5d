/** The texts about a noisy stretch that cannot be worked out. */

import type { Problem } from '../reply/reply.ts';
import { quoted } from './asks.ts';

export function areaWithoutSides(got: string): Problem {
  return {
    option: 'area',
    got: quoted(got),
    expected: 'Screws run along joists: tell the noisy section by its two sides, or by its length along one joist.',
    fix: undefined,
  };
}
