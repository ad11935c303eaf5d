/** Whether blocks and views are such as Slack's own types allow: a JSON schema made from @slack/types, unknown fields refused. */

import { createRequire } from 'node:module';
import { dirname, join } from 'node:path';
import { Ajv, type ValidateFunction } from 'ajv';
import { createGenerator } from 'ts-json-schema-generator';

const types = join(dirname(createRequire(import.meta.url).resolve('@slack/types/package.json')), 'dist', 'index.d.ts');

let made: { readonly block: ValidateFunction; readonly view: ValidateFunction } | undefined;

function schemas(): NonNullable<typeof made> {
  if (made) return made;
  const of = (type: string): ValidateFunction => {
    const schema = createGenerator({
      path: types,
      type,
      skipTypeCheck: true,
      additionalProperties: false,
    }).createSchema(type);
    return new Ajv({ strict: false, allErrors: false }).compile(JSON.parse(JSON.stringify(schema)));
  };
  made = { block: of('KnownBlock'), view: of('View') };
  return made;
}

/** Blocks that are none of Slack's, each with what is wrong. */
export function blocksUnlikeTypes(blocks: readonly unknown[]): readonly string[] {
  const { block } = schemas();
  return blocks.flatMap((one) => (block(one) ? [] : [`${JSON.stringify(one).slice(0, 300)}: ${told(block)}`]));
}

/** What is wrong with a view; its blocks are looked at one by one, for the type of a view lets any block pass. */
export function viewUnlikeTypes(view: { readonly blocks?: readonly unknown[] }): readonly string[] {
  const { view: whole } = schemas();
  const own = whole(view) ? [] : [`a view: ${told(whole)}`];
  return [...own, ...blocksUnlikeTypes(view.blocks ?? [])];
}

function told({ errors }: ValidateFunction): string {
  return (errors ?? [])
    .map(({ instancePath, message }) => `${instancePath} ${message}`)
    .join('; ')
    .slice(0, 300);
}
