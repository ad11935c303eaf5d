/** Names that outlive the code that writes them: a rename inside the house must not change one. */

import { createHash } from 'node:crypto';
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, it } from 'vitest';
import { z } from 'zod';
import { commands } from '../commands/all.ts';
import { codeSchema } from '../src/accounts/linking.ts';
import { accountKey, leadSchema, recentSchema } from '../src/accounts/records.ts';
import { keepDraft, keptDraft } from '../src/chat/form.ts';
import { keepAnswer, keptAnswer, showAnswer } from '../src/chat/saved-replies.ts';
import { fullName } from '../src/input/command-shape.ts';
import { customId, VERBS } from '../src/platforms/discord/interaction.ts';
import { FIELD, FORM } from '../src/platforms/slack/forms.ts';
import { PRESSES } from '../src/platforms/slack/press.ts';
import { GLOBAL_SHORTCUT, MESSAGE_SHORTCUT } from '../src/platforms/slack/register.ts';
import { accountSchema, personSchema } from '../src/project/person.ts';
import { projectSchema } from '../src/project/project.ts';
import { PERMISSIONS, ROLES } from '../src/project/project-limits.ts';
import { HELPING, SHARED } from '../src/project/shares.ts';
import { STAGES } from '../src/reply/need.ts';
import { settings } from '../src/server/environment.ts';
import { FIELDS } from '../src/server/logger.ts';
import { openMetrics } from '../src/server/metrics.ts';
import { statementsFor } from '../src/storage/postgres.ts';
import { CREATE, FILL, PUT, REMOVE } from '../src/storage/redis.ts';
import { keptInMemory } from './chat/kept-in-memory.ts';

it('are what they were: change a line of the golden file only together with a migration', async () => {
  const listed = {
    records: Object.fromEntries(
      Object.entries({ account: accountSchema, person: personSchema, project: projectSchema }).map(([kind, schema]) => [
        kind,
        keysOf(schema),
      ]),
    ),
    values: { recent: keysOf(recentSchema), code: keysOf(codeSchema), lead: keysOf(leadSchema) },
    valueKeys: keyPatterns(),
    accountKeys: [
      accountKey({ platform: 'terminal', id: '1' }),
      accountKey({ platform: 'slack', workspace: 'T1', id: 'U1' }),
    ],
    permissions: PERMISSIONS,
    roles: ROLES,
    shared: SHARED,
    helping: HELPING,
    stages: STAGES,
    discord: { verbs: VERBS, id: customId('ask', 'abc', '1') },
    slack: { presses: PRESSES, form: FORM, field: FIELD, shortcuts: [GLOBAL_SHORTCUT, MESSAGE_SHORTCUT] },
    logFields: Object.keys(FIELDS),
    settings: Object.keys(settings.shape),
    metrics: await metricNames(),
    commands: commands.map((command) => ({
      name: fullName(command),
      options: Object.keys(command.options.shape),
    })),
    statements: digest(JSON.stringify(statementsFor('schema'))),
    redisScripts: digest([CREATE, PUT, REMOVE, FILL].join('\n')),
  };
  await expect(`${JSON.stringify(listed, null, 2)}\n`).toMatchFileSnapshot('golden/files/stored-names.json');
});

it('are read from values that an earlier build wrote', async () => {
  const kept = keptInMemory();
  const stored = readStored();
  for (const [key, value] of Object.entries(stored)) await kept.set(key, value, 60_000);
  expect(await keptAnswer(kept, 'answerAnswe', 'discord:1')).toMatchObject({
    text: 'tape 1 ft + 2 in',
    reply: { headline: '1\' 2"', actions: [{ label: 'Again', ask: 'tape 1 ft' }] },
    shown: false,
  });
  expect(await showAnswer(kept, 'answerAnswe', 'discord:1')).toMatchObject({ shown: true });
  expect(await keptDraft(kept, 'draftDraftD', 'discord:1')).toEqual({
    by: 'discord:1',
    form: { command: 'tape', told: { sum: '1 ft' } },
    fix: 'tape 1 ft',
    wrong: ['sum'],
    mends: '77',
  });
});

it('are written as that build wrote them', async () => {
  const kept = keptInMemory();
  const stored = readStored();
  await keepAnswer(kept, 'answerAnswe', JSON.parse(String(stored['answer:answerAnswe'])));
  await keepDraft(kept, 'draftDraftD', stored['draft:draftDraftD'] as Parameters<typeof keepDraft>[2]);
  for (const [key, value] of Object.entries(stored)) expect(await kept.get(key)).toEqual(value);
});

function readStored(): Readonly<Record<string, unknown>> {
  return JSON.parse(readFileSync(join(import.meta.dirname, 'golden', 'stored-values.json'), 'utf8'));
}

/** Every path of keys in a schema, such as `rooms[].text`. */
function keysOf(schema: z.ZodType): readonly string[] {
  const paths = new Set<string>();
  const { $defs, ...root } = z.toJSONSchema(schema, { unrepresentable: 'any', io: 'input' }) as JsonSchema;
  const visit = (node: JsonSchema, path: string, within: readonly string[]): void => {
    const name = node.$ref?.replace('#/$defs/', '');
    if (name !== undefined) {
      const target = $defs?.[name];
      if (target && !within.includes(name)) visit(target, path, [...within, name]);
      return;
    }
    if (node.enum) paths.add(`${path} = ${node.enum.join(' | ')}`);
    if ('const' in node) paths.add(`${path} = ${String(node.const)}`);
    for (const [key, child] of Object.entries(node.properties ?? {})) {
      paths.add(`${path}.${key}`);
      visit(child, `${path}.${key}`, within);
    }
    if (typeof node.additionalProperties === 'object') visit(node.additionalProperties, `${path}{}`, within);
    if (node.items) visit(node.items, `${path}[]`, within);
    for (const child of [...(node.anyOf ?? []), ...(node.oneOf ?? []), ...(node.allOf ?? [])])
      visit(child, path, within);
  };
  visit(root, '', []);
  return [...paths].sort();
}

interface JsonSchema {
  readonly $ref?: string;
  readonly $defs?: Readonly<Record<string, JsonSchema>>;
  readonly enum?: readonly unknown[];
  readonly const?: unknown;
  readonly properties?: Readonly<Record<string, JsonSchema>>;
  readonly additionalProperties?: boolean | JsonSchema;
  readonly items?: JsonSchema;
  readonly anyOf?: readonly JsonSchema[];
  readonly oneOf?: readonly JsonSchema[];
  readonly allOf?: readonly JsonSchema[];
}

/** How keys of plain values are written in the source: `answer:*`; the expressions within may be renamed. */
function keyPatterns(): readonly string[] {
  const root = join(import.meta.dirname, '..', 'src');
  const texts = readdirSync(root, { recursive: true, encoding: 'utf8' })
    .filter((path) => path.endsWith('.ts'))
    .map((path) => readFileSync(join(root, path), 'utf8'));
  const found = texts.flatMap((text) => [...text.matchAll(/`([a-z][a-z-]*:\$\{[^`\n]*)`/g)].map(([, key = '']) => key));
  return [...new Set(found.map((key) => key.replace(/\$\{(?:[^{}]|\{[^{}]*\})*\}/g, '*')))].sort();
}

async function metricNames(): Promise<readonly string[]> {
  const idle = () => ({ working: 0, waiting: 0 });
  const { text } = await openMetrics({ searches: idle, pictures: idle, files: idle }).read();
  return [...text.matchAll(/^# TYPE (floorhand_\S+)/gm)].map(([, name = '']) => name).sort();
}

function digest(text: string): string {
  return createHash('sha256').update(text).digest('hex');
}
