/** Cards to work from, changed in place: the shopping list in the store, the floor a row at a time, and a poll with its costs. */

import { type APIComponentInContainer, ButtonStyle, ComponentType, type RESTAPIPoll } from 'discord.js';
import { z } from 'zod';
import type { ReplyWithForm } from '../../chat/command.ts';
import { comparedPlanks, offersOf } from '../../chat/offers.ts';
import type { Block, Reply } from '../../reply/reply.ts';
import { CHAT } from '../../text/chat-text.ts';
import { COMPARE, GUIDE } from '../../text/floor-text.ts';
import { SHOPPING } from '../../text/shopping-text.ts';
import { customId, type Verb } from './interaction.ts';
import { BUTTON_LABEL, POLL_ANSWER, POLL_ANSWERS, POLL_HOURS, POLL_QUESTION } from './limits.ts';
import { type ButtonRow, type DiscordMessage, escapedMarkdown, label } from './page.ts';

/** What an answer can be turned into, and stays while it is worked from. */
export type CardName = 'store' | 'row';

/** A part of an answer to work from. */
export interface Card {
  readonly page: DiscordMessage;
  readonly rows: readonly ButtonRow[];
}

const text = (content: string): APIComponentInContainer => ({ type: ComponentType.TextDisplay, content });

interface Pressed {
  readonly verb: Verb;
  readonly rest: string;
  readonly said: string;
}

function rowOf(id: string, pressed: readonly Pressed[]): ButtonRow {
  return {
    type: ComponentType.ActionRow,
    components: pressed.map(({ verb, rest, said }, at) => ({
      type: ComponentType.Button,
      style: at === 0 ? ButtonStyle.Primary : ButtonStyle.Secondary,
      label: label(said, BUTTON_LABEL),
      custom_id: customId(verb, id, rest),
    })),
  };
}

/** A card of an answer; undefined where it has none such, or nothing is left of it. */
export function workCard(name: CardName, reply: Reply, id: string, part = 0, broke = 0): Card | undefined {
  return name === 'store' ? storeCard(reply, id, part) : rowCard(reply, id, part, broke);
}

// The list in the store: each thing with a button of its own.

/** As many as a phone shows at once, buttons beneath them too. */
const STORE_ITEMS = 6;

/** What is left to buy, `part` from 0; undefined where nothing is. */
function storeCard(reply: Reply, id: string, part = 0): Card | undefined {
  if (reply.data.kind !== 'shopping') return undefined;
  const ticks = reply.actions.flatMap(({ among, label: said }, place) =>
    among === SHOPPING.among ? [{ place, said: said.replace(SHOPPING.buyAll(''), '') }] : [],
  );
  const items = reply.blocks.flatMap((block) => (block.kind === 'checklist' ? block.items : []));
  const parts = Math.ceil(ticks.length / STORE_ITEMS);
  if (part < 0 || part >= parts) return undefined;
  const sections = ticks
    .slice(part * STORE_ITEMS, (part + 1) * STORE_ITEMS)
    .map(({ place, said }): APIComponentInContainer => {
      const item = items.find((one) => one.startsWith(`${said}:`)) ?? said;
      return {
        type: ComponentType.Section,
        components: [{ type: ComponentType.TextDisplay, content: escapedMarkdown(label(item, STORE_TEXT)) }],
        accessory: {
          type: ComponentType.Button,
          style: ButtonStyle.Success,
          label: CHAT.bought,
          custom_id: customId('buy', id, String(place)),
        },
      };
    });
  const ways: readonly Pressed[] = [
    ...(part + 1 < parts ? [{ verb: 'open', rest: `store.${part + 1}`, said: CHAT.nextThings } as const] : []),
    ...(part > 0 ? [{ verb: 'open', rest: `store.${part - 1}`, said: CHAT.back } as const] : []),
    ...undoOf(reply),
    { verb: 'open', rest: 'brief', said: CHAT.inShort },
  ];
  const components = [text(`### ${escapedMarkdown(reply.headline)}`), ...sections];
  return { page: { components, files: [] }, rows: [rowOf(id, ways)] };
}

/** Characters of a thing to buy beside its button. */
const STORE_TEXT = 160;

function undoOf(reply: Reply): readonly Pressed[] {
  const undo = offersOf(reply).asks.find(({ action }) => action.ask === 'project undo');
  return undo ? [{ verb: 'ask', rest: String(undo.place), said: undo.action.label }] : [];
}

// The floor a row at a time.

const laid = z.object({
  kind: z.literal('floor'),
  regions: z.array(z.object({ name: z.string(), rows: z.array(z.unknown()) })),
});
const resumed = z.object({
  kind: z.literal('resume'),
  laid: z.array(z.object({ region: z.string(), rows: z.number() })),
  broke: z.number(),
  rows: z.array(z.object({ region: z.string() })),
});

/** A row to lay, as the guide has it. */
interface GuideRow {
  readonly region: string;
  readonly cells: readonly string[];
  readonly columns: readonly string[];
  /** From 1. */
  readonly row: number;
}

/** Every row that is still to be laid, in the order of the work. */
function guideRows({ data, blocks }: Pick<Reply, 'data' | 'blocks'>): readonly GuideRow[] {
  const floor = laid.safeParse(data);
  const rest = resumed.safeParse(data);
  const names = floor.success
    ? floor.data.regions.filter(({ rows }) => rows.length > 0).map(({ name }) => name)
    : rest.success
      ? [...new Set(rest.data.rows.map(({ region }) => region))]
      : [];
  const tables = blocks.filter(isGuide);
  if (names.length === 0 || tables.length !== names.length) return [];
  return tables.flatMap(({ columns, rows }, at) =>
    rows.flatMap((cells): GuideRow[] => {
      const row = Number.parseInt(cells[0] ?? '', 10);
      return Number.isNaN(row) ? [] : [{ region: names[at] ?? '', cells, columns, row }];
    }),
  );
}

function isGuide(block: Block): block is Extract<Block, { readonly kind: 'table' }> {
  return block.kind === 'table' && block.section === 'rows';
}

/** Whether an answer can be laid from a row at a time. */
export function hasRows({ data, blocks }: Pick<Reply, 'data' | 'blocks'>): boolean {
  return (data.kind === 'floor' || data.kind === 'resume') && blocks.some(isGuide);
}

/** One row in large figures; `at` from 0, and how many planks broke since this plan was made. */
function rowCard(reply: Reply, id: string, at = 0, broke = 0): Card | undefined {
  const rows = guideRows(reply);
  const one = rows[at];
  if (!one) return undefined;
  const [name = '', start = '', whole = '', end = '', cuts = ''] = one.cells;
  const several = new Set(rows.map(({ region }) => region)).size > 1;
  const pieces = [
    ...(start === '' || start === GUIDE.whole ? [] : [start]),
    ...(whole === '' || whole === '0' ? [] : [CHAT.wholePlanks(whole)]),
    ...(end === '' || end === GUIDE.whole ? [] : [end]),
  ];
  const lines = [
    `### ${escapedMarkdown(CHAT.rowOf(name, several ? one.region : undefined))}`,
    `## ${escapedMarkdown(pieces.join(' · ') || start)}`,
    ...(cuts === '' ? [] : [`${escapedMarkdown(one.columns[4] ?? '')}: ${escapedMarkdown(cuts)}`]),
    ...(broke > 0 ? [escapedMarkdown(CHAT.fromSpare(broke))] : []),
    `-# ${escapedMarkdown(at === 0 ? reply.headline : CHAT.rowsToGo(rows.length - at))}`,
  ];
  const state = (to: number): string => `row.${to}${broke > 0 ? `.${broke}` : ''}`;
  const last = at + 1 >= rows.length;
  const ways: readonly Pressed[] = [
    { verb: 'open', rest: last ? 'brief' : state(at + 1), said: last ? CHAT.lastRowDone : CHAT.rowDone },
    { verb: 'broke', rest: `${at}.${broke + 1}`, said: CHAT.brokeOne },
    ...(at > 0 ? [{ verb: 'open', rest: state(at - 1), said: CHAT.back } as const] : []),
    ...(last ? [] : [{ verb: 'open', rest: 'brief', said: CHAT.inShort } as const]),
  ];
  return { page: { components: [text(lines.join('\n'))], files: [] }, rows: [rowOf(id, ways)] };
}

/**
 * The request that plans the rest anew, where `broke` planks broke in the row `at`; undefined where no row is laid yet, so that the
 * plan stays as it is.
 */
export function restAsked(
  { form, ...reply }: ReplyWithForm,
  at: number,
  broke: number,
): Readonly<Record<string, string>> | undefined {
  const rows = guideRows(reply);
  const one = rows[at];
  const before = resumed.safeParse(reply.data);
  const [begun, broken] = before.success ? [before.data.laid, before.data.broke] : [[], 0];
  if (!one || !form) return undefined;
  const regions = [...new Set(rows.slice(0, at).map(({ region }) => region))].filter((name) => name !== one.region);
  const open = rows.map(({ region }) => region);
  const done = [...begun.filter(({ region }) => !open.includes(region)).map(({ region }) => region), ...regions];
  const within = rows.slice(0, at).findLast(({ region }) => region === one.region)?.row;
  const laidHere = within ?? begun.find(({ region }) => region === one.region)?.rows ?? 0;
  const here = laidHere === 0 ? [] : [`${several(open, done) ? `${one.region} ` : ''}row ${laidHere} is laid`];
  const said = [...done.map((name) => `${name} is done`), ...here];
  return said.length === 0 ? undefined : { ...form.told, 'so-far': `${said.join(', ')}, ${broken + broke} broken` };
}

function several(open: readonly string[], done: readonly string[]): boolean {
  return new Set([...open, ...done]).size > 1;
}

// Discord's own poll among the planks of a comparison, each with what it costs.

/** Undefined where there are no two planks to ask about. */
export function pollOf(reply: Reply): RESTAPIPoll | undefined {
  const table = reply.blocks.find((block) => block.kind === 'table' && block.title === COMPARE.title);
  const costs = table?.kind === 'table' ? table.rows.find(([measure]) => measure === COMPARE.measures.cost) : undefined;
  const names = comparedPlanks(reply) ?? [];
  const answers = names.map((name, at) => {
    const cost = costs?.[at + 1];
    const said = cost === undefined || cost === COMPARE.notGiven ? '' : ` · ${cost}`;
    return `${label(name, POLL_ANSWER - said.length)}${said}`;
  });
  const different = [...new Set(answers)];
  if (different.length < 2) return undefined;
  return {
    question: { text: label(CHAT.pollQuestion, POLL_QUESTION) },
    answers: different.slice(0, POLL_ANSWERS).map((said) => ({ poll_media: { text: said } })),
    duration: POLL_HOURS,
    allow_multiselect: false,
  };
}
