/** Takes the pictures of README.md from real answers: a plan as the bot draws it, and a terminal as Chromium shows it, where there is one. */

import { spawnSync } from 'node:child_process';
import { existsSync, mkdirSync, mkdtempSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { closePictures, toPng } from '../../src/drawing/png.ts';
import { renderBrief } from '../../src/platforms/terminal/render.ts';
import { closeWorkers } from '../../src/workers/pool.ts';
import { lastAnswer } from './readme-parts.ts';

const FOLDER = 'deploy/pictures';
const CHROMIUM = ['/usr/bin/chromium', '/usr/bin/chromium-browser', '/usr/bin/google-chrome'];
/** Bytes; a page with larger pictures opens slowly on a phone. */
const LARGEST = 200_000;

const SHOWN = ['how many boxes for 12x14, planks 7x48, 23 sq ft a box?', 'can I lay plank over old tile?'];
const PLANNED = `planks room: bedroom 13'6" x 10'4" - 4' x 2'6", plank: 7 x 48 in, 23 sq ft per carton, pattern: thirds`;

// A terminal as a page: 80 columns of the bundled font, in whole pixels so that the height is known.

const COLUMNS = 80;
const LETTER = { size: 15, width: 9.03, line: 21 };
const PAD = 24;

/** A page that looks like a terminal; ANSI's bold is kept. `height` in CSS pixels. */
function screenPage(
  text: string,
  font: string,
): { readonly html: string; readonly width: number; readonly height: number } {
  const lines = text.split('\n');
  const body = lines
    .map((line) => line.replaceAll('&', '&amp;').replaceAll('<', '&lt;'))
    .map((line) => (line.startsWith('&gt; ') || line.startsWith('> ') ? `<i>${line}</i>` : line))
    .join('\n')
    .replaceAll('\u001b[1m', '<b>')
    .replaceAll('\u001b[22m', '</b>');
  const html = `<!doctype html><meta charset="utf-8"><style>
@font-face { font-family: terminal; src: url("${font}DejaVuSansMono.ttf") }
@font-face { font-family: terminal; font-weight: bold; src: url("${font}DejaVuSansMono-Bold.ttf") }
body { margin: 0; background: #1d2126; color: #d9dde2 }
pre { margin: 0; padding: ${PAD}px; font: ${LETTER.size}px/${LETTER.line}px terminal, monospace }
b { color: #fff }
i { color: #8fd3a7; font-style: normal }
</style><pre>${body}</pre>`;
  return {
    html,
    width: Math.ceil(COLUMNS * LETTER.width) + 2 * PAD,
    height: lines.length * LETTER.line + 2 * PAD,
  };
}

/** What a terminal shows of the requests, each behind a prompt. */
async function conversation(requests: readonly string[]): Promise<string> {
  const shown: string[] = [];
  for (const request of requests) {
    const brief = renderBrief(await lastAnswer(request), { width: COLUMNS - 1, colour: true });
    shown.push(`> ${request}\n${brief}`);
  }
  return shown.join('\n\n');
}

/** Has Chromium take the picture of a page. Throws with what it printed when there is none afterwards. */
function photograph(program: string, page: ReturnType<typeof screenPage>, path: string): void {
  const folder = mkdtempSync(join(tmpdir(), 'floorhand-'));
  try {
    const file = join(folder, 'page.html');
    writeFileSync(file, page.html);
    const { stderr } = spawnSync(
      program,
      [
        '--headless',
        '--no-sandbox',
        '--disable-gpu',
        '--hide-scrollbars',
        '--allow-file-access-from-files',
        '--force-device-scale-factor=1.5',
        `--user-data-dir=${join(folder, 'profile')}`,
        `--window-size=${page.width},${page.height}`,
        `--screenshot=${path}`,
        pathToFileURL(file).href,
      ],
      { encoding: 'utf8', timeout: 60_000 },
    );
    if (!existsSync(path)) throw new Error(`no picture from ${program}: ${stderr}`);
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

/** The first drawing of an answer. */
async function planned(request: string): Promise<Buffer> {
  const given = await lastAnswer(request);
  const blocks = 'blocks' in given ? given.blocks : [];
  const [drawing] = blocks.flatMap((block) => (block.kind === 'picture' ? [block.drawing] : []));
  if (!drawing) throw new Error(`no plan in the answer to “${request}”`);
  return toPng(drawing);
}

function weighed(path: string): void {
  const { size } = statSync(path);
  if (size > LARGEST) throw new Error(`${path} has ${size} bytes, more than ${LARGEST}`);
  console.log(`wrote ${path}, ${size} bytes`);
}

try {
  mkdirSync(FOLDER, { recursive: true });
  const plan = `${FOLDER}/plan.png`;
  writeFileSync(plan, await planned(PLANNED));
  weighed(plan);
  const program = CHROMIUM.find((one) => existsSync(one));
  const answer = `${FOLDER}/answer.png`;
  if (program) {
    const fonts = createRequire(import.meta.url).resolve('dejavu-fonts-ttf/ttf/DejaVuSansMono.ttf');
    const page = screenPage(await conversation(SHOWN), pathToFileURL(fonts).href.replace(/[^/]+$/, ''));
    rmSync(answer, { force: true });
    photograph(program, page, answer);
    weighed(answer);
  } else console.log(`kept ${answer}: no Chromium here`);
} finally {
  await closeWorkers();
  await closePictures();
}
