/** What goes to standard error: faults with their causes, and never a secret. */

import type { Ports } from '../chat/ports.ts';

// The last guard before anything is written: no secret that was told is in it.

/** The text with every secret taken out, also as JSON would write it. */
export function withoutSecrets(text: string, secrets: readonly string[]): string {
  return secrets
    .flatMap((secret) => [secret, JSON.stringify(secret).slice(1, -1)])
    .reduce((left, secret) => left.replaceAll(secret, '(secret)'), text);
}

// Faults told to whoever runs the bot: on standard error, one line a fault and its cause behind it.

/** A fault port that writes to `output`. */
export function faultsTo(output: { write(text: string): unknown }): Ports {
  return {
    fault(reference, cause) {
      const given = cause instanceof Error ? (cause.stack ?? cause.message) : String(cause);
      output.write(`fault ${reference}: ${given}\n${becauseOf(cause)}`);
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
