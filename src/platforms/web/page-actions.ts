/** What is sent from the page as asks: only ticks that the page itself shows, notes, and measurements that were asked for. */

import { createHash } from 'node:crypto';
import type { Asker } from '../../accounts/records.ts';
import type { Answer } from '../../chat/pipeline.ts';
import type { Problem } from '../../reply/reply.ts';
import { PAGE_NOTES } from '../../text/page-text.ts';
import { LONGEST_MEASURE, LONGEST_PAGE_NOTE, NOTE_KNOWN } from './limits.ts';
import { htmlLine } from './render.ts';
import type { PageCache } from './share-page.ts';
import { tickName } from './ticks.ts';
import type { OpenedLink, WebPorts } from './types.ts';

/** What came of it: done, or done already, and then with nothing to say; or the answer that says why not. */
export type PageAction =
  | { readonly done: true; readonly answer?: Answer; readonly tick?: string }
  | { readonly done: false; readonly answer: Answer };

/** Whoever has a link, while it is good. */
export interface Guest {
  readonly asker: Asker;
  readonly opened: OpenedLink;
}

/** Does what a form asks for. A form that is none of the page's does nothing. */
export async function answerPageAction(
  form: URLSearchParams,
  guest: Guest,
  pages: PageCache,
  ports: WebPorts,
): Promise<PageAction> {
  switch (form.get('do')) {
    case 'tick':
      return tick(form, guest, pages, ports);
    case 'note':
      return note(form, guest.asker, ports);
    case 'measure':
      return measure(form, guest, ports);
    default:
      return refused(PAGE_NOTES.unknown);
  }
}

async function tick(
  form: URLSearchParams,
  { asker, opened }: Guest,
  pages: PageCache,
  ports: WebPorts,
): Promise<PageAction> {
  const [name, wanted] = [form.get('tick') ?? '', form.get('wanted')];
  if (wanted !== 'yes' && wanted !== 'no') return refused(PAGE_NOTES.unknown);
  const stands = async (now: OpenedLink) => {
    const gathered = await pages.gathered(asker, now);
    if (!('sheets' in gathered)) return { instead: gathered.instead };
    const all = gathered.sheets.sheets.flatMap((sheet) => (sheet.ticks ?? []).map((one) => ({ sheet, one })));
    return { tick: all.find(({ sheet, one }) => tickName(sheet, one) === name)?.one };
  };
  const before = await stands(opened);
  if (before.instead) return { done: false, answer: before.instead };
  if (!before.tick) return refused(PAGE_NOTES.noTick);
  if (before.tick.ticked === (wanted === 'yes')) return { done: true, tick: name };
  const answer = await lastAnswer(ports, asker, wanted === 'yes' ? before.tick.ask : before.tick.undo);
  if ('headline' in answer) return { done: true, tick: name };
  // Another may have ticked it meanwhile: what was wanted is then the case all the same.
  const now = 'problems' in answer ? await ports.opened(asker) : undefined;
  const after = now && (await stands(now));
  return after?.tick?.ticked === (wanted === 'yes') ? { done: true, tick: name } : { done: false, answer };
}

async function note(form: URLSearchParams, asker: Asker, ports: WebPorts): Promise<PageAction> {
  const text = htmlLine(form.get('text') ?? '').slice(0, LONGEST_PAGE_NOTE);
  const once = form.get('once') ?? '';
  if (text === '') return refused(PAGE_NOTES.empty);
  if (!/^[\w-]{8,40}$/.test(once)) return refused(PAGE_NOTES.unknown);
  // Two who have the same page open may each write something else.
  const key = `page-note:${asker.id}:${once}:${createHash('sha256').update(text).digest('base64url')}`;
  if (ports.store && !(await ports.store.kept.claim(key, NOTE_KNOWN))) return { done: true };
  const answer = await lastAnswer(ports, asker, `project log do: note ${unlabelled(text)}`);
  if ('headline' in answer) return { done: true, answer };
  // It was not kept: sent again, it must be.
  await ports.store?.kept.delete(key);
  return { done: false, answer };
}

async function measure(form: URLSearchParams, { asker, opened }: Guest, ports: WebPorts): Promise<PageAction> {
  const question = opened.questions.find(({ id }) => id === form.get('question'));
  const text = htmlLine(form.get('text') ?? '').slice(0, LONGEST_MEASURE);
  if (!question) return refused(PAGE_NOTES.noQuestion);
  if (text === '') return refused(PAGE_NOTES.empty);
  const answer = await lastAnswer(ports, asker, question.line(unlabelled(text)));
  return { done: 'headline' in answer, answer };
}

/** A short word and a colon would be read as the name of an option: a colon that is none stands there instead. */
function unlabelled(text: string): string {
  return text.replace(/:(?<=(?:^|[\s,;])[\p{L}-]{1,12}\s*:)/gu, '∶');
}

/** The answer that stands. */
async function lastAnswer({ answer, preferences }: WebPorts, asker: Asker, text: string): Promise<Answer> {
  let last: Answer | undefined;
  for await (const one of answer({ asker, preferences, text })) last = one;
  if (!last) throw new Error('an ask without an answer');
  return last;
}

function refused(problem: Problem): PageAction {
  return { done: false, answer: { problems: [problem] } };
}
