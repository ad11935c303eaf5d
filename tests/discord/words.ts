/** What a person reads in Discord messages: escapes undone, pictures by their descriptions, attached texts. */

import type { DiscordMessage } from '../../src/platforms/discord/page.ts';
import { field, list } from './json-field.ts';

/** All of it in order. */
export function discordWords(messages: readonly DiscordMessage[]): string {
  return messages
    .flatMap(({ components, files }) => [
      ...components.map(wordsOf),
      ...files.map((file) => ('text' in file ? file.text : '')),
    ])
    .join('\n');
}

function wordsOf(component: unknown): string {
  const content = field(component, 'content');
  if (typeof content === 'string') return markdownWords(content);
  return list(field(component, 'items'))
    .map((item) => String(field(item, 'description') ?? ''))
    .join('\n');
}

/** Markdown without our marks; what stands in code is as it is. */
function markdownWords(text: string): string {
  return text
    .split(/(```\n[\s\S]*?\n```|(?<!\\)`[^`\n]+`)/)
    .map((part, i) =>
      i % 2 === 1 ? part.replace(/^`+|`+$/g, '') : part.replace(/\\([^0-9A-Za-z\s])|\*\*|^-# |^#{3} /gm, '$1'),
    )
    .join('')
    .replaceAll('ˋ', '`');
}
