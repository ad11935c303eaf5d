/** Faults told to whoever runs the bot: on standard error, one line a fault and its cause behind it. */

import type { Writable } from 'node:stream';
import type { Ports } from '../bot/ports.ts';

/** A fault port that writes to `output`. */
export function faultsTo(output: Writable): Ports {
  return {
    fault(reference, cause) {
      const told = cause instanceof Error ? (cause.stack ?? cause.message) : String(cause);
      output.write(`fault ${reference}: ${told}\n`);
    },
  };
}
