/** The trained model as a file: written by the build, read once when the first sentence comes. */

import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import type { Model } from './model.ts';

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
