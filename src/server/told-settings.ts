/** What the environment tells of settings: secrets out of files, and variables that no setting has. */

import { readFileSync } from 'node:fs';
import { distance } from 'fastest-levenshtein';
import { settingFacts } from './settings.ts';

export type Environment = Readonly<Record<string, string | undefined>>;

/** Settings as texts, and what cannot be read, each in a line that begins with its variable. */
export interface Told {
  readonly told: Readonly<Record<string, string>>;
  readonly faults: readonly string[];
  /** What was told and has no use, which hinders nothing. */
  readonly doubts: readonly string[];
}

/** The tests' own. */
const NOT_OURS = /^FLOORHAND_(TEST_\w+|REQUIRE_SERVICES)$/;
/** Letters to change at most for a name to be a slip of a setting's; fewer in a short one. */
const SLIP = 2;

/** Reads variables and the files of secrets; an empty variable counts as not set. */
export function toldSettings(environment: Environment): Told {
  const facts = settingFacts();
  const told: Record<string, string> = {};
  const faults: string[] = [];
  const doubts: string[] = [];
  for (const { name, secret } of facts) {
    const value = environment[name] ?? '';
    const file = secret ? (environment[`${name}_FILE`] ?? '') : '';
    if (value !== '' && file !== '') faults.push(`${name}: told twice, here and in ${name}_FILE; unset one of them`);
    else if (file !== '') {
      const read = contentOf(file);
      if ('why' in read) faults.push(`${name}_FILE: the file ${file} ${read.why}`);
      else told[name] = read.text;
    } else if (value !== '') told[name] = value;
  }
  const names = facts.flatMap(({ name, secret }) => (secret ? [name, `${name}_FILE`] : [name]));
  for (const [name, value] of Object.entries(environment)) {
    if (!name.startsWith('FLOORHAND_') || names.includes(name) || NOT_OURS.test(name) || !value) continue;
    if (name.endsWith('_FILE') && names.includes(name.slice(0, -5))) {
      faults.push(`${name}: only secrets are read from files; set ${name.slice(0, -5)} itself`);
      continue;
    }
    const near = names.find((one) => distance(one, name) <= slipOf(one));
    if (near) faults.push(`${name}: there is no such setting; you may mean ${near}`);
    else doubts.push(`${name}: there is no such setting, and nothing reads it`);
  }
  return { told, faults, doubts };
}

function slipOf(name: string): number {
  return Math.min(SLIP, Math.max(1, Math.floor((name.length - 'FLOORHAND_'.length) / 4)));
}

/** The text of a secret's file without the line end that editors leave. */
function contentOf(file: string): { readonly text: string } | { readonly why: string } {
  try {
    const text = readFileSync(file, 'utf8').replace(/\r?\n$/, '');
    return text === '' ? { why: 'is empty' } : { text };
  } catch (cause) {
    const code = cause instanceof Error && 'code' in cause ? String(cause.code) : 'unknown';
    const said: Readonly<Record<string, string>> = {
      ENOENT: 'is not there',
      EACCES: 'may not be read by this user',
      EISDIR: 'is a folder',
    };
    return { why: said[code] ?? `cannot be read (${code})` };
  }
}
