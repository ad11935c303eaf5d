/** The currency that a project is summed up in. */

/** The asker's own where any amount is in it, or there is none; else the one that most amounts are in, the first of several. */
export function currencyOf(amounts: readonly { readonly currency: string }[], own: string): string {
  const counts = new Map<string, number>();
  for (const { currency } of amounts) counts.set(currency, (counts.get(currency) ?? 0) + 1);
  if (counts.size === 0 || counts.has(own)) return own;
  const most = Math.max(...counts.values());
  return [...counts].find(([, count]) => count === most)?.[0] ?? own;
}
