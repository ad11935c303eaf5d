/** The words of a message of either chat, without what differs from one sending to the next. */

/** All words in order, those on buttons and under pictures too; no ids. */
export function saidIn(body: unknown): string {
  const words: string[] = [];
  const gather = (value: unknown): void => {
    if (Array.isArray(value)) for (const one of value) gather(one);
    else if (typeof value === 'object' && value !== null) {
      for (const [key, one] of Object.entries(value)) {
        if (typeof one !== 'string') gather(one);
        else if (['content', 'text', 'label', 'description', 'alt_text'].includes(key)) words.push(one);
      }
    }
  };
  gather(body);
  return words.join('\n');
}
