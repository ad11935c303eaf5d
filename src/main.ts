/** Where it starts: the bot where a chat is told of, else the terminal. */

import { readConfig, secretsOf } from './server/config.ts';
import { withoutSecrets } from './server/standard-error.ts';

/** Milliseconds for which what is still open may hold the process once all is done. */
const LINGER = 300;

async function main(words: readonly string[]): Promise<number> {
  const config = readConfig(process.env);
  const [mode] = words;
  if (mode !== 'ask' && mode !== 'demo') {
    const { chatsAreConfigured, chatsLack } = await import('./server/platforms.ts');
    if (chatsAreConfigured(config)) {
      const lacks = chatsLack(config);
      if (lacks.length > 0) throw new Error(`The bot cannot start.\n${lacks.join('\n')}`);
      const { runBot } = await import('./server/start-bot.ts');
      const code = await runBot(config, process.env);
      setTimeout(() => process.exit(code), LINGER).unref();
      return code;
    }
  }
  const { runTerminal } = await import('./server/start-terminal.ts');
  return runTerminal(config, process.env, words);
}

// A reader that closes early (head, less) is no fault of ours.
process.stdout.on('error', (fault: NodeJS.ErrnoException) => {
  process.exit(fault.code === 'EPIPE' ? 0 : 1);
});

// Where nobody reads the log any more, the bot still answers.
process.stderr.on('error', () => {});

try {
  process.exitCode = await main(process.argv.slice(2));
} catch (fault) {
  const given = fault instanceof Error ? fault.message : String(fault);
  process.stderr.write(`${withoutSecrets(given, secretsOf(process.env))}\n`);
  process.exitCode = 1;
}
