/** Sentences by somebody who saw neither phrases nor code: what is heard, what is feared, and how fast. */

import { screen } from '../../src/hazards/screen.ts';
import { measured } from '../../src/language/measured.ts';
import { SURE_SCORE, scoreIntents, trainedModel } from '../../src/language/model.ts';
import { type Danger, type HeldOut, type PastedLabel, sentencesOf } from '../language/kept-out.ts';
import { isRight } from '../language/label-right.ts';
import { type Bench, type Metric, metric, percentile } from './metric.ts';

/** Every set was written by somebody else than whoever mended what the one before showed. */
const SETS = [1, 2, 3];

const PREFERENCES = { units: 'imperial', decimal: '.', currency: 'USD' } as const;

function heard(set: number, times: number[]): readonly Metric[] {
  const rows = sentencesOf<HeldOut>(`held-out-${set}.jsonl`);
  let [first, three, wrong] = [0, 0, 0];
  const misses = new Map<string, number>();
  for (const { text, intent, also } of rows) {
    const start = process.cpuUsage();
    const scored = scoreIntents(text, trainedModel());
    const spent = process.cpuUsage(start);
    times.push((spent.user + spent.system) / 1000);
    const right = (name: string | undefined): boolean => name === intent || also.includes(name ?? '');
    const [best] = scored;
    if (right(best?.intent)) first++;
    else {
      const pair = `${intent} -> ${best?.intent}`;
      misses.set(pair, (misses.get(pair) ?? 0) + 1);
      if ((best?.score ?? 0) >= SURE_SCORE) wrong++;
    }
    if (scored.slice(0, 3).some((one) => right(one.intent))) three++;
  }
  const share = (count: number): number => (100 * count) / rows.length;
  process.stderr.write(
    `held-out-${set}, most confused: ${[...misses]
      .sort((one, other) => other[1] - one[1])
      .slice(0, 8)
      .map(([pair, times]) => `${pair} (${times})`)
      .join('; ')}\n`,
  );
  return [
    metric('questions', `held-out-${set}: right first, %`, share(first), { atLeast: 85 }),
    metric('questions', `held-out-${set}: right among three, %`, share(three), { atLeast: 95 }),
    metric('questions', `held-out-${set}: wrong and sure, %`, share(wrong), { below: 2 }),
  ];
}

function feared(set: number): readonly Metric[] {
  const rows = sentencesOf<Danger>(`dangers-${set}.jsonl`);
  const of = (danger: Danger['danger']): readonly Danger[] => rows.filter((row) => row.danger === danger);
  const level = (text: string) => screen(text).sightings[0]?.level;
  const caught = of('emergency').filter(({ text }) => level(text) === 'emergency').length;
  const seen = of('question').filter(({ text }) => level(text) !== undefined).length;
  const alarms = of('none').filter(({ text }) => level(text) === 'emergency').length;
  return [
    metric('questions', `dangers-${set}: emergencies caught, %`, (100 * caught) / of('emergency').length, {
      atLeast: 95,
    }),
    metric('questions', `dangers-${set}: questions recognized by rules, %`, (100 * seen) / of('question').length),
    metric('questions', `dangers-${set}: harmless ones taken for emergencies`, alarms, { below: 1 }),
  ];
}

function nearby(set: number): Metric {
  const rows = sentencesOf<{ readonly text: string }>(`near-${set}.jsonl`);
  const sure = rows.filter(({ text }) => {
    const [best] = scoreIntents(text, trainedModel());
    return best && !/^(?:other|talk) /.test(best.intent) && best.score >= SURE_SCORE;
  }).length;
  return metric('questions', `near-${set}: answered for certain, %`, (100 * sure) / rows.length, { below: 3 });
}

export const questions: Bench = {
  name: 'questions',
  async run() {
    const times: number[] = [];
    // The first one loads the model.
    scoreIntents('how many boxes', trainedModel());
    const found = SETS.flatMap((set) => heard(set, times));
    const labels = sentencesOf<PastedLabel>('labels.jsonl');
    const right = labels.filter((label) => isRight(label, measured(label.text, PREFERENCES).plank)).length;
    return [
      ...found,
      ...SETS.flatMap(feared),
      ...SETS.map(nearby),
      metric('questions', 'labels read right, %', (100 * right) / labels.length, { atLeast: 95 }),
      metric('questions', 'hearing one sentence, ms of processor p95', percentile(times, 0.95), { below: 10 }),
    ];
  },
};
