/** The words of a message of either chat, without what differs from one sending to the next: ids, buttons, and whether a picture was in time. */

/** What a message says in words, line by line, and what its pictures are said to show. */
export interface Said {
  readonly lines: readonly string[];
  readonly pictures: readonly string[];
}

/** Rows of buttons, and buttons and lists by themselves, by their type: of Discord in numbers, of Slack in words. */
const PRESSED: readonly unknown[] = [1, 2, 3, 5, 6, 7, 8, 'actions', 'button', 'static_select', 'overflow'];

/** The words of a message. */
export function saidIn(body: unknown): Said {
  const lines: string[] = [];
  const pictures: string[] = [];
  const gather = (value: unknown): void => {
    if (Array.isArray(value)) for (const one of value) gather(one);
    else if (typeof value === 'object' && value !== null) {
      if ('type' in value && PRESSED.includes(value.type)) return;
      for (const [key, one] of Object.entries(value)) {
        // What stands over a picture goes with it.
        if (key === 'title') pictures.push(...saidIn(one).lines);
        else if (typeof one !== 'string') gather(one);
        else if (key === 'content' || key === 'text') lines.push(...one.split('\n').filter((line) => line !== ''));
        else if (key === 'description' || key === 'alt_text') pictures.push(one);
      }
    }
  };
  gather(body);
  return { lines, pictures };
}

/** The first line of the right message that a message does not tell; undefined where it tells all. A picture may be told in words. */
export function lacking(said: Said, right: Said): string | undefined {
  const there = new Set(said.lines);
  return right.lines.find((line) => !there.has(line) && !right.pictures.some((shown) => line.includes(shown)));
}
