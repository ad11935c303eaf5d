/** Sheets of a project as one JSON document: what they tell in words, and the result data behind it, whose figures are exact. */

import type { Sheets } from '../reply/job-sheet.ts';
import type { Reply } from '../reply/reply.ts';

/** Indented, so that a person can read it too. */
const INDENT = 1;

/** The document as text. Pictures are told in words: their shapes are for drawing. */
export function sheetsJson({ sheets, ...rest }: Sheets): string {
  const told = sheets.map(({ reply, ...sheet }) => ({ ...sheet, ...replyTold(reply) }));
  return `${JSON.stringify({ ...rest, ticksPerInch: 8128, sheets: told }, undefined, INDENT)}\n`;
}

function replyTold({ headline, blocks, assumed, cautions, sources, data }: Reply) {
  const told = blocks.map((block) =>
    block.kind === 'picture' ? { kind: block.kind, title: block.drawing.title, alt: block.drawing.alt } : block,
  );
  return { headline, blocks: told, assumed, cautions, sources, data };
}
