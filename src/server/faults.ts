/** Faults told to whoever runs the bot: on standard error, one line a fault and its cause behind it. */

import type { Ports } from '../chat/ports.ts';

/** A fault port that writes to `output`. */
export function faultsTo(output: { write(text: string): unknown }): Ports {
  return {
    fault(reference, cause) {
      const told = cause instanceof Error ? (cause.stack ?? cause.message) : String(cause);
      output.write(`fault ${reference}: ${told}\n${becauseOf(cause)}`);
    },
  };
}

/** What is behind an error, a line each. */
function becauseOf(cause: unknown): string {
  const lines: string[] = [];
  const seen = new Set<unknown>([cause]);
  for (let one = cause; one instanceof Error && one.cause !== undefined && !seen.has(one.cause); one = one.cause) {
    seen.add(one.cause);
    lines.push(`  because: ${String(one.cause)}\n`);
  }
  return lines.join('');
}
