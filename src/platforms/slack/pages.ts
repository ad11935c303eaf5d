/** Blocks packed into messages that Slack takes: so many blocks, so many characters, one table each. */

import { MESSAGE } from './limits.ts';
import { type SlackBlock, sizeOf } from './rich.ts';

/** The blocks of each message, in order; none is empty. */
export function pagesOf(blocks: readonly SlackBlock[]): readonly (readonly SlackBlock[])[] {
  const pages: SlackBlock[][] = [];
  let [size, tables] = [0, 0];
  for (const block of blocks) {
    const [length, table] = [sizeOf(block), block.type === 'table' ? 1 : 0];
    const page = pages.at(-1);
    const full =
      !page || page.length >= MESSAGE.body || size + length > MESSAGE.characters || tables + table > MESSAGE.tables;
    if (full) {
      pages.push([block]);
      [size, tables] = [length, table];
      continue;
    }
    page.push(block);
    size += length;
    tables += table;
  }
  return pages;
}
