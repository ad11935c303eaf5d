/** Rendered messages made ready to be sent: pictures rasterised, files listed, rows put under the first. */

import { Buffer } from 'node:buffer';
import {
  type APIAttachment,
  type APIComponentInContainer,
  type APIMessageTopLevelComponent,
  ComponentType,
  type RawFile,
} from 'discord.js';
import type { Answer } from '../../chat/pipeline.ts';
import type { Drawing } from '../../reply/drawing.ts';
import { type FileForm, MEDIA_TYPES, type Result } from '../../reply/reply.ts';
import { CHAT } from '../../text/chat-text.ts';
import { FILES } from '../../text/sheets-text.ts';
import { Unworked } from '../../workers/queue.ts';
import { REQUEST_BYTES } from './limits.ts';
import { type DiscordMessage, escapedMarkdown, type OutFile } from './page.ts';
import { planInBrief } from './render.ts';
import type { Outgoing } from './types.ts';

/** What making pictures needs. */
export interface Drawn {
  toPng(drawing: Drawing): Promise<Buffer>;
  /** Makes a file of an answer's data; without it the answer says that there is none. */
  makeFile?(data: Result, as: FileForm): Promise<Buffer>;
  /** Tells of a picture that could not be drawn; the answer goes out without it. */
  fault(cause: unknown): void;
  /** Bytes of one file. */
  readonly fileBytes: number;
}

/** The same, each drawing rasterised once: `ahead` begins with those of an answer that may still be worked on. */
export function drawnAhead(drawn: Drawn): { readonly drawn: Drawn; ahead(answer: Answer): void } {
  const made = new WeakMap<Drawing, Promise<Buffer>>();
  const toPng = (drawing: Drawing): Promise<Buffer> => {
    const png = made.get(drawing) ?? drawn.toPng(drawing);
    made.set(drawing, png);
    return png;
  };
  const ahead = (answer: Answer): void => {
    if (!('headline' in answer)) return;
    // What fails is told where the picture is needed; the others are drawn when they are opened.
    const plan = planInBrief(answer);
    if (plan) toPng(plan).catch(() => undefined);
  };
  return { drawn: { ...drawn, toPng }, ahead };
}

/** A picture or a file that is still being made when an answer is to be seen: it comes with the answer that takes its place. */
class Later extends Error {
  override readonly name = 'Later';
}

/** The same for an answer that waits for its pictures and files only until `over`; `late` tells whether one was not there by then. */
export function drawnBy(over: Promise<void>, drawn: Drawn): { readonly drawn: Drawn; late(): boolean } {
  let late = false;
  const later = over.then((): never => {
    late = true;
    throw new Later('a picture that is still being drawn');
  });
  later.catch(() => undefined);
  const soon = (made: Promise<Buffer>): Promise<Buffer> => Promise.race([made, later]);
  const { toPng, makeFile } = drawn;
  const made = makeFile && { makeFile: (data: Result, as: FileForm) => soon(makeFile(data, as)) };
  return { drawn: { ...drawn, toPng: (drawing) => soon(toPng(drawing)), ...made }, late: () => late };
}

/** What stands around the content of a first message. */
export interface Around {
  readonly above?: readonly APIComponentInContainer[];
  /** Words on its state, and its rows. */
  readonly below?: readonly APIComponentInContainer[];
}

/** A card: all of a message in one frame. */
export function cardOf(components: readonly APIComponentInContainer[]): APIMessageTopLevelComponent {
  return { type: ComponentType.Container, components: [...components] };
}

/** The messages in order, each a card, the first with what stands around it. */
export async function outgoing(
  messages: readonly DiscordMessage[],
  around: Around,
  drawn: Drawn,
): Promise<readonly [Outgoing, ...Outgoing[]]> {
  const [first, ...rest] = await Promise.all(
    messages.map((message, i) => outgoingOne(message, i === 0 ? around : {}, drawn)),
  );
  if (!first) throw new Error('an answer without a message');
  return [first, ...rest];
}

interface Made {
  readonly file: OutFile;
  readonly data?: Buffer;
  /** Why it is not there; empty where nothing is said of it. */
  readonly lost?: string;
}

async function outgoingOne(
  { components, files }: DiscordMessage,
  { above = [], below = [] }: Around,
  drawn: Drawn,
): Promise<Outgoing> {
  const made = await Promise.all(files.map((file) => madeOf(file, drawn)));
  let bytes = 0;
  const kept: { file: OutFile; data: Buffer }[] = [];
  const lost: string[] = [];
  for (const { file, data, lost: why } of made) {
    if (data && bytes + data.length <= REQUEST_BYTES) {
      bytes += data.length;
      kept.push({ file, data });
    } else lost.push(why ?? CHAT.tooLarge(titleOf(file)));
  }
  const names = new Set(kept.map(({ file }) => file.name));
  const shown = lost.length === 0 ? components : withoutLost(components, names);
  const words = lost.filter((why) => why !== '').map((why) => `-# ${escapedMarkdown(why)}`);
  const given: readonly APIComponentInContainer[] =
    words.length === 0 ? [] : [{ type: ComponentType.TextDisplay, content: words.join('\n') }];
  return {
    components: [cardOf([...above, ...shown, ...given, ...below])],
    attachments: kept.map(({ file }, i) => ({
      id: String(i),
      filename: file.name,
      ...('alt' in file && file.alt !== '' ? { description: file.alt } : {}),
    })),
    files: kept.map(({ file, data }): RawFile => ({ name: file.name, data, contentType: typeOf(file.name) })),
  };
}

async function madeOf(file: OutFile, { toPng, makeFile, fault, fileBytes }: Drawn): Promise<Made> {
  if ('text' in file) return fitting(file, Buffer.from(file.text), fileBytes);
  const lost = 'drawing' in file ? CHAT.notDrawn(file.title) : FILES.notMade(file.title);
  try {
    const data = 'drawing' in file ? await toPng(file.drawing) : await makeFile?.(file.of.data, file.of.as);
    return data ? fitting(file, data, fileBytes) : { file, lost };
  } catch (cause) {
    if (cause instanceof Later) return { file, lost: '' };
    // Too many pictures at once are no fault: the figures stand, and pressing once more draws them.
    if (!(cause instanceof Unworked)) fault(cause);
    return { file, lost };
  }
}

function fitting(file: OutFile, data: Buffer, fileBytes: number): Made {
  return data.length <= fileBytes ? { file, data } : { file, lost: CHAT.tooLarge(titleOf(file)) };
}

function titleOf(file: OutFile): string {
  return 'title' in file ? file.title : file.name;
}

/** What shows a file that is not sent goes with it: Discord refuses a message that names a missing file. */
function withoutLost(
  components: readonly APIComponentInContainer[],
  names: ReadonlySet<string>,
): readonly APIComponentInContainer[] {
  const there = (url: string): boolean => names.has(url.replace('attachment://', ''));
  return components.flatMap((component): APIComponentInContainer[] => {
    if (component.type === ComponentType.File) return there(component.file.url) ? [component] : [];
    if (component.type !== ComponentType.MediaGallery) return [component];
    const items = component.items.filter(({ media }) => there(media.url));
    return items.length > 0 ? [{ ...component, items }] : [];
  });
}

function typeOf(name: string): string {
  if (name.endsWith('.png')) return 'image/png';
  if (name.endsWith('.pdf')) return MEDIA_TYPES.pdf;
  if (name.endsWith('.json')) return MEDIA_TYPES.json;
  return name.endsWith('.csv') ? 'text/csv; charset=utf-8' : 'text/plain; charset=utf-8';
}

// An edit that keeps the pictures already there: Discord drops what an edit does not list again.

/**
 * The edit with the attachments of `before` listed in place of files that are the same, byte for byte; else as it is, its files
 * sent anew. `there` is what Discord says the message holds.
 */
export function relisted(edit: Outgoing, before: Outgoing, there: readonly APIAttachment[]): Outgoing {
  const same =
    edit.files.length > 0 &&
    edit.files.length === before.files.length &&
    edit.files.length === there.length &&
    edit.files.every(({ name, data }, i) => {
      const old = before.files[i];
      return name === old?.name && bytesOf(data).equals(bytesOf(old.data)) && name === there[i]?.filename;
    });
  if (!same) return edit;
  return { ...edit, files: [], attachments: there.map(({ id }) => ({ id })) };
}

function bytesOf(data: unknown): Buffer {
  if (Buffer.isBuffer(data)) return data;
  return Buffer.from(data instanceof Uint8Array ? data : String(data));
}
