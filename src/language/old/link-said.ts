/** Everyday sentences about linked accounts and codes, as the line of the command that does it. */

const PLATFORM = '(?<platform>discord|slack|(?:the )?terminal|phone|computer|other account|accounts?)';

const SAYINGS: readonly (readonly [said: RegExp, line: (found: Readonly<Record<string, string>>) => string])[] = [
  [
    new RegExp(
      `^(?:link|connect|join|merge) (?:up )?(?:my |the |this |both |all )*(?:account )?(?:(?:to|with) )?(?:my )?${PLATFORM}(?: accounts?)?(?: (?:to|with|and) .*)?[.!?]?$`,
      'i',
    ),
    () => 'project link',
  ],
  [
    /^(?:give me|make(?: me)?|show(?: me)?|get(?: me)?|i need) (?:a |my )?(?:new )?(?:link(?:ing)? )?code[.!?]?$/i,
    () => 'project link',
  ],
  [
    /^(?:which|what|show(?: me)?|list)(?: of)? (?:my |the )?(?:linked |other )?accounts(?: (?:are|do i have|have i) ?(?:linked|connected)?)?[.!?]?$/i,
    () => 'project link list',
  ],
  [
    new RegExp(`^(?:unlink|disconnect|part) (?:my |the |this )*${PLATFORM}(?: account)?[.!]?$`, 'i'),
    ({ platform = '' }) => `project link remove ${/account/.test(platform) ? 'this' : platform}`,
  ],
  [
    /^(?:(?:link|join|redeem)(?: with| by)?(?: (?:the|my))?(?: ?code)?|(?:(?:use|take|enter|type) )?(?:(?:the|my) )?code(?: is)?)[: ]+(?<code>[\da-z]{4}[ \p{Pd}]?[\da-z]{4})[.!]?$/iu,
    ({ code = '' }) => (/\d/.test(code) ? `project link ${code}` : ''),
  ],
];

/** A code by itself, which is no sum of lengths. */
const BARE = /^(?=.*\d)(?=.*[a-z])(?!.*\d(?:ft|in|cm|mm|m)(?![a-z\d]))[\da-z]{4} ?\p{Pd} ?[\da-z]{4}[.!]?$/iu;

/** The line for a sentence about linked accounts; undefined for any other text. */
export function linkSaid(said: string): string | undefined {
  for (const [pattern, line] of SAYINGS) {
    const found = pattern.exec(said);
    const done = found && line(found.groups ?? {});
    if (done) return done;
  }
  if (BARE.test(said) || /^link (?:list|remove .+)$/i.test(said))
    return `project link ${said.replace(/^link |[.!]$/gi, '')}`;
  return /^(?:link|unlink)[.!]?$/i.test(said) ? 'project link' : undefined;
}
