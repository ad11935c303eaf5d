/** What the operator may know of a request: its command, outcome and timing; nothing personal. */

import { fullName } from '../input/command-shape.ts';
import { briefOf } from './brief.ts';
import type { Command, Outcome } from './command.ts';
import type { AnswerKind, Ports, Request, RequestMetrics } from './ports.ts';

/** An answer, or the fault instead of one. */
type Given = Outcome | { readonly reference: string; readonly outage: boolean };

export class AskSeen {
  readonly #platform: RequestMetrics['platform'];
  readonly #mistaken: boolean;
  readonly #ports: Ports;
  readonly #began = performance.now();
  #command: string | undefined;
  #outcome: RequestMetrics['outcome'] = 'none';
  #answered: AnswerKind | undefined;
  #first: number | undefined;
  #last = 0;
  #wait = 0;

  constructor({ asker, mistaken }: Pick<Request, 'asker' | 'mistaken'>, ports: Ports) {
    this.#platform = asker.platform;
    this.#mistaken = mistaken !== undefined;
    this.#ports = ports;
  }

  read(command: Command): void {
    this.#command = fullName(command);
  }

  /** Adds time spent waiting for a worker. */
  waited(milliseconds: number): void {
    this.#wait += milliseconds;
  }

  gave<A extends Given>(answer: A): A {
    this.#last = performance.now() - this.#began;
    this.#first ??= this.#last;
    this.#outcome = outcomeOf(answer);
    this.#answered = this.#mistaken ? 'mistaken' : answerKind(answer);
    return answer;
  }

  async *each<A extends Given>(answers: AsyncIterable<A>): AsyncGenerator<A> {
    for await (const one of answers) yield this.gave(one);
  }

  /** Reports the request, once it is finished or nobody waits for more. */
  end(): void {
    this.#ports.requested?.({
      platform: this.#platform,
      ...(this.#command === undefined ? {} : { command: this.#command }),
      outcome: this.#outcome,
      ...(this.#answered === undefined ? {} : { answered: this.#answered }),
      first: this.#first ?? 0,
      last: this.#last,
      wait: this.#wait,
    });
  }
}

function outcomeOf(answer: Given): RequestMetrics['outcome'] {
  if ('reference' in answer) return answer.outage ? 'outage' : 'fault';
  if ('problems' in answer) return answer.again ? 'limited' : 'problem';
  return 'headline' in answer ? 'reply' : 'refusal';
}

function answerKind(answer: Given): AnswerKind | undefined {
  if ('reference' in answer) return undefined;
  if ('problems' in answer) return answer.again ? undefined : 'question';
  const { kind } = answer.data;
  if (kind === 'hazard' || kind === 'handbook' || kind === 'estimate') return kind;
  if (kind === 'none') return 'other';
  return 'headline' in answer && briefOf(answer).assumption !== undefined ? 'assumed' : 'answer';
}
