/** The share page in a real browser: on a phone and a desk, light, dark and on paper, without a script, and with the connection lost. */

import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import type { Browser, BrowserContextOptions, Page } from 'playwright-core';
import { extractText, getDocumentProxy } from 'unpdf';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { Sheets } from '../../src/reply/job-sheet.ts';
import { type Listening, listen, routed } from '../../src/server/http.ts';
import { PAGE_SECTIONS, PAGE_TICKS } from '../../src/text/page-text.ts';
import { HOSTILE_NAMES } from '../outside/hostile.ts';
import { hasChromium, openChromium } from './chromium.ts';
import { bareReply, flatSheets, PIECES, tick } from './fixture-sheets.ts';
import { pageWords } from './page-words.ts';
import { realPage } from './real.ts';
import { type Stage, stage, TOKEN } from './stage.ts';

const PHONE = { width: 360, height: 760 };
const DESK = { width: 1280, height: 900 };
const AXE = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');

describe.runIf(hasChromium('the share page in a browser'))('the share page in a browser', () => {
  let browser: Browser;
  let flat: Sheets;
  const open: Listening[] = [];
  beforeAll(async () => {
    [browser, flat] = await Promise.all([openChromium(), flatSheets()]);
  });
  afterAll(async () => {
    await browser.close();
    for (const one of open) one.cut();
    await Promise.all(open.map((one) => one.close()));
  });

  /** A stage of its own, opened; everything that the browser complains of or asks elsewhere for is told. */
  async function visited(given: BrowserContextOptions = {}, own: Stage = stage(flat)) {
    const server = await listen(
      routed(own.routes, (cause) => own.faults.push(cause)),
      { host: '127.0.0.1', port: 0 },
    );
    open.push(server);
    const context = await browser.newContext({ viewport: PHONE, ...given });
    const page = await context.newPage();
    const complaints: string[] = [];
    page.on('console', (message) => complaints.push(message.text()));
    page.on('pageerror', (cause) => complaints.push(String(cause)));
    page.on('dialog', (dialog) => complaints.push(dialog.message()));
    page.on('request', (request) => {
      if (!request.url().startsWith(`http://127.0.0.1:${server.port}/`)) complaints.push(request.url());
    });
    const url = `http://127.0.0.1:${server.port}/s/${TOKEN}`;
    await page.goto(url);
    return { own, context, page, complaints, url };
  }

  const box = (page: Page, label: string) => page.getByRole('checkbox', { name: label });

  /** Opens a sheet of the page. */
  const opened = (page: Page, sheet: string) => page.locator(`.${sheet} > details > summary`).first().click();

  it.each([
    ['a phone', PHONE],
    ['a desk', DESK],
  ] as const)(
    'on %s: fits, large enough for gloves, nothing serious by axe in light and dark, no complaint',
    async (_, viewport) => {
      const own = stage(flat);
      own.links.set(TOKEN, {
        role: 'measure',
        questions: [{ id: 'q1', label: 'bedroom, wall 3', example: `11' 6"`, line: (text) => text }],
      });
      const { page, complaints, context } = await visited({ viewport }, own);
      const width = await page.evaluate<number>('document.documentElement.scrollWidth');
      expect(width).toBeLessThanOrEqual(viewport.width);
      const small = await page.evaluate<
        readonly string[]
      >(`[...document.querySelectorAll('a, button, input:not([type=hidden]), textarea')]
      .filter((one) => one.checkVisibility() && one.getBoundingClientRect().height < 48)
      .map((one) => one.outerHTML)`);
      expect(small).toEqual([]);
      await page.evaluate(AXE);
      for (const colorScheme of ['light', 'dark'] as const) {
        await page.emulateMedia({ colorScheme });
        // Every rule of axe-core, the rules of WCAG 2.2 AA among them.
        const found = await page.evaluate<readonly { id: string; impact: string; nodes: { html: string }[] }[]>(
          'axe.run(document, { resultTypes: ["violations"] }).then(({ violations }) => violations)',
        );
        const grave = found.filter(({ impact }) => impact === 'serious' || impact === 'critical');
        expect(grave.map(({ id, nodes }) => [colorScheme, id, nodes[0]?.html])).toEqual([]);
      }
      expect(complaints).toEqual([]);
      await context.close();
    },
  );

  it.each(['/handbook', '/handbook/gap', '/handbook/asbestos-suspect/metric'])(
    'the handbook at %s: fits a phone, large enough for a thumb, nothing serious by axe, no complaint',
    async (path) => {
      const { page, complaints, context, url } = await visited();
      await page.goto(new URL(path, url).href);
      expect(await page.evaluate<number>('document.documentElement.scrollWidth')).toBeLessThanOrEqual(PHONE.width);
      const small = await page.evaluate<readonly string[]>(`[...document.querySelectorAll('a')]
      .filter((one) => one.getBoundingClientRect().height < 44).map((one) => one.outerHTML)`);
      expect(small).toEqual([]);
      await page.evaluate(AXE);
      for (const colorScheme of ['light', 'dark'] as const) {
        await page.emulateMedia({ colorScheme });
        const found = await page.evaluate<readonly { id: string; impact: string }[]>(
          'axe.run(document, { resultTypes: ["violations"] }).then(({ violations }) => violations)',
        );
        const grave = found.filter(({ impact }) => impact === 'serious' || impact === 'critical');
        expect(grave.map(({ id }) => [colorScheme, id])).toEqual([]);
      }
      expect(complaints).toEqual([]);
      await context.close();
    },
  );

  it('of the whole demo home loads little, shows what comes next on the first screen, and each plan and saw card when it is wanted', async () => {
    const real = await realPage();
    const own = { ...stage(flat), routes: real.routes };
    const path = await real.link({ what: 'project', role: 'tick', label: 'Sam' });
    const { page, url, context, complaints } = await visited({ viewport: { width: 390, height: 844 } }, own);
    // The page of the fixture's link isn't there, and its complaint isn't of this page.
    complaints.length = 0;
    let bodies: Promise<number>[] = [];
    page.on('response', (response) => {
      bodies.push(
        response.body().then(
          ({ length }) => length,
          () => 0,
        ),
      );
    });
    /** Bytes of all that came, unpacked, with style and script. */
    const loaded = async (doing: () => Promise<unknown>): Promise<number> => {
      bodies = [];
      await doing();
      await page.waitForLoadState('networkidle');
      return (await Promise.all(bodies)).reduce((sum, length) => sum + length, 0);
    };
    const first = await loaded(() => page.goto(new URL(path, url).href));
    const onScreen = await page.evaluate<number>(`[...document.querySelectorAll('[role=checkbox]')]
      .filter((one) => one.checkVisibility() && one.getBoundingClientRect().bottom <= 844).length`);
    const picture = await loaded(async () => {
      await opened(page, 'guide');
      await page.evaluate('document.querySelector(".guide img").decode()');
    });
    const saw = await page.locator('.cuts > a').nth(1).getAttribute('href');
    const card = await loaded(() => page.goto(new URL(`${path}${saw}`, url).href));
    console.info(
      `share page of the demo home: ${first} bytes, ${onScreen} boxes on the first screen; a plan ${picture}, a saw card ${card}`,
    );
    expect(first).toBeGreaterThan(30_000);
    expect(first).toBeLessThanOrEqual(120_000);
    expect(onScreen).toBeGreaterThanOrEqual(6);
    expect(picture).toBeGreaterThan(1000);
    expect(card).toBeLessThanOrEqual(120_000);
    expect(await page.locator('.piece:visible').count()).toBe(1);
    expect(complaints).toEqual([]);
    await context.close();
  }, 60_000);

  it('is whole without a script, over plain HTTP in a house: ticked by a form, every piece of the saw card there', async () => {
    const { page, own, context, url } = await visited({ javaScriptEnabled: false });
    const sent: Readonly<Record<string, string>>[] = [];
    page.on('request', (request) => {
      if (request.method() === 'POST') sent.push(request.headers());
    });
    await page.goto(url.replace('127.0.0.1', 'laptop.test'));
    await box(page, 'Caulk: 2 tubes').click();
    expect(own.requested.at(-2)).toBe('project shopping bought all caulk');
    // Neither who sends it nor from where is told there, and no address in which the link stands.
    expect([sent[0]?.origin, sent[0]?.['sec-fetch-site'], sent[0]?.referer]).toEqual(['null', undefined, undefined]);
    expect(await box(page, 'Caulk: 2 tubes').getAttribute('aria-checked')).toBe('true');
    expect(await page.getByText('ticked by Sam').count()).toBe(1);
    await page.getByLabel('What should the others know?').fill('stain by the window');
    await page.getByRole('button', { name: 'Save the note' }).click();
    expect(await page.getByText('Done: project log do: note stain by the window').count()).toBe(1);
    await opened(page, 'cuts');
    for (const { length } of PIECES)
      expect(await page.getByText(length, { exact: true }).first().isVisible()).toBe(true);
    await context.close();
  });

  it('saves a tick at once, and shows what another ticked', async () => {
    const { page, own, url, context } = await visited();
    const other = await context.newPage();
    await other.goto(url);
    await box(page, 'Caulk: 2 tubes').click();
    await page.locator('.who', { hasText: 'ticked by Sam' }).waitFor();
    expect(own.requested.filter((line) => line !== 'project sheets')).toEqual(['project shopping bought all caulk']);
    await other.evaluate('window.dispatchEvent(new Event("focus"))');
    await other.locator('.who', { hasText: 'ticked by Sam' }).waitFor();
    expect(await box(other, 'Caulk: 2 tubes').getAttribute('aria-checked')).toBe('true');
    // The lists themselves changed: the page is not torn from under the reader's hands.
    own.sheets = { ...own.sheets, sheets: own.sheets.sheets.slice(0, 3) };
    await other.evaluate('window.dispatchEvent(new Event("focus"))');
    await other.getByText(PAGE_TICKS.stale).waitFor();
    await other.getByRole('link', { name: PAGE_TICKS.fresh }).click();
    await other.waitForLoadState();
    expect(await other.getByRole('heading', { name: 'Laying guide: bedroom' }).count()).toBe(0);
    await context.close();
  });

  it('keeps what is ticked while the connection is lost, says so, and saves it when it is back', async () => {
    const { page, own, context } = await visited();
    await context.setOffline(true);
    for (const label of ['Caulk: 2 tubes', 'Contractor bags: 4 bags']) await box(page, label).click();
    await opened(page, 'checklist');
    // Ticked and taken back: what is wanted in the end is what is sent.
    await box(page, 'clear the room').click();
    await box(page, 'clear the room').click();
    await page.getByText(PAGE_TICKS.left(3)).waitFor();
    expect(await page.locator('.state', { hasText: PAGE_TICKS.waiting }).count()).toBe(3);
    expect(own.requested).toEqual(['project sheets']);
    await context.setOffline(false);
    await page.getByText(PAGE_TICKS.left(3)).waitFor({ state: 'detached' });
    await page.locator('.unsaved').first().waitFor({ state: 'detached' });
    expect(own.requested.filter((line) => line !== 'project sheets')).toEqual([
      'project shopping bought all caulk',
      'project shopping bought all bags',
    ]);
    await context.close();
  });

  it('keeps it over a closed page too', async () => {
    const { page, own, url, context } = await visited();
    await context.setOffline(true);
    await box(page, 'Caulk: 2 tubes').click();
    await page.getByText(PAGE_TICKS.left(1)).waitFor();
    await page.close();
    await context.setOffline(false);
    const again = await context.newPage();
    await again.goto(url);
    await again.locator('.who', { hasText: 'ticked by Sam' }).waitFor();
    expect(own.requested).toContain('project shopping bought all caulk');
    await context.close();
  });

  it('says at its place what could not be saved, and that a page has ended', async () => {
    const { page, own, context } = await visited();
    own.instead = (line) =>
      line === 'project sheets'
        ? undefined
        : { problems: [{ option: 'do', got: '', expected: 'Nothing is left of it.', fix: 'list' }] };
    await box(page, 'Caulk: 2 tubes').click();
    await page.locator('.state', { hasText: 'not saved: Nothing is left of it.' }).waitFor();
    expect(await box(page, 'Caulk: 2 tubes').getAttribute('aria-checked')).toBe('false');
    await page.getByLabel('What should the others know?').fill('stain');
    own.links.clear();
    await box(page, 'Contractor bags: 4 bags').click();
    await page.getByText(PAGE_TICKS.ended).waitFor();
    await page.getByRole('button', { name: 'Save the note' }).click();
    // At each thing that was not saved, and what was written is still there.
    await page.locator('.note-form .state', { hasText: PAGE_TICKS.lost }).waitFor();
    expect(await page.locator('.unsaved .state').allTextContents()).toEqual([PAGE_TICKS.lost]);
    expect(await page.getByLabel('What should the others know?').inputValue()).toBe('stain');
    await context.close();
  });

  it('keeps what is ticked while something else answers in its place, such as a network that asks for a password', async () => {
    const { page, own, context } = await visited();
    for (const [status, label] of [
      [404, 'Caulk: 2 tubes'],
      [200, 'Contractor bags: 4 bags'],
    ] as const) {
      await page.route('**/s/*', (route) => route.fulfill({ status, contentType: 'text/html', body: '<p>Log in</p>' }));
      await box(page, label).click();
      await page.locator('.state', { hasText: PAGE_TICKS.waiting }).first().waitFor();
      await page.unroute('**/s/*');
      await page.evaluate('window.dispatchEvent(new Event("online"))');
      await page.locator('.unsaved').first().waitFor({ state: 'detached' });
    }
    expect(own.requested.filter((line) => line !== 'project sheets')).toEqual([
      'project shopping bought all caulk',
      'project shopping bought all bags',
    ]);
    await context.close();
  });

  it('shows one piece at a time at the saw, and the same one when it is opened again', async () => {
    const { page, context } = await visited();
    const shown = () => page.locator('.piece:visible .count').allTextContents();
    await opened(page, 'cuts');
    expect(await shown()).toEqual(['Piece 1 of 3']);
    await page.locator('.piece:visible').getByRole('link', { name: 'Next' }).click();
    await page.keyboard.press('ArrowRight');
    expect(await shown()).toEqual(['Piece 3 of 3']);
    await page.keyboard.press('ArrowLeft');
    const figures = page.locator('.piece:visible .length b');
    expect((await figures.boundingBox())?.height).toBeGreaterThan(50);
    await page.reload();
    await opened(page, 'cuts');
    expect(await shown()).toEqual(['Piece 2 of 3']);
    await context.close();
  });

  it('prints whole and plain, letter and A4', async () => {
    const { page, context } = await visited({ colorScheme: 'dark' });
    for (const format of ['Letter', 'A4']) {
      const bytes = new Uint8Array(await page.pdf({ format }));
      const { text } = await extractText(await getDocumentProxy(bytes), { mergePages: true });
      for (const { key } of flat.sheets) expect(text).toContain(PAGE_SECTIONS[key]);
      for (const given of [
        'Caulk: 2 tubes',
        '80 3/16"',
        'inside miter 45°',
        'Utility knife',
        'Where the figures come from',
      ]) {
        expect(text).toContain(given);
      }
      for (const button of ['Next', 'Save the note', 'Take it with you']) expect(text).not.toContain(button);
    }
    await context.close();
  });

  it('shows hostile names as what they are: nothing runs, nothing is fetched, nothing is markup', async () => {
    const hostile: Sheets = {
      ...flat,
      project: HOSTILE_NAMES[0] ?? '',
      sheets: HOSTILE_NAMES.map((name, at) => ({
        key: 'guide',
        room: name,
        title: name,
        ticks: [{ ...tick(name, name, name, true), by: name }],
        ...(at === 0 && {
          pieces: PIECES.map((piece) => ({
            ...piece,
            place: name,
            what: name,
            from: name,
            note: name,
            length: name,
          })),
        }),
        reply: {
          ...bareReply(name, name),
          blocks: [
            { kind: 'text', text: name },
            { kind: 'facts', title: name, facts: [{ label: name, value: name }] },
            { kind: 'table', title: name, columns: [name], rows: [[name]] },
            { kind: 'steps', title: name, steps: [name] },
            { kind: 'checklist', title: name, items: [name] },
            {
              kind: 'picture',
              drawing: {
                width: 360,
                height: 40,
                title: name,
                alt: name,
                shapes: [
                  {
                    kind: 'text',
                    role: 'title',
                    x: 5,
                    y: 20,
                    text: name,
                    size: 12,
                    bold: false,
                    anchor: 'start',
                    turn: 0,
                  },
                ],
              },
            },
          ],
          sources: [{ title: name, standing: 'published', section: String(at) }],
        },
      })),
    };
    const own = stage(hostile);
    own.links.set(TOKEN, {
      role: 'measure',
      questions: [{ id: 'q1', label: HOSTILE_NAMES[1] ?? '', example: HOSTILE_NAMES[2] ?? '', line: (text) => text }],
    });
    const { page, complaints, context } = await visited({}, own);
    await page.evaluate('window.owned = () => console.log("owned")');
    await page.reload();
    expect(complaints).toEqual([]);
    const strange = await page.evaluate<readonly string[]>(`[...document.querySelectorAll('*')].flatMap((one) => [
      ...(/^(script|style|base|iframe|object|embed|img|b|meta)$/i.test(one.localName) && !one.matches('img[src^="?get=picture-"]') && !document.head.contains(one) && !one.closest('.length') ? [one.outerHTML] : []),
      ...[...one.attributes].filter(({ name, value }) => /^on/i.test(name) || (/^(href|src|action|formaction)$/i.test(name) && !/^(\\/page\\/|#|\\?|\\/s\\/)/.test(value))).map(({ name }) => one.outerHTML + name),
    ])`);
    expect(strange).toEqual([]);
    expect(await page.title()).toBe(HOSTILE_NAMES[0]);
    expect(await page.evaluate('document.querySelectorAll("script").length')).toBe(1);
    expect(await page.evaluate('document.querySelectorAll("main > section").length')).toBe(HOSTILE_NAMES.length + 3);
    // Every name of plain characters stands there as it was typed, in HTML and in SVG.
    const texts = await page.evaluate<string>('document.body.textContent');
    const pictures = await page.evaluate<readonly string[]>(
      '[...document.images].map((one) => one.getAttribute("src"))',
    );
    expect(pictures.length).toBe(HOSTILE_NAMES.length - 1);
    const fetched = await Promise.all(pictures.map(async (src) => (await own.visit(`/s/${TOKEN}${src}`)).text()));
    const inline = await page.evaluate<string>('document.querySelector(".picture svg").outerHTML');
    const drawn = pageWords([inline, ...fetched].join(' '));
    for (const name of HOSTILE_NAMES.filter((one) => /^[ -~]+$/.test(one))) {
      expect(texts).toContain(name.trim());
      expect(drawn).toContain(name);
    }
    expect(texts).not.toMatch(/\p{Bidi_Control}|(?![\n\t])\p{Cc}/u);
    await context.close();
  });
});
