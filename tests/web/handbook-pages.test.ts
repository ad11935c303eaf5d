/** The handbook's pages: every entry at its address for everybody, in either units, and a link to it in the chat. */

import { beforeAll, describe, expect, it } from 'vitest';
import { briefOf } from '../../src/chat/brief.ts';
import { ENTRIES, entryOf } from '../../src/handbook/all-entries.ts';
import { entryCautions, entryText } from '../../src/handbook/answer.ts';
import { TOPICS } from '../../src/handbook/entry.ts';
import { DEFAULT_PREFERENCES } from '../../src/input/reading.ts';
import { saySource } from '../../src/text/answer-text.ts';
import { ASKER, replyTo } from '../chat/asked.ts';
import { portsInMemory } from '../chat/demo-flat.ts';
import { flatSheets } from './fixture-sheets.ts';
import { pageWords } from './page-words.ts';
import { type Stage, stage } from './stage.ts';

let own: Stage;
beforeAll(async () => {
  own = stage(await flatSheets());
});

async function body(path: string): Promise<string> {
  const response = await own.visit(path);
  expect([path, response.status]).toEqual([path, 200]);
  return response.text();
}

const words = (html: string): string => pageWords(html).replace(/\s+/g, ' ');
const bare = (text: string): string => text.replace(/\s+/g, ' ').trim();
const links = (html: string): readonly string[] =>
  [...html.matchAll(/href="(\/handbook[^"#]*)/g)].map((match) => match[1] ?? '');

describe('the index', () => {
  it('lists every entry under its topic, and needs no script', async () => {
    const html = await body('/handbook');
    expect(html).not.toContain('<script');
    const found = new Set(links(html));
    for (const { id, title, topic } of ENTRIES) {
      expect(found).toContain(`/handbook/${id}`);
      const section = html.split('<section ').find((part) => part.startsWith(`id="${topic.replace(/ /g, '-')}"`)) ?? '';
      expect(words(`<${section}`)).toContain(bare(title));
    }
    for (const topic of TOPICS) expect(html).toContain(`href="#${topic.replace(/ /g, '-')}"`);
  });

  it('leads a metric reader to metric pages', async () => {
    const found = links(await body('/handbook/metric')).filter((path) => path !== '/handbook');
    expect(found.length).toBeGreaterThanOrEqual(ENTRIES.length);
    expect(found.filter((path) => !path.endsWith('/metric'))).toEqual([]);
  });
});

describe('an entry’s page', () => {
  it.each([false, true])(
    'says all of it, with figures, standing, sources and cautions (metric: %s)',
    async (metric) => {
      for (const entry of ENTRIES) {
        const html = await body(`/handbook/${entry.id}${metric ? '/metric' : ''}`);
        const shown = words(html);
        const { lead, lines, more, figures, sources } = entryText(entry, metric);
        const cautions = entryCautions(entry, metric).map(({ text }) => text);
        for (const text of [entry.title, lead, ...lines, ...more, ...cautions]) expect(shown).toContain(bare(text));
        for (const { name, us, metric: other = us } of figures) {
          for (const text of [name, metric ? other : us]) expect(shown).toContain(bare(text));
        }
        for (const source of sources) {
          expect(shown).toContain(bare(saySource(source)));
          expect(shown).toContain(source.standing);
        }
        for (const id of entry.near ?? []) expect(links(html)).toContain(`/handbook/${id}${metric ? '/metric' : ''}`);
        expect(html).not.toContain('<script');
      }
    },
  );

  it('leads only to pages that are there', async () => {
    const html = await body(`/handbook/${ENTRIES[0]?.id}`);
    expect(links(html).length).toBeGreaterThan(3);
    for (const path of new Set(links(html))) expect((await own.visit(path)).status).toBe(200);
  });

  it('is for everybody: kept by whoever likes, sealed like any page, and the same until its words change', async () => {
    const first = await own.visit('/handbook/gap');
    const { headers } = first;
    expect(headers.get('cache-control')).toBe('public, max-age=3600');
    expect(headers.get('content-security-policy')).toMatch(/default-src 'none'.*frame-ancestors 'none'/);
    expect(headers.get('content-security-policy')).not.toMatch(/unsafe|\*|data:|https?:/);
    expect(headers.get('x-content-type-options')).toBe('nosniff');
    expect(headers.get('x-robots-tag')).toBeNull();
    expect(headers.get('set-cookie')).toBeNull();
    const again = { headers: { 'If-None-Match': headers.get('etag') ?? '' } };
    expect((await own.visit('/handbook/gap', again)).status).toBe(304);
    const packed = await own.visit('/handbook/gap', { headers: { 'Accept-Encoding': 'gzip' } });
    expect(packed.headers.get('content-encoding')).toBe('gzip');
    expect((await own.visit('/handbook/gap', { method: 'HEAD' })).status).toBe(200);
    // Nothing is looked up for it: no link, no store, no answer.
    expect([own.requested, own.store.looks]).toEqual([[], 0]);
  });

  it('of no entry, or below one, is not there', async () => {
    for (const path of ['/handbook/nothing', '/handbook/gap/more', '/handbook/constructor', '/handbook/metric/gap']) {
      const response = await own.visit(path);
      expect([path, response.status]).toEqual([path, 404]);
      expect(response.headers.get('x-robots-tag')).toContain('noindex');
    }
  });

  it('is put off for an address that comes too often', async () => {
    const often = stage(own.sheets, async () => false);
    const route = often.routes.find(({ path }) => path === '/handbook/*');
    const request = new Request('http://127.0.0.1:3000/handbook/gap');
    expect((await route?.handle(request, '203.0.113.7'))?.status).toBe(429);
    expect((await route?.handle(request))?.status).toBe(200);
  });
});

describe('in the chat', () => {
  const ports = portsInMemory((reference, cause) => {
    throw new Error(`fault ${reference}`, { cause });
  });
  const metric = { ...DEFAULT_PREFERENCES, units: 'metric' } as const;

  it('the sources have the page’s address, and the brief is no longer for it', async () => {
    const line = 'handbook entry: gap';
    const [here, nowhere] = [
      await replyTo(line, { ports }),
      await replyTo(line, { ports: { ...ports, address: () => undefined } }),
    ];
    const facts = here.blocks.flatMap((block) => (block.kind === 'facts' ? block.facts : []));
    expect(facts).toContainEqual({
      label: expect.any(String),
      value: 'https://floors.example/handbook/gap',
      opens: true,
    });
    const { sections: _, ...brief } = briefOf(here);
    const { sections: _same, ...without } = briefOf(nowhere);
    expect(brief).toEqual(without);
    expect(JSON.stringify(nowhere)).not.toContain('/handbook/gap');
    expect(entryOf('gap')).toBeDefined();
  });

  it('leads a metric reader to the metric page, and nobody to this machine', async () => {
    const asked = { asker: ASKER, ports, preferences: metric };
    expect(JSON.stringify((await replyTo('handbook entry: gap', asked)).blocks)).toContain('/handbook/gap/metric');
    const local = { ...ports, address: () => 'http://127.0.0.1:3000' };
    expect(JSON.stringify((await replyTo('handbook', { ports: local })).blocks)).not.toContain('127.0.0.1');
  });
});
