/** Text about what was found under a floor: questions to ask back, findings by room, and refusals with whom to call. */

import type { Problem } from '../reply/reply.ts';
import { quoted } from './chat-text.ts';
import { counted } from './floor-text.ts';
import { stopText } from './hazard-text.ts';
import type { Got } from './length-problems-text.ts';

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

// The words of what was found in a project's rooms and what it takes, for an insurer or a hired trade.

export const FOUND = {
  headline: (findings: number, rooms: number, calls: number) =>
    findings === 0
      ? 'Nothing found is kept yet.'
      : `${counted(findings, 'finding')} in ${counted(rooms, 'place')}${calls > 0 ? `, ${calls} not for you to do` : ''}.`,
  added: (text: string) => `Kept: ${quoted(text)}.`,
  removed: (text: string) => `Removed: ${quoted(text)}.`,
  said: (text: string) => `found: ${text}`,
  saidRemoved: (text: string) => `finding removed: ${text}`,
  elsewhere: 'No room given',
  together: 'These rooms together',
  gone: 'A room that is no longer in the project',
  whichRoom: (no: number, room: string) =>
    `Saved answer ${no} doesn't say which room it is in: type “project keep ${no} in ${room}”.`,
  given: (no: number, day: string, text: string, area: string | undefined) =>
    `${text}${area === undefined ? '' : `, ${area}`} (finding ${no}, ${day}).`,
  takes: (things: readonly string[]) => ` It takes: ${things.join('; ')}.`,
  beside: (found: string) => ` Found there: ${quoted(found)}.`,
  patch: (across: string, up: string, area: string) =>
    `A piece of subfloor ${across} × ${up} (${area}) is damaged; it is cut out on its joists and replaced.`,
  flat: 'The floor was measured and is flat enough.',
  notFlat: (said: string) => `The floor was measured. ${said}`,
  squeaks: (screws: number, length: string) =>
    `The subfloor squeaks; it is screwed down to its joists with ${counted(screws, 'screw')} of ${length} or longer.`,
  moisture: (said: string) => `Moisture was measured. ${said}`,
  tearoutHere: (area: string) => `The old floor comes out: ${area}.`,
  tearoutOf: (rooms: readonly string[]) => `${rooms.join(', ')}: `,
  refused: (command: string) => `${quoted(command)}: not for you to do.`,
  unanswered: (command: string, why: string) => `${quoted(command)} can't be worked out: ${why}`,
  tearout: (area: string, weight: string) => `The old floor comes out: ${area}, ${weight} of debris.`,
  callTitle: 'Call first: not for you to do',
  call: (where: string, why: string, who: string) => `${where}: ${why} Call: ${who.replace(/\.$/, '')}.`,
  proofTitle: 'For whoever pays or is hired',
  proof: [
    'Photograph each finding before it is moved or covered, with a tape beside it.',
    'Keep a piece of what comes out, and the receipts.',
    'These are measures and quantities as told and computed; whoever does the work measures again.',
  ],
  remove: (no: number) => `Remove finding ${no}`,
} as const;

export const FOUND_PROBLEMS = {
  empty: (): Problem => ({
    option: 'do',
    got: '',
    expected: 'Tell what you found, how large it is, and in which room.',
    fix: 'found soft spot 2 x 3 ft bedroom by window',
  }),
  long: (got: string, most: number, fix: string): Problem => ({
    option: 'do',
    got: quoted(got),
    expected: `A finding has at most ${most} characters: tell it in two.`,
    fix,
  }),
} as const;

// The words of refusals for safety: why something is not worked out, and whom to call.

const NEVER =
  'Do not sand, saw, drill, dry-scrape, dry-sweep or chip it, leave it whole, and keep people off it until it is tested.';

const WHY: Readonly<Record<'found' | 'sign' | 'resilient' | 'unknown', (margin: number) => string>> = {
  found: () => 'This floor holds asbestos by its test, so its tear-out is not worked out here.',
  sign: () =>
    'Black glue, asphalt or nine-inch tiles are what asbestos floors are made of, so tear-out stops here until a laboratory has cleared it.',
  resilient: (margin) =>
    `A resilient floor, its backing or its glue is taken to hold asbestos until it was tested, and this house was built up to ${margin} or in a year not known: test first.`,
  unknown: (margin) =>
    `What is told of this floor is not known to be free of asbestos, and the house was built up to ${margin} or in a year not known: test first. Carpet, laminate and ceramic tile are read by these names alone.`,
};

/** Why an old floor's tear-out is not worked out; `margin` is the year up to which it is not, `fact` what led there, in the asker's own words. */
export function asbestosWhy(verdict: keyof typeof WHY, margin: number, fact: string | undefined): string {
  return `${WHY[verdict](margin)}${fact === undefined ? '' : ` Told: ${fact}.`} ${NEVER}`;
}

export const ASBESTOS_CALL =
  'An accredited asbestos laboratory or inspector for samples of floor, backing and glue; a licensed abatement contractor for their removal; your state’s or council’s asbestos office for the local rules. With a report that clears all three, ask again with “tested: clear”.';

export const LAID_OVER =
  'Often it may stay: a sound old floor can be covered instead of torn out. Ask the same people, and the maker of the new floor.';

/** Why a lift is not worked out; `way` is what does not hold. */
export function liftWhy(way: string): string {
  return `The lifting equation does not hold for ${way}: it is for two hands, standing, with a steady load and sound footing.`;
}

export const LIFT_REACH =
  'No weight is recommended for this lift: the load is held too far out, too high, too much aside, or lifted too often.';

export const LIFT_CALL =
  'A second pair of hands, a hand truck or a part load first; for a bad back, a doctor or physiotherapist before the job. Ask again for cartons lifted with two hands, standing.';
