/** Replies of any kind for property tests: thousands of rows, emoji, names that would ring, marks of every chat's markup. */

import fc from 'fast-check';
import type { Block, Reply } from '../../src/reply/reply.ts';

/** Texts that a chat would take for something else. */
export const HOSTILE_BITS: readonly string[] = [
  '<!channel>',
  '<!here|here>',
  '<@U123>',
  '<#C1|general>',
  '<https://evil.example|click>',
  '@everyone',
  '@here',
  '<@&1234567890123456>',
  '<@1234567890123456>',
  '[click](https://evil.example)',
  ':skull:',
  '*bold* _slant_ ~gone~ `code`',
  '```\nfake\n```',
  '> quoted',
  '# title',
  '|| hidden ||',
  '-# small',
  '&lt;!channel&gt;',
  '\u202egnihtemos',
  '\u2028line\u2029paragraph',
  'two\nlines\r\nthree',
  '\u0000\u0007\u001b[31m',
  '😀👩‍👩‍👧‍👦🏳️‍🌈',
  '\u200b\ufeff',
  '=HYPERLINK("x")',
  '\ud800',
];

/** A text of anything, now and then longer than any one block takes; never empty. */
export function anyText(longest = 400): fc.Arbitrary<string> {
  const part = fc.oneof(
    { weight: 4, arbitrary: fc.string({ unit: 'grapheme', minLength: 1, maxLength: 40 }) },
    { weight: 3, arbitrary: fc.constantFrom('Row', '12 3/4 in', 'bedroom', 'cut', 'plank no. 7') },
    { weight: 2, arbitrary: fc.constantFrom(...HOSTILE_BITS) },
  );
  const usual = fc.array(part, { minLength: 1, maxLength: 6 }).map((parts) => `x${parts.join(' ')}`.slice(0, longest));
  const long = fc
    .tuple(part, fc.integer({ min: 100, max: 2000 }))
    .map(([one, times]) => `x${one} `.repeat(times).slice(0, 9000));
  return fc.oneof({ weight: 30, arbitrary: usual }, { weight: 1, arbitrary: long });
}

/** A table; the more rows it has, the shorter its cells, so that thousands are drawn as fast as a few. */
const table = (most: number): fc.Arbitrary<Block> => {
  const cell =
    most > 100 ? fc.constantFrom('', '12 3/4 in', 'cut', '😀', '<!channel>') : fc.oneof(fc.constant(''), anyText(60));
  return fc
    .tuple(
      anyText(),
      fc.integer({ min: 1, max: most > 100 ? 6 : 24 }),
      fc.integer({ min: 0, max: most }),
      fc.array(cell, { minLength: 24, maxLength: 24 }),
    )
    .map(([title, columns, rows, cells]) => ({
      kind: 'table',
      title,
      columns: Array.from({ length: columns }, (_, i) => `column ${i}`),
      // Every cell a text of its own, so that one lost is seen.
      rows: Array.from({ length: rows }, (_, r) =>
        Array.from({ length: columns }, (_, c) => (cells[c] === '' && c > 0 ? '' : `${cells[c]} r${r}c${c}`)),
      ),
    }));
};

const block: fc.Arbitrary<Block> = fc.oneof(
  anyText(3000).map((text): Block => ({ kind: 'text', text })),
  fc
    .tuple(
      fc.option(anyText(), { nil: undefined }),
      fc.array(fc.record({ label: anyText(), value: anyText() }), { maxLength: 30 }),
    )
    .map(([title, facts]): Block => ({ kind: 'facts', facts, ...(title === undefined ? {} : { title }) })),
  fc.oneof({ weight: 6, arbitrary: table(30) }, { weight: 1, arbitrary: table(5000) }),
  fc.record({ kind: fc.constant('steps' as const), title: anyText(), steps: fc.array(anyText(), { maxLength: 120 }) }),
  fc.record({
    kind: fc.constant('checklist' as const),
    title: anyText(),
    items: fc.array(anyText(), { maxLength: 120 }),
  }),
  fc
    .record({ title: anyText(), alt: anyText(3000) })
    .map(
      ({ title, alt }): Block => ({ kind: 'picture', drawing: { width: 360, height: 100, title, alt, shapes: [] } }),
    ),
);

const standing = fc.constantFrom('published', 'reported', 'common practice', 'from memory');

/** Any reply that the types allow. */
export const anyReply: fc.Arbitrary<Reply> = fc.record({
  headline: anyText(4000),
  blocks: fc.array(block, { maxLength: 8 }),
  assumed: fc.array(anyText(), { maxLength: 6 }),
  cautions: fc
    .array(anyText(1200), { maxLength: 12 })
    .map((texts) => texts.map((text, i) => ({ topic: `topic-${i}`, text }))),
  sources: fc.array(fc.record({ title: anyText(), standing }), { maxLength: 6 }),
  actions: fc
    .array(fc.record({ label: anyText(), ask: anyText(), among: fc.constantFrom('', 'Other pattern', 'Room') }), {
      maxLength: 60,
    })
    .map((all) => all.map(({ label, ask, among }) => ({ label, ask, ...(among === '' ? {} : { among }) }))),
  audience: fc.constantFrom('asker', 'channel'),
  data: fc.constant({ kind: 'any' }),
});
