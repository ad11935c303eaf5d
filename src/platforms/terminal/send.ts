/** Sends answers to a terminal, or as JSON lines to a program. */

import { mkdir, readFile, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import type { Writable } from 'node:stream';
import { briefOf, sectionsOf } from '../../chat/brief.ts';
import { fileStem } from '../../chat/files.ts';
import type { Answer } from '../../chat/pipeline.ts';
import { toPng } from '../../drawing/png.ts';
import type { Drawing } from '../../reply/drawing.ts';
import type { FileForm, Result } from '../../reply/reply.ts';
import { TERMINAL } from '../../text/chat-text.ts';
import { DRAWING } from '../../text/drawing-text.ts';
import { FILES } from '../../text/sheets-text.ts';
import { briefLines, COLUMNS, render, renderBrief, type TerminalPage } from './render.ts';

// Saves an answer's pictures as PNG files in a folder, each under a name made from its title.

/** The drawings of an answer in order; none of a Problem, a Refusal or a fault. */
function drawingsOf(answer: Answer): readonly Drawing[] {
  if (!('blocks' in answer)) return [];
  return answer.blocks.flatMap((block) => (block.kind === 'picture' ? [block.drawing] : []));
}

/**
 * Saves drawings and gives their paths in order. The same drawing gets the same name again; another of that title gets a
 * number after it, so that no file is ever written over. Rejects when the folder cannot be written to.
 */
export async function savePictures(drawings: readonly Drawing[], folder: string): Promise<readonly string[]> {
  if (drawings.length > 0) await mkdir(folder, { recursive: true });
  const paths: string[] = [];
  // One after the other: each is large, and two of one title must not meet.
  for (const drawing of drawings)
    paths.push(await save(await toPng(drawing), fileStem(drawing.title) || DRAWING.file, 'png', folder));
  return paths;
}

/** Saves bytes under a name that no other file has. */
async function save(bytes: Buffer, stem: string, ending: string, folder: string): Promise<string> {
  for (let number = 1; ; number++) {
    const path = join(folder, `${stem}${number === 1 ? '' : `-${number}`}.${ending}`);
    try {
      await writeFile(path, bytes, { flag: 'wx' });
      return path;
    } catch (cause) {
      if (!(cause instanceof Error && 'code' in cause && cause.code === 'EEXIST')) throw cause;
    }
    if (bytes.equals(await readFile(path))) return path;
  }
}

// Saves the files that an answer comes with, each under its own name.

/** Where files go, and who makes them of an answer's data. */
export interface FilesTo {
  readonly folder: string;
  makeFile(data: Result, as: FileForm): Promise<Buffer>;
}

/** A line for each file: where it is, or why it is not there. Rejects with what the maker throws. */
async function savedFiles(answer: Answer, { folder, makeFile }: FilesTo): Promise<readonly string[]> {
  if (!('headline' in answer) || !answer.files || answer.files.length === 0) return [];
  const lines: string[] = [];
  try {
    await mkdir(folder, { recursive: true });
    // One after the other: each is large, and two of one name must not meet.
    for (const { name, as } of answer.files) {
      const [stem, ending] = [name.slice(0, name.lastIndexOf('.')), name.slice(name.lastIndexOf('.') + 1)];
      lines.push(FILES.saved(await save(await makeFile(answer.data, as), stem, ending, folder)));
    }
  } catch (cause) {
    if (!(cause instanceof Error && 'code' in cause && 'syscall' in cause)) throw cause;
    lines.push(FILES.notSaved(folder, cause.message));
  }
  return lines;
}

// Answers as JSON objects for programs, with the exit code each stands for.

/** What a program is told: the object to print, and the exit code. */
interface ReadLine {
  readonly object: unknown;
  readonly code: ExitCode;
}

/** 0 answered, 1 a fault of ours, 3 a refusal, 2 problems to mend. */
export type ExitCode = 0 | 1 | 2 | 3;

/** From worst to least: a fault of ours, a refusal, problems to mend. */
const WORST: readonly ExitCode[] = [1, 3, 2, 0];

/** A program reads the brief as a terminal of 80 columns would show it. */
const PRINTED: TerminalPage = { width: COLUMNS, colour: false };

/** The object for an answer; no answer at all is a fault. */
export function toJson(answer: Answer): ReadLine {
  const { lines: brief, cautions: briefCautions } = briefLines(answer, PRINTED);
  const first = { brief, briefCautions };
  if ('reference' in answer) {
    return { object: { fault: { reference: answer.reference }, ...first, next: [], sections: [] }, code: 1 };
  }
  if ('problems' in answer) {
    const { problems, example } = answer;
    const fixes = [...new Set(problems.flatMap(({ fix }) => (fix === undefined ? [] : [fix])))];
    const next = [
      ...fixes.map((request) => ({ label: TERMINAL.type, request })),
      ...(example === undefined ? [] : [{ label: TERMINAL.example, request: example }]),
    ];
    const [{ option }] = problems;
    const choices = answer.choices ?? [];
    const asks = { for: option, choices: choices.map(({ label }) => label) };
    return {
      object: {
        problems,
        asks,
        ...first,
        next: [...next, ...choices.map(({ label, ask }) => ({ label, request: ask }))],
        sections: [],
      },
      code: 2,
    };
  }
  if ('why' in answer) {
    const { why, call, cautions, data } = answer;
    return { object: { refusal: { why, call }, cautions, data, ...first, next: [], sections: [] }, code: 3 };
  }
  const { headline, assumed, cautions, sources, data } = answer;
  const sections = sectionsOf(answer);
  const next = briefOf(answer).next.map(({ label, ask }) => ({ label, request: ask }));
  const blocks = sections.flatMap((section) => section.blocks);
  return { object: { headline, assumed, blocks, cautions, sources, data, ...first, next, sections }, code: 0 };
}

/** The exit code for several answers: the worst of them. */
export function worst(codes: readonly ExitCode[]): ExitCode {
  return WORST.find((code) => codes.includes(code)) ?? 0;
}

/** Somewhere to write, and what is known of it. */
export interface Screen {
  readonly output: Writable & {
    readonly columns?: number;
    readonly isTTY?: boolean;
    /** A terminal's own, which knows NO_COLOR and what the terminal can do. */
    hasColors?(): boolean;
  };
  readonly json: boolean;
  /** Every section, rather than the brief and what was itself asked for. */
  readonly all?: boolean;
  /** Folder for the answer's pictures; without one, and for a program, none are saved. */
  readonly pictures?: string | undefined;
  /** Where the files of an answer go; a program makes its own of the data. */
  readonly files?: FilesTo | undefined;
}

/** How an output is written to; the last column stays free, where some terminals wrap. */
export function terminalPage(output: Screen['output']): TerminalPage {
  return {
    width: Math.max(20, (output.columns || COLUMNS) - 1),
    colour: output.isTTY === true && output.hasColors?.() !== false,
  };
}

/** Milliseconds until somebody at a terminal reads that the answer is on its way. */
const PATIENCE = 1000;

/** Says once that the answer takes a while; what it gives takes that line away again, where a terminal can. */
function patience({ output, json }: Screen): () => void {
  if (json || output.isTTY !== true) return () => undefined;
  const erases = terminalPage(output).colour;
  let said = false;
  const timer = setTimeout(() => {
    said = true;
    output.write(erases ? TERMINAL.working : `${TERMINAL.working}\n`);
  }, PATIENCE);
  return () => {
    clearTimeout(timer);
    if (said && erases) output.write('\r\u001b[K');
  };
}

/** Writes the last of the answers (a terminal is not edited in place) and gives its exit code. */
export async function send(answers: AsyncIterable<Answer>, screen: Screen): Promise<ExitCode> {
  const { output, json, all, pictures, files } = screen;
  let last: Answer | undefined;
  const answered = patience(screen);
  try {
    for await (const answer of answers) last = answer;
  } finally {
    answered();
  }
  if (!last) throw new Error('an ask without an answer');
  const given = toJson(last);
  const sheet = terminalPage(output);
  const text = json ? JSON.stringify(given.object) : all ? render(last, sheet) : renderBrief(last, sheet);
  await written(`${text}\n`, screen);
  if (!json && pictures) await written(await savedLines(last, pictures), screen);
  if (!json && files) for (const line of await savedFiles(last, files)) await written(`${line}\n`, screen);
  return given.code;
}

/** Where the pictures of an answer are; a folder that cannot be written to is told, for the answer stands without them. */
async function savedLines(answer: Answer, folder: string): Promise<string> {
  try {
    const paths = await savePictures(drawingsOf(answer), folder);
    return paths.map((path) => `${DRAWING.saved(path)}\n`).join('');
  } catch (cause) {
    if (!(cause instanceof Error && 'code' in cause && 'syscall' in cause)) throw cause;
    return `${DRAWING.notSaved(folder, cause.message)}\n`;
  }
}

async function written(text: string, { output }: Screen): Promise<void> {
  if (text === '') return;
  await new Promise<void>((resolve, reject) => {
    output.write(text, (fault) => (fault ? reject(fault) : resolve()));
  });
}
