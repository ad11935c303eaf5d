/** What may be told of an ask to whoever runs the bot: its command, what came of it and how long it took, and nothing of anybody's. */

import { fullName } from '../input/command-shape.ts';
import type { Command, Outcome } from './command.ts';
import type { Ports, RequestMetrics } from './ports.ts';

/** An answer, or a fault in place of one. */
type Given = Outcome | { readonly reference: string; readonly outage: boolean };

export class AskSeen {
  readonly #platform: RequestMetrics['platform'];
  readonly #ports: Ports;
  readonly #began = performance.now();
  #command: string | undefined;
  #outcome: RequestMetrics['outcome'] = 'none';
  #first: number | undefined;
  #last = 0;
  #wait = 0;

  constructor(platform: RequestMetrics['platform'], ports: Ports) {
    this.#platform = platform;
    this.#ports = ports;
  }

  read(command: Command): void {
    this.#command = fullName(command);
  }

  /** Some of its work waited so many milliseconds for its turn. */
  waited(milliseconds: number): void {
    this.#wait += milliseconds;
  }

  /** An answer on its way out. */
  gave<A extends Given>(answer: A): A {
    this.#last = performance.now() - this.#began;
    this.#first ??= this.#last;
    this.#outcome = outcomeOf(answer);
    return answer;
  }

  async *each<A extends Given>(answers: AsyncIterable<A>): AsyncGenerator<A> {
    for await (const one of answers) yield this.gave(one);
  }

  /** Tells of it, once it has ended or nobody waits for more. */
  end(): void {
    this.#ports.requested?.({
      platform: this.#platform,
      ...(this.#command === undefined ? {} : { command: this.#command }),
      outcome: this.#outcome,
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
