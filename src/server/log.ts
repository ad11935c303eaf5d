/** The bot's log: a line of JSON for each ask and each fault, for whoever runs it, with nothing in it that anybody typed or is called. */

import { type DestinationStream, pino } from 'pino';
import type { AskEnded, Ports } from '../chat/ports.ts';
import { requestId } from '../chat/request-id.ts';
import { Outage } from '../storage/types.ts';
import { faultFields } from './fault-told.ts';
import { allowedFields, type Line, type Part, type State } from './log-fields.ts';
import { withoutSecrets } from './without-secrets.ts';

export interface Log extends Ports {
  asked(ended: AskEnded): void;
  /** What happens to the bot as a whole. */
  state(state: State, more?: { readonly part?: Part; readonly port?: number; readonly ms?: number }): void;
  /** A sentence of our own about what stands in the way, in which no secret is left. */
  doubt(sentence: string): void;
}

export interface LogTerms {
  readonly level: 'silent' | 'error' | 'warn' | 'info' | 'debug';
  /** What is taken out wherever it would stand. */
  readonly secrets: readonly string[];
  readonly output: { write(text: string): unknown };
}

/** A log that writes to an output. */
export function logTo({ level, secrets, output }: LogTerms): Log {
  const stream: DestinationStream = { write: (line) => void output.write(withoutSecrets(line, secrets)) };
  const log = pino(
    { level, base: null, messageKey: 'what', formatters: { level: (label) => ({ level: label }) } },
    stream,
  );
  const request = (): Line => {
    const id = requestId();
    return id === undefined ? {} : { request: id };
  };
  return {
    asked: ({ platform, command, outcome, first, last, wait }) => {
      const line: Line = {
        ...request(),
        platform,
        ...(command ? { command } : {}),
        outcome,
        first: tenths(first),
        ms: tenths(last),
        wait: tenths(wait),
      };
      log.info(allowedFields(line), 'ask');
    },
    fault: (reference, cause) => {
      const named: Line = /^[0-9a-f]{8}$/.test(reference)
        ? { request: reference }
        : { ...request(), ...placed(reference) };
      const line = allowedFields({ ...named, ...faultFields(cause) });
      // Whoever asked may simply ask again.
      if (cause instanceof Outage) log.warn(line, 'outage');
      else log.error(line, 'fault');
    },
    state: (state, more = {}) => log.info(allowedFields({ state, ...more }), 'state'),
    doubt: (sentence) =>
      log.warn({ ...allowedFields({ state: 'doubt' }), said: withoutSecrets(sentence, secrets) }, 'doubt'),
  };
}

/** Where it came up, where that is one of the places there are. */
function placed(where: string): Line {
  return allowedFields({ where }).where === undefined ? {} : { where };
}

function tenths(milliseconds: number): number {
  return Math.round(milliseconds * 10) / 10;
}
