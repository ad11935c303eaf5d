/** The last guard before anything is written: no secret that was told is in it. */

/** The text with every secret taken out, also as JSON would write it. */
export function withoutSecrets(text: string, secrets: readonly string[]): string {
  return secrets
    .flatMap((secret) => [secret, JSON.stringify(secret).slice(1, -1)])
    .reduce((left, secret) => left.replaceAll(secret, '(secret)'), text);
}
