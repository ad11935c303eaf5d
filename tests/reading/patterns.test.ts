/** No pattern of the sources takes long, whatever is typed. */

// A checker says of most patterns that none can; of the others it is measured on texts that the pattern itself suggests. What
// the checker found of a pattern is recorded, for it takes minutes:
// `PATTERNS=record npx vitest run tests/reading/patterns.test.ts` writes it again, and PATTERNS=all measures all of them.

import { createHash } from 'node:crypto';
import { readFileSync, writeFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { join } from 'node:path';
import type { checkSync as CheckSync } from 'recheck';
import { beforeAll, describe, expect, it } from 'vitest';
import { LONGEST_ASK } from '../../src/chat/command-line.ts';
import { cpuWithin } from './cpu.ts';
import { distinct, MADE_FROM_NAMES, type Pattern, patternsMade, patternsWritten } from './patterns-found.ts';
import { PLANTED } from './planted.ts';
import { repeated, worstCases } from './worst-case.ts';

const require = createRequire(import.meta.url);
/** The checker in JavaScript alone: no Java, no program of another machine. */
const { checkSync } = require('recheck/lib/browser.js') as { readonly checkSync: typeof CheckSync };
const { version } = require('recheck/package.json') as { readonly version: string };

/** Milliseconds of processor time that a pattern may take for the longest text. */
const MOST = 50;
/** A text as long as this shows whether a pattern's time grows faster than the text: then it is measured at full length. */
const SHORT = 400;
const GROWS = 0.2;
/** Milliseconds that the checker has for a pattern; with more it tells of few others. */
const CHECKED = 1000;

const RECORD = join(import.meta.dirname, 'patterns.json');

/** Where not all are asked for, a pattern is measured that is new or has changed since its record was written; CI measures all. */
const MEASURE_ALL = process.env.PATTERNS !== undefined;

/** What the checker says, by the hash of a pattern; those it finds vulnerable by file and pattern: that list may only shrink. */
interface Recorded {
  readonly recheck: string;
  readonly vulnerable: readonly { readonly file: string; readonly pattern: string }[];
  readonly undecided: Readonly<Record<string, readonly string[]>>;
  readonly safe: readonly string[];
}

type Verdict = 'safe' | 'vulnerable' | 'unknown';

const textOf = ({ source, flags }: Pattern): string => `/${source}/${flags}`;
const hashOf = (pattern: Pattern): string => createHash('sha256').update(textOf(pattern)).digest('hex').slice(0, 12);

interface Checked {
  readonly pattern: Pattern;
  readonly verdict: Verdict;
  /** The checker's own worst text, as long as a text may be. */
  readonly attack?: string;
}

function checked(pattern: Pattern): Checked {
  const found = checkSync(pattern.source, pattern.flags, { timeout: CHECKED });
  if (found.status !== 'vulnerable') return { pattern, verdict: found.status };
  const { pumps, suffix } = found.attack;
  const lead = pumps.map(({ prefix, pump }) => prefix + pump).join('');
  const text =
    pumps.length === 1 && pumps[0] ? repeated(pumps[0].prefix, pumps[0].pump, suffix) : repeated('', lead, suffix);
  return { pattern, verdict: 'vulnerable', attack: text(LONGEST_ASK) };
}

/** A pattern compiled for either width of letters, which may take longer than any text. */
function compiled({ source, flags }: Pattern): RegExp {
  const pattern = new RegExp(source, flags);
  for (const text of ['1 a', '1 \u2588']) for (let time = 0; time < 3; time++) text.match(pattern);
  return pattern;
}

/** Milliseconds that a pattern takes for a text: for all of its places in it, where it is looked for everywhere. */
function timeOf(pattern: RegExp, text: string, enough: number): number {
  return cpuWithin(() => (pattern.global ? text.match(pattern) : pattern.exec(text)), enough);
}

/** The most that a pattern takes for the worst texts that can be made from it. */
function worstOf(pattern: Pattern): { readonly ms: number; readonly text: string } {
  const ready = compiled(pattern);
  let worst = { ms: 0, text: '' };
  for (const text of worstCases(pattern.source, pattern.flags)) {
    const short = text(SHORT);
    if (cpuWithin(() => short.match(ready), GROWS, { runs: 2 }) < GROWS) continue;
    const ms = timeOf(ready, text(LONGEST_ASK), MOST);
    if (ms > worst.ms) worst = { ms, text: text(LONGEST_ASK).slice(0, 80) };
    if (ms >= MOST) break;
  }
  return worst;
}

/** Everything that the readers make while they read every example. */
async function readEverything(): Promise<void> {
  const { commands } = await import('../../commands/all.ts');
  const { readAll } = await import('../bench/hostile/reading-time.ts');
  for (const { examples } of commands) for (const { ask } of examples) readAll(ask, commands);
}

let found: readonly Checked[] = [];
let unseen: readonly string[] = [];
let measured: ReadonlySet<string> = new Set();
const recorded = JSON.parse(readFileSync(RECORD, 'utf8')) as Recorded;

beforeAll(async () => {
  const { written, made } = await patternsWritten();
  const { caught, places } = await patternsMade(made.keys(), readEverything);
  const listed = (file: string): number => MADE_FROM_NAMES.filter((one) => one.file === file).length;
  unseen = [...made].filter(([file, count]) => (places.get(file) ?? 0) + listed(file) < count).map(([file]) => file);
  const patterns = distinct([...written, ...caught, ...MADE_FROM_NAMES]);
  const known = new Map<string, Verdict>();
  if (recorded.recheck === version && process.env.PATTERNS !== 'record') {
    for (const hash of recorded.safe) known.set(hash, 'safe');
    measured = new Set(Object.values(recorded.undecided).flat());
    for (const hash of measured) known.set(hash, 'unknown');
  }
  found = patterns.map((pattern) => {
    const verdict = known.get(hashOf(pattern));
    return verdict === undefined ? checked(pattern) : { pattern, verdict };
  });
  if (process.env.PATTERNS === 'record') record(found);
}, 1_800_000);

function record(all: readonly Checked[]): void {
  const undecided: Record<string, string[]> = {};
  for (const { pattern, verdict } of all) {
    const [file = ''] = pattern.files;
    if (verdict === 'unknown') undecided[file] = [...(undecided[file] ?? []), hashOf(pattern)].sort();
  }
  const next: Recorded = {
    recheck: version,
    vulnerable: all
      .filter(({ verdict }) => verdict === 'vulnerable')
      .flatMap(({ pattern }) => pattern.files.map((file) => ({ file, pattern: textOf(pattern) }))),
    undecided: Object.fromEntries(Object.entries(undecided).sort(([a], [b]) => (a < b ? -1 : 1))),
    safe: all
      .filter(({ verdict }) => verdict === 'safe')
      .map(({ pattern }) => hashOf(pattern))
      .sort(),
  };
  writeFileSync(RECORD, `${JSON.stringify(next, null, 2)}\n`);
}

describe('the patterns of the sources', () => {
  it('are all found: no file puts one together that nobody looked at', () => {
    expect(unseen).toEqual([]);
    expect(found.length).toBeGreaterThan(1000);
  });

  it('none is vulnerable but those that are listed, and each of those is still there and still is', () => {
    const vulnerable = found
      .filter(({ verdict }) => verdict === 'vulnerable')
      .flatMap(({ pattern }) => pattern.files.map((file) => ({ file, pattern: textOf(pattern) })));
    expect(vulnerable).toEqual(recorded.vulnerable);
  });

  it('those that are listed as vulnerable take no more than a moment for the checker’s own worst text', () => {
    const slow = found.flatMap(({ pattern, attack }) => {
      const ms = attack === undefined ? 0 : timeOf(compiled(pattern), attack, MOST);
      return ms < MOST ? [] : [`${pattern.files.join()} ${textOf(pattern)}: ${ms} ms`];
    });
    expect(slow).toEqual([]);
  });

  it('those that the checker cannot tell of take no more than a moment for the worst texts made from them', () => {
    const slow = found
      .filter(({ verdict, pattern }) => verdict !== 'safe' && (MEASURE_ALL || !measured.has(hashOf(pattern))))
      .flatMap(({ pattern }) => {
        const { ms, text } = worstOf(pattern);
        return ms < MOST ? [] : [`${pattern.files.join()} ${textOf(pattern)}: ${ms} ms for ${JSON.stringify(text)}`];
      });
    expect(slow).toEqual([]);
  });
});

describe('what finds them', () => {
  const planted = { files: ['planted'], source: PLANTED.source, flags: PLANTED.flags };

  it('finds the pattern that once held up everybody by its own worst texts, though the checker cannot tell of it', () => {
    expect(worstOf(planted).ms).toBeGreaterThanOrEqual(MOST);
  });

  it.each([
    ['(a|a)*b', ''],
    ['^(\\w+\\s?)*$', ''],
    ['(?<!x)(?:i |have |i have )*no', 'i'],
  ])('finds /%s/%s by its worst texts', (source, flags) => {
    expect(worstOf({ files: [], source, flags }).ms).toBeGreaterThanOrEqual(MOST);
  });

  it('has the checker find one that is vulnerable', () => {
    expect(checked({ files: [], source: '^(a|a)*$', flags: '' }).verdict).toBe('vulnerable');
    expect(checked({ files: [], source: '^a*$', flags: '' }).verdict).toBe('safe');
  });
});
