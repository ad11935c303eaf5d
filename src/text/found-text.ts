/** Text about what was found under a floor: questions to ask back, findings by room, and refusals with whom to call. */

import type { Problem } from '../reply/reply.ts';
import { byUnits } from './answer-text.ts';
import { quoted } from './chat-text.ts';
import { counted } from './floor-text.ts';
import { stopText } from './hazard-text.ts';
import type { Got } from './length-problems-text.ts';

export function notPlain({ option, got }: Got, word: string, fix: string | undefined): Problem {
  return {
    option,
    got: quoted(got),
    expected: `I’m not sure what “${quoted(word)}” is, and it may be unsafe to go on. Name it: rot in the panel or in a joist, sagging, sewage, a cable, a pipe, mold, old flooring. If you don’t know, type “unsure”.`,
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

/** Not a hazard the screen knows, but referred all the same. */
const REFERRALS: Readonly<Record<string, Referral>> = {
  unsure: {
    why: 'Nobody knows yet what is down there, so it isn’t safe to go on.',
    call: 'a licensed contractor, to look at it open',
  },
  panel: {
    why: 'A rotten panel holds neither a screw nor leveler: cut it out first. Look at its joists; if a screwdriver doesn’t sink into them, “patch” works out the cut.',
    call: 'a licensed contractor, if the rot reaches a joist or goes on under a wall',
  },
  mould: {
    why: `Mold over about ${byUnits('10 sq ft', '1 m²')} isn’t a homeowner’s job to clean up.`,
    call: 'a professional mold remediator; and stop the water that feeds it',
  },
};

/** Throws for a hazard without text: a refusal must never be silent. */
export function referral(hazards: readonly string[]): Referral {
  const all = hazards.map((hazard) => REFERRALS[hazard] ?? stopText(hazard));
  return { why: all.map(({ why }) => why).join(' '), call: all.map(({ call }) => call).join('; ') };
}

const CUTS: Readonly<Record<string, string>> = {
  'notch-deep': 'the notch is deeper than code allows',
  'notch-long': 'the notch is longer than a third of the joist’s depth',
  'notch-middle': 'no notch may stand in the middle third of the span',
  'notch-length-untold': 'the notch’s length along the joist is missing (notch-length)',
  'notch-place-untold': 'where the notch is along the joist is missing (notch-place)',
  'hole-large': 'the hole is wider than a third of the joist’s depth',
  'hole-near-edge': `the hole is nearer than ${byUnits('2 in', '50 mm')} to an edge of the joist`,
  'hole-near-cut': `the hole is nearer than ${byUnits('2 in', '50 mm')} to another hole or a notch`,
  'hole-apart-untold': 'how far the hole is from the notch is missing (hole-apart)',
  'hole-edge-untold': 'how far the hole is from the nearer edge is missing (hole-edge)',
};

/** A cut in a joist that no rule allows. */
export const ENGINEERED_CUT: Referral = {
  why: 'An I-joist, a truss or a glued beam is never notched, drilled or cut by a rule: each hole must be one that its maker or an engineer allows, and this one may no longer carry its load.',
  call: 'the joist’s maker or a structural engineer; a licensed contractor for the repair',
};

/** `limits` are already formatted. */
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

// What was found in a project's rooms and what it needs, for an insurer or a hired trade.

export const FOUND = {
  headline: (findings: number, rooms: number, calls: number) =>
    findings === 0
      ? 'No findings saved yet.'
      : `${counted(findings, 'finding')} in ${counted(rooms, 'place')}${calls > 0 ? `, ${calls} for a professional` : ''}.`,
  added: (text: string) => `Saved: ${quoted(text)}.`,
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
  refused: (command: string) => `${quoted(command)}: leave it to a professional.`,
  unanswered: (command: string, why: string) => `${quoted(command)} can't be worked out: ${why}`,
  tearout: (area: string, weight: string) => `The old floor comes out: ${area}, ${weight} of debris.`,
  callTitle: 'Call first: leave these to a professional',
  call: (where: string, why: string, who: string) => `${where}: ${why} Call: ${who.replace(/\.$/, '')}.`,
  proofTitle: 'For whoever pays or is hired',
  proof: [
    'Photograph each finding before it is moved or covered, with a tape beside it.',
    'Keep a piece of what comes out, and the receipts.',
    'These measures and quantities come from what you gave; whoever does the work measures again.',
  ],
  remove: (no: number) => `Remove finding ${no}`,
} as const;

export const FOUND_PROBLEMS = {
  empty: (): Problem => ({
    option: 'do',
    got: '',
    expected: 'What did you find, how large is it, and in which room?',
    fix: 'found soft spot 2 x 3 ft bedroom by window',
  }),
  long: (got: string, most: number, fix: string): Problem => ({
    option: 'do',
    got: quoted(got),
    expected: `A finding has at most ${most} characters: split it in two.`,
    fix,
  }),
} as const;

const NEVER =
  'Don’t sand, saw, drill, scrape, sweep or chip it. Leave it whole, and keep people off it until it is tested.';

const WHY: Readonly<Record<'found' | 'sign' | 'resilient' | 'unknown', (margin: number) => string>> = {
  found: () => 'This floor holds asbestos by its test, so its tear-out is not worked out here.',
  sign: () =>
    'Black glue, asphalt or nine-inch tiles are what asbestos floors are made of, so tear-out stops here until a laboratory has cleared it.',
  resilient: (margin) =>
    `A resilient floor, its backing or its glue counts as asbestos until it is tested, and this house was built up to ${margin} or in an unknown year: test first.`,
  unknown: (margin) =>
    `This floor isn’t known to be free of asbestos, and the house was built up to ${margin} or in an unknown year: test first. If it is carpet, laminate or ceramic tile, say just that.`,
};

/**
 * Why a tear-out isn't computed. `margin` is the last year that blocks it, `fact` the reason in the user's own words.
 */
export function asbestosWhy(verdict: keyof typeof WHY, margin: number, fact: string | undefined): string {
  return `${WHY[verdict](margin)}${fact === undefined ? '' : ` You said: ${fact}.`} ${NEVER}`;
}

export const ASBESTOS_CALL =
  'An accredited asbestos laboratory or inspector for samples of floor, backing and glue; a licensed abatement contractor for their removal; your state’s or council’s asbestos office for the local rules. With a report that clears all three, ask again with “tested: clear”.';

export const LAID_OVER =
  'Often it may stay: a sound old floor can be covered instead of torn out. Ask the same people, and the maker of the new floor.';

/** `way` is the way of lifting that fails. */
export function liftWhy(way: string): string {
  return `The lifting equation doesn’t work for ${way}: it is for two hands, standing, with a steady load and sound footing.`;
}

export const LIFT_REACH =
  'No weight is safe for this lift: the load is too far out, too high, too far to the side, or lifted too often.';

export const LIFT_CALL =
  'A second pair of hands, a hand truck or a part load first; for a bad back, a doctor or physiotherapist before the job. Ask again for cartons lifted with two hands, standing.';
