/** Turns an entry into an answer: its figures filled in, in the reader's units, with their sources. */

import { QUOTED } from '../figures/all-figures.ts';
import type { QuotedFigure } from '../figures/cited.ts';
import { cautionsFor, TASKS } from '../figures/safety-figures.ts';
import type { Caution, Source } from '../reply/reply.ts';
import { inUnits } from '../text/answer-text.ts';
import { worded } from '../text/caution-text.ts';
import type { Entry } from './entry.ts';

export interface EntryText {
  readonly lead: string;
  /** What doesn't fit into the lead, one sentence each. */
  readonly lines: readonly string[];
  readonly more: readonly string[];
  readonly figures: readonly QuotedFigure[];
  readonly sources: readonly Source[];
}

const PLACE = /\{([a-z0-9-]+)\}/g;
const LONGEST_LEAD = 120;

/** Throws an Error if the entry quotes a figure that doesn't exist. */
export function entryText(entry: Entry, metric: boolean): EntryText {
  const all = [entry.answer, ...(entry.more ?? [])];
  const figures = [
    ...new Set(all.flatMap((text) => [...text.matchAll(PLACE)].map(([, id]) => figureOf(id ?? '', entry)))),
  ];
  const [lead = '', ...lines] = sentences(filled(entry.answer, entry, metric));
  return {
    lead,
    lines,
    more: (entry.more ?? []).map((text) => filled(text, entry, metric)),
    figures,
    sources: [...(entry.source ? [entry.source] : []), ...figures.map(({ source }) => source)],
  };
}

function figureOf(id: string, entry: Entry): QuotedFigure {
  const figure = QUOTED.get(id);
  if (!figure) throw new Error(`${entry.id} quotes ${id}, which is no figure`);
  return figure;
}

function filled(text: string, entry: Entry, metric: boolean): string {
  const said = text.replace(PLACE, (_, id: string) => {
    const { us, metric: other = us } = figureOf(id, entry);
    return metric ? other : us;
  });
  // A figure in words may start a sentence.
  return said.replace(/(?<=^|[.!?] )[a-z](?=[a-z]* )/g, (letter) => letter.toUpperCase());
}

/** Splits into sentences; a first one too long for a lead is cut after the last clause that fits. */
function sentences(text: string): readonly string[] {
  const [first = '', ...rest] = text.split(/(?<=[.!?]["”]?) (?=[A-Z“"])/);
  if (first.length <= LONGEST_LEAD) return [first, ...rest];
  const clauses = [...first.matchAll(/[;:,] /g)].map(({ index }) => index).filter((at) => at > 15 && at < LONGEST_LEAD);
  const strong = clauses.filter((at) => first[at] !== ',');
  const at = strong.at(-1) ?? clauses.at(-1);
  if (at === undefined) return [first, ...rest];
  const tail = first.slice(at + 2);
  return [`${first.slice(0, at)}.`, tail.charAt(0).toUpperCase() + tail.slice(1), ...rest];
}

/** What can hurt while doing what the entry is about, gravest first, in one kind of units. */
export function entryCautions({ cautions = [] }: Entry, metric: boolean): readonly Caution[] {
  const known = TASKS.flatMap((task) => cautionsFor(task));
  const own = worded(cautions.flatMap((topic) => known.find((one) => one.topic === topic) ?? []));
  return inUnits(own, metric ? 'metric' : 'imperial');
}

/** Where an entry has its page below an address of ours; the index without one. Metric readers have pages of their own. */
export function entryPath(entry: Entry | undefined, metric: boolean): string {
  return ['/handbook', ...(entry ? [entry.id] : []), ...(metric ? ['metric'] : [])].join('/');
}
