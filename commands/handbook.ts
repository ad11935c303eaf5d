/** `handbook`: the rule or decision that homeowners ask about, with its figures and where they come from. */

import { z } from 'zod';
import { defineCommand } from '../src/chat/command.ts';
import { cautionsFor, TASKS } from '../src/figures/safety-figures.ts';
import { ENTRIES, entryOf } from '../src/handbook/all-entries.ts';
import { entryText } from '../src/handbook/answer.ts';
import { type Entry, TOPICS } from '../src/handbook/entry.ts';
import { workedFrom } from '../src/handbook/worked.ts';
import { text } from '../src/input/options.ts';
import { type Read, read, unread } from '../src/input/reading.ts';
import { type Action, type Caution, reply } from '../src/reply/reply.ts';
import { worded } from '../src/text/caution-text.ts';
import { HANDBOOK } from '../src/text/handbook-text.ts';

/** An entry by its id or its title; several by a word in them, none by `all`. */
function readEntry(typed: string, option: string): Read<readonly Entry[]> {
  const word = typed.trim().toLowerCase().replace(/\?$/, '');
  if (word === 'all') return read(ENTRIES);
  const exact = entryOf(word) ?? ENTRIES.find(({ title }) => title.toLowerCase().replace(/\?$/, '') === word);
  if (exact) return read([exact]);
  const holding = ENTRIES.filter(({ id, title, topic }) => `${id} ${title} ${topic}`.toLowerCase().includes(word));
  return holding.length > 0 ? read(holding) : unread({ option, got: typed, expected: HANDBOOK.unknown, fix: 'all' });
}

function opening({ id, title }: Entry): Action {
  return { label: title, ask: `handbook entry: ${id}` };
}

export default defineCommand({
  name: 'handbook',
  summary: 'Rules and decisions: direction, gaps, old tile, moisture, trim and more, with sources',
  options: z.object({
    entry: text(
      { summary: 'A question or a word in it; all lists them', standard: 'all', example: 'gap' },
      (typed, { option }) => readEntry(typed, option),
    ),
    said: text(
      {
        summary: 'The question as it was asked, for its figures',
        standard: 'none',
        colons: 'any',
        example: '93 degrees',
      },
      (typed) => read(typed),
    ),
    near: text({ summary: 'Other questions that may have been meant', standard: 'none', example: 'no-gap' }, (typed) =>
      read(typed.split(/[\s,]+/).flatMap((id) => entryOf(id) ?? [])),
    ),
  }),
  examples: [
    { ask: 'handbook', headline: () => HANDBOOK.all(ENTRIES.length) },
    { ask: 'handbook entry: same-lot', headline: () => entryText(entryOf('same-lot') as Entry, false).lead },
  ],
  run: ({ entry: found, near, said }, { preferences, assumed }) => {
    const [entry, ...others] = found;
    if (!entry || others.length > 0) {
      const topics = TOPICS.map((topic) => found.filter((one) => one.topic === topic)).filter((own) => own.length > 0);
      return reply({
        headline: found.length === ENTRIES.length ? HANDBOOK.all(found.length) : HANDBOOK.several(found.length),
        lines: topics.slice(0, 4).map((own) =>
          HANDBOOK.topic(
            own[0]?.topic ?? '',
            own.slice(0, 2).map(({ title }) => title),
          ),
        ),
        opens: 'list',
        blocks: topics.map((own) => ({
          kind: 'checklist',
          section: 'list',
          title: own[0]?.topic ?? '',
          items: own.map(({ title }) => title),
        })),
        assumed,
        actions: found.slice(0, 4).map(opening),
        data: { kind: 'handbook', entry: 'all', figures: [], values: {} },
      });
    }
    const metric = preferences.units === 'metric';
    const { lead, lines, more, figures, sources } = entryText(entry, metric);
    const worked = workedFrom(entry.id, said, metric);
    const sentences = [...(worked ? [lead] : []), ...lines, ...(entry.asks ? [HANDBOOK.asks(entry.asks)] : [])];
    const alternatives = near.length > 0 ? near : (entry.near ?? []).flatMap((id) => entryOf(id) ?? []);
    return reply({
      headline: worked?.lead ?? lead,
      lines: near.length === 0 ? sentences : [...sentences.slice(0, 3), HANDBOOK.maybe(near.map(({ title }) => title))],
      blocks: [
        ...(more.length > 0
          ? [{ kind: 'checklist' as const, section: 'details' as const, title: HANDBOOK.more, items: more }]
          : []),
        ...(figures.length > 0
          ? [
              {
                kind: 'table' as const,
                section: 'why' as const,
                title: HANDBOOK.figures,
                columns: HANDBOOK.columns,
                rows: figures.map(({ name, us, metric = us, source }) => [
                  name,
                  preferences.units === 'metric' ? metric : us,
                  source.standing,
                ]),
              },
            ]
          : []),
      ],
      assumed,
      cautions: cautionsOf(entry),
      sources,
      actions: [
        ...(entry.next ? [{ label: entry.next.label, ask: entry.next.request }] : []),
        ...alternatives.slice(0, 2).map(opening),
      ],
      data: { kind: 'handbook', entry: entry.id, figures: figures.map(({ id }) => id), values: worked?.values ?? {} },
    });
  },
});

function cautionsOf({ cautions = [] }: Entry): readonly Caution[] {
  const known = TASKS.flatMap((task) => cautionsFor(task));
  return worded(cautions.flatMap((topic) => known.find((one) => one.topic === topic) ?? []));
}
