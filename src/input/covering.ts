/** What floor comes up and what lies below it, read from people's words; what is not known for sure is told as such. */

import { distance } from 'fastest-levenshtein';
import type { Suspicion } from '../prep/old-materials.ts';
import type { Covering } from '../prep/tearout-amounts.ts';
import { beneathDoubtful, coveringRead } from '../text/prep-problems-text.ts';
import { COVERING_NAMES } from '../text/tearout-text.ts';
import { groundIn, hidesLayer, onlyWords, plainWords, suspicionIn } from './layer-words.ts';
import { type Read, type Reading, read } from './reading.ts';

/** A floor as told: `covering` is undefined where its words name none that is worked out. */
export interface ToldCovering {
  readonly covering: Covering | undefined;
  readonly suspicion: Suspicion;
}

/** What lies below a covering. */
export interface ToldBeneath {
  readonly ground: 'wood' | 'concrete' | 'unknown';
  readonly suspicion: Suspicion;
}

const LONGEST = 200;

/** A covering in any words. Never a Problem: words that are not known are a suspicion, which the command judges by the year of the house. */
export function readCovering(text: string, reading: Reading): Read<ToldCovering> {
  const plain = plainWords(text.slice(0, LONGEST));
  const told = text.length > LONGEST ? { covering: undefined, suspicion: 'unknown' as const } : coveringOf(plain);
  const name = told.covering && COVERING_NAMES[told.covering];
  if (name !== undefined && name !== plain) reading.note(coveringRead(text.trim(), name));
  return read(told);
}

function coveringOf(plain: string): ToldCovering {
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

/** The covering that the words are about; a tile that nothing else is told of is ceramic to carry, and stays suspect. */
function guessed(plain: string): Covering | undefined {
  if (/\bcarpet/.test(plain)) return 'carpet';
  if (/\blaminate/.test(plain)) return 'laminate';
  if (/\bplanks?\b|\bclick|\bfloating\b|\blv[pt]\b|\bspc\b|\bvct\b|\bvat\b/.test(plain)) return 'plank vinyl';
  if (/\btil(?:es?|ed|ing)\b/.test(plain))
    return /v[iy]n[iy]|lin[oe]|stick|pvc|asphalt/.test(plain) ? 'plank vinyl' : 'tile';
  return /v[iy]n[iy]|lin[oe]|sheet|pvc|resil|roll/.test(plain) ? 'sheet vinyl' : undefined;
}

/** What lies below: nothing known when nobody has looked; wood or concrete; anything else is a suspicion. */
export function readBeneath(text: string, reading: Reading): Read<ToldBeneath> {
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
