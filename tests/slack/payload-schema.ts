/** Whether blocks and views are such as Slack's own types allow: a JSON schema made from @slack/types, unknown fields refused. */

import { createRequire } from 'node:module';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { Ajv, type ValidateFunction } from 'ajv';
import { createGenerator } from 'ts-json-schema-generator';

const types = join(dirname(createRequire(import.meta.url).resolve('@slack/types/package.json')), 'dist');

// One program for both, of the two files that tell them, without the declarations of a browser: reading those takes seconds.
const generator = createGenerator({
  path: join(types, '{block-kit/blocks,views}.d.ts'),
  tsconfig: fileURLToPath(new URL('./slack-types.tsconfig.json', import.meta.url)),
  skipTypeCheck: true,
  additionalProperties: false,
});
// Made while the file is loaded, once for all files of a worker: no hook or test should be the one that waits for it.
const [block, view] = ['KnownBlock', 'View'].map((type) =>
  new Ajv({ strict: false, allErrors: false }).compile(JSON.parse(JSON.stringify(generator.createSchema(type)))),
);

/** Blocks that are none of Slack's, each with what is wrong. */
export function blocksUnlikeTypes(blocks: readonly unknown[]): readonly string[] {
  if (!block) throw new Error('no schema of blocks');
  return blocks.flatMap((one) => (block(one) ? [] : [`${JSON.stringify(one).slice(0, 300)}: ${flawsIn(block)}`]));
}

/** What is wrong with a view; its blocks are looked at one by one, for the type of a view lets any block pass. */
export function viewUnlikeTypes(given: { readonly blocks?: readonly unknown[] }): readonly string[] {
  if (!view) throw new Error('no schema of views');
  const own = view(given) ? [] : [`a view: ${flawsIn(view)}`];
  return [...own, ...blocksUnlikeTypes(given.blocks ?? [])];
}

function flawsIn({ errors }: ValidateFunction): string {
  return (errors ?? [])
    .map(({ instancePath, message }) => `${instancePath} ${message}`)
    .join('; ')
    .slice(0, 300);
}
