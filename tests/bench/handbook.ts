/** Whether the handbook is found: a question for each entry, and questions near it that it must not answer for certain. */

import { ENTRIES, entryOf } from '../../src/handbook/all-entries.ts';
import { screen } from '../../src/hazards/screen.ts';
import { SURE_SCORE, scoreIntents, trainedModel } from '../../src/language/model.ts';
import { HANDBOOK } from '../../src/text/handbook-text.ts';
import { answerTo } from '../chat/asked.ts';
import { sentencesOf } from '../language/kept-out.ts';
import { type Bench, type Metric, metric } from './metric.ts';

interface Fresh {
  readonly id: string;
  readonly text: string;
}

/** A question near an entry; `fine` are entries that answer it well. */
interface Near {
  readonly text: string;
  readonly fine: readonly string[];
  /** What the question is dangerous about. */
  readonly danger?: string;
}

/** How every answer that offers other entries says it. */
const OFFERS = HANDBOOK.maybe(['']).slice(0, 12);

/** The entry of an answer, or the hazard it is about; `certain` if it offers nothing else and asks nothing back. */
async function given(text: string): Promise<{ readonly shown: string; readonly certain: boolean }> {
  const answer = await answerTo(text);
  if (!('headline' in answer)) return { shown: 'why' in answer ? 'hazard' : 'asked back', certain: false };
  const { kind, hazard, entry }: { kind: string; hazard?: string; entry?: string } = answer.data;
  if (kind === 'none') return { shown: 'talk', certain: false };
  const shown = hazard !== undefined ? `hazard ${hazard}` : (entry ?? kind);
  return { shown, certain: kind !== 'hazard' && !(answer.lines ?? []).some((line) => line.startsWith(OFFERS)) };
}

/** Topics in which an answer about the hazard itself is the right one. */
const HAZARDOUS = ['old materials', 'safety', 'moisture'];

function isAbout(shown: string, id: string): boolean {
  if (shown === id) return true;
  const { topic = '', cautions = [] } = entryOf(id) ?? {};
  return shown.startsWith('hazard') && (HAZARDOUS.includes(topic) || cautions.includes(shown.slice(7)));
}

/** The first set was mended upon; the second has only ever been measured. */
const SETS = ['handbook-fresh', 'handbook-fresh-2'];

async function found(set: string): Promise<readonly Metric[]> {
  const rows = sentencesOf<Fresh>(`${set}.jsonl`);
  let [first, three, answered, wrong] = [0, 0, 0, 0];
  for (const { id, text } of rows) {
    const scored = scoreIntents(text, trainedModel());
    const best = scored.slice(0, 3).map(({ intent }) => intent.replace(/^handbook /, ''));
    const { shown } = await given(text);
    if (best[0] === id) first++;
    if (best.includes(id)) three++;
    if (isAbout(shown, id)) answered++;
    if (best[0] !== id && (scored[0]?.score ?? 0) >= SURE_SCORE) wrong++;
    if (best[0] !== id || !isAbout(shown, id))
      process.stderr.write(`${id}: ${text} -> ${best.join(', ')} (${scored[0]?.score.toFixed(3)}); shown: ${shown}\n`);
  }
  const share = (count: number): number => (100 * count) / rows.length;
  return [
    metric('handbook', `${set}: entries asked for`, rows.length, { atLeast: Math.round(ENTRIES.length * 0.6) }),
    metric('handbook', `${set}: heard first, %`, share(first), { atLeast: 85 }),
    metric('handbook', `${set}: heard among three, %`, share(three), { atLeast: 95 }),
    metric('handbook', `${set}: answered by the entry or its hazard, %`, share(answered), { atLeast: 85 }),
    metric('handbook', `${set}: wrong and sure, %`, share(wrong), { below: 2 }),
  ];
}

async function nearby(): Promise<readonly Metric[]> {
  const rows = sentencesOf<Near>('near-fresh.jsonl');
  let [wrong, dangerous] = [0, 0];
  for (const { text, fine, danger } of rows) {
    const { shown, certain } = await given(text);
    if (!certain || fine.includes(shown)) continue;
    const seen = screen(text).sightings.length > 0;
    wrong++;
    if (danger !== undefined && !seen) dangerous++;
    process.stderr.write(`near: ${text} -> ${shown}${danger === undefined ? '' : ` (${danger})`}\n`);
  }
  return [
    metric('handbook', 'near it: certain and wrong, %', (100 * wrong) / rows.length, { below: 3.01 }),
    metric('handbook', 'near it: certain and wrong about a danger', dangerous, { below: 1 }),
  ];
}

export const handbook: Bench = {
  name: 'handbook',
  async run() {
    const metrics: Metric[] = [];
    for (const set of SETS) metrics.push(...(await found(set)));
    return [...metrics, ...(await nearby())];
  },
};
