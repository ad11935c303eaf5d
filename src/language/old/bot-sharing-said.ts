/** Everyday sentences about sharing, as the line of the command that does it. */

/** “all of my” is “all of” and “my”, each by itself: told together as well, both ways would be tried at every one. */
const PART =
  '(?:(?:my |our |the |a |all of )*(?:whole |entire |full )?(?:project|shopp?ing(?: li?st)?|(?:laying|plank|floor) (?:guide|plan)|layout|guide|cut(?:ting)? ?list|cuts|saw list|tear-?out|check ?list|progress|everything)|what to buy)';

interface Saying {
  readonly said: RegExp;
  readonly line: (found: Readonly<Record<string, string>>) => string;
}

/** Each begins the whole sentence and takes all of it. */
const SAYINGS: readonly Saying[] = [
  {
    said: /^(?:stop|end|revoke|cancel) (?:sharing|the shares|all shares)(?<which>\b.*)?$/i,
    line: ({ which = '' }) => `project share stop ${which.trim()}`.trim(),
  },
  {
    said: /^(?:stop|end|revoke|cancel) (?:(?:the |my |all )*(?<links>links?)|(?:the )?(?:share|link) (?<which>\S.*)|(?:no\.? ?|#)?(?<no>\d{1,6}))[.!]?$/i,
    line: ({ links, which, no }) => `project share stop ${links ?? which ?? no}`,
  },
  { said: /^unshare(?<which>\b.*)?$/i, line: ({ which = '' }) => `project share stop ${which.trim()}`.trim() },
  {
    said: /^(?:(?:show|list)(?: me)? )?(?:my |the |all )?shares[.?!]?$|^what (?:is|do i|have i|am i) ?(?:shared?|sharing)[.?!]?$|^who (?:can see|sees|has|helps with) (?:my |the |this )?(?:project|it|this)[.?!]?$/i,
    line: () => 'project share',
  },
  {
    said: /^(?:change|make|set) (?:the )?(?:share|link) (?<rest>#?\d.*)$/i,
    line: ({ rest = '' }) => `project share ${rest}`,
  },
  { said: /^leave (?:my |the |this )?shared project[.!]?$/i, line: () => 'project share leave' },
  {
    // What is shared may be missing or misspelt: the command tells what can be.
    said: new RegExp(`^share (?<rest>(?:${PART}\\b|my |our |the |this\\b|it\\b|with ).*)$`, 'i'),
    line: ({ rest = '' }) => `project share ${rest}`,
  },
  {
    // “Send Dana a link to the cut list”; “a link to the cut list for Dana”.
    said: new RegExp(
      `^(?:send|give|make|get|create)(?: me)?(?: (?<who>(?!me\\b|an? |the )\\S(?:.{0,50}?\\S)?))? (?:an? |the )?(?:share )?link (?:to|for|of) (?<rest>${PART}\\b.*)$`,
      'i',
    ),
    line: ({ who, rest = '' }) => linkLine(rest, who),
  },
  {
    said: new RegExp(
      `^(?:send|give|show) (?<who><@[^>]+>|(?!me\\b)\\S(?:.{0,50}?\\S)?) (?:access to )?(?<rest>(?=my |our |the )${PART}\\b.*)$`,
      'i',
    ),
    line: ({ who = '', rest = '' }) => `project share ${rest}, with ${who}`,
  },
  {
    said: new RegExp(
      `^let (?<who>\\S(?:.{0,50}?\\S)?) (?<may>see|look at|view|tick(?: off)?|measure)(?: (?:in|on|for))? (?<rest>${PART}\\b.*)$`,
      'i',
    ),
    line: ({ who = '', may = '', rest = '' }) => `project share ${rest}, with ${who}, may ${may}`,
  },
];

function linkLine(rest: string, who: string | undefined): string {
  return who === undefined ? `project share ${rest}, with a link` : `project share ${rest}, with a link, named ${who}`;
}

/** The line that does what a sentence about sharing says; undefined for any other text. */
export function sharingSaid(said: string): string | undefined {
  for (const { said: pattern, line } of SAYINGS) {
    const found = pattern.exec(said);
    if (found) return line(found.groups ?? {});
  }
  return undefined;
}
