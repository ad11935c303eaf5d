/** Text wrapped to a width, at spaces where there are any. */

/** Lines no longer than `width` characters; a longer word is broken. Empty text is one empty line. */
export function wrap(text: string, width: number): readonly string[] {
  const lines: string[] = [];
  let line = '';
  for (const word of text.split(/\s+/)) {
    let rest = word;
    if (line !== '' && [...line].length + 1 + [...rest].length <= width) {
      line += ` ${rest}`;
      continue;
    }
    if (line !== '') lines.push(line);
    while ([...rest].length > width) {
      lines.push([...rest].slice(0, width).join(''));
      rest = [...rest].slice(width).join('');
    }
    line = rest;
  }
  lines.push(line);
  return lines;
}
