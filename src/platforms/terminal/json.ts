/** Answers as JSON objects for programs, with the exit code each stands for. */

import type { Answer } from '../../chat/pipeline.ts';
import { TERMINAL } from '../../text/chat-text.ts';

/** What a program is told: the object to print, and the exit code. */
export interface Told {
  readonly object: unknown;
  readonly code: ExitCode;
}

/** 0 answered, 1 a fault of ours, 3 a refusal, 2 problems to mend. */
export type ExitCode = 0 | 1 | 2 | 3;

/** From worst to least: a fault of ours, a refusal, problems to mend. */
const WORST: readonly ExitCode[] = [1, 3, 2, 0];

/** The object for an answer; no answer at all is a fault. */
export function toJson(answer: Answer): Told {
  if ('reference' in answer) return { object: { fault: { reference: answer.reference } }, code: 1 };
  if ('problems' in answer) {
    const { problems, example } = answer;
    const next = example === undefined ? {} : { next: [{ label: TERMINAL.example, request: example }] };
    return { object: { problems, ...next }, code: 2 };
  }
  if ('why' in answer) {
    const { why, call, cautions, data } = answer;
    return { object: { refusal: { why, call }, cautions, data }, code: 3 };
  }
  const { headline, assumed, blocks, cautions, sources, data } = answer;
  return { object: { headline, assumed, blocks, cautions, sources, data }, code: 0 };
}

/** The exit code for several answers: the worst of them. */
export function worst(codes: readonly ExitCode[]): ExitCode {
  return WORST.find((code) => codes.includes(code)) ?? 0;
}
