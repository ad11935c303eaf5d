/** The settings as a table for deploy/README.md and as the file .env.example. */

import { type SettingFacts, settingFacts } from '../../src/server/environment.ts';
import { tableOf } from './markdown-table.ts';

const WIDTH = 120;

/** A Markdown table: each variable, what it is for, and what it is when nothing is set. */
export function settingsTable(): string {
  const rows = settingFacts().map((fact) => [`\`${fact.name}\``, about(fact), fact.standard && `\`${fact.standard}\``]);
  return tableOf([['Variable', 'What it is for', 'When not set'], ...rows]);
}

/** Every variable with its standard, each below what it is for. */
export function exampleFile(mark: string): string {
  const lines = [
    `# ${mark}`,
    '# Every line is optional: with nothing set, floorhand answers in the terminal. A secret may come from a file instead,',
    '# by its variable with _FILE behind it: FLOORHAND_DISCORD_TOKEN_FILE=/run/secrets/discord-token, and so on.',
  ];
  let group = '';
  for (const fact of settingFacts()) {
    lines.push('');
    if (fact.group !== group) lines.push(`# == ${fact.group} ==`, '');
    group = fact.group;
    lines.push(...wrapped(about(fact)), `${fact.name}=${fact.standard}`);
  }
  return `${lines.join('\n')}\n`;
}

function about({ about: said, secret }: SettingFacts): string {
  return secret ? `${said} A secret.` : said;
}

function wrapped(text: string): readonly string[] {
  const lines: string[] = [];
  let line = '#';
  for (const word of text.split(' ')) {
    if (line.length + 1 + word.length > WIDTH) {
      lines.push(line);
      line = '#';
    }
    line += ` ${word}`;
  }
  return [...lines, line];
}
