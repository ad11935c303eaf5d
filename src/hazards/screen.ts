/** The hazard screen: which hazards a text mentions, in time linear in its length. */

import { byGravity, type Cleared, type Hazard, type Screened, type Sighting } from './hazard.ts';
import { type Mended, spellingMended } from './hazard-spelling.ts';
import { TABLES } from './lexicon/all-hazards.ts';
import type { ClearRule, CompiledRule, Rule } from './tables.ts';
import { figureClasses, type Token, tokensOf } from './tokens.ts';

/** How much of a text is examined: its beginning, and for a longer one its end too. */
const MOST = 12_000;
const TAIL = 8000;

const WITHIN = 6;
/** Distance in words within which a class rules something out. */
const RULED_OUT = 6;
const LONGEST_WORDS = 90;

/** Words of a class, from first to last token. */
interface Hit {
  readonly id: number;
  readonly from: number;
  readonly to: number;
}

interface Text {
  readonly raw: string;
  readonly tokens: readonly Mended[];
  readonly hits: readonly Hit[];
  /** Positions by class, in order. */
  readonly places: ReadonlyMap<number, readonly number[]>;
}

/** Results for the last few texts, since several steps screen the same line. */
const KNOWN = new Map<string, Screened>();
const MOST_KNOWN = 50;

/** The hazards a text mentions, most serious first, and facts in it that clear some. Never throws. */
export function screen(text: string): Screened {
  const known = KNOWN.get(text);
  if (known) return known;
  const found = screened(text, false);
  for (const oldest of KNOWN.keys()) {
    if (KNOWN.size < MOST_KNOWN) break;
    KNOWN.delete(oldest);
  }
  KNOWN.set(text, found);
  return found;
}

/**
 * Like screen, for text about a place that is being opened, cut or inspected, where merely mentioning a pipe counts.
 */
export function screenHere(text: string): Screened {
  return screened(text, true);
}

function screened(raw: string, here: boolean): Screened {
  const whole = raw.length <= MOST + TAIL ? raw : `${raw.slice(0, MOST)}\n${raw.slice(-TAIL)}`;
  const text = looked(whole);
  const cleared = clearedIn(text);
  const found = new Map<Hazard, Seen>();
  const seen = [
    ...sightings(text, TABLES.rules),
    ...(here ? [...sightings(text, TABLES.hereRules), ...present(text)] : []),
  ];
  for (const one of seen) {
    const { hazard, sighting, from } = one;
    // Words after the clearing fact are news; words before it are what it ends.
    if (cleared.some((fact) => fact.hazard === hazard && (fact.at >= from || sighting.level !== 'emergency'))) continue;
    const before = found.get(hazard);
    const graver = before ? byGravity(sighting, before.sighting) : -1;
    if (!before || graver < 0 || (graver === 0 && one.met > before.met)) found.set(hazard, one);
  }
  const gravest = [...found.values()].map(({ sighting }) => sighting);
  return { sightings: withoutLesser(gravest.sort(byGravity)), cleared: cleared.map(({ at: _at, ...one }) => one) };
}

/** Whether a text contains any word of a class, even disguised or misspelled. Throws for an unknown class. */
export function tells(raw: string, name: string): boolean {
  return looked(raw.slice(0, MOST)).places.has(classNamed(name));
}

/**
 * The first words in a text of any of the classes, as typed, whatever expression they are part of; undefined if there
 * are none.
 */
export function mentioned(raw: string, names: readonly string[]): string | undefined {
  const tokens = spellingMended(tokensOf(raw.slice(0, MOST)));
  const wanted = new Set(names.map(classNamed));
  const all = hitsIn(tokens).flatMap(({ ids, from, to }) => ids.map((id) => ({ id, from, to })));
  const hit = joined(all, tokens).find(({ id }) => wanted.has(id));
  const [first, last] = hit ? [tokens[hit.from], tokens[hit.to]] : [];
  return first && last ? raw.slice(first.from, last.to) : undefined;
}

function classNamed(name: string): number {
  const id = TABLES.classes.get(name);
  if (id === undefined) throw new Error(`no words of the class ${name}`);
  return id;
}

/** Drops hazards implied by a more serious one: water that is sewage, someone sick from fumes, a burst pipe. */
function withoutLesser(all: readonly Sighting[]): readonly Sighting[] {
  const grave = (...hazards: readonly Hazard[]): boolean =>
    all.some(({ hazard, level }) => hazards.includes(hazard) && level === 'emergency');
  return all.filter(
    ({ hazard, about }) =>
      !(hazard === 'plumbing' && grave('water')) &&
      !(hazard === 'water' && grave('sewage')) &&
      !(hazard === 'wound' && about === 'ill' && grave('fumes', 'cleaners', 'carbon-monoxide')) &&
      // Eyes that burn beside mixed cleaners: out into fresh air first.
      !(hazard === 'wound' && about === 'caustic' && grave('cleaners')),
  );
}

function looked(raw: string): Text {
  const tokens = spellingMended(tokensOf(raw));
  const hits = joined(shown(hitsIn(tokens), tokens.length), tokens);
  const places = new Map<number, number[]>();
  for (const { id, from } of hits) {
    const list = places.get(id);
    const at = tokens[from]?.at ?? 0;
    if (list) list.push(at);
    else places.set(id, [at]);
  }
  return { raw, tokens, hits, places };
}

interface Found extends Omit<Hit, 'id'> {
  readonly ids: readonly number[];
  readonly hides: boolean;
}

/** Every sequence of words a lexicon knows, in order of its start. */
function hitsIn(tokens: readonly Mended[]): readonly Found[] {
  const found: Found[] = [];
  tokens.forEach((token, i) => {
    for (let n = 0, node = TABLES.terms.next.get(token.word); node; n++) {
      const { classes, hides } = node;
      if ((classes.length > 0 || hides) && inOneLabel(tokens, i, n + 1)) {
        found.push({ ids: classes, hides, from: i, to: i + n });
      }
      const next = tokens[i + n + 1];
      node = next && node.next.get(next.word);
    }
    for (let length = Math.min(token.word.length, 16); length >= 4; length--) {
      const ids = TABLES.beginnings.get(token.word.slice(0, length));
      if (ids) found.push({ ids, hides: false, from: i, to: i });
    }
    const years = figureClasses(tokens, i);
    if (years.length > 0) found.push({ ids: years, hides: false, from: i, to: i });
  });
  return found;
}

function inOneLabel(tokens: readonly Token[], from: number, length: number): boolean {
  return (tokens[from + length - 1]?.at ?? 0) - (tokens[from]?.at ?? 0) < 2 * length + 6;
}

/** The hits that aren't inside a longer expression with another meaning. */
function shown(found: readonly Found[], length: number): readonly Hit[] {
  const ends = new Int32Array(length).fill(-1);
  for (const { hides, from, to } of found) if (hides) ends[from] = Math.max(ends[from] ?? -1, to);
  const before = new Int32Array(length).fill(-1);
  let reach = -1;
  for (let i = 0; i < length; i++) {
    before[i] = reach;
    reach = Math.max(reach, ends[i] ?? -1);
  }
  const hits: Hit[] = [];
  for (const { ids, from, to } of found) {
    if ((before[from] ?? -1) >= to || (ends[from] ?? -1) > to) continue;
    for (const id of ids) hits.push({ id, from, to });
  }
  return hits;
}

/** The hits, each followed by what it forms with an earlier one. */
function joined(hits: readonly Hit[], tokens: readonly Token[]): readonly Hit[] {
  const last = new Map<number, Hit>();
  const all: Hit[] = [];
  for (const hit of hits) {
    all.push(hit);
    for (const { id, first, within } of TABLES.joins.get(hit.id) ?? []) {
      const before = last.get(first);
      const near =
        before && hit.from > before.to && (tokens[hit.from]?.at ?? 0) - (tokens[before.from]?.at ?? 0) <= within;
      if (near) all.push({ id, from: before.from, to: hit.to });
    }
    last.set(hit.id, hit);
  }
  return all;
}

interface Match {
  readonly hits: readonly Hit[];
  readonly from: number;
  readonly to: number;
}

/** Goes through the hits once and reports every place where a rule's classes meet. */
function meetings<R extends Rule | ClearRule>(
  text: Text,
  rules: ReadonlyMap<number, readonly CompiledRule<R>[]>,
  onMatch: (rule: CompiledRule<R>, match: Match) => boolean,
): void {
  const last = new Map<CompiledRule<R>, (readonly Hit[] | undefined)[]>();
  const done = new Set<CompiledRule<R>>();
  for (const hit of text.hits) {
    for (const one of rules.get(hit.id) ?? []) {
      if (done.has(one)) continue;
      const before = last.get(one) ?? [];
      last.set(one, before);
      const met = one.rule.ordered ? inOrder(one, before, hit) : inAnyOrder(one, before, hit);
      if (!met || distance(text, met) > (one.rule.within ?? WITHIN)) continue;
      const match = {
        hits: met,
        from: Math.min(...met.map(({ from }) => from)),
        to: Math.max(...met.map(({ to }) => to)),
      };
      if (onMatch(one, match)) done.add(one);
    }
  }
}

/** The latest hit of each class, if all are present and no word counts twice. */
function inAnyOrder<R>(
  { needs }: CompiledRule<R>,
  last: (readonly Hit[] | undefined)[],
  hit: Hit,
): readonly Hit[] | undefined {
  if (needs.length === 1) return [hit];
  for (let k = 0; k < needs.length; k++) if (needs[k] === hit.id) last[k] = [hit];
  const met: Hit[] = [];
  for (let k = 0; k < needs.length; k++) {
    const one = last[k]?.[0];
    if (!one) return undefined;
    for (const other of met) if (one.from <= other.to && other.from <= one.to) return undefined;
    met.push(one);
  }
  return met;
}

/** The chain of hits ending with this one, each after the one before. */
function inOrder<R>(
  { needs }: CompiledRule<R>,
  chains: (readonly Hit[] | undefined)[],
  hit: Hit,
): readonly Hit[] | undefined {
  for (let k = needs.length - 1; k >= 0; k--) {
    if (needs[k] !== hit.id) continue;
    const before = k === 0 ? [] : chains[k - 1];
    const end = before?.at(-1);
    if (before && (!end || end.to < hit.from)) chains[k] = [...before, hit];
  }
  const whole = chains[needs.length - 1];
  return whole?.at(-1) === hit ? whole : undefined;
}

function distance({ tokens }: Text, met: readonly Hit[]): number {
  let [least, most] = [Number.POSITIVE_INFINITY, 0];
  for (const { from } of met) {
    const at = tokens[from]?.at ?? 0;
    least = Math.min(least, at);
    most = Math.max(most, at);
  }
  return most - least;
}

interface Seen {
  /** Number of classes that met; of two similar readings, the one with more wins. */
  readonly met: number;
  readonly hazard: Hazard;
  readonly from: number;
  readonly sighting: Sighting;
}

function sightings(text: Text, rules: typeof TABLES.rules): readonly Seen[] {
  const seen: Seen[] = [];
  meetings(text, rules, (one, match) => {
    const { rule, hazard, language, unless, unlessBefore } = one;
    if (unless.some((id) => isNear(text, id, match))) return false;
    if (unlessBefore.some((id) => isNear(text, id, { ...match, to: match.from }, 0))) return false;
    if (!rule.undeniable && match.hits.some((hit) => isDenied(text, hit))) return false;
    const feared = rule.level === 'emergency' && isFeared(text, match);
    const or = feared ? undefined : doubt(text, match);
    seen.push({
      met: match.hits.length,
      hazard,
      from: match.from,
      sighting: {
        hazard,
        level: feared ? 'note' : rule.level,
        words: quotation(text, match),
        language,
        ...(rule.about === undefined ? {} : { about: rule.about }),
        ...(feared && { feared: true as const }),
        ...(or && { or }),
      },
    });
    return true;
  });
  return seen;
}

/** Mentions that count where something was found. */
function present(text: Text): readonly Seen[] {
  return text.hits.flatMap((hit): Seen[] => {
    const hazard = TABLES.here.get(hit.id);
    if (!hazard || isDenied(text, hit)) return [];
    const match = { hits: [hit], from: hit.from, to: hit.to };
    return [
      {
        met: 1,
        hazard,
        from: hit.from,
        sighting: { hazard, level: 'stop', words: quotation(text, match), language: 'en' },
      },
    ];
  });
}

/** Whether a class is within six words of a match, or within fewer after it. */
function isNear(text: Text, id: number, { from, to }: Match, after = RULED_OUT): boolean {
  const places = text.places.get(id) ?? [];
  const [low, high] = [(text.tokens[from]?.at ?? 0) - RULED_OUT, (text.tokens[to]?.at ?? 0) + after];
  let [a, b] = [0, places.length];
  while (a < b) {
    const middle = (a + b) >> 1;
    if ((places[middle] ?? 0) < low) a = middle + 1;
    else b = middle;
  }
  return (places[a] ?? Number.POSITIVE_INFINITY) <= high;
}

const [NO, FILLER, FEARED, NOTYET, ASKS_FIRST] = ['NO', 'FILLER', 'FEARED', 'NOTYET', 'ASKS_FIRST'].map(
  (name) => TABLES.classes.get(name) ?? -1,
);

/** Whether a hit is negated: `no gas`, `not leaking`, `mold free`. */
function isDenied(text: Text, { from, to }: Hit): boolean {
  const { tokens } = text;
  const behind = tokens[to + 1];
  if (behind && (behind.word === 'free' || behind.word === 'negative') && behind.at - (tokens[to]?.at ?? 0) === 1)
    return true;
  return isBehind(text, from, NO ?? -1);
}

const LISTS = new Set(['or', 'nor']);

/** Whether a class ends right before a token, with only small words between. */
function isBehind(text: Text, from: number, wanted: number): boolean {
  const { tokens } = text;
  for (let i = from - 1; i >= 0 && i >= from - 4; i--) {
    const [token, next] = [tokens[i], tokens[i + 1]];
    if (!token || !next || next.at - token.at !== 1) return false;
    const classes = classesEndingAt(text, i);
    if (classes.has(wanted)) return true;
    // `no wires or pipes`
    const listed = LISTS.has(next.word) && i < from - 1;
    if (!LISTS.has(token.word) && !listed && !classes.has(FILLER ?? -1)) return false;
  }
  return false;
}

const endings = new WeakMap<Text, Map<number, Set<number>>>();

function classesEndingAt(text: Text, i: number): ReadonlySet<number> {
  let known = endings.get(text);
  if (!known) {
    known = new Map();
    for (const { id, to } of text.hits) {
      const set = known.get(to);
      if (set) set.add(id);
      else known.set(to, new Set([id]));
    }
    endings.set(text, known);
  }
  return known.get(i) ?? new Set();
}

/** Whether it is only feared, and the question is how to avoid it. */
function isFeared(text: Text, { from, to }: Match): boolean {
  const { tokens } = text;
  for (let i = Math.max(0, from - 4); i <= to; i++) {
    const token = tokens[i];
    if (!token || (tokens[from]?.at ?? 0) - token.at > 5) continue;
    if (classesEndingAt(text, i).has(FEARED ?? -1)) return true;
  }
  return false;
}

/** A corrected word of the match that could just as well be another word. */
function doubt(text: Text, { hits }: Match): Sighting['or'] {
  for (const { from, to } of hits) {
    for (let i = from; i <= to; i++) {
      const token = text.tokens[i];
      if (token?.or !== undefined) {
        return { typed: text.raw.slice(token.from, token.to), hazard: token.word, other: token.or };
      }
    }
  }
  return undefined;
}

/** Facts that end a hazard, with their positions. */
function clearedIn(text: Text): readonly (Cleared & { readonly at: number })[] {
  const all = new Map<Hazard, Cleared & { readonly at: number }>();
  const bare: (Cleared & { readonly at: number })[] = [];
  meetings(text, TABLES.clears, ({ rule, hazard }, match) => {
    if (isNotYet(text, match)) return false;
    const bareOf = rule.bare ? { bare: true as const } : {};
    const one = { hazard, words: quotation(text, match), tested: rule.tested === true, at: match.from, ...bareOf };
    if (rule.bare) bare.push(one);
    else all.set(hazard, one);
    return true;
  });
  // A test without a substance is about the one mentioned elsewhere, or else asbestos.
  const named = bare.filter(({ hazard }) => hazard === 'asbestos' || all.has(hazard));
  const ofLead =
    text.places.has(TABLES.classes.get('LEAD') ?? -1) && !text.places.has(TABLES.classes.get('ASBESTOS') ?? -1);
  for (const one of ofLead ? [] : named) if (!all.has(one.hazard)) all.set(one.hazard, one);
  return [...all.values()];
}

function isNotYet(text: Text, { from, to }: Match): boolean {
  const { tokens } = text;
  const begins = tokens[from];
  if (!begins) return true;
  for (let i = Math.max(0, from - 4); i <= to; i++) {
    const token = tokens[i];
    if (!token || (i < from && begins.at - token.at > 5)) continue;
    if (classesEndingAt(text, i).has(NOTYET ?? -1)) return true;
  }
  // `has the plumber fixed it`
  let first = from;
  while (first > 0 && first > from - 3 && tokens[first - 1]?.part === begins.part) first -= 1;
  const opens = first === 0 || tokens[first - 1]?.part !== begins.part;
  return opens && classesEndingAt(text, first).has(ASKS_FIRST ?? -1);
}

/** The trigger with the words around it. */
function quotation({ raw, tokens }: Text, { from, to }: Match): string {
  const [first, last] = [tokens[from], tokens[to]];
  if (!first || !last) return '';
  let [a, b] = [from, to];
  for (;;) {
    const [before, after] = [tokens[a - 1], tokens[b + 1]];
    const [start, end] = [tokens[a]?.from ?? 0, tokens[b]?.to ?? 0];
    // Up to the next comma, but no further than the sentence.
    if (before && (tokens[a]?.at ?? 0) - before.at <= 1 && end - before.from <= LONGEST_WORDS) a -= 1;
    else if (after && after.at - (tokens[b]?.at ?? 0) <= 1 && after.to - start <= LONGEST_WORDS) b += 1;
    else break;
  }
  const [start, end] = [tokens[a]?.from ?? 0, tokens[b]?.to ?? 0];
  const words = raw.slice(start, end).replace(/\s+/g, ' ');
  return words.length <= 2 * LONGEST_WORDS ? words : `${words.slice(0, LONGEST_WORDS)}…`;
}
