/** Text wrapped to a width, at spaces where there are any, and never inside a measure. */

import { plain } from './plain.ts';

/** Spaces that hold together what is read together: `24 3/4"`, `604 mm`, `no. 12`, `6 x 48`. */
const HELD =
  /(?<=\d) (?=\d+\/\d)|(?<=[\d"'/]) (?=(?:mm|cm|m|m²|in|ft|sq ft|yd|kg|lb|%|€)(?![\p{L}\d]))|(?<=\bno\.) (?=\d)|(?<=\d['′]) (?=\d)|(?<=\bsq) (?=ft\b)|(?<=\d["']?) (?=[x×] \d)|(?<=\d["']? [x×]) (?=\d)/gu;
const HOLD = '\u00a0';

/** Lines no longer than `width` characters, without control characters; a longer word is broken. Empty text is one empty line. */
export function wrap(text: string, width: number): readonly string[] {
  const room = Math.max(1, width);
  const lines: string[] = [];
  let line = '';
  for (const word of words(text, room)) {
    let rest = word;
    if (line !== '' && length(line) + 1 + length(rest) <= room) {
      line += ` ${rest}`;
      continue;
    }
    if (line !== '') lines.push(line);
    while (length(rest) > room) {
      lines.push([...rest].slice(0, room).join(''));
      rest = [...rest].slice(room).join('');
    }
    line = rest;
  }
  lines.push(line);
  return lines;
}

/** What is kept on one line, if it fits on one. */
function words(text: string, room: number): readonly string[] {
  const held = plain(text).replace(/\s+/g, ' ').replace(HELD, HOLD);
  return held.split(' ').flatMap((word) => {
    const loose = word.replaceAll(HOLD, ' ');
    return length(loose) > room ? loose.split(' ') : [loose];
  });
}

function length(text: string): number {
  return [...text].length;
}
