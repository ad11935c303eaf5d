/** The words about what is found under a floor: what must be asked back, and what is referred to whom. */

import type { Problem } from '../reply/reply.ts';
import { quoted } from './asks.ts';
import type { Got } from './got.ts';
import { stopText } from './hazards.ts';

export function notPlain({ option, got }: Got, word: string, fix: string | undefined): Problem {
  return {
    option,
    got: quoted(got),
    expected: `It is not plain what “${quoted(word)}” is, and it may be unsafe to go on. Name it: rot in the panel or in a joist, sagging, sewage, a cable, a pipe, mould, old flooring. If you cannot tell, type “unsure”.`,
    fix,
  };
}

export function rotWhere({ option, got }: Got): Problem {
  return {
    option,
    got: quoted(got),
    expected:
      'Where is it: in the panel only, or does it reach a joist? Push a screwdriver into the joist: it must not sink in. Type “rot in the panel only, joists sound”, or “rot in a joist”.',
    fix: 'rot in a joist',
  };
}

interface Referral {
  readonly why: string;
  readonly call: string;
}

/** What is no hazard of the screen, and is referred all the same. */
const REFERRALS: Readonly<Record<string, Referral>> = {
  unsure: {
    why: 'What is down there is not plain, so it is not safe to go on.',
    call: 'a licensed contractor, to look at it open',
  },
  panel: {
    why: 'A rotten panel holds neither a screw nor levelling compound: it is cut out first. Look at its joists; if a screwdriver does not sink into them, ask “patch” for the cut.',
    call: 'a licensed contractor, if the rot reaches a joist or goes on under a wall',
  },
  mould: {
    why: 'Mould over about 10 sq ft is not for a homeowner to clean up.',
    call: 'a professional mould remediator; and stop the water that feeds it',
  },
};

/** Why a hazard is not worked out, and who to call. Throws for one without words: a refusal is never silent. */
export function referral(hazards: readonly string[]): Referral {
  const all = hazards.map((hazard) => REFERRALS[hazard] ?? stopText(hazard));
  return { why: all.map(({ why }) => why).join(' '), call: all.map(({ call }) => call).join('; ') };
}

const CUTS: Readonly<Record<string, string>> = {
  'notch-deep': 'the notch is deeper than code allows',
  'notch-long': 'the notch is longer than a third of the joist’s depth',
  'notch-middle': 'no notch may stand in the middle third of the span',
  'notch-length-untold': 'how long the notch is along the joist was not told (notch-length)',
  'notch-place-untold': 'where along the joist the notch stands was not told (notch-place)',
  'hole-large': 'the hole is wider than a third of the joist’s depth',
  'hole-near-edge': 'the hole is nearer than 2 in to an edge of the joist',
  'hole-near-cut': 'the hole is nearer than 2 in to another hole or a notch',
  'hole-apart-untold': 'how far the hole is from the notch was not told (hole-apart)',
  'hole-edge-untold': 'how far the hole is from the nearer edge was not told (hole-edge)',
};

/** A cut in a joist that no rule lets be cut. */
export const ENGINEERED_CUT: Referral = {
  why: 'An I-joist, a truss or a glued beam is never notched, drilled or cut by a rule: each hole must be one that its maker or an engineer allows, and this one may no longer carry its load.',
  call: 'the joist’s maker or a structural engineer; a licensed contractor for the repair',
};

/** Why a joist with these cuts is referred; `limits` are said. */
export function cutJoist(
  flaws: readonly string[],
  limits: { readonly depth: string; readonly notch: string; readonly endNotch: string; readonly hole: string },
): Referral {
  const reasons = flaws.map((flaw) => CUTS[flaw] ?? flaw).join('; ');
  return {
    why: `This joist may no longer carry its load: ${reasons}. Limits for a joist ${limits.depth} deep: notch ${limits.notch}, at an end ${limits.endNotch}, hole ${limits.hole}.`,
    call: 'a licensed contractor or a structural engineer',
  };
}
