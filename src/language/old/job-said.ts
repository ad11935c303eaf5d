/** Everyday sentences about a job under way, as the line of the command that keeps it: bought, spent, done, found, noted. */

/** Each word by itself: “i have” beside “i” and “have” would be tried both ways at every one. */
const WE = "(?:i |we |i've |we've |i'm |we're |just |also |already |have |am |are )*";

/** A question is no news of the job: how many boxes to buy is worked out, and not ticked off. */
const QUESTION = /\?|^(?:how|what|which|when|where|why|do|does|can|should|is|are)\b|\bhow (?:many|much)\b|\benough\b/i;

/** Rows in place are how far a floor is laid, which another command goes on with. */
const ROWS = /\b(?:rows? \d+|\d+[a-z]? rows?)\b/i;

interface Saying {
  readonly said: RegExp;
  readonly unless?: RegExp;
  readonly line: (text: string) => string;
}

/** News: each begins a sentence that is no question. */
const NEWS: readonly Saying[] = [
  {
    said: new RegExp(`^${WE}(?=(?:bought|purchased|picked up|returned|opened|took back|brought back)\\b.)`, 'i'),
    line: (text) => `project shopping ${text}`,
  },
  { said: new RegExp(`^${WE}(?=not bought\\b.)`, 'i'), line: (text) => `project shopping ${text}` },
  {
    said: new RegExp(`^${WE}(?=(?:spent|paid|refund(?:ed)?|got back)\\b.*\\d)`, 'i'),
    line: (text) => `project spend ${text}`,
  },
  {
    said: /^(?:the |my |our )?(?=(?:insurer|insurance|landlord)(?: company)?(?: will| is|'ll)? (?:pay(?:s|ing)?|cover(?:s|ing)?)\b.)/i,
    line: (text) => `project spend ${text}`,
  },
  { said: /^(?:set )?(?:my |our |the )?(?=budget\b.*(?:\d|none|off))/i, line: (text) => `project spend ${text}` },
  { said: /^(?:make a |take a |add a |write a )?(?=note(?: that)?[: ].)/i, line: (text) => `project log ${text}` },
  { said: new RegExp(`^${WE}(?=(?:found|discovered)\\b.)`, 'i'), line: (text) => `project found ${text}` },
  {
    said: new RegExp(
      `^${WE}(?=(?:done|finished|completed|skip(?:ped|ping)?|acclimati(?:ng|zing|sing)|tore out|ripped out|laid|caulked|painted|not (?:flat|dry)|still wet)\\b.)`,
      'i',
    ),
    unless: ROWS,
    line: (text) => `project progress ${text}`,
  },
  {
    said: /^(?=(?:the )?[\p{L}\d][\p{L}\d' -]{0,40} (?:is|are|isn't|aren't) (?:not |still |now |all |too )*(?:flat|dry|wet|damp|done|finished|empty|cleared|laid|caulked|painted)[.!]?$)/iu,
    unless: ROWS,
    line: (text) => `project progress ${text}`,
  },
];

/** A line of a list taken out by its number. */
const REMOVED: readonly (readonly [said: RegExp, line: string])[] = [
  [/^(?:remove|delete|strike|drop) (?:the )?note (?:no\.? ?|number )?#?(\d{1,4})[.!]?$/i, 'project log remove'],
  [/^(?:remove|delete|strike|drop) (?:the )?finding (?:no\.? ?|number )?#?(\d{1,4})[.!]?$/i, 'project found remove'],
  [
    /^(?:remove|delete|strike|drop) (?:the )?(?:entry|cost|expense) (?:no\.? ?|number )?#?(\d{1,4})[.!]?$/i,
    'project spend remove',
  ],
];

/** Questions about the job: each takes the whole sentence. */
const ASKED: readonly (readonly [said: RegExp, line: string])[] = [
  [
    /^(?:(?:show|give|see)(?: me)? )?(?:my |the |a )?shopping(?: list)?[.?!]?$|^what(?:'s| is)? (?:do (?:i|we) )?(?:still |left )?(?:(?:have|need) )?(?:left )?to buy[.?!]?$|^what (?:do (?:i|we) )(?:still )?(?:need|have) to buy[.?!]?$/i,
    'project shopping',
  ],
  [
    /^what(?:'?s| is| comes)? next[.?!]?$|^how far (?:am i|are we|is it)[.?!]?$|^(?:show )?(?:me )?(?:my |the |our )?progress[.?!]?$/i,
    'project progress',
  ],
  [
    /^how much (?:have (?:i|we) |did (?:i|we) |has it |was )?(?:spent|spend|cost)(?: so far| already)?[.?!]?$/i,
    'project spend',
  ],
  [/^(?:show )?(?:me )?(?:my |the |our |all )?notes[.?!]?$/i, 'project log'],
  [/^what (?:have (?:i|we)|did (?:i|we)|was) (?:found|find)(?: so far)?[.?!]?$/i, 'project found'],
];

/** The line that does what a sentence about a job says; undefined for any other text. */
export function jobSaid(said: string): string | undefined {
  const requested = ASKED.find(([pattern]) => pattern.test(said));
  if (requested) return requested[1];
  for (const [pattern, line] of REMOVED) {
    const no = pattern.exec(said)?.[1];
    if (no !== undefined) return `${line} ${no}`;
  }
  if (QUESTION.test(said)) return undefined;
  for (const { said: pattern, unless, line } of NEWS) {
    const found = unless?.test(said) ? null : pattern.exec(said);
    if (found) return line(said.slice(found[0].length));
  }
  return undefined;
}
