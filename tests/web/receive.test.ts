/** Requests of the share page: what is let in, what is done, what is sent back, and that nobody learns of a link that is none. */

import { createHash } from 'node:crypto';
import { beforeAll, describe, expect, it } from 'vitest';
import type { Sheets } from '../../src/reply/job-sheet.ts';
import { flatSheets } from './fixture-sheets.ts';
import { HERE, type Stage, stage, TOKEN } from './stage.ts';

let sheets: Sheets;
beforeAll(async () => {
  sheets = await flatSheets();
});

const LINK = `/s/${TOKEN}`;
const OTHER = `/s/${'z'.repeat(22)}`;
const BAGS = { do: 'tick', tick: 'shopping:bags', wanted: 'yes' };

/** Everything of a response that somebody can see. */
async function seen(response: Response) {
  return { status: response.status, headers: [...response.headers], body: await response.text() };
}

function asks({ requested }: Stage): readonly string[] {
  return requested.filter((line) => line !== 'project sheets');
}

describe('a link', () => {
  it('shows what was shared, sealed', async () => {
    const response = await stage(sheets).visit(LINK);
    expect(response.status).toBe(200);
    const body = await response.text();
    expect(body).toContain('Contractor bags');
    expect(body).not.toContain(TOKEN);
    expect(body).not.toContain('project delete');
    const { headers } = response;
    // CSP Level 3, Referrer Policy, RFC 9111, and the robots header as search engines document it.
    expect(headers.get('content-security-policy')).toMatch(/default-src 'none'.*frame-ancestors 'none'/);
    expect(headers.get('content-security-policy')).not.toMatch(/unsafe|\*|data:|https?:/);
    expect(headers.get('referrer-policy')).toBe('no-referrer');
    expect(headers.get('cache-control')).toBe('private, no-store');
    expect(headers.get('x-content-type-options')).toBe('nosniff');
    expect(headers.get('x-robots-tag')).toContain('noindex');
    expect(headers.get('set-cookie')).toBeNull();
    expect(body).toContain('<meta name="robots" content="noindex');
  });

  it('is the same with a slash behind it, by way of a redirect', async () => {
    const response = await stage(sheets).visit(`${LINK}/`, { redirect: 'manual' });
    expect([response.status, response.headers.get('location')]).toEqual([308, LINK]);
  });

  it('answers HEAD as GET, without a body', async () => {
    const own = stage(sheets);
    const [head, get] = [await own.visit(LINK, { method: 'HEAD' }), await own.visit(LINK)];
    expect([head.status, await head.text()]).toEqual([200, '']);
    expect([...head.headers]).toEqual([...get.headers]);
  });

  it.each(['PUT', 'DELETE', 'PATCH', 'OPTIONS'])('takes no %s, whosever link it is', async (method) => {
    const own = stage(sheets);
    const [here, there] = [
      await seen(await own.visit(LINK, { method })),
      await seen(await own.visit(OTHER, { method })),
    ];
    expect(here.status).toBe(405);
    expect(new Map(here.headers).get('allow')).toBe('GET, HEAD, POST');
    expect(there).toEqual(here);
  });

  it('that was never given, has ended, or is no token tells the same in every way, and costs the same look', async () => {
    const own = stage(sheets);
    const get = async (path: string) => {
      const looks = own.store.looks;
      const answer = await seen(await own.visit(path));
      return { ...answer, looks: own.store.looks - looks };
    };
    own.links.set('e'.repeat(22), { role: 'tick', questions: [] });
    own.links.delete('e'.repeat(22));
    const first = await get(OTHER);
    expect(first.status).toBe(404);
    for (const path of [`/s/${'e'.repeat(22)}`, '/s/short', `/s/${'x'.repeat(900)}`, '/s/%00', `/s/${TOKEN}x`, '/s/']) {
      expect(await get(path)).toEqual(first);
    }
    for (const query of ['?get=state', '?get=letter', '?get=json', '?told=abc']) {
      expect(await get(`${OTHER}${query}`)).toEqual(first);
    }
    expect(own.requested).toEqual([]);
  });

  it('answers sealed whatever it answers', async () => {
    const own = stage(sheets);
    const post = { method: 'POST', body: new URLSearchParams(BAGS), headers: { Origin: HERE } };
    const evil = { ...post, headers: { Origin: 'https://evil.example' } };
    const large = { ...post, body: new URLSearchParams({ ...BAGS, text: 'x'.repeat(20_000) }) };
    const often = stage(sheets, async () => false);
    const broken = stage(sheets);
    broken.store.down = true;
    const answers = [
      [200, await own.visit(LINK)],
      [200, await own.visit(`${LINK}?get=state`)],
      [200, await own.visit(`${LINK}?get=json`)],
      [303, await own.visit(LINK, post)],
      [308, await own.visit(`${LINK}/`)],
      [403, await own.visit(LINK, evil)],
      [404, await own.visit(OTHER)],
      [404, await own.visit(`${LINK}?get=nothing`)],
      [405, await own.visit(LINK, { method: 'PUT' })],
      [413, await own.visit(LINK, large)],
      [422, await own.send({ do: 'nothing' })],
      [429, await often.visit(LINK)],
      [503, await broken.visit(LINK)],
    ] as const;
    expect(answers.map(([, { status }]) => status)).toEqual(answers.map(([status]) => status));
    const all = ['content-security-policy', 'x-robots-tag', 'x-frame-options', 'permissions-policy'];
    for (const [, { headers }] of answers) {
      for (const name of all) expect(headers.get(name)).not.toBeNull();
      expect(headers.get('referrer-policy')).toBe('no-referrer');
      expect(headers.get('cache-control')).toBe('private, no-store');
      expect(headers.get('x-content-type-options')).toBe('nosniff');
      // The link stands in no header but where it leads back to itself.
      const others = [...headers].filter(([name]) => name !== 'location').flat();
      expect(others.join(' ')).not.toContain(TOKEN);
    }
  });

  it('that is stopped is gone with the next request, whatever was kept of its page', async () => {
    const own = stage(sheets);
    expect((await own.visit(LINK)).status).toBe(200);
    own.links.delete(TOKEN);
    for (const path of [LINK, `${LINK}?get=state`, `${LINK}?get=json`])
      expect((await own.visit(path)).status).toBe(404);
    expect((await own.send(BAGS)).status).toBe(404);
    expect(asks(own)).toEqual([]);
  });

  it('is worked out once for as long as nothing of it changes', async () => {
    const own = stage(sheets);
    for (let i = 0; i < 5; i++) await own.visit(LINK);
    expect(own.requested).toEqual(['project sheets']);
    await own.send(BAGS);
    await own.visit(LINK);
    expect(own.requested.filter((line) => line === 'project sheets')).toHaveLength(2);
    own.clock.now += 3600_000;
    await own.visit(LINK);
    expect(own.requested.filter((line) => line === 'project sheets')).toHaveLength(3);
  });

  it('never shows what was kept for another', async () => {
    const own = stage(sheets);
    await own.visit(LINK);
    const other = 'q'.repeat(22);
    own.links.set(other, { role: 'look', questions: [] });
    own.sheets = { ...sheets, sheets: sheets.sheets.slice(0, 1) };
    const body = await (await own.visit(`/s/${other}`)).text();
    expect(body).not.toContain('Laying guide');
    expect(body).not.toContain('<form');
  });

  it('opened too often is put off, and so is one that leads nowhere', async () => {
    const own = stage(sheets, async () => false);
    const [here, there] = [await seen(await own.visit(LINK)), await seen(await own.visit(OTHER))];
    expect(here.status).toBe(429);
    expect(there).toEqual(here);
  });

  it('that could not be written once is written for the next who comes', async () => {
    const own = stage(sheets);
    own.broken = true;
    expect((await own.visit(LINK)).status).toBe(503);
    own.broken = false;
    expect((await own.visit(LINK)).status).toBe(200);
  });

  it('tells an outage of the store as one, and a fault of ours to the port', async () => {
    const own = stage(sheets);
    own.store.down = true;
    const response = await own.visit(LINK);
    expect(response.status).toBe(503);
    expect(await response.text()).toContain('can’t be reached');
    expect(own.faults).toHaveLength(1);
  });
});

describe('a tick', () => {
  it('is saved once, and says where it is on the way back', async () => {
    const own = stage(sheets);
    const response = await own.send(BAGS);
    expect(response.status).toBe(303);
    const [path, id] = (response.headers.get('location') ?? '').split('#');
    expect(path).toBe(LINK);
    const body = await (await own.visit(LINK)).text();
    expect(body).toContain(`id="${id}" data-tick="shopping:bags" data-ticked="true"`);
    expect(body).toContain('ticked by Sam, Sat, Nov 21, 12:00');
    await own.send(BAGS);
    expect(asks(own)).toEqual(['project shopping bought all bags']);
    await own.send({ ...BAGS, wanted: 'no' });
    expect(asks(own)).toEqual(['project shopping bought all bags', 'project shopping return bags']);
  });

  it('sent ten times at once is ticked once', async () => {
    const own = stage(sheets);
    const all = await Promise.all(Array.from({ length: 10 }, () => own.send(BAGS)));
    expect(all.map(({ status }) => status)).toEqual(Array.from({ length: 10 }, () => 303));
    expect(asks(own)).toHaveLength(1);
  });

  it('that another made meanwhile is no failure', async () => {
    const own = stage(sheets);
    own.instead = (line) => {
      if (line === 'project sheets') return undefined;
      own.sheets = {
        ...sheets,
        sheets: sheets.sheets.map((one) => ({
          ...one,
          ...(one.ticks && { ticks: one.ticks.map((tick) => ({ ...tick, ticked: true })) }),
        })),
      };
      return { problems: [{ option: 'ask', got: '', expected: 'Nothing is left of it.', fix: 'list' }] };
    };
    expect((await own.send(BAGS)).status).toBe(303);
  });

  it('comes back as data for the script, with all that stands ticked', async () => {
    const own = stage(sheets);
    const response = await own.send(BAGS, { Accept: 'application/json' });
    const came = (await response.json()) as { ok: boolean; ticks: Record<string, unknown[]> };
    expect(came.ok).toBe(true);
    expect(came.ticks['shopping:bags']?.[0]).toBe(true);
    const state = (await (await own.visit(`${LINK}?get=state`)).json()) as typeof came;
    expect(state.ticks).toEqual(came.ticks);
  });

  it('of what is not on the page, and a form that is none of its own, do nothing', async () => {
    const own = stage(sheets);
    for (const fields of [
      { ...BAGS, tick: 'shopping:nothing' },
      { ...BAGS, wanted: 'maybe' },
      { do: 'project delete' },
      { do: 'measure', question: 'q1', text: '12 ft' },
      { ask: 'project delete' },
    ]) {
      expect((await own.send(fields)).status).toBe(422);
    }
    expect(asks(own)).toEqual([]);
  });

  it('is taken from the page alone', async () => {
    const own = stage(sheets);
    const from = (headers: Readonly<Record<string, string>>) => own.send(BAGS, headers);
    // Fetch Metadata and the Origin header, as browsers send them.
    for (const headers of [
      { Origin: 'https://evil.example' },
      { Origin: 'null' },
      { Origin: 'null', 'Sec-Fetch-Site': 'cross-site' },
      { Origin: HERE, 'Sec-Fetch-Site': 'cross-site' },
      { Origin: HERE, 'Sec-Fetch-Site': 'same-site' },
      { Origin: 'not an address' },
      { 'Content-Type': 'text/plain' },
      { 'Content-Type': 'application/json' },
    ]) {
      expect([headers, (await from(headers)).status]).toEqual([headers, 403]);
    }
    expect(own.requested).toEqual([]);
    expect((await from({ Origin: 'null', 'Sec-Fetch-Site': 'same-origin' })).status).toBe(303);
  });

  it('is taken by the key of its page where the browser does not tell where it comes from, as over plain HTTP', async () => {
    const own = stage(sheets);
    own.links.set('k'.repeat(22), { role: 'tick', questions: [] });
    const keyOf = async (token: string) =>
      / name="key" value="([\w-]{22})"/.exec(await (await own.visit(`/s/${token}`)).text())?.[1] ?? '';
    const [key, other] = [await keyOf(TOKEN), await keyOf('k'.repeat(22))];
    expect(new Set([key, other, ''])).toHaveProperty('size', 3);
    // What browsers send with a form of a page that gives no referrer: Fetch, “append a request Origin header”.
    for (const wrong of [{}, { key: '' }, { key: other }, { key: `${key}x` }]) {
      expect((await own.send({ ...BAGS, ...wrong }, { Origin: 'null' })).status).toBe(403);
    }
    for (const headers of [{ Origin: 'https://evil.example' }, { Origin: 'null', 'Sec-Fetch-Site': 'cross-site' }]) {
      expect((await own.send({ ...BAGS, key }, headers)).status).toBe(403);
    }
    expect(asks(own)).toEqual([]);
    expect((await own.send({ ...BAGS, key }, { Origin: 'null' })).status).toBe(303);
    expect(asks(own)).toHaveLength(1);
  });

  it('is counted by what is sent, apart from what is looked at, and told when to come again', async () => {
    const own = stage(sheets, async (of) => of !== 'permission');
    const [here, there] = [
      await seen(await own.send(BAGS)),
      await seen(
        await own.visit(OTHER, { method: 'POST', body: new URLSearchParams(BAGS), headers: { Origin: HERE } }),
      ),
    ];
    expect(there).toEqual(here);
    expect([here.status, new Map(here.headers).get('retry-after')]).toEqual([429, '60']);
    expect((await own.visit(LINK)).status).toBe(200);
    expect(own.requested).toEqual(['project sheets']);
  });

  it('from elsewhere is refused alike, whosever link it is', async () => {
    const own = stage(sheets);
    const to = async (path: string) =>
      seen(
        await own.visit(path, {
          method: 'POST',
          body: new URLSearchParams(BAGS),
          headers: { Origin: 'https://evil.example' },
        }),
      );
    expect(await to(OTHER)).toEqual(await to(LINK));
  });

  it('larger than any form is refused', async () => {
    expect((await stage(sheets).send({ ...BAGS, text: 'x'.repeat(20_000) })).status).toBe(413);
  });
});

describe('what is told on the page', () => {
  const NOTE = { do: 'note', once: 'abcdefgh12345678', text: 'stain by the window' };

  it('is noted once, however often it is sent, and what came of it is shown once', async () => {
    const own = stage(sheets);
    const response = await own.send(NOTE);
    const to = response.headers.get('location') ?? '';
    expect(to).toMatch(/^\/s\/[^?]+\?told=[\w-]{22}$/);
    expect(await (await own.visit(to)).text()).toContain('Done: project log do: note stain by the window');
    await own.send(NOTE);
    expect(asks(own)).toEqual(['project log do: note stain by the window']);
  });

  it('is never taken for options', async () => {
    const own = stage(sheets);
    await own.send({ ...NOTE, text: 'note do: remove 3, to: everybody' });
    expect(asks(own)).toEqual(['project log do: note note do∶ remove 3, to∶ everybody']);
  });

  it('is sent again where it was not kept', async () => {
    const own = stage(sheets);
    own.instead = (line) => (line.startsWith('project log') ? { reference: '0badcafe', outage: true } : undefined);
    expect((await own.send(NOTE)).status).toBe(503);
    own.instead = undefined;
    expect((await own.send(NOTE)).status).toBe(303);
    expect(asks(own)).toHaveLength(2);
  });

  it('answers a question that is open, and what it came to is shown', async () => {
    const own = stage(sheets);
    own.links.set(TOKEN, {
      role: 'measure',
      questions: [
        { id: 'q1', label: 'bedroom, wall 3', example: `11' 6"`, line: (text) => `project measure q1 ${text}` },
      ],
    });
    expect(await (await own.visit(LINK)).text()).toContain('bedroom, wall 3');
    await own.send({ do: 'measure', question: 'q1', text: `11' 6 1/4"` });
    await own.send({ do: 'measure', question: 'q2', text: `11' 6 1/4"` });
    expect(asks(own)).toEqual([`project measure q1 11' 6 1/4"`]);
  });

  it('comes back with what is wrong and what to type instead', async () => {
    const own = stage(sheets);
    own.instead = (line) =>
      line === 'project sheets'
        ? undefined
        : { problems: [{ option: 'do', got: '<b>', expected: 'Not <i>that</i>.', fix: 'a & b' }] };
    const response = await own.send(NOTE);
    expect(response.status).toBe(422);
    const body = await response.text();
    expect(body).toContain('Not &lt;i&gt;that&lt;/i&gt;.');
    expect(body).toContain('<kbd>a &amp; b</kbd>');
    expect(body).toContain('Contractor bags');
  });
});

describe('files', () => {
  it.each([
    ['letter', 'application/pdf', 'job-letter.pdf'],
    ['a4', 'application/pdf', 'job-a4.pdf'],
    ['csv-shopping', 'text/csv', 'shopping.csv'],
    ['json', 'application/json', 'job.json'],
  ])('%s comes to be kept, under its name', async (get, type, name) => {
    const response = await stage(sheets).visit(`${LINK}?get=${get}`);
    expect(response.headers.get('content-type')).toBe(type);
    expect(response.headers.get('content-disposition')).toContain(`attachment; filename="${name}"`);
    expect(response.headers.get('cache-control')).toBe('private, no-store');
  });

  it('of no such name is not there', async () => {
    expect((await stage(sheets).visit(`${LINK}?get=csv-secrets`)).status).toBe(404);
    expect((await stage(sheets).visit(`${LINK}?get=constructor`)).status).toBe(404);
  });

  it('of the page itself stay the same for good under their path, and are nowhere else', async () => {
    const own = stage(sheets);
    const body = await (await own.visit(LINK)).text();
    const paths = [...body.matchAll(/(?:src|href)="(\/page\/[^"]+)"/g)].map((match) => match[1] ?? '');
    expect(paths.map((path) => path.replace(/.*\//, ''))).toEqual(['icon.svg', 'page.css', 'page.js']);
    for (const path of paths) {
      const response = await own.visit(path);
      expect([response.status, response.headers.get('cache-control')]).toEqual([
        200,
        'public, max-age=31536000, immutable',
      ]);
      expect((await response.arrayBuffer()).byteLength).toBeGreaterThan(100);
    }
    for (const path of ['/page/x/page.js', '/page/../package.json', '/page/'])
      expect((await own.visit(path)).status).toBe(404);
  });
});

describe('an emergency', () => {
  it('is answered before the link, the allowance and the store are looked at, in any length of text', async () => {
    const own = stage(sheets, async () => false);
    own.store.down = true;
    const text = `${'We lay planks. '.repeat(400)}i smell gas ${'and so on. '.repeat(600)}`;
    const form = { method: 'POST', headers: { Origin: HERE }, body: new URLSearchParams({ do: 'note', text }) };
    const response = await own.visit(OTHER, form);
    expect(response.status).toBe(422);
    expect(response.headers.get('content-security-policy')).toContain("default-src 'none'");
    expect(await response.text()).toContain('Leave now, touch no switch, and call from outside.');
    const script = await own.visit(LINK, { ...form, headers: { Origin: HERE, Accept: 'application/json' } });
    expect(await script.json()).toMatchObject({ ok: false, said: expect.stringContaining('Leave now') });
  });
});

it('a token is known by its hash alone', async () => {
  const own = stage(sheets);
  await own.visit(LINK);
  await own.send({ do: 'note', once: 'abcdefgh12345678', text: 'stain' });
  const kept = JSON.stringify([...own.keys, ...own.requested]);
  expect(kept).not.toContain(TOKEN);
  expect(kept).toContain(createHash('sha256').update(TOKEN).digest('hex'));
});
