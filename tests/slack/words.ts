/** The words of Slack blocks, as their reader sees them: buttons aside. */

/** All texts of the blocks in order; a picture by what it is told to show. */
export function slackWords(value: unknown): string {
  if (Array.isArray(value)) return value.map(slackWords).join(' ');
  if (typeof value !== 'object' || value === null) return '';
  if ('type' in value && value.type === 'actions') return '';
  return Object.entries(value)
    .map(([name, one]) => (typeof one !== 'string' ? slackWords(one) : ['text', 'alt_text'].includes(name) ? one : ''))
    .filter((text) => text !== '')
    .join(' ');
}
