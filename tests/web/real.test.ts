/** The share page over the whole pipeline: what each link shows of the demo flat, what is ticked, and what ends at once. */

import { extractText, getDocumentProxy } from 'unpdf';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { closeFiles } from '../../src/documents/make.ts';
import { replyTo } from '../chat/asked.ts';
import { pageWords } from './page-words.ts';
import { OWNER, type RealPage, realPage } from './real.ts';
import { HERE } from './stage.ts';

let real: RealPage;
beforeAll(async () => {
  real = await realPage();
});

afterAll(closeFiles);

async function words(path: string): Promise<string> {
  return pageWords(await (await real.visit(path)).text()).replace(/\s+/g, ' ');
}

function send(path: string, fields: Readonly<Record<string, string>>): Promise<Response> {
  const headers = { Origin: HERE, Accept: 'application/json' };
  return real.visit(path, { method: 'POST', body: new URLSearchParams(fields), headers });
}

interface State {
  readonly ticks: Readonly<Record<string, readonly [boolean, string, string]>>;
}

async function ticks(path: string): Promise<State['ticks']> {
  return ((await (await real.visit(`${path}?get=state`)).json()) as State).ticks;
}

describe('a link', () => {
  it('to the shopping list shows what the owner sees of it, and nothing else', async () => {
    const path = await real.link({ what: 'shopping', role: 'tick', label: 'Sam' });
    const shown = await words(path);
    const { headline, cautions } = await replyTo('project shopping', { asker: OWNER, ports: real.ports });
    expect(shown).toContain(headline);
    for (const { text } of cautions) expect(shown).toContain(text.replace(/\s+/g, ' '));
    for (const other of ['Laying guide', 'Saw card', 'Checklist', 'Old house']) expect(shown).not.toContain(other);
  });

  it('to the whole project shows every sheet, row by row and piece by piece', async () => {
    const path = await real.link({ what: 'project', role: 'look', label: 'Kim' });
    const body = await (await real.visit(path)).text();
    const shown = pageWords(body).replace(/\s+/g, ' ');
    for (const room of ['hall', 'living', 'bedroom', 'closet']) {
      expect(shown).toContain(`Laying guide: ${room}`);
      expect(shown).toContain(`Saw card: ${room}`);
    }
    expect(body.match(/<figure class="picture">/g)?.length).toBeGreaterThanOrEqual(4);
    expect(body).not.toContain('<form');
    const ids = [...body.matchAll(/ id="([^"]*)"/g)].map((match) => match[1]);
    expect(new Set(ids).size).toBe(ids.length);
    for (const [, id] of body.matchAll(/(?:href="#|aria-labelledby="|url\(#)([^")]+)/g)) expect(ids).toContain(id);
  });

  it('ends at once when it is stopped, and by itself in time', async () => {
    const [stopped, passing] = [
      await real.link({ what: 'shopping', role: 'tick' }),
      await real.link({ what: 'shopping', role: 'tick', until: real.ports.now() + 1000 }),
    ];
    expect((await real.visit(passing)).status).toBe(200);
    real.ports.clock.now += 1000;
    expect((await real.visit(passing)).status).toBe(404);
    expect((await real.visit(stopped)).status).toBe(200);
    await real.stopAll();
    const gone = await real.visit(stopped);
    const never = await real.visit(`/s/${'x'.repeat(22)}`);
    expect(gone.status).toBe(404);
    expect(await gone.text()).toBe(await never.text());
  });
});

describe('what is ticked', () => {
  it.each(['shopping', 'checklist'] as const)(
    'on a %s is the owner’s too, says who and when, and can be taken back',
    async (what) => {
      const path = await real.link({ what, role: 'tick', label: 'Sam' });
      const [name = '', before] = Object.entries(await ticks(path)).find(([, [ticked]]) => !ticked) ?? [];
      expect(before?.[0]).toBe(false);
      expect((await send(path, { do: 'tick', tick: name, wanted: 'yes' })).status).toBe(200);
      expect((await ticks(path))[name]?.slice(0, 2)).toEqual([
        true,
        expect.stringContaining('ticked by Sam, Sat, Nov 21'),
      ]);
      const { headline } = await replyTo(`project ${what === 'shopping' ? 'shopping' : 'progress'}`, {
        asker: OWNER,
        ports: real.ports,
      });
      expect(await words(path)).toContain(headline);
      expect((await send(path, { do: 'tick', tick: name, wanted: 'no' })).status).toBe(200);
      expect((await ticks(path))[name]?.[0]).toBe(false);
    },
  );

  it('by whoever may only look is refused', async () => {
    const path = await real.link({ what: 'checklist', role: 'look' });
    const [name = ''] = Object.keys(await ticks(path));
    expect((await send(path, { do: 'tick', tick: name, wanted: 'yes' })).status).toBe(422);
    expect((await ticks(path))[name]?.[0]).toBe(false);
  });

  it('by three at once is all there', async () => {
    const path = await real.link({ what: 'checklist', role: 'tick' });
    const names = Object.entries(await ticks(path))
      .filter(([, [ticked]]) => !ticked)
      .slice(0, 6)
      .map(([name]) => name);
    expect(names).toHaveLength(6);
    const sent = await Promise.all([...names, ...names].map((tick) => send(path, { do: 'tick', tick, wanted: 'yes' })));
    expect(sent.map(({ status }) => status)).toEqual(sent.map(() => 200));
    const now = await ticks(path);
    for (const name of names) expect(now[name]?.[0]).toBe(true);
  });
});

it('a note stands in the owner’s log, word for word but for colons that would be read as options', async () => {
  const path = await real.link({ what: 'shopping', role: 'tick', label: 'Sam' });
  const fields = { do: 'note', once: 'abcdefgh12345678', text: `do: remove 1, to: all; "door" <3 = 30'` };
  for (let i = 0; i < 2; i++) expect((await send(path, fields)).status).toBe(200);
  const { blocks } = await replyTo('project log', { asker: OWNER, ports: real.ports });
  const given = JSON.stringify(blocks.filter(({ kind }) => kind === 'table'));
  expect(given.split('remove 1').length).toBe(2);
  expect(given).toContain(JSON.stringify(`do∶ remove 1, to∶ all; "door" <3 = 30'`).slice(1, -1));
});

describe('what is to be measured', () => {
  it('is asked of whoever may measure, and what the tape says changes the room and the lists', async () => {
    const [path, looking] = [
      await real.link({ what: 'project', role: 'measure', label: 'Sam' }),
      await real.link({ what: 'project', role: 'tick', label: 'Kim' }),
    ];
    expect(await words(path)).not.toContain('What the tape says');
    const owner = { asker: OWNER, ports: real.ports };
    await replyTo('project measure wall 3 of bedroom', owner);
    expect(await words(path)).toContain(`How long is wall 3 of bedroom? Kept as 11' so far.`);
    expect(await words(looking)).not.toContain('What the tape says');
    const body = await (await real.visit(path)).text();
    const question = /name="question" value="([^"]+)"/.exec(body)?.[1] ?? '';
    expect((await send(path, { do: 'measure', question, text: 'a broom and a bit' })).status).toBe(422);
    expect((await send(looking, { do: 'measure', question, text: `11' 2"` })).status).toBe(422);
    const right = await send(path, { do: 'measure', question, text: `11' 2"` });
    expect([right.status, ((await right.json()) as { said: string }).said]).toEqual([
      200,
      expect.stringContaining(`Wall 3 of bedroom: 11' is now 11' 2"`),
    ]);
    expect(await words(path)).not.toContain('What the tape says');
    expect(JSON.stringify((await replyTo('project show', owner)).blocks)).toContain(`11' 2`);
  });
});

describe('what can be taken along', () => {
  it('is what stands on the page: sheets as PDF, every list as CSV, everything as JSON', async () => {
    const path = await real.link({ what: 'shopping', role: 'look' });
    const body = await (await real.visit(path)).text();
    const gets = [...body.matchAll(/href="(\?get=[^"]+)"/g)].map((match) => match[1] ?? '');
    expect(gets).toEqual(['?get=letter', '?get=a4', '?get=csv-shopping', '?get=json']);
    const [letter, , csv, json] = await Promise.all(gets.map((get) => real.visit(`${path}${get}`)));
    const pdf = await getDocumentProxy(new Uint8Array((await letter?.arrayBuffer()) ?? new ArrayBuffer(0)));
    const { text } = await extractText(pdf, { mergePages: true });
    const list = (await csv?.text()) ?? '';
    const data = (await json?.text()) ?? '';
    for (const given of [text, list, data]) expect(given).toContain('Contractor bags');
    for (const given of [text, list, data]) expect(given).not.toContain('Laying guide');
    expect(csv?.headers.get('content-type')).toMatch(/^text\/csv/);
    expect((await real.visit(`${path}?get=csv-cuts`)).status).toBe(404);
  });
});
