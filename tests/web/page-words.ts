/** What a page tells, its markup undone: the texts between its tags, and those that a drawing is said by. */

/** The text of HTML that we wrote; entities as characters. */
export function pageWords(html: string): string {
  const entities: Readonly<Record<string, string>> = { lt: '<', gt: '>', quot: '"', '#39': "'", amp: '&' };
  return html.replace(/<[^>]*>/g, ' ').replace(/&(lt|gt|quot|#39|amp);/g, (_, name: string) => entities[name] ?? '');
}
