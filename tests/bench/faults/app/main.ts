/** Does to the bot as it is hosted what goes wrong in the world, and prints what people saw of it: `npm run faults -- app`. */

import { execFileSync, spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { learn } from '../../load/right.ts';
import { missing } from '../own-server.ts';
import { type Fate, LINES } from './crowd.ts';
import type { Seen } from './during.ts';
import { type Hosted, onFolder, onServer } from './hosted.ts';
import { connected, ON_FOUR, onOne, QUICK, type Scenario, WHOLE } from './scenarios.ts';

/** Runs all, or those of these names; how many did not hold. */
export async function faultsOfApp(quick: boolean, names: readonly string[]): Promise<number> {
  const lacking = missing('postgres');
  if (lacking.length > 0) {
    console.log(`the bot as it is hosted: passed over, for want of ${lacking.join(', ')}`);
    return process.env.FLOORHAND_REQUIRE_SERVICES === '1' ? 1 : 0;
  }
  const held = quick ? QUICK : WHOLE;
  const soon = quick ? { FLOORHAND_ASK_SECONDS: '3' } : {};
  const folder = mkdtempSync(join(tmpdir(), 'floorhand-data-'));
  const asked = <H extends Hosted>(all: readonly Scenario<H>[]) =>
    all.filter(([name]) => names.length === 0 || names.some((one) => name.includes(one)));
  const small = mountSmall(folder);
  if (!small) console.log('disk full: passed over, for only root may mount a small disk');
  const connectedOnes = connected(held).filter(([name]) => small || !name.startsWith('disk full'));
  try {
    const known = await learn(LINES, 1);
    return (
      (await runAll(asked(onOne(held)), () => onServer(1, known, soon))) +
      (await runAll(asked(ON_FOUR), () => onServer(4, known, { ...soon, FLOORHAND_WORKERS: '1' }))) +
      (await runAll(asked(connectedOnes), () => onFolder(folder, known, soon)))
    );
  } finally {
    if (small) execFileSync('umount', ['--lazy', folder]);
    rmSync(folder, { recursive: true, force: true });
  }
}

/** A disk of 64 MB in memory at a folder; false where this user or system may not. */
function mountSmall(folder: string): boolean {
  return spawnSync('mount', ['-t', 'tmpfs', '-o', 'size=64m', 'tmpfs', folder], { stdio: 'ignore' }).status === 0;
}

async function runAll<H extends Hosted>(scenarios: readonly Scenario<H>[], open: () => Promise<H>): Promise<number> {
  if (scenarios.length === 0) return 0;
  const hosted = await open();
  let wrong = 0;
  try {
    for (const [name, run] of scenarios) if (!tell(name, await run(hosted))) wrong++;
  } finally {
    await hosted.close();
  }
  return wrong;
}

/** Prints what came of one; whether it held: nothing lost, nothing doubled, nothing wrong. */
function tell(name: string, { back, sums, notes, slowest, told, ledger }: Seen): boolean {
  const fates = (counts: Readonly<Record<Fate, number>>): string =>
    Object.entries(counts)
      .flatMap(([fate, count]) => (count > 0 ? [`${count} ${fate}`] : []))
      .join(', ');
  console.log(`${name}: well again after ${back.toFixed(1)} s`);
  console.log(`  sums: ${fates(sums)}; notes: ${fates(notes)}; longest to a first answer ${slowest.toFixed(1)} s`);
  for (const words of told) console.log(`  seen: ${words}`);
  const { acknowledged, lost, doubled } = ledger;
  console.log(`  notes acknowledged ${acknowledged}, of them lost ${lost}, there twice ${doubled}`);
  return lost === 0 && doubled === 0 && sums.wrong === 0 && notes.wrong === 0 && acknowledged > 0;
}
