/** Prints every entry of the handbook with its figures, their standing and their sources: `npm run handbook`. */

import { ENTRIES } from '../../src/handbook/all-entries.ts';
import { entryText } from '../../src/handbook/answer.ts';
import { TOPICS } from '../../src/handbook/entry.ts';
import { saySource } from '../../src/text/answer-text.ts';

const lines = TOPICS.flatMap((topic) => [
  `# ${topic}`,
  ...ENTRIES.filter((entry) => entry.topic === topic).flatMap((entry) => {
    const { lead, lines: rest, more, figures } = entryText(entry, false);
    return [
      '',
      `## ${entry.title} (${entry.id}, ${entry.phrases.length} phrases)`,
      [lead, ...rest].join(' '),
      ...more.map((line) => `+ ${line}`),
      ...figures.map(
        ({ id, name, us, metric = us, source }) =>
          `- ${id}: ${name}: ${us} | ${metric} | ${source.standing} | ${saySource(source)}`,
      ),
      ...(entry.source ? [`- rule: ${entry.source.standing} | ${saySource(entry.source)}`] : []),
    ];
  }),
  '',
]);
process.stdout.write(`${lines.join('\n')}\n`);
