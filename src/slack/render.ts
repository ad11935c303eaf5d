/** An answer as Slack messages: pure, total, its headline and cautions whole, nothing in it taken as markup. */

import type { Answer } from '../bot/answer.ts';
import { isPart, offersOf } from '../bot/offers.ts';
import { oneLine } from '../bot/sheet.ts';
import type { Caution } from '../reply/caution.ts';
import type { Problem } from '../reply/problem.ts';
import type { Block, Reply } from '../reply/reply.ts';
import { sayFault } from '../words/asks.ts';
import { CHAT } from '../words/chat.ts';
import { SLACK } from '../words/slack.ts';
import { saySource } from '../words/sources.ts';
import { answerRows, problemRows } from './buttons.ts';
import { IMAGE, INLINE, MESSAGE } from './limits.ts';
import { pagesOf } from './pages.ts';
import { cut, EMPTY, escaped, plainText, type SlackBlock, said, saidCode, saidLines, sizeOf } from './rich.ts';
import { saidTable } from './table.ts';

/** What is sent: `text` is the notification, and what a client without blocks shows. */
export interface Message {
  readonly text: string;
  readonly blocks: readonly SlackBlock[];
}

/** How an answer is shown. */
export interface Showing {
  /** The id it is kept under; without one there are no buttons, and its long parts stand in the messages. */
  readonly id?: string | undefined;
  /** Whether everybody in the channel sees it. */
  readonly shown?: boolean;
  /** Uploaded pictures by the place of their block; the others are told by their alt text. */
  readonly pictures?: ReadonlyMap<number, string>;
  /** The ask, told where others see the answer. */
  readonly asked?: string;
}

/** The messages of an answer, in order. */
export function render(answer: Answer, showing: Showing = {}): readonly Message[] {
  if ('reference' in answer) {
    const text = sayFault(answer.reference, answer.outage);
    return messagesOf(text, said(text), []);
  }
  if ('problems' in answer) {
    const rows = showing.id === undefined ? [] : problemRows(showing.id, answer.form !== undefined);
    return messagesOf(CHAT.problem, problemBlocks(answer.problems), rows);
  }
  if ('why' in answer) {
    const blocks = [
      ...said(CHAT.refusal, true),
      ...said(answer.why),
      ...saidLines(undefined, [{ label: `${CHAT.call}:`, text: answer.call }]),
      ...cautionBlocks(answer.cautions),
    ];
    return messagesOf(`${CHAT.refusal}: ${answer.why}`, blocks, []);
  }
  return replyMessages(answer, showing);
}

/** One block of a reply that stands behind a button, as messages; undefined when there is no such block. */
export function renderPart(reply: Reply, place: number): readonly Message[] | undefined {
  const block = reply.blocks[place];
  return block && isPart(block) ? messagesOf(block.title, blockBlocks(block, place, {}), []) : undefined;
}

/** The sources of a reply, each once. */
export function renderSources(reply: Reply): readonly Message[] {
  const lines = [...new Set(reply.sources.map((source) => `${saySource(source)} (${source.standing})`))];
  if (lines.length === 0) return messagesOf(CHAT.noSources, said(CHAT.noSources), []);
  return messagesOf(
    CHAT.sources,
    saidLines(
      CHAT.sources,
      lines.map((text) => ({ label: '•', text })),
    ),
    [],
  );
}

/** A sentence of our own as a message. */
export function note(text: string): Message {
  return { text: escaped(text), blocks: said(text) };
}

function replyMessages(reply: Reply, showing: Showing): readonly Message[] {
  const around = {
    before: [
      ...said(reply.headline, true),
      ...(showing.asked === undefined ? [] : saidLines(undefined, [{ label: `${SLACK.asked}:`, text: showing.asked }])),
    ],
    after: [
      ...saidLines(
        CHAT.assumed,
        reply.assumed.map((text) => ({ label: '•', text })),
      ).filter(() => reply.assumed.length > 0),
      ...cautionBlocks(reply.cautions),
    ],
  };
  const all = reply.blocks.map((block, place) => ({ part: isPart(block), blocks: blockBlocks(block, place, showing) }));
  const whole = [...around.before, ...all.flatMap(({ blocks }) => blocks), ...around.after];
  const offers = offersOf(reply);
  if (showing.id === undefined) return messagesOf(reply.headline, whole, []);
  if (sizeOf(whole) <= INLINE && pagesOf(whole).length === 1) {
    return messagesOf(reply.headline, whole, answerRows(showing.id, offers, [], showing.shown === true));
  }
  const read = all.flatMap(({ part, blocks }) => (part ? [] : blocks));
  const rows = answerRows(showing.id, offers, offers.parts, showing.shown === true);
  return messagesOf(reply.headline, [...around.before, ...read, ...around.after], rows);
}

function messagesOf(headline: string, blocks: readonly SlackBlock[], rows: readonly SlackBlock[]): readonly Message[] {
  const text = escaped(cut(oneLine(headline) || EMPTY, MESSAGE.text));
  const pages = pagesOf(blocks);
  // The buttons belong to the end of the answer, where the thumb is.
  return pages.map((page, i) => ({ text, blocks: i === pages.length - 1 ? [...page, ...rows] : page }));
}

function blockBlocks(block: Block, place: number, showing: Showing): readonly SlackBlock[] {
  switch (block.kind) {
    case 'text':
      return said(block.text);
    case 'facts':
      return saidLines(
        block.title,
        block.facts.map(({ label, value }) => ({ label: `${label}:`, text: value })),
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
    case 'picture': {
      const { title, alt } = block.drawing;
      const file = showing.pictures?.get(place);
      if (file === undefined) return saidLines(title, [{ text: alt }]);
      const alt_text = cut(oneLine(alt) || EMPTY, IMAGE.alt);
      return [{ type: 'image', slack_file: { id: file }, alt_text, title: plainText(title, IMAGE.title) }];
    }
  }
}

/** Each problem with what was read, and what to type: behind each, or once below when one ask mends all. */
function problemBlocks(problems: readonly Problem[]): readonly SlackBlock[] {
  const shared = problems.length > 1 && new Set(problems.map(({ fix }) => fix)).size === 1;
  const typed = (fix: string): readonly SlackBlock[] => [
    ...saidLines(undefined, [{ label: `${CHAT.type}:`, text: '' }]),
    ...saidCode(`/floorhand ${oneLine(fix)}`),
  ];
  return [
    ...said(CHAT.problem, true),
    ...problems.flatMap(({ option, got, expected, fix }) => [
      ...saidLines(undefined, [
        { label: `${option}:`, text: expected },
        { label: `${CHAT.read}:`, text: got === '' ? CHAT.nothing : got },
      ]),
      ...(shared ? [] : typed(fix)),
    ]),
    ...(shared ? typed(problems[0]?.fix ?? '') : []),
  ];
}

function cautionBlocks(cautions: readonly Caution[]): readonly SlackBlock[] {
  return cautions.length === 0
    ? []
    : saidLines(
        CHAT.cautions,
        cautions.map(({ text }) => ({ label: '•', text })),
      );
}
