/** Whether a Redis keeps what it acknowledged: on disk before it answers, and never thrown out for want of memory. */

/** Sentences on what stands in the way; `ask` gives a setting by its name. Throws what `ask` throws for want of an answer. */
export async function redisDoubts(
  ask: (name: string) => Promise<Readonly<Record<string, string>>>,
): Promise<readonly string[]> {
  const settings: Record<string, string> = {};
  try {
    for (const name of ['appendonly', 'appendfsync', 'maxmemory', 'maxmemory-policy'])
      Object.assign(settings, await ask(name));
  } catch (cause) {
    // A server that somebody else keeps may not tell its settings.
    if (cause instanceof Error && /^(ERR|NOPERM)\b/.test(cause.message))
      return [
        'This Redis does not tell its settings. It must run with appendonly yes, appendfsync always, noeviction.',
      ];
    throw cause;
  }
  const doubts: string[] = [];
  // Redis documentation, “Redis persistence”: only an append-only file that is flushed at every write keeps each.
  if (settings.appendonly !== 'yes')
    doubts.push('This Redis keeps no append-only file: a restart loses what was acknowledged. Set appendonly yes.');
  else if (settings.appendfsync !== 'always')
    doubts.push(
      `This Redis flushes its file ${settings.appendfsync}: a power cut loses what came last. Set appendfsync always.`,
    );
  if (settings.maxmemory !== '0' && settings['maxmemory-policy'] !== 'noeviction')
    doubts.push('This Redis throws records out when its memory is full. Set maxmemory-policy noeviction.');
  return doubts;
}
