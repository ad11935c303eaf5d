/** What a page tells, its markup undone: the texts between its tags, and those that a drawing is said by. */

import { inUnits } from '../../src/text/answer-text.ts';

/** The text of HTML that we wrote; entities as characters. A wording of both units at once is a fault. */
export function pageWords(html: string): string {
  if (inUnits(html, 'imperial') !== html) throw new Error('A text of this page was never put in feet or meters.');
  const entities: Readonly<Record<string, string>> = { lt: '<', gt: '>', quot: '"', '#39': "'", amp: '&' };
  return html.replace(/<[^>]*>/g, ' ').replace(/&(lt|gt|quot|#39|amp);/g, (_, name: string) => entities[name] ?? '');
}
