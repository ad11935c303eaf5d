/** Every reply of every command is plain data: it survives JSON, and holds what every platform needs. */

import { describe, expect, it } from 'vitest';
import { z } from 'zod';
import { commands } from '../../commands/all.ts';
import { DEMO_ASKS } from '../../src/platforms/terminal/demo.ts';
import { STAGES } from '../../src/reply/need.ts';
import { SECTIONS } from '../../src/reply/reply.ts';
import { answerTo, replyTo } from '../chat/asked.ts';

const said = z.string().refine((text) => text.trim() !== '', 'says nothing');
const source = z.strictObject({
  title: said,
  standing: z.enum(['published', 'reported', 'common practice', 'from memory']),
  publisher: said.optional(),
  year: z.int().min(1900).max(2100).optional(),
  section: said.optional(),
});
const section = z.enum(SECTIONS).optional();
const block = z.discriminatedUnion('kind', [
  z.strictObject({ kind: z.literal('text'), text: said, section }),
  z.strictObject({
    kind: z.literal('facts'),
    section,
    title: said.optional(),
    facts: z.array(z.strictObject({ label: said, value: said })).min(1),
  }),
  z
    .strictObject({
      kind: z.literal('table'),
      section,
      title: said,
      columns: z.array(said).min(1),
      rows: z.array(z.array(z.string())),
    })
    .refine(
      ({ columns, rows }) => rows.every((row) => row.length === columns.length),
      'a row does not fit its columns',
    ),
  z.strictObject({ kind: z.literal('steps'), section, title: said, steps: z.array(said).min(1) }),
  z.strictObject({
    kind: z.literal('picture'),
    section,
    drawing: z.looseObject({ title: said, alt: said, width: z.number().positive(), height: z.number().positive() }),
  }),
  z.strictObject({ kind: z.literal('checklist'), section, title: said, items: z.array(said).min(1) }),
]);
const need = z.strictObject({
  item: said,
  label: said,
  stage: z.enum(STAGES),
  quantity: z.strictObject({
    unit: z.enum(['count', 'length', 'area', 'volume', 'weight']),
    amount: z.number().positive(),
  }),
  package: z.strictObject({ size: z.number().positive(), label: said, labels: said }).optional(),
  price: z
    .strictObject({ cents: z.int().nonnegative(), currency: z.string().length(3), tax: z.int().positive().optional() })
    .optional(),
  room: said.optional(),
  note: said.optional(),
});
const reply = z.strictObject({
  headline: said.refine((text) => !text.includes('\n'), 'more than a line'),
  lines: z.array(said).optional(),
  opens: z.enum([...SECTIONS, 'more']).optional(),
  blocks: z.array(block),
  assumed: z.array(said),
  cautions: z.array(z.strictObject({ topic: said, text: said, brief: said.optional(), source: source.optional() })),
  sources: z.array(source),
  actions: z.array(z.strictObject({ label: said, ask: said, among: said.optional() })),
  reasons: z.array(z.strictObject({ entry: said, figure: said.optional() })).optional(),
  audience: z.enum(['asker', 'channel']),
  data: z.looseObject({ kind: said }),
  needs: z.array(need).min(1).optional(),
  form: z.strictObject({ command: said, told: z.record(z.string(), z.string()) }).optional(),
  understood: z.strictObject({ command: said, told: z.record(z.string(), z.string()), said }).optional(),
});

const asks = [...commands.flatMap(({ examples }) => examples.map(({ ask }) => ask)), ...DEMO_ASKS];

describe.each(asks)('%s', (ask) => {
  it('gives plain data of the shape that platforms read, or problems', async () => {
    const given = await answerTo(ask);
    expect(JSON.parse(JSON.stringify(given))).toEqual(given);
    if ('headline' in given) reply.parse(given);
    else expect(given).toHaveProperty('problems');
  });
});

it('a cautioned topic is told once', async () => {
  const { cautions } = await replyTo(DEMO_ASKS[1] ?? '');
  expect(new Set(cautions.map(({ topic }) => topic)).size).toBe(cautions.length);
});

it('a next ask is one that is answered, with another plan', async () => {
  const first = await replyTo("planks room: 12' x 14', plank: 6 x 48 in, 10 per carton");
  expect(first.actions.length).toBeGreaterThanOrEqual(4);
  for (const { ask } of first.actions) expect((await replyTo(ask)).data).not.toEqual(first.data);
});
