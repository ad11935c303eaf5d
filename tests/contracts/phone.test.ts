/** How high the first message of an answer is on a phone 390 px wide, as Chromium lays it out: buttons with it, and on Discord its picture, which Slack sends when asked. */

import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { commands } from '../../commands/all.ts';
import type { Answer } from '../../src/chat/pipeline.ts';
import { toSvg } from '../../src/drawing/svg.ts';
import { answerRows, problemRows } from '../../src/platforms/discord/buttons.ts';
import { cardOf } from '../../src/platforms/discord/outgoing.ts';
import { render as discord } from '../../src/platforms/discord/render.ts';
import { render as slack } from '../../src/platforms/slack/render.ts';
import { DEMO_ASKS, WORKED_ASK } from '../../src/platforms/terminal/demo.ts';
import type { Drawing } from '../../src/reply/drawing.ts';
import { answerTo } from '../chat/asked.ts';
import { demoPorts } from '../chat/demo-flat.ts';
import { field, list } from '../discord/json-field.ts';
import { type Running, running } from '../slack/running.ts';
import { hasChromium, openChromium } from '../web/chromium.ts';

/** CSS pixels: a screen of 844 less the bars of system and app, the header and the box to type in. */
const HIGHEST = 640;

/** Requests in people's own words, besides every example of every command and the demo's conversation. */
const SENTENCES: readonly string[] = [
  WORKED_ASK,
  'how many boxes do I need for a 12 by 14 bedroom?',
  'can I lay plank over old tile?',
  'do I need underlayment?',
  'how long do the boxes have to sit in the room?',
  'hey, my bedroom is 11’ by 12’6” and there’s a 2x5 closet, planks are 7x48, 10 in a box. how many??',
  'the subfloor squeaks in the hall, about 4 x 6 ft',
  'how do I get carpet off tack strip?',
  'which way should the planks run?',
  'my wife is pregnant, can I sand the old floor?',
  'there is a dip of 3/8 in over 6 ft',
  'how much baseboard for a 11 x 12 room with one 30 in door?',
];

/** Ten of them, by every kind of answer. */
const LOOKED_AT: readonly string[] = [
  WORKED_ASK,
  'can I lay plank over old tile?',
  'hey, my bedroom is 11’ by 12’6” and there’s a 2x5 closet, planks are 7x48, 10 in a box. how many??',
  'the subfloor squeaks in the hall, about 4 x 6 ft',
  'how do I get carpet off tack strip?',
  'my wife is pregnant, can I sand the old floor?',
  'there is a dip of 3/8 in over 6 ft',
  'how much baseboard for a 11 x 12 room with one 30 in door?',
  'how many boxes do I need for a 12 by 14 bedroom?',
  "tape 15' - 2 x 4'",
];

const FONTS = createRequire(import.meta.url);
const font = (name: string, weight: number): string =>
  `@font-face { font-family: phone; font-weight: ${weight}; src: url(data:font/ttf;base64,${readFileSync(FONTS.resolve(`dejavu-fonts-ttf/ttf/${name}.ttf`), 'base64')}) }`;

/**
 * A plain chat, nobody's own look. Texts 16 px on lines of 22 (Discord) and 15 on 22 (Slack), a name above, 60 px for
 * a portrait on the left and 16 px on the right; buttons at least 32 px high with 8 px between them, lists 40 px, a
 * picture at most 350 px high. DejaVu Sans Condensed is about as wide as the letters of a phone.
 */
const STYLE = `
${font('DejaVuSansCondensed', 400)}
${font('DejaVuSansCondensed-Bold', 700)}
* { box-sizing: border-box; margin: 0 }
body { width: 390px; background: #fff; color: #1d2126; font: 16px/22px phone }
.message { padding: 8px 16px 8px 60px; border-bottom: 1px solid #ddd; overflow-wrap: anywhere; white-space: pre-line }
.message > * + * { margin-top: 8px }
.slack { font-size: 15px }
.home { padding-left: 16px }
.box { min-height: 32px; padding: 5px 0 }
.name, h3 { font-weight: 700 }
.name + * { margin-top: 0 }
h3 { font-size: 18px; line-height: 24px }
pre { padding: 6px 8px; background: #f1f1f1; font: 13px/18px monospace; white-space: pre-wrap }
.row { display: flex; flex-wrap: wrap; gap: 8px; white-space: normal }
button { min-height: 32px; padding: 6px 14px; border: 1px solid #999; border-radius: 8px; background: #eee; font: 14px/18px phone }
.card { padding: 12px; border: 1px solid #ccc; border-left-width: 4px; border-radius: 8px }
.card > * + * { margin-top: 8px }
.list { width: 100%; min-height: 40px; padding: 10px 12px; border: 1px solid #999; border-radius: 8px; font: 14px/18px phone }
.slack .list { width: auto; min-height: 32px; padding: 6px 12px }
.drawing { display: flex; align-items: flex-start }
.drawing svg { max-width: 100%; max-height: 350px; height: auto }
table { border-collapse: collapse; font-size: 13px; line-height: 18px }
td { padding: 2px 6px; border: 1px solid #ccc }`;

function escaped(text: string): string {
  return text.replaceAll('&', '&amp;').replaceAll('<', '&lt;').replaceAll('\u200b', '');
}

const row = (pressed: readonly string[]): string => `<div class="row">${pressed.join('')}</div>`;
const picture = (drawing: Drawing): string => `<div class="drawing">${toSvg(drawing, { within: 'd' })}</div>`;

// Discord's components.

/** Discord's marks as HTML: headings, bold, code. */
function marked(line: string): string {
  const plain = escaped(line)
    .replace(/\*\*(.+?)\*\*/g, '<b>$1</b>')
    .replace(/`([^`]+)`/g, '<code>$1</code>');
  const read = plain.replace(/\\([^0-9A-Za-z\s])/g, '$1');
  return read.startsWith('### ') ? `<h3>${read.slice(4)}</h3>` : `<p>${read || '&nbsp;'}</p>`;
}

function componentHtml(one: unknown, drawings: readonly Drawing[]): string {
  const within = list(field(one, 'components'));
  switch (field(one, 'type')) {
    case 1:
      return row(
        within.map((it) =>
          field(it, 'type') === 2
            ? `<button>${escaped(String(field(it, 'label')))}</button>`
            : `<div class="list">${escaped(String(field(it, 'placeholder')))} ▾</div>`,
        ),
      );
    case 10:
      return `<div>${String(field(one, 'content')).split('\n').map(marked).join('')}</div>`;
    case 12:
      return drawings.map(picture).join('');
    case 13:
      return '<pre>a file</pre>';
    case 17:
      return `<div class="card">${within.map((it) => componentHtml(it, drawings)).join('')}</div>`;
    default:
      throw new Error(`a component of type ${field(one, 'type')} that nobody draws here`);
  }
}

function discordHtml(answer: Answer): string {
  const [first] = discord(answer);
  const fields = ['room', 'plank'].map((option) => ({
    option,
    label: option,
    summary: 's',
    example: 'e',
    long: false,
  }));
  const form = 'headline' in answer && answer.form !== undefined ? fields : [];
  const rows =
    'headline' in answer
      ? answerRows(answer, { id: 'AAAAAAAAAAA', showable: true, fields: form })
      : 'problems' in answer
        ? problemRows('AAAAAAAAAAA', answer.form !== undefined, {
            fix: answer.problems[0].fix,
            again: answer.again === true,
            example: answer.example !== undefined,
            choices: answer.choices ?? [],
          })
        : [];
  const drawings = (first?.files ?? []).flatMap((file) => ('drawing' in file ? [file.drawing] : []));
  const card = cardOf([...(first?.components ?? []), ...rows]);
  const components = JSON.parse(JSON.stringify([card])) as readonly unknown[];
  return `<div class="message"><p class="name">floorhand</p>${components.map((one) => componentHtml(one, drawings)).join('')}</div>`;
}

// Slack's blocks.

function richHtml(one: unknown): string {
  const within = list(field(one, 'elements'));
  switch (field(one, 'type')) {
    case 'rich_text':
      return within.map(richHtml).join('');
    case 'rich_text_section':
      return `<p>${within.map(richHtml).join('')}</p>`;
    case 'rich_text_preformatted':
      return `<pre>${within.map(richHtml).join('')}</pre>`;
    default: {
      const text = escaped(String(field(one, 'text') ?? field(one, 'url') ?? ''));
      return field(field(one, 'style'), 'bold') === true ? `<b>${text}</b>` : text;
    }
  }
}

function blockHtml(one: unknown): string {
  const textIn = (it: unknown): string => escaped(String(field(field(it, 'text') ?? field(it, 'placeholder'), 'text')));
  const boxes = (it: unknown): string =>
    list(field(it, 'options'))
      .map((option) => `<p class="box">☐ ${textIn(option)}</p>`)
      .join('');
  switch (field(one, 'type')) {
    case 'actions':
      return row(
        list(field(one, 'elements')).map((it) => {
          if (field(it, 'type') === 'checkboxes') return `<div>${boxes(it)}</div>`;
          return field(it, 'type') === 'button'
            ? `<button>${textIn(it)}</button>`
            : `<div class="list">${textIn(it)} ▾</div>`;
        }),
      );
    case 'divider':
      return '<hr>';
    case 'table':
      return `<table>${list(field(one, 'rows'))
        .map(
          (cells) =>
            `<tr>${list(cells)
              .map((cell) => `<td>${escaped(String(field(cell, 'text')))}</td>`)
              .join('')}</tr>`,
        )
        .join('')}</table>`;
    case 'header':
      return `<h3>${textIn(one)}</h3>`;
    case 'rich_text':
      return `<div>${richHtml(one)}</div>`;
    default:
      throw new Error(`a block of type ${field(one, 'type')} that nobody draws here`);
  }
}

/** As a command in a channel is answered, which has the most buttons. */
function slackHtml(answer: Answer): string {
  const [first] = slack(answer, { id: 'AAAAAAAAAAA', changeable: true, showable: true });
  const blocks = JSON.parse(JSON.stringify(first?.blocks ?? [])) as readonly unknown[];
  return `<div class="message slack"><p class="name">floorhand</p>${blocks.map(blockHtml).join('')}</div>`;
}

/** A Home tab has the whole width. */
function homeHtml(view: unknown): string {
  return `<div class="message slack home">${list(field(view, 'blocks')).map(blockHtml).join('')}</div>`;
}

/** The Home tab of somebody without a project, with one, and with one of which something was just ticked off. */
async function homeTabs(): Promise<readonly unknown[]> {
  const views = ({ slack: { calls } }: Running): readonly unknown[] =>
    calls.flatMap(({ method, args }) => (method === 'views.publish' ? [args.view] : []));
  const opened = { type: 'app_home_opened', user: 'U1', channel: 'D1', tab: 'home' };
  const tabs: unknown[] = [];
  for (const flat of [false, true]) {
    const app = await running({ flat });
    await app.event(opened);
    await app.slack.until(() => views(app).length === 1);
    if (flat) {
      await app.press('Clear the room, hall', { channel: undefined, response_url: undefined, view: { type: 'home' } });
      await app.slack.until(() => views(app).length === 2);
    }
    tabs.push(...views(app));
    await app.close();
  }
  return tabs;
}

// Every example's answer, laid out at once.

const OWNER = { platform: 'discord', id: '100200300' } as const;

async function answersOfAll(): Promise<readonly { readonly ask: string; readonly answer: Answer }[]> {
  const flat = () =>
    demoPorts(OWNER, (reference, cause) => {
      throw new Error(`fault ${reference}`, { cause });
    });
  const examples = commands.flatMap(({ examples: all }) => all.map(({ ask }) => ask));
  const typed = [...examples, ...DEMO_ASKS].map((ask) => ({ ask, written: 'line' as const }));
  const said = SENTENCES.map((ask) => ({ ask, written: 'message' as const }));
  const answers = [];
  // What the examples set, metric units for one, is not how people begin.
  for (const asks of [typed, said]) {
    const ports = await flat();
    for (const { ask, written } of asks)
      answers.push({ ask, answer: await answerTo(ask, { asker: OWNER, ports, written }) });
  }
  // Whoever asks for a laying guide or a list gets all of it in its message.
  return answers.filter(({ answer }) => !('opens' in answer) || answer.opens === undefined);
}

/** Where pictures of what was measured are put, to be looked at; none without it. */
const PICTURES = process.env.FLOORHAND_PHONE_PICTURES;

describe.runIf(hasChromium('messages on a phone'))('the first message of every example', () => {
  let browser: Awaited<ReturnType<typeof openChromium>>;
  let answers: Awaited<ReturnType<typeof answersOfAll>>;
  beforeAll(async () => {
    [browser, answers] = await Promise.all([openChromium(), answersOfAll()]);
  }, 120_000);
  afterAll(() => browser.close());

  it.each([
    ['Discord', discordHtml],
    ['Slack', slackHtml],
  ] as const)(
    'is no higher than a phone on %s',
    async (platform, html) => {
      const page = await browser.newPage({ viewport: { width: 390, height: 844 } });
      const body = answers.map(({ answer }) => html(answer)).join('');
      await page.setContent(`<!doctype html><meta charset="utf-8"><style>${STYLE}</style>${body}`);
      await page.evaluate('document.fonts.ready.then(() => true)');
      const heights = await page.evaluate<readonly number[]>(
        '[...document.querySelectorAll(".message")].map((one) => Math.ceil(one.getBoundingClientRect().height))',
      );
      const measured = answers.map(({ ask }, i) => ({ ask, height: heights[i] ?? Number.POSITIVE_INFINITY }));
      measured.sort((a, b) => b.height - a.height);
      const middle = measured[Math.floor(measured.length / 2)]?.height;
      const highest = measured.slice(0, 5).map(({ ask, height }) => `${height} px: ${ask.slice(0, 90)}`);
      console.info(
        [`${platform}: ${measured.length} messages, half at most ${middle} px; the highest`, ...highest].join('\n  '),
      );
      if (PICTURES !== undefined) {
        const each = await page.locator('.message').all();
        for (const [i, { ask }] of answers.entries()) {
          if (LOOKED_AT.includes(ask)) await each[i]?.screenshot({ path: `${PICTURES}/${platform}-${i}.png` });
        }
      }
      expect(measured.length).toBeGreaterThan(100);
      expect(measured.filter(({ height }) => height > HIGHEST)).toEqual([]);
      await page.close();
    },
    60_000,
  );

  it('is followed on Slack by a Home tab that begins with the project and what to do with it', async () => {
    const page = await browser.newPage({ viewport: { width: 390, height: 844 } });
    const tabs = await homeTabs();
    await page.setContent(`<!doctype html><meta charset="utf-8"><style>${STYLE}</style>${tabs.map(homeHtml).join('')}`);
    await page.evaluate('document.fonts.ready.then(() => true)');
    const ends = await page.evaluate<readonly number[]>(
      `[...document.querySelectorAll('.home')].map((one) => {
        const top = one.getBoundingClientRect().top;
        return Math.max(...[...one.querySelectorAll('.row')].slice(0, 2).map((row) => row.getBoundingClientRect().bottom - top));
      })`,
    );
    if (PICTURES !== undefined)
      for (const [i, tab] of (await page.locator('.home').all()).entries())
        await tab.screenshot({ path: `${PICTURES}/Home-${i}.png` });
    console.info(`the first two rows of the Home tabs end at ${ends.map(Math.ceil).join(', ')} px`);
    expect(ends).toHaveLength(3);
    expect(ends.filter((end) => !(end <= HIGHEST))).toEqual([]);
    await page.close();
  }, 60_000);
});
