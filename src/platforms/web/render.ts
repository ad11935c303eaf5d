/** An answer as HTML: pure, total, and nothing left out; what can hurt stands first. */

import { html } from 'hono/html';
import { assumedOf } from '../../chat/offers.ts';
import type { Answer } from '../../chat/pipeline.ts';
import type { Sheets } from '../../reply/job-sheet.ts';
import type { Caution, Problem, Reply, Source } from '../../reply/reply.ts';
import { sayFault } from '../../text/chat-text.ts';
import { saySource } from '../../text/help-text.ts';
import { PAGE } from '../../text/page-text.ts';
import type { FileMaker, TableFile, WebFile } from '../platform.ts';
import { blockHtml, each, type Html, htmlLine, type ItemAt, NOTHING, plain, titledList } from './blocks.ts';

/** The whole answer. `id` begins the ids of what is in it. */
export function render(answer: Answer, id = 'answer'): Html {
  if ('reference' in answer) return html`<p class="told">${sayFault(answer.reference, answer.outage)}</p>`;
  if ('problems' in answer) return problemsHtml(answer.problems);
  if ('why' in answer) {
    return html`<h3>${answer.data.emergency ? PAGE.emergency : PAGE.refusal}</h3><p class="told">${plain(answer.why)}</p><p class="told">${PAGE.call}: ${plain(answer.call)}</p>${cautionsHtml(answer.cautions)}`;
  }
  return html`${replyHtml(answer, id)}${sourcesHtml(answer.sources)}`;
}

/** What a page puts into a reply. */
interface Within {
  /** In place of items that can be ticked. */
  readonly itemAt?: ItemAt;
  /** Right below the headline. */
  readonly before?: Html;
  /** Between what can hurt and the rest, or before both. */
  readonly between?: Html;
  readonly first?: 'cautions' | 'between';
  /** Behind the rest. */
  readonly after?: Html;
}

/** A reply without its sources, which a page of several tells once at its end. */
export function replyHtml(reply: Reply, id: string, within: Within = {}): Html {
  const { itemAt, before = NOTHING, between = NOTHING, first = 'cautions', after = NOTHING } = within;
  const cautions = cautionsHtml(reply.cautions);
  const blocks = each(reply.blocks, (block, place) => blockHtml(block, `${id}-${place}`, itemAt));
  const body = first === 'cautions' ? html`${cautions}${between}${blocks}` : html`${between}${blocks}${cautions}`;
  return html`<p class="headline">${plain(reply.headline)}</p>${reply.example === undefined ? NOTHING : html`<p>${plain(reply.example)}</p>`}${before}${body}${after}${titledList(PAGE.assumed, assumedOf(reply), 'assumed')}`;
}

/** What can hurt, each thing once. */
function cautionsHtml(cautions: readonly Caution[]): Html {
  return titledList(PAGE.cautions, [...new Set(cautions.map(({ text }) => text))], 'cautions');
}

/** Where figures come from, each source once. */
export function sourcesHtml(sources: readonly Source[]): Html {
  const said = sources.map((source) => `${saySource(source)} (${source.standing})`);
  return titledList(PAGE.sources, [...new Set(said)], 'sources');
}

/** What was read, what is expected, and what to tell instead. */
function problemsHtml(problems: readonly Problem[]): Html {
  if (problems.length === 0) return NOTHING;
  const one = ({ option, got, expected, fix }: Problem): Html =>
    html`<li><p>${option === 'ask' ? '' : `${option}: `}${plain(expected)}</p><p>${PAGE.read}: ${got === '' ? PAGE.nothing : plain(got)}</p>${fix === undefined ? NOTHING : html`<p>${PAGE.type}: <kbd>${htmlLine(fix)}</kbd></p>`}</li>`;
  return html`<div class="problems"><h4>${PAGE.problem}</h4><ul>${each(problems, one)}</ul></div>`;
}

// What can be taken along: the sheets as files, made by whoever makes them.

/** Links to the files; the paper of the project's own units first. */
export function fileLinks({ units }: Sheets, tables: readonly TableFile[]): Html {
  const papers = units === 'metric' ? (['a4', 'letter'] as const) : (['letter', 'a4'] as const);
  const links = [
    ...papers.map((paper) => ({ get: paper, label: PAGE[paper] })),
    ...tables.map(({ key, label }) => ({ get: `csv-${key}`, label: PAGE.csv(label) })),
    { get: 'json', label: PAGE.json },
  ];
  return html`<section class="take" aria-labelledby="take-title"><h2 id="take-title">${PAGE.take}</h2><ul class="ways">${each(
    links,
    ({ get, label }) => html`<li><a class="button" href="?get=${encodeURIComponent(get)}" download>${label}</a></li>`,
  )}</ul><p>${PAGE.print}</p></section>`;
}

/** The file that a link asks for; undefined where there is none of that name. */
export async function fileFor(get: string, sheets: Sheets, files: FileMaker): Promise<WebFile | undefined> {
  if (get === 'letter' || get === 'a4') return files.pdf(sheets, get);
  if (get === 'json') return files.json(sheets);
  return get.startsWith('csv-') ? files.table(sheets, get.slice(4)) : undefined;
}
