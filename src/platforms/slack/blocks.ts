/** The parts of an answer as Slack blocks: every kind of block, problems, cautions. */

import { oneLine } from '../../chat/files.ts';
import type { Drawing } from '../../reply/drawing.ts';
import { ADDRESS, type Block, type Caution, type Problem } from '../../reply/reply.ts';
import { CHAT } from '../../text/chat-text.ts';
import { IMAGE } from './limits.ts';
import { cut, EMPTY, plainText, type SlackBlock, said, saidCode, saidLines } from './rich.ts';
import { saidTable } from './table.ts';

/** A block of a reply; `file`: its uploaded picture, where it is one. */
export function blockBlocks(block: Block, file?: string): readonly SlackBlock[] {
  switch (block.kind) {
    case 'text':
      return said(block.text);
    case 'facts':
      return saidLines(
        block.title,
        block.facts.map(({ label, value, opens }) => ({
          label: `${label}:`,
          text: value,
          opens: opens === true && ADDRESS.test(value),
        })),
      );
    case 'table':
      return saidTable(block);
    case 'steps':
      return saidLines(
        block.title,
        block.steps.map((text, i) => ({ label: `${i + 1}.`, text })),
      );
    case 'checklist':
      return saidLines(
        block.title,
        block.items.map((text) => ({ label: '☐', text })),
      );
    case 'picture':
      return pictureBlocks(block.drawing, file);
  }
}

/** A picture by its uploaded file; without one by what it shows. */
export function pictureBlocks({ title, alt }: Drawing, file: string | undefined): readonly SlackBlock[] {
  if (file === undefined) return saidLines(title, [{ text: alt }]);
  const alt_text = cut(oneLine(alt) || EMPTY, IMAGE.alt);
  return [{ type: 'image', slack_file: { id: file }, alt_text, title: plainText(title, IMAGE.title) }];
}

/** Each problem with what was read, and what to type: behind each, or once below when one ask mends all. */
export function problemBlocks(problems: readonly Problem[]): readonly SlackBlock[] {
  const shared = problems.length > 1 && new Set(problems.map(({ fix }) => fix)).size === 1;
  const typed = (fix: string | undefined): readonly SlackBlock[] =>
    fix === undefined
      ? []
      : [...saidLines(undefined, [{ label: `${CHAT.type}:`, text: '' }]), ...saidCode(`/floorhand ${oneLine(fix)}`)];
  return [
    ...said(CHAT.problem, true),
    ...problems.flatMap(({ option, got, expected, fix }) => [
      ...saidLines(undefined, [
        { label: `${option}:`, text: expected },
        { label: `${CHAT.read}:`, text: got === '' ? CHAT.nothing : got },
      ]),
      ...(shared ? [] : typed(fix)),
    ]),
    ...(shared ? typed(problems[0]?.fix) : []),
  ];
}

/** Every caution whole. */
export function cautionBlocks(cautions: readonly Caution[]): readonly SlackBlock[] {
  return cautions.length === 0
    ? []
    : saidLines(
        CHAT.cautions,
        cautions.map(({ text }) => ({ label: '•', text })),
      );
}
