/** The page's script: saves what is ticked and told at once, sends again what was lost on the way, and shows one piece at a time at the saw. */

import { sawCards } from './saw.ts';
import { type Fields, Unsent } from './unsent.ts';

/** Milliseconds between looks at what others ticked, and between tries to send again: the first, and the longest. */
const LOOK = 20_000;
const AGAIN = 4_000;
const AGAIN_MOST = 60_000;

interface Standing {
  readonly lists?: string;
  readonly ticks?: Readonly<Record<string, readonly [ticked: boolean, who: string, label: string]>>;
}

interface Came extends Standing {
  readonly ok: boolean;
  readonly said?: string;
  readonly once?: string;
}

const { dataset } = document.body;
const words: Readonly<Record<string, string>> = JSON.parse(dataset.words ?? '{}');
const unsent = new Unsent(`page ${dataset.page}`, storage());
const live = document.getElementById('live');
const refusals = new Map<string, string>();
let again = AGAIN;
let sending = false;
let ended = false;
let timer: number | undefined;

function storage(): Storage | undefined {
  try {
    return window.localStorage;
  } catch {
    return undefined;
  }
}

function say(key: string): string {
  return words[key] ?? '';
}

function fieldsOf(form: HTMLFormElement): Fields {
  return Object.fromEntries([...new FormData(form)].map(([name, value]) => [name, String(value)]));
}

/** What a form sends is known by: a tick by what is ticked, a note by its own name, a measurement by its question. */
function idOf(fields: Fields): string {
  return `${fields.do} ${fields.tick ?? fields.once ?? fields.question ?? ''}`;
}

/** Shows every tick as it is wanted here, else as it stands. */
function paint(standing: Standing = {}): void {
  const waiting = unsent.all();
  for (const item of document.querySelectorAll<HTMLElement>('[data-tick]')) {
    const name = item.dataset.tick ?? '';
    const now = standing.ticks?.[name];
    if (now) {
      item.dataset.ticked = String(now[0]);
      put(item, '.who', now[1]);
      put(item, '.label', now[2]);
    }
    const wanted = waiting.get(`tick ${name}`)?.wanted;
    const ticked = wanted === undefined ? item.dataset.ticked === 'true' : wanted === 'yes';
    item.querySelector('button')?.setAttribute('aria-checked', String(ticked));
    item.querySelector('input[name=wanted]')?.setAttribute('value', ticked ? 'no' : 'yes');
    item.classList.toggle('ticked', ticked);
    item.classList.toggle('unsaved', wanted !== undefined);
    const refused = refusals.get(`tick ${name}`);
    put(item, '.state', wanted === undefined ? (refused ?? '') : standingOf());
  }
  for (const form of ended ? document.querySelectorAll<HTMLFormElement>('form[data-send]') : []) {
    if (waiting.has(idOf(fieldsOf(form)))) put(form, '.state', say('lost'));
  }
  const count = waiting.size;
  const left =
    count === 0 || again === AGAIN ? '' : count === 1 ? say('one') : say('many').replace('{n}', String(count));
  if (standing.lists !== undefined && standing.lists !== dataset.lists) stale();
  else if (!live?.querySelector('a')) tell(ended ? say('ended') : left);
}

/** What is said at its place of what is not saved yet. */
function standingOf(): string {
  return say(ended ? 'lost' : again > AGAIN ? 'waiting' : 'saving');
}

function put(item: HTMLElement, place: string, text: string): void {
  const found = item.querySelector(place);
  if (found && found.textContent !== text) found.textContent = text;
}

function tell(text: string): void {
  if (live && live.textContent !== text) live.textContent = text;
}

/** Other lists stand there now: the page is opened again when its reader wants it, not under their hands. */
function stale(): void {
  if (!live || live.querySelector('a')) return;
  const link = document.createElement('a');
  link.className = 'button';
  link.href = location.pathname;
  link.textContent = say('fresh');
  live.replaceChildren(`${say('stale')} `, link);
}

/** Sends what waits, one after the other; what cannot be reached is tried again later. */
async function send(): Promise<void> {
  if (sending || ended) return;
  sending = true;
  window.clearTimeout(timer);
  try {
    for (;;) {
      const [next] = unsent.all();
      if (!next) break;
      const came = await sent(next[1]);
      if (came === 'later') {
        again = Math.min(again * 2, AGAIN_MOST);
        timer = window.setTimeout(send, again);
        break;
      }
      if (came === 'ended') break;
      again = AGAIN;
      unsent.done(next[0], next[1]);
      settle(next[0], came);
      paint(came);
    }
  } finally {
    sending = false;
    paint();
  }
}

async function sent(fields: Fields): Promise<Came | 'later' | 'ended'> {
  try {
    const response = await fetch(location.pathname, {
      method: 'POST',
      headers: { Accept: 'application/json' },
      body: new URLSearchParams(fields),
      cache: 'no-store',
    });
    if (!isOurs(response) || response.status === 429 || response.status >= 500) return 'later';
    if (response.status === 404) return end();
    const isData = response.headers.get('content-type')?.startsWith('application/json');
    return isData ? ((await response.json()) as Came) : { ok: false, said: say('unknown') };
  } catch {
    return 'later';
  }
}

/** Whether it is the page that answered, and not something in between, such as a network that asks for a password first. */
function isOurs({ headers }: Response): boolean {
  return headers.has('x-robots-tag');
}

function end(): 'ended' {
  ended = true;
  return 'ended';
}

/** Shows at its place what came of something sent. */
function settle(id: string, came: Came): void {
  if (came.ok) refusals.delete(id);
  else refusals.set(id, `${say('refused')}: ${came.said ?? ''}`);
  for (const form of document.querySelectorAll<HTMLFormElement>('form[data-send]')) {
    if (idOf(fieldsOf(form)) !== id) continue;
    const state = form.querySelector('.state');
    if (state) state.textContent = came.ok ? (came.said ?? '') : (refusals.get(id) ?? '');
    if (!came.ok) continue;
    form.reset();
    const once = form.querySelector<HTMLInputElement>('input[name=once]');
    if (once && came.once) once.value = came.once;
  }
}

/** What others ticked meanwhile. */
async function look(): Promise<void> {
  if (document.hidden || ended || sending) return;
  if (unsent.all().size > 0) return send();
  try {
    const response = await fetch(`${location.pathname}?get=state`, { cache: 'no-store' });
    if (!isOurs(response)) return;
    if (response.status === 404) end();
    paint(response.ok ? ((await response.json()) as Standing) : {});
  } catch {
    // Nobody waits for it: the next look may succeed.
  }
}

document.addEventListener('submit', (event) => {
  const form = event.target;
  if (!(form instanceof HTMLFormElement) || form.method !== 'post') return;
  event.preventDefault();
  const fields = fieldsOf(form);
  const id = idOf(fields);
  unsent.put(id, fields);
  refusals.delete(id);
  const state = form.dataset.send === undefined ? null : form.querySelector('.state');
  if (state) state.textContent = navigator.onLine ? say('saving') : say('waiting');
  paint();
  void send();
});
window.addEventListener('online', () => {
  again = AGAIN;
  void send();
});
window.addEventListener('offline', () => {
  if (again === AGAIN) again = AGAIN * 2;
  paint();
});
for (const moment of ['focus', 'pageshow'] as const) window.addEventListener(moment, () => void look());
document.addEventListener('visibilitychange', () => void look());
window.setInterval(() => void look(), LOOK);
// A link to something in a sheet opens it, and paper has all of them.
function openFor(inside: Element | null): void {
  for (let at = inside?.closest('details'); at; at = at.parentElement?.closest('details')) at.open = true;
}
openFor(document.getElementById(location.hash.slice(1)));
window.addEventListener('hashchange', () => openFor(document.getElementById(location.hash.slice(1))));
window.addEventListener('beforeprint', () => {
  for (const sheet of document.querySelectorAll('details')) sheet.open = true;
});
sawCards();
paint();
void send();
