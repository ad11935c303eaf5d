/** The floor to tear out and what is under it, parsed from free text; whatever isn't certain is reported as uncertain. */

import { distance } from 'fastest-levenshtein';
import { mentioned } from '../hazards/screen.ts';
import type { Covering, Suspicion } from '../prep/old-floor.ts';
import { beneathDoubtful, coveringRead } from '../text/prep-problems-text.ts';
import { COVERING_NAMES } from '../text/tearout-text.ts';
import { readInTime } from '../workers/time-limits.ts';
import { type Read, type Reading, read } from './reading.ts';

// Recognizing layers of an old floor. Possible asbestos is checked first, and nothing unknown counts as safe.

/** Signs of asbestos whatever the year: the word itself, tar and asphalt, black glue, nine-inch tiles. */
const SIGNS = ['LAYER_SIGN', 'LAYER_DARK_GLUE', 'LAYER_GLUE_DARK'];
/** Resilient floors, their glues and backings. */
const RESILIENT = ['LAYER_RESILIENT'];

const FILLER =
  'a|an|the|my|our|its|it|is|with|and|in|of|on|over|under|below|room|rooms|floor|floors|flooring|floorcovering|old|worn|dirty|stained|new|newer|existing|current|some|just|only|plain|bare|wall|to|laid|original';
const COLOURS = 'beige|brown|grey|gray|green|blue|red|white|black|tan|cream|pink|gold|orange|dark|light';
const WOOD =
  'wood|wooden|ply|plywood|osb|particleboard|chipboard|board|boards|planks|pine|oak|fir|hardwood|softwood|subfloor|strip|strand|oriented|timber|deck|decking';
const CONCRETE = 'concrete|slab|screed|clean';
const CARPET =
  'carpet|carpets|carpeting|carpeted|pad|pads|padding|underlay|underlayment|cushion|berber|shag|plush|loop|pile|cut|broadloom|fitted|rug|tack|strips|stapled|staples';
const LAMINATE = 'laminate|laminated|click|clicked|floating|foam|underlay|underlayment|planks|boards|plank|board';
const CERAMIC =
  'ceramic|ceramics|porcelain|stone|slate|marble|travertine|terracotta|quarry|tile|tiles|tiled|grout|grouted';

const CLICK_VINYL =
  'vinyl|luxury|lvp|spc|rigid|core|click|clicked|floating|locking|interlocking|together|plank|planks|board|boards';

const only = (...words: readonly string[]): ReadonlySet<string> => new Set([FILLER, ...words].join('|').split('|'));
const ALL = {
  carpet: only(CARPET, COLOURS, WOOD, CONCRETE),
  laminate: only(LAMINATE, COLOURS, WOOD, CONCRETE),
  ceramic: only(CERAMIC, COLOURS, WOOD, CONCRETE),
  clickVinyl: only(CLICK_VINYL),
  wood: only(WOOD),
  concrete: only(CONCRETE),
} as const;

/** Lowercase with normalized symbols; everything except letters, digits and inch marks becomes a space. */
function plainWords(text: string): string {
  return text
    .normalize('NFKC')
    .toLowerCase()
    .replace(/["″”]/g, ' in ')
    .replace(/[×✕]/g, ' x ')
    .replace(/(\d)\s*x\s*(?=\d)/g, '$1 x ')
    .replace(/[^\p{L}\p{N}]+/gu, ' ')
    .trim();
}

/** Whether every word belongs to one kind of layer. */
function onlyWords(plain: string, kind: keyof typeof ALL): boolean {
  return plain !== '' && plain.split(' ').every((word) => ALL[kind].has(word));
}

const LAYERS = /\b(?:over|on|under|below|and|with)\b/;
const OLD_FLOOR =
  /\b(?:over|on|under|below|and|with)(?: (?:the|my|our|an?))?(?: (?:old|existing|current|original|worn|laid))+ (?:floor|flooring|floors|floorcovering)$/;
const RESILIENT_KIN = /\bv[iy]n[iy]l|\blvp\b|\bspc\b/;
const CLICKED = /click|floating|locking/;
const TILE_KIN = /\btil(?:es?|ed)\b/;
const FIRED = /ceramic|porcelain|\bstone\b|slate|marble|travertine|terracotta|quarry/;

/**
 * Whether a second layer of unknown kind is mentioned beside a known one: “click plank over old vinyl”, “over the old
 * floor”.
 */
function hidesLayer(plain: string): boolean {
  const parts = plain.split(LAYERS);
  const lone = (kin: RegExp, own: RegExp): boolean =>
    parts.some((part) => own.test(part)) && parts.some((part) => kin.test(part) && !own.test(part));
  return OLD_FLOOR.test(plain) || lone(RESILIENT_KIN, CLICKED) || lone(TILE_KIN, FIRED);
}

const GROUND = {
  wood: /\b(?:wood|wooden|ply|plywood|osb|particleboard|chipboard|boards?|pine|oak|fir|hardwood|softwood|subfloor|strand|timber|deck|decking)\b/,
  concrete: /\b(?:concrete|slab|screed)\b/,
} as const;

/** What is underneath, if every word belongs to it and one names it; “the old floor” and “strip” name nothing. */
function groundIn(plain: string): 'wood' | 'concrete' | 'unknown' {
  const named = (['wood', 'concrete'] as const).find((kind) => onlyWords(plain, kind) && GROUND[kind].test(plain));
  return named ?? 'unknown';
}

/** The worst suspicion from the words; `none` if none of them is about a resilient floor. */
function suspicionIn(plain: string): Exclude<Suspicion, 'unknown'> {
  if (mentioned(plain, SIGNS) !== undefined) return 'sign';
  return mentioned(plain, RESILIENT) === undefined ? 'none' : 'resilient';
}

/** The words that make a text suspect, as typed; undefined if there are none. */
export function suspectWords(text: string): string | undefined {
  const plain = plainWords(text);
  const old = /\b(?:old|existing|original) floor\w*/.exec(plain);
  return mentioned(plain, SIGNS) ?? mentioned(plain, RESILIENT) ?? old?.[0];
}

/**
 * Suspicion from words outside the floor options, such as a room's name. Like suspicionIn, but without sizes, which are
 * the room's.
 */
export function suspicionAnywhere(text: string): Exclude<Suspicion, 'unknown'> {
  return readInTime(() => suspicionOf(text));
}

function suspicionOf(text: string): Exclude<Suspicion, 'unknown'> {
  return suspicionIn(
    plainWords(text)
      .replace(/\p{N}+/gu, ' ')
      .replace(/ +/g, ' '),
  );
}

/** A floor as described; `covering` is undefined if it isn't one we calculate. */
export interface ParsedCovering {
  readonly covering: Covering | undefined;
  readonly suspicion: Suspicion;
}

export interface ParsedBeneath {
  readonly ground: 'wood' | 'concrete' | 'unknown';
  readonly suspicion: Suspicion;
}

const LONGEST = 200;

/**
 * A covering in free text. Never a Problem: unknown words count as a suspicion, which the command judges by the year of
 * the house.
 */
export function readCovering(text: string, reading: Reading): Read<ParsedCovering> {
  const plain = plainWords(text.slice(0, LONGEST));
  const given = text.length > LONGEST ? { covering: undefined, suspicion: 'unknown' as const } : coveringOf(plain);
  const name = given.covering && COVERING_NAMES[given.covering];
  if (name !== undefined && name !== plain) reading.note(coveringRead(text.trim(), name));
  return read(given);
}

function coveringOf(plain: string): ParsedCovering {
  const suspicion = suspicionIn(plain);
  if (suspicion === 'sign') return { covering: guessed(plain), suspicion };
  if (hidesLayer(plain)) return { covering: guessed(plain), suspicion: suspicion === 'none' ? 'unknown' : suspicion };
  if (/click|floating|locking/.test(plain) && /plank|board|lvp/.test(plain) && onlyWords(plain, 'clickVinyl')) {
    return { covering: 'plank vinyl', suspicion: 'none' };
  }
  if (
    /ceramic|porcelain|\bstone\b|slate|marble|travertine|terracotta|quarry/.test(plain) &&
    onlyWords(plain, 'ceramic')
  ) {
    return { covering: 'tile', suspicion: 'none' };
  }
  if (suspicion === 'resilient') return { covering: guessed(plain), suspicion };
  if (/\b(?:carpet|broadloom|berber|shag\b)/.test(plain) && onlyWords(plain, 'carpet'))
    return { covering: 'carpet', suspicion: 'none' };
  if (/\blaminate/.test(plain) && onlyWords(plain, 'laminate')) return { covering: 'laminate', suspicion: 'none' };
  if (onlyWords(plain, 'wood')) return { covering: undefined, suspicion: 'none' };
  const near = (['carpet', 'laminate'] as const).find((name) => name[0] === plain[0] && distance(name, plain) <= 1);
  return near ? { covering: near, suspicion: 'none' } : { covering: undefined, suspicion: 'unknown' };
}

/** The covering the words are about. A tile without details counts as ceramic for the weight, and stays suspect. */
function guessed(plain: string): Covering | undefined {
  if (/\bcarpet/.test(plain)) return 'carpet';
  if (/\blaminate/.test(plain)) return 'laminate';
  if (/\bplanks?\b|\bclick|\bfloating\b|\blv[pt]\b|\bspc\b|\bvct\b|\bvat\b/.test(plain)) return 'plank vinyl';
  if (/\btil(?:es?|ed|ing)\b/.test(plain))
    return /v[iy]n[iy]|lin[oe]|stick|pvc|asphalt/.test(plain) ? 'plank vinyl' : 'tile';
  return /v[iy]n[iy]|lin[oe]|sheet|pvc|resil|roll/.test(plain) ? 'sheet vinyl' : undefined;
}

/** What is underneath: unknown if nobody has looked, wood or concrete; anything else is a suspicion. */
export function readBeneath(text: string, reading: Reading): Read<ParsedBeneath> {
  const plain = plainWords(text.slice(0, LONGEST));
  if (
    /^(?:not looked|have not looked|haven t looked|unknown|not known|not sure|don t know|do not know)(?: yet)?$/.test(
      plain,
    )
  ) {
    return read({ ground: 'unknown', suspicion: 'none' });
  }
  const ground = groundIn(plain);
  const found = suspicionIn(plain);
  const suspicion = found !== 'none' ? found : ground === 'unknown' || text.length > LONGEST ? 'unknown' : 'none';
  if (suspicion !== 'none') reading.note(beneathDoubtful(text.trim()));
  return read({ ground, suspicion });
}
