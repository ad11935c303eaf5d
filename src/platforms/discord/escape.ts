/** Text on its way into Discord's Markdown: nothing in it pings, links, formats or looks like a message of somebody else. */

import { oneLine } from '../../chat/files.ts';

/** Holds a mention apart and is not seen. */
const APART = '\u200b';

/** One line of plain text in Markdown. */
export function escapedMarkdown(text: string): string {
  return oneLine(text)
    .replace(/[\\*_~`|<[\]]/g, '\\$&')
    .replace(/^[#>+-]/, '\\$&')
    .replace(/^(\d+)([.)])(?=\s|$)/, '$1\\$2')
    .replaceAll('://', ':\\//')
    .replaceAll('@', `@${APART}`);
}

/** One line inside a code span or a code block, where only backticks mean anything. */
export function verbatim(text: string): string {
  return oneLine(text).replaceAll('`', 'ˋ').replaceAll('@', `@${APART}`);
}

/** A code span; empty text has no code span of its own. */
export function code(text: string): string {
  // A backslash must not be taken for the escape of the closing mark.
  const line = verbatim(text).replace(/\\$/, '\\ ');
  return line === '' ? '' : `\`${line}\``;
}

/** Plain text where no Markdown is read (labels, poll answers, placeholders), at most `most` characters. */
export function label(text: string, most: number): string {
  const line = oneLine(text).replaceAll('@', `@${APART}`);
  if (line.length <= most) return line;
  const cut = line.slice(0, most - 1);
  // Half a surrogate pair is no text.
  return `${/[\ud800-\udbff]$/.test(cut) ? cut.slice(0, -1) : cut}…`;
}
