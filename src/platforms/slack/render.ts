/** An answer as Slack messages: pure, total, its headline and cautions whole, nothing in it taken as markup. */

import { oneLine } from '../../chat/files.ts';
import { assumedOf, isPart, offersOf, type Part } from '../../chat/offers.ts';
import type { Answer } from '../../chat/pipeline.ts';
import type { Reply } from '../../reply/reply.ts';
import { CHAT, SLACK, sayFault } from '../../text/chat-text.ts';
import { saySource } from '../../text/help-text.ts';
import { blockBlocks, cautionBlocks, pictureBlocks, problemBlocks } from './blocks.ts';
import { answerRows, problemRows } from './buttons.ts';
import { INLINE, MESSAGE, MOST_PICTURES } from './limits.ts';
import { pagesOf } from './pages.ts';
import { drawingsOf } from './pictures.ts';
import { cut, EMPTY, escaped, type SlackBlock, said, saidLines, sizeOf } from './rich.ts';

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
  /** Whether its pictures stand in the asker's direct messages: the answer says so. */
  readonly direct?: boolean;
  /** Whether its ask can be opened as a form. */
  readonly changeable?: boolean;
}

/** The messages of an answer, in order. */
export function render(answer: Answer, showing: Showing = {}): readonly Message[] {
  if ('reference' in answer) {
    const text = sayFault(answer.reference, answer.outage);
    return messagesOf(text, said(text), []);
  }
  if ('problems' in answer) {
    const { form, problems, again, example } = answer;
    const offered = {
      form: form !== undefined,
      fix: problems[0].fix !== undefined,
      again: again === true,
      example: example !== undefined,
    };
    const rows = showing.id === undefined ? [] : problemRows(showing.id, offered);
    return messagesOf(CHAT.problem, problemBlocks(answer.problems), rows);
  }
  if ('why' in answer) {
    const heading = answer.data.emergency ? CHAT.emergency : CHAT.refusal;
    const blocks = [
      ...said(heading, true),
      ...answer.why.split('\n').flatMap((line) => said(line)),
      ...saidLines(undefined, [{ label: `${CHAT.call}:`, text: answer.call }]),
      ...cautionBlocks(answer.cautions),
    ];
    return messagesOf(`${heading}: ${answer.why}`, blocks, []);
  }
  return replyMessages(answer, showing);
}

/** One block of a reply that stands behind a button, as messages; undefined when there is no such block. */
export function renderPart(reply: Reply, place: number): readonly Message[] | undefined {
  const block = reply.blocks[place];
  return block && isPart(block) ? messagesOf(block.title, blockBlocks(block), []) : undefined;
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
  const { id, asked, shown = false, direct = false, changeable = false } = showing;
  const pictures = drawingsOf(reply);
  const assumed = assumedOf(reply);
  // Without buttons everything stands in its own order; with them what is looked at comes first, and what is looked up last.
  const first = id === undefined ? [] : pictures.slice(0, MOST_PICTURES);
  const before = [
    ...said(reply.headline, true),
    ...(reply.example === undefined ? [] : said(reply.example)),
    ...(asked === undefined ? [] : saidLines(undefined, [{ label: `${SLACK.asked}:`, text: asked }])),
    ...first.flatMap(({ place, drawing }) => pictureBlocks(drawing, showing.pictures?.get(place))),
    ...(direct ? said(SLACK.pictureDirect(first.length)) : []),
  ];
  const after = [
    ...saidLines(
      CHAT.assumed,
      assumed.map((text) => ({ label: '•', text })),
    ).filter(() => assumed.length > 0),
    ...cautionBlocks(reply.cautions),
  ];
  const all = reply.blocks
    .map((block, place) => ({ block, place }))
    .filter(({ block }) => id === undefined || block.kind !== 'picture')
    .map(({ block, place }) => ({ part: isPart(block), blocks: blockBlocks(block, showing.pictures?.get(place)) }));
  const whole = [...before, ...all.flatMap(({ blocks }) => blocks), ...after];
  if (id === undefined) return messagesOf(reply.headline, whole, []);
  const offers = offersOf(reply);
  const more = pictures.length > first.length ? pictures.length : 0;
  const rows = (parts: readonly Part[]): readonly SlackBlock[] =>
    answerRows(id, offers, { parts, pictures: more, changeable, shown });
  if (sizeOf(whole) <= INLINE && pagesOf(whole).length === 1) return messagesOf(reply.headline, whole, rows([]));
  const read = all.flatMap(({ part, blocks }) => (part ? [] : blocks));
  return messagesOf(reply.headline, [...before, ...read, ...after], rows(offers.parts));
}

/** Pictures alone, as a message of their own; undefined where none of them was uploaded. */
export function renderPictures(reply: Reply, pictures: ReadonlyMap<number, string>): Message | undefined {
  const blocks = drawingsOf(reply)
    .filter(({ place }) => pictures.has(place))
    .flatMap(({ place, drawing }) => pictureBlocks(drawing, pictures.get(place)));
  const [message] =
    blocks.length === 0 ? [] : messagesOf(reply.headline, [...said(reply.headline, true), ...blocks], []);
  return message;
}

function messagesOf(headline: string, blocks: readonly SlackBlock[], rows: readonly SlackBlock[]): readonly Message[] {
  const text = escaped(cut(oneLine(headline) || EMPTY, MESSAGE.text));
  const pages = pagesOf(blocks);
  // The buttons belong to the end of the answer, where the thumb is.
  return pages.map((page, i) => ({ text, blocks: i === pages.length - 1 ? [...page, ...rows] : page }));
}
