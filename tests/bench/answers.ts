/** How long answers are: lines of a brief at 80 columns, leads, and the share of cautions, over examples and quick questions. */

import { commands } from '../../commands/all.ts';
import { briefOf } from '../../src/chat/brief.ts';
import { briefLines, COLUMNS } from '../../src/platforms/terminal/render.ts';
import { answerTo } from '../chat/asked.ts';
import { sentencesOf } from '../language/kept-out.ts';
import { average, type Bench, metric, percentile } from './metric.ts';

const PAGE = { width: COLUMNS, colour: false };
const LONGEST_LEAD = 120;

interface Measured {
  readonly request: string;
  readonly lines: number;
  readonly words: number;
  readonly careful: number;
  readonly lead: string | undefined;
}

function wordsIn(text: string): number {
  return text.split(/\s+/).filter((word) => /[\p{L}\p{N}]/u.test(word)).length;
}

async function measured(request: string): Promise<Measured> {
  const answer = await answerTo(request);
  const { lines } = briefLines(answer, PAGE);
  const brief = 'headline' in answer ? briefOf(answer) : undefined;
  return {
    request,
    lines: lines.length,
    words: wordsIn(lines.join(' ')),
    careful: wordsIn(brief?.cautions.join(' ') ?? ''),
    lead: brief?.lead,
  };
}

export const answers: Bench = {
  name: 'answers',
  async run(size) {
    const examples = commands.filter(({ hidden }) => !hidden).flatMap((one) => one.examples.map(({ ask }) => ask));
    const quick = sentencesOf<{ readonly text: string }>('quick.jsonl').map(({ text }) => text);
    const all: Measured[] = [];
    const some = size === 'quick' ? examples.filter((_, i) => i % 4 === 0) : examples;
    for (const request of [...some, ...quick]) all.push(await measured(request));
    const lengths = all.map(({ lines }) => lines);
    const long = all.filter(({ lead }) => lead !== undefined && lead.length > LONGEST_LEAD);
    const unanswered = all.filter(({ request, lead }) => quick.includes(request) && lead === undefined);
    for (const { request, lead } of long) process.stderr.write(`long lead: ${request}: ${lead}\n`);
    for (const { request } of unanswered) process.stderr.write(`no answer yet: ${request}\n`);
    const sum = (part: (one: Measured) => number): number => all.reduce((total, one) => total + part(one), 0);
    return [
      metric('answers', 'requests', all.length),
      metric('answers', 'lines of a brief, median', percentile(lengths, 0.5), { below: 10 }),
      metric('answers', 'lines of a brief, p90', percentile(lengths, 0.9)),
      metric('answers', 'lines of a brief, longest', Math.max(...lengths), { below: 17 }),
      metric('answers', 'words of a brief, average', average(all.map(({ words }) => words))),
      metric('answers', `leads over ${LONGEST_LEAD} characters`, long.length, { below: 1 }),
      metric('answers', 'cautions, % of the words', (100 * sum(({ careful }) => careful)) / sum(({ words }) => words), {
        below: 20,
      }),
      metric('answers', 'quick questions without an answer at once', unanswered.length),
    ];
  },
};
