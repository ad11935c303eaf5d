/** Trains the sentence model from phrases; runs at build time. */

import { featuresOf, type Model } from './model.ts';

/** Ways to express one intent. */
export interface Phrases {
  readonly intent: string;
  readonly phrases: readonly string[];
}

/** Smoothing of naive Bayes. */
const ALPHA = 0.05;
const ROUNDS = 14;
const RATE = 2.5;
const DECAY = 1e-5;
/** Of each phrase, so much is left to the other intents: neighbors share phrases that nobody wrote down. */
const DOUBT = 0.1;
/** Smaller regression weights, relative to the largest, are dropped. */
const LEAST = 0.012;
/** A feature in only one phrase says little. */
const FEWEST_PHRASES = 2;

/** The same phrases give the same model on every machine. */
export function train(given: readonly Phrases[], seed = 7): Model {
  const intents = given.map(({ intent }) => intent);
  const samples = given.flatMap(({ phrases }, intent) =>
    phrases.map((phrase) => ({ intent, features: featuresOf(phrase) })),
  );
  const phrasesWith = new Map<string, number>();
  for (const { features } of samples)
    for (const feature of features.keys()) phrasesWith.set(feature, (phrasesWith.get(feature) ?? 0) + 1);
  const kept = [...phrasesWith].filter(([, times]) => times >= FEWEST_PHRASES).map(([feature]) => feature);
  const rows = new Map(kept.map((feature, row) => [feature, row]));
  const rarity = Float32Array.from(kept, (feature) => Math.log(samples.length / (phrasesWith.get(feature) ?? 1)) + 1);
  return {
    intents,
    rows,
    rarity,
    ...bayesOf(samples, intents.length, rows),
    ...regressionOf(samples, intents.length, rows, rarity, seed),
  };
}

interface Sample {
  readonly intent: number;
  readonly features: ReadonlyMap<string, number>;
}

function bayesOf(samples: readonly Sample[], intents: number, rows: ReadonlyMap<string, number>) {
  const counts: Map<number, number>[] = [...rows].map(() => new Map());
  const totals = new Float64Array(intents);
  const phrases = new Float64Array(intents);
  for (const { intent, features } of samples) {
    phrases[intent] = (phrases[intent] ?? 0) + 1;
    for (const [feature, times] of features) {
      const row = rows.get(feature);
      const own = row === undefined ? undefined : counts[row];
      if (!own) continue;
      own.set(intent, (own.get(intent) ?? 0) + times);
      totals[intent] = (totals[intent] ?? 0) + times;
    }
  }
  const at: number[] = [0];
  const owners: number[] = [];
  const weights: number[] = [];
  for (const own of counts) {
    for (const [intent, times] of own) {
      owners.push(intent);
      weights.push(Math.log((times + ALPHA) / ALPHA));
    }
    at.push(owners.length);
  }
  return {
    bayesAt: Uint32Array.from(at),
    bayesIntents: Uint16Array.from(owners),
    bayesWeights: Float32Array.from(weights),
    bayesBase: Float32Array.from(phrases, (own) => Math.log((own + 1) / samples.length)),
    bayesEach: Float32Array.from(totals, (total) => Math.log(ALPHA / (total + ALPHA * rows.size))),
  };
}

function regressionOf(
  samples: readonly Sample[],
  intents: number,
  rows: ReadonlyMap<string, number>,
  rarity: Float32Array,
  seed: number,
) {
  const vectors = samples.map(({ features }) => {
    const known = [...features].flatMap(([feature, times]): (readonly [number, number])[] => {
      const row = rows.get(feature);
      return row === undefined ? [] : [[row, (1 + Math.log(times)) * (rarity[row] ?? 0)]];
    });
    const length = Math.hypot(...known.map(([, value]) => value)) || 1;
    return {
      rows: Uint32Array.from(known, ([row]) => row),
      values: Float64Array.from(known, ([, value]) => value / length),
    };
  });
  const weights = new Float64Array(rows.size * intents);
  const base = new Float64Array(intents);
  const scores = new Float64Array(intents);
  let random = seed;
  const order = samples.map((_, i) => i);
  for (let round = 0; round < ROUNDS; round++) {
    for (let i = order.length - 1; i > 0; i--) {
      random = (Math.imul(random, 1_664_525) + 1_013_904_223) >>> 0;
      const other = random % (i + 1);
      [order[i], order[other]] = [order[other] ?? 0, order[i] ?? 0];
    }
    const rate = RATE / (1 + round * 0.35);
    for (const i of order) {
      const { rows: own, values } = vectors[i] as (typeof vectors)[number];
      scores.set(base);
      for (let k = 0; k < own.length; k++) {
        const from = (own[k] as number) * intents;
        const value = values[k] as number;
        for (let c = 0; c < intents; c++) scores[c] = (scores[c] as number) + value * (weights[from + c] as number);
      }
      let most = Number.NEGATIVE_INFINITY;
      for (let c = 0; c < intents; c++) if ((scores[c] as number) > most) most = scores[c] as number;
      let total = 0;
      for (let c = 0; c < intents; c++) {
        const share = Math.exp((scores[c] as number) - most);
        scores[c] = share;
        total += share;
      }
      const right = (samples[i] as Sample).intent;
      for (let c = 0; c < intents; c++) {
        const wanted = c === right ? 1 - DOUBT : DOUBT / (intents - 1);
        const off = (wanted - (scores[c] as number) / total) * rate;
        scores[c] = off;
        base[c] = (base[c] as number) + 0.02 * off;
      }
      for (let k = 0; k < own.length; k++) {
        const from = (own[k] as number) * intents;
        const value = values[k] as number;
        for (let c = 0; c < intents; c++) {
          const at = from + c;
          weights[at] = (weights[at] as number) * (1 - DECAY) + value * (scores[c] as number);
        }
      }
    }
  }
  const largest = weights.reduce((most, weight) => Math.max(most, Math.abs(weight)), 1e-9);
  const scale = largest / 127;
  const at: number[] = [0];
  const owners: number[] = [];
  const kept: number[] = [];
  for (let row = 0; row < rows.size; row++) {
    for (let c = 0; c < intents; c++) {
      const weight = weights[row * intents + c] as number;
      if (Math.abs(weight) < LEAST * largest) continue;
      owners.push(c);
      kept.push(Math.round(weight / scale));
    }
    at.push(owners.length);
  }
  return {
    regressionAt: Uint32Array.from(at),
    regressionIntents: Uint16Array.from(owners),
    regressionWeights: Int8Array.from(kept),
    regressionBase: Float32Array.from(base),
    regressionScale: scale,
  };
}
