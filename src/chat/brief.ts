/** What is shown of an answer at first, and the sections that open on request. Pure; the same on every platform. */

import {
  type Action,
  type Block,
  type Caution,
  type Focus,
  type Reply,
  SECTIONS,
  type SectionId,
  type Source,
} from '../reply/reply.ts';
import { BRIEF, SECTION_TITLES, saySource } from '../text/answer-text.ts';
import { CHAT } from '../text/chat-text.ts';
import { assumedOf } from './offers.ts';

export interface Brief {
  readonly lead: string;
  readonly lines: readonly string[];
  /** The assumption that changes the answer most. */
  readonly assumption?: string;
  /** One short line each; the `safety` section has them in full. */
  readonly cautions: readonly string[];
  /** Their topics, to remember what this person has seen. */
  readonly topics: readonly string[];
  readonly next: readonly Action[];
  /** In the order they are offered. */
  readonly sections: readonly SectionId[];
}

export interface AnswerSection {
  readonly id: SectionId;
  readonly title: string;
  readonly blocks: readonly Block[];
}

const MOST_LINES = 4;
const MOST_CAUTIONS = 2;
const MOST_NEXT = 4;
const LONGEST_LINE = 110;

/** Can hurt someone as they go on: shown even next to another caution. */
const GRAVE = [
  'asbestos',
  'lead',
  'leak-water',
  'hidden-lines',
  'structure',
  'sewage',
  'gas',
  'electric',
  'mould',
  'mold',
  'silica',
  'fumes',
  'nail-gun',
];

/** Hazards nobody can see: repeated even if shown before. */
const HIDDEN = ['asbestos', 'hidden-lines', 'structure', 'gas', 'electric'];

export function briefOf(reply: Reply): Brief {
  const shown = chosen(reply.cautions, reply.seen ?? []);
  const assumption = reply.example ?? assumedOf(reply)[0];
  return {
    lead: reply.headline,
    lines: (reply.lines ?? firstFacts(reply.blocks)).slice(0, MOST_LINES),
    ...(assumption === undefined ? {} : { assumption }),
    cautions: shown.map(inShort),
    topics: shown.map(({ topic }) => topic),
    next: reply.actions.slice(0, MOST_NEXT),
    sections: sectionsOf(reply).map(({ id }) => id),
  };
}

/** Whether it answers a danger the user wrote about. */
function isWritten({ topic }: Caution): boolean {
  return topic.startsWith('hazard-');
}

/** At most two, gravest first; a lesser one only if it is alone. */
function chosen(cautions: readonly Caution[], seen: readonly string[]): readonly Caution[] {
  const written = cautions.filter(isWritten).map(({ topic }) => topic.slice('hazard-'.length));
  const fresh = cautions.filter(
    (one) =>
      isWritten(one) || (!written.includes(one.topic) && (HIDDEN.includes(one.topic) || !seen.includes(one.topic))),
  );
  const grave = fresh.filter((one) => isWritten(one) || GRAVE.includes(one.topic));
  return (grave.length > 0 ? grave : fresh.slice(0, 1)).slice(0, MOST_CAUTIONS);
}

/** A caution in one short line. */
export function inShort({ brief, text }: Caution): string {
  return brief ?? /^.{20,}?[.!?](?=\s|$)/su.exec(text)?.[0] ?? text;
}

function firstFacts(blocks: readonly Block[]): readonly string[] {
  const facts = blocks.find((block) => block.kind === 'facts');
  if (facts?.kind !== 'facts') return [];
  return facts.facts.map(({ label, value }) => `${label}: ${value}`).filter((line) => line.length <= LONGEST_LINE);
}

/** Everything in the answer, by section; empty sections are left out. */
export function sectionsOf(reply: Reply): readonly AnswerSection[] {
  const found = new Map<SectionId, Block[]>();
  const add = (id: SectionId, block: Block): void => {
    const own = found.get(id);
    if (own) own.push(block);
    else found.set(id, [block]);
  };
  let last: SectionId | undefined;
  for (const block of reply.blocks) {
    // A text belongs to the block above it.
    last = block.section ?? (block.kind === 'text' ? (last ?? 'details') : SECTION_OF[block.kind]);
    add(last, block);
  }
  const assumed = assumedOf(reply);
  // The brief shows one of them: the example, or else the first.
  if (assumed.length > (reply.example === undefined ? 1 : 0))
    add('read', { kind: 'checklist', title: SECTION_TITLES.read, items: assumed });
  if (reply.cautions.length > 0) {
    add('safety', { kind: 'steps', title: SECTION_TITLES.safety, steps: reply.cautions.map(({ text }) => text) });
  }
  const sources = sourceLines(reply.sources);
  if (sources.length > 0) add('sources', { kind: 'steps', title: SECTION_TITLES.sources, steps: sources });
  return SECTIONS.flatMap((id) => {
    const blocks = found.get(id);
    return blocks ? [{ id, title: SECTION_TITLES[id], blocks }] : [];
  });
}

/** What people work from while laying and cutting. */
const WORK: readonly SectionId[] = ['rows', 'cuts', 'list', 'checklist', 'how', 'buy'];
const ALWAYS: readonly SectionId[] = ['plan', 'why', 'safety'];
const LESS: readonly SectionId[] = ['details', 'read', 'sources'];

export interface SectionOffer {
  readonly id: SectionId | 'more';
  readonly label: string;
}

/**
 * The sections offered by name, work first. If there are more than `most`, the last offer opens everything. `shown` are
 * those already in the message.
 */
export function sectionOffers(reply: Reply, most: number, shown: readonly SectionId[] = []): readonly SectionOffer[] {
  const ids = sectionsOf(reply).map(({ id }) => id);
  const among = (wanted: readonly SectionId[]): SectionId[] =>
    wanted.filter((id) => ids.includes(id) && !shown.includes(id));
  const [work, always, less] = [among(WORK), among(ALWAYS), among(LESS)];
  const named = (id: SectionId): SectionOffer => {
    const sheet = id === work[0] && id !== 'buy' ? CHAT.sheets[reply.data.kind] : undefined;
    return { id, label: sheet ?? SECTION_TITLES[id] };
  };
  const all = [...work, ...always, ...less];
  if (all.length <= most) return all.map(named);
  const some = [...work.slice(0, Math.max(0, most - 1 - always.length)), ...always, ...less].slice(0, most - 1);
  return [...some.map(named), { id: 'more', label: BRIEF.everything }];
}

const SECTION_OF: Readonly<Record<Block['kind'], SectionId>> = {
  text: 'details',
  facts: 'details',
  table: 'list',
  steps: 'how',
  checklist: 'checklist',
  picture: 'plan',
};

function sourceLines(sources: readonly Source[]): readonly string[] {
  return [...new Set(sources.map((source) => `${saySource(source)} (${source.standing})`))];
}

/** `more` is all sections. */
export function sectionNamed(text: string): SectionId | 'more' | undefined {
  const word = text
    .trim()
    .toLowerCase()
    .replace(/[.!?]{1,3}$/, '')
    .replace(/^(?:(?:show|give|list) )?(?:me )?(?:the )?/, '')
    .replace(/ (?:please|pls)$/, '');
  return BRIEF.words[word];
}

/** A word for what is wanted first; the first that matches counts. */
const FOCUS_WORDS: readonly (readonly [Focus, RegExp])[] = [
  ['staples', /\bstaples?\b/i],
  ['strip', /\b(?:tack ?-?strips?|grippers?|gripper rods?|smooth ?edge)\b/i],
  ['bags', /\b(?:contractor|trash|garbage|bin|rubble) bags?\b/i],
  ['weight', /\b(?:weighs?|weight|heavy|how many (?:pounds|lbs?|kilos|kg))\b/i],
  ['cost', /\b(?:costs?|price|budget|how much money|how much (?:is|for|at|will|would|does|do i owe|are)|the bill)\b/i],
  ['time', /\b(?:how long|how many (?:hours|days|evenings|weekends)|what time|how much time|hours)\b/i],
  ['caulk', /\bcaulk(?:ing)?\b/i],
  ['paint', /\bpaint\b/i],
  ['nails', /\bnails?\b/i],
];

/** A count beside a price is wanted as much as the price. */
const COUNTED = /\bhow (?:many|much (?:floor|plank|vinyl|laminate|trim|base|carpet|caulk|paint))/i;

/** An answer that begins with the one thing a question is about, if it has it. */
export function focused(reply: Reply, text: string): Reply {
  const { leads, ...rest } = reply;
  if (!leads) return reply;
  const wanted = FOCUS_WORDS.filter(([, words]) => words.test(text)).map(([focus]) => focus);
  // Two things wanted are both in the usual lead.
  const [only, ...others] = wanted.filter((focus) => leads[focus] !== undefined);
  const lead = only === undefined || others.length > 0 ? undefined : leads[only];
  if (lead === undefined || (only === 'cost' && COUNTED.test(text))) return rest;
  const lines = (reply.lines ?? firstFacts(reply.blocks)).filter((line) => line !== lead);
  return { ...rest, headline: lead, lines: [reply.headline, ...lines] };
}

// A box is a box to somebody who says box: catalogs, and so our texts, call it a carton.

const BOX = /\bbox(?:es)?\b/i;
const CARTON = /\b(c)arton(s?)\b/gi;

/** Strings that nobody reads: what a press sends, names that code looks up, saved data. */
const UNREAD = [
  'ask',
  'fix',
  'got',
  'option',
  'topic',
  'kind',
  'section',
  'opens',
  'data',
  'files',
  'needs',
  'form',
  'drawing',
];

export function saysBox(text: string): boolean {
  return BOX.test(text);
}

/** An answer with every “carton” in it called a box. */
export function withBoxes<T>(answer: T): T {
  return boxed(answer) as T;
}

function boxed(value: unknown): unknown {
  if (typeof value === 'string')
    return value.replace(
      CARTON,
      (_, first: string, plural: string) => `${first === 'C' ? 'B' : 'b'}ox${plural && 'es'}`,
    );
  if (Array.isArray(value)) return value.map(boxed);
  if (typeof value !== 'object' || value === null) return value;
  return Object.fromEntries(
    Object.entries(value).map(([key, inner]) => [key, UNREAD.includes(key) ? inner : boxed(inner)]),
  );
}
