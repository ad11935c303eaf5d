/** Scores a sentence against every intent: naive Bayes and a softmax regression over the same features, trained at build time. */

import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { featuresOf } from './features.ts';

/** A trained model: for each feature, what it says about each intent. */
export interface Model {
  readonly intents: readonly string[];
  /** Row of each feature in the two tables. */
  readonly rows: ReadonlyMap<string, number>;
  /** Where each feature's entries begin in the tables; one more at the end. */
  readonly bayesAt: Uint32Array;
  readonly bayesIntents: Uint16Array;
  readonly bayesWeights: Float32Array;
  readonly regressionAt: Uint32Array;
  readonly regressionIntents: Uint16Array;
  readonly regressionWeights: Int8Array;
  /** Inverse document frequency of each feature. */
  readonly rarity: Float32Array;
  /** The intents' own weights, without any feature. */
  readonly bayesBase: Float32Array;
  readonly regressionBase: Float32Array;
  readonly regressionScale: number;
}

export interface Scored {
  readonly intent: string;
  /** From 0 to 1; all of them sum to 1. */
  readonly score: number;
}

/** How sharply the sum of both scores is turned into shares; set on phrases kept out. */
const SHARPNESS = 1.35;
/** The regression counts this much more than naive Bayes. */
const REGRESSION_SHARE = 2;

/** All intents with their scores, best first. An empty sentence scores all alike. */
export function scoreIntents(text: string, model: Model): readonly Scored[] {
  const { intents, rows, rarity } = model;
  const bayes = Float64Array.from(model.bayesBase);
  const regression = Float64Array.from(model.regressionBase);
  const known: (readonly [row: number, value: number])[] = [];
  let square = 0;
  for (const [feature, times] of featuresOf(text)) {
    const row = rows.get(feature);
    if (row === undefined) continue;
    for (let at = model.bayesAt[row] ?? 0; at < (model.bayesAt[row + 1] ?? 0); at++) {
      const intent = model.bayesIntents[at] ?? 0;
      bayes[intent] = (bayes[intent] ?? 0) + times * (model.bayesWeights[at] ?? 0);
    }
    const value = (1 + Math.log(times)) * (rarity[row] ?? 0);
    known.push([row, value]);
    square += value * value;
  }
  const length = Math.sqrt(square) || 1;
  for (const [row, value] of known) {
    const factor = (value / length) * model.regressionScale;
    for (let at = model.regressionAt[row] ?? 0; at < (model.regressionAt[row + 1] ?? 0); at++) {
      const intent = model.regressionIntents[at] ?? 0;
      regression[intent] = (regression[intent] ?? 0) + factor * (model.regressionWeights[at] ?? 0);
    }
  }
  const [first, second] = [standardized(bayes), standardized(regression)];
  const sums = intents.map((_, i) => SHARPNESS * ((first[i] ?? 0) + REGRESSION_SHARE * (second[i] ?? 0)));
  const most = Math.max(...sums);
  const shares = sums.map((sum) => Math.exp(sum - most));
  const total = shares.reduce((sum, share) => sum + share, 0);
  return intents
    .map((intent, i) => ({ intent, score: (shares[i] ?? 0) / total }))
    .sort((one, other) => other.score - one.score);
}

/** Scores with mean 0 and deviation 1; all 0 where they are all alike. */
function standardized(scores: Float64Array): Float64Array {
  const mean = scores.reduce((sum, score) => sum + score, 0) / scores.length;
  const deviation = Math.sqrt(scores.reduce((sum, score) => sum + (score - mean) ** 2, 0) / scores.length);
  return scores.map((score) => (deviation === 0 ? 0 : (score - mean) / deviation));
}

// The model as a file: written by the build, read once when the first sentence comes.

/** The build writes it beside the built JavaScript, which tests that run from TypeScript read too. */
export const MODEL_FILE = fileURLToPath(
  new URL(import.meta.url.endsWith('.ts') ? '../../dist/src/language/model.json' : './model.json', import.meta.url),
);

const TABLES = {
  bayesAt: Uint32Array,
  bayesIntents: Uint16Array,
  bayesWeights: Float32Array,
  regressionAt: Uint32Array,
  regressionIntents: Uint16Array,
  regressionWeights: Int8Array,
  rarity: Float32Array,
  bayesBase: Float32Array,
  regressionBase: Float32Array,
} as const;

/** The model as text; the same model gives the same text. */
export function modelText(model: Model): string {
  const tables = Object.keys(TABLES).map((name) => {
    const { buffer, byteOffset, byteLength } = model[name as keyof typeof TABLES];
    return [name, Buffer.from(buffer, byteOffset, byteLength).toString('base64')];
  });
  return JSON.stringify({
    intents: model.intents,
    features: [...model.rows.keys()],
    regressionScale: model.regressionScale,
    ...Object.fromEntries(tables),
  });
}

/** Throws a SyntaxError or TypeError for text that `modelText` did not write. */
export function modelFrom(text: string): Model {
  const { intents, features, regressionScale, ...tables } = JSON.parse(text);
  const table = <Name extends keyof typeof TABLES>(name: Name): InstanceType<(typeof TABLES)[Name]> => {
    // A copy: a table of wider numbers must begin at a whole one.
    const bytes = Uint8Array.from(Buffer.from(tables[name], 'base64'));
    return new TABLES[name](bytes.buffer) as InstanceType<(typeof TABLES)[Name]>;
  };
  return {
    intents,
    rows: new Map((features as readonly string[]).map((feature, row) => [feature, row])),
    regressionScale,
    bayesAt: table('bayesAt'),
    bayesIntents: table('bayesIntents'),
    bayesWeights: table('bayesWeights'),
    regressionAt: table('regressionAt'),
    regressionIntents: table('regressionIntents'),
    regressionWeights: table('regressionWeights'),
    rarity: table('rarity'),
    bayesBase: table('bayesBase'),
    regressionBase: table('regressionBase'),
  };
}

let loaded: Model | undefined;

/** Throws where the build has not written it. */
export function trainedModel(): Model {
  loaded ??= modelFrom(readFileSync(MODEL_FILE, 'utf8'));
  return loaded;
}
