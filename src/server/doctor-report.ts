/** The doctor's findings: each check, its result, and what to do about it. */

/** `doubt`: it runs but may not work properly; `fault`: it doesn't run. */
type Health = 'ok' | 'doubt' | 'fault';

export interface Finding {
  readonly about: string;
  readonly health: Health;
  readonly said: string;
  readonly todo?: string;
}

const MARKS: Readonly<Record<Health, string>> = { ok: 'ok   ', doubt: 'look ', fault: 'FAULT' };

/** One line each, and a summary. */
export function findingsText(findings: readonly Finding[]): string {
  const width = Math.max(...findings.map(({ about }) => about.length));
  const indent = ' '.repeat(MARKS.ok.length + width + 4);
  const lines = findings.flatMap(({ about, health, said, todo }) => [
    `${MARKS[health]}  ${about.padEnd(width)}  ${said}`,
    ...(todo === undefined ? [] : [`${indent}${todo}`]),
  ]);
  return `${[...lines, '', summary(findings)].join('\n')}\n`;
}

function summary(findings: readonly Finding[]): string {
  const count = (health: Health): number => findings.filter((one) => one.health === health).length;
  const [faults, doubts] = [count('fault'), count('doubt')];
  if (faults > 0)
    return `${faults} ${faults === 1 ? 'thing keeps' : 'things keep'} it from running. Nothing was changed.`;
  const looks = doubts === 0 ? '' : ` ${doubts} ${doubts === 1 ? 'thing wants' : 'things want'} a look.`;
  return `It can run.${looks} Nothing was changed.`;
}

/** 1 if anything keeps it from running. */
export function exitCodeOf(findings: readonly Finding[]): 0 | 1 {
  return findings.some(({ health }) => health === 'fault') ? 1 : 0;
}

export function ok(about: string, said: string): Finding {
  return { about, health: 'ok', said };
}

export function doubt(about: string, said: string, todo: string): Finding {
  return { about, health: 'doubt', said, todo };
}

export function fault(about: string, said: string, todo: string): Finding {
  return { about, health: 'fault', said, todo };
}
