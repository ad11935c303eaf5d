/** `handbook`: answers to what homeowners usually want to know, each with its figures and where they come from. */

import { z } from 'zod';
import { defineCommand } from '../src/chat/command.ts';
import { ENTRIES, entriesLike, entryOf } from '../src/handbook/all-entries.ts';
import { entryCautions, entryPath, entryText } from '../src/handbook/answer.ts';
import { type Entry, type EntryTopic, TOPICS } from '../src/handbook/entry.ts';
import { type Term, termNamed } from '../src/handbook/glossary.ts';
import { areasSaid, saysMetric, workedFrom } from '../src/handbook/worked.ts';
import { choice, text } from '../src/input/options.ts';
import { type Read, read, unread } from '../src/input/reading.ts';
import { type Action, type Block, type Reply, reply, type Source } from '../src/reply/reply.ts';
import { HANDBOOK, RULE_REASONS } from '../src/text/handbook-text.ts';

/** By id or title; failing that, all entries with the word in them. */
function readEntry(typed: string, option: string): Read<readonly Entry[]> {
  const word = typed.trim().toLowerCase().replace(/\?$/, '');
  if (word === 'all') return read(ENTRIES);
  const exact = entryOf(word) ?? ENTRIES.find(({ title }) => title.toLowerCase().replace(/\?$/, '') === word);
  if (exact) return read([exact]);
  const holding = TOPICS.includes(word as EntryTopic)
    ? ENTRIES.filter(({ topic }) => topic === word)
    : entriesLike(word);
  return holding.length > 0 ? read(holding) : unread({ option, got: typed, expected: HANDBOOK.unknown, fix: 'all' });
}

function opening({ id, title }: Entry): Action {
  return { label: title, ask: `handbook entry: ${id}` };
}

export default defineCommand({
  name: 'handbook',
  summary: 'Answers to common questions: direction, gaps, old tile, moisture, trim, with sources',
  options: z.object({
    entry: text(
      {
        summary: 'A question, or a word in it; “all” lists every one',
        standard: 'all',
        example: 'gap',
        names: 'entry',
      },
      (typed, { option }) => readEntry(typed, option),
    ),
    said: text(
      {
        summary: 'The question in your own words, for any figures in it',
        standard: 'none',
        colons: 'any',
        example: '93 degrees',
      },
      (typed) => read(typed),
    ),
    also: text({ summary: 'A second question, by its id', standard: 'none', example: 'gap' }, (typed) =>
      read(entryOf(typed.trim())),
    ),
    near: text({ summary: 'Other questions you might have meant', standard: 'none', example: 'no-gap' }, (typed) =>
      read(typed.split(/[\s,]+/).flatMap((id) => entryOf(id) ?? [])),
    ),
    reason: choice(['no', 'yes'], { summary: 'Why it is so, first', standard: 'no' }),
    word: text(
      { summary: 'A word of the trade to explain', standard: 'none', example: 'joist' },
      (typed, { option }): Read<Term | undefined> => {
        const term = termNamed(typed);
        if (term || typed === 'none') return read(term);
        return unread({ option, got: typed, expected: HANDBOOK.unknownWord, fix: 'joist' });
      },
    ),
  }),
  examples: [
    { ask: 'handbook', headline: () => HANDBOOK.all(ENTRIES.length) },
    { ask: 'handbook entry: same-lot', headline: () => entryText(entryOf('same-lot') as Entry, false).lead },
  ],
  run: ({ entry: found, near, said, also, reason, word }, { preferences, assumed, address, optionTexts }) => {
    const metric = preferences.units === 'metric';
    if (word) return explained(word, metric, assumed);
    const [entry, ...others] = found;
    if (!entry || others.length > 0) {
      const topics = TOPICS.map((topic) => found.filter((one) => one.topic === topic)).filter((own) => own.length > 0);
      return reply({
        headline:
          found.length === ENTRIES.length
            ? HANDBOOK.all(found.length)
            : HANDBOOK.several(found.length, (optionTexts.get('entry') ?? '').trim().toLowerCase()),
        lines:
          found.length === ENTRIES.length
            ? [HANDBOOK.topics(TOPICS), HANDBOOK.narrower]
            : [HANDBOOK.titles(found.slice(0, MOST_TITLES).map(({ title }) => title)), HANDBOOK.narrower],
        blocks: [
          ...topics.map((own) => ({
            kind: 'checklist' as const,
            section: 'list' as const,
            title: own[0]?.topic ?? '',
            items: own.map(({ title }) => title),
          })),
          ...pageBlock(address, undefined, metric),
        ],
        assumed,
        actions: found.slice(0, 4).map(opening),
        data: { kind: 'handbook', entry: 'all', figures: [], values: {} },
      });
    }
    const inMetric = preferences.units === 'metric' || saysMetric(said);
    const { lead, lines, more, figures, sources } = entryText(entry, inMetric);
    const worked = workedFrom(entry.id, said, inMetric);
    const because = reason === 'yes' ? RULE_REASONS[entry.id] : undefined;
    const body = [
      ...(because === undefined ? [] : [worked?.lead ?? lead]),
      ...(worked && !beginsAlike(worked.lead, lead) && !lead.startsWith(UNDECIDED) ? [lead] : []),
      ...lines,
      HANDBOOK.standing(standings(sources), makerWins(entry)),
    ].join(' ');
    const answered = [because ?? worked?.lead ?? lead, body];
    const asks = entry.asks === undefined ? [] : [HANDBOOK.asks(entry.asks)];
    const second = also && also !== entry ? [sayAlso(also, inMetric)] : [];
    const areas = [areasSaid(said, inMetric) ?? []].flat();
    const closing = near.length > 0 ? [HANDBOOK.maybe(near.map(({ title }) => title))] : fitting(answered, asks);
    const details = [...more, ...asks.filter((line) => !closing.includes(line))];
    const alternatives = near.length > 0 ? near : (entry.near ?? []).flatMap((id) => entryOf(id) ?? []);
    return reply({
      headline: because ?? worked?.lead ?? lead,
      lines: [body, ...areas, ...second, ...closing],
      blocks: [
        ...(details.length > 0
          ? [{ kind: 'checklist' as const, section: 'details' as const, title: HANDBOOK.more, items: details }]
          : []),
        ...(figures.length > 0
          ? [
              {
                kind: 'table' as const,
                section: 'why' as const,
                title: HANDBOOK.figures,
                columns: HANDBOOK.columns,
                rows: figures.map(({ name, us, metric: other = us, source }) => [
                  name,
                  inMetric ? other : us,
                  source.standing,
                ]),
              },
            ]
          : []),
        ...pageBlock(address, entry, inMetric),
      ],
      assumed,
      cautions: entryCautions(entry, inMetric),
      sources,
      actions: [
        ...(entry.next ? [{ label: entry.next.label, ask: entry.next.request }] : []),
        ...[...(also ? [also] : []), ...alternatives].slice(0, 2).map(opening),
      ],
      data: { kind: 'handbook', entry: entry.id, figures: figures.map(({ id }) => id), values: worked?.values ?? {} },
    });
  },
});

/** What a word means, then what the handbook says about the thing. */
function explained(
  { names: [name = ''], meaning, entry: id }: Term,
  metric: boolean,
  assumed: readonly string[],
): Reply {
  const entry = entryOf(id);
  if (!entry) throw new Error(`The word ${name} leads to ${id}, which is no entry`);
  const { lead, lines, sources } = entryText(entry, metric);
  return reply({
    headline: meaning,
    lines: [HANDBOOK.also(entry.title, lead)],
    blocks: [{ kind: 'text', text: lines.join(' ') }],
    assumed,
    cautions: entryCautions(entry, metric),
    sources,
    actions: [opening(entry)],
    data: { kind: 'handbook', entry: id, word: name, figures: [], values: {} },
  });
}

/** How a lead begins that leaves open what was worked out. */
const UNDECIDED = 'It depends';

/** Whether two leads say the same at first, so that one is enough. */
function beginsAlike(one: string, other: string): boolean {
  const [first, second] = [one, other].map((lead) => lead.replaceAll('’', "'").split(' ').slice(0, 2).join(' '));
  return first === second;
}

/** The answer to a second question, as one line. */
function sayAlso(entry: Entry, metric: boolean): string {
  const { lead, lines } = entryText(entry, metric);
  const whole = [lead, ...lines.slice(0, 1)].join(' ');
  return HANDBOOK.also(entry.title, whole.length > LONGEST_ALSO ? lead : whole);
}

const LONGEST_ALSO = 180;

/** Its page as a line among the sources, where the bot has an address that everybody can open. */
function pageBlock(address: string | undefined, entry: Entry | undefined, metric: boolean): readonly Block[] {
  if (!address?.startsWith('https://')) return [];
  const value = `${address}${entryPath(entry, metric)}`;
  return [{ kind: 'facts', section: 'sources', facts: [{ label: HANDBOOK.page, value, opens: true }] }];
}

/** Titles that are read as one line of an answer; the list has all. */
const MOST_TITLES = 8;

const COLUMNS = 78;
const MOST_ROWS = 6;

/** The further lines, where the whole is no longer than six rows of a terminal. */
function fitting(answered: readonly string[], further: readonly string[]): readonly string[] {
  const rows = [...answered, ...further].reduce((sum, line) => sum + Math.ceil(line.length / COLUMNS), 0);
  return rows <= MOST_ROWS ? further : [];
}

/** How sure the figures of an answer are, each standing once. */
function standings(sources: readonly Source[]): readonly string[] {
  return [...new Set(sources.map(({ standing }) => standing))];
}

/** Topics in which every plank and trim has instructions of its own. */
const MADE: readonly EntryTopic[] = ['buying', 'layout', 'gaps and edges', 'laying', 'stairs', 'care and repair'];
const NAMES_MAKER = /maker|carton|leaflet|instructions/i;

/** Whether it has to be added that a maker's figure counts more than these. */
function makerWins({ topic, answer }: Entry): boolean {
  return MADE.includes(topic) && !NAMES_MAKER.test(answer);
}
