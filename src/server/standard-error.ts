/** What goes to standard error: faults with their causes, never a secret. */

import type { Ports } from '../chat/ports.ts';

/** Removes every secret, also in its JSON-escaped form. */
export function withoutSecrets(text: string, secrets: readonly string[]): string {
  return secrets
    .flatMap((secret) => [secret, JSON.stringify(secret).slice(1, -1)])
    .reduce((left, secret) => left.replaceAll(secret, '(secret)'), text);
}

/** Writes one line per fault, followed by its causes. */
export function faultsTo(output: { write(text: string): unknown }): Ports {
  return {
    fault(reference, cause) {
      const given = cause instanceof Error ? (cause.stack ?? cause.message) : String(cause);
      output.write(`fault ${reference}: ${given}\n${becauseOf(cause)}`);
    },
  };
}

/** The causes of an error, one line each. */
function becauseOf(cause: unknown): string {
  const lines: string[] = [];
  const seen = new Set<unknown>([cause]);
  for (let one = cause; one instanceof Error && one.cause !== undefined && !seen.has(one.cause); one = one.cause) {
    seen.add(one.cause);
    lines.push(`  because: ${String(one.cause)}\n`);
  }
  return lines.join('');
}
