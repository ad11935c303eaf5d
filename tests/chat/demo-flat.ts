/** Somebody with projects, for tests: the demo flat in use with two changes made, and an old house deleted lately. */

import { openAccess } from '../../src/accounts/project-access.ts';
import type { Asker } from '../../src/accounts/records.ts';
import type { Ports } from '../../src/chat/ports.ts';
import { emptyContent } from '../../src/project/project.ts';
import { flatContent } from '../project/projects.ts';
import { type StoreInMemory, storeInMemory } from '../storage/shelf-in-memory.ts';

/** A Saturday at noon. */
export const NOON = Date.UTC(2026, 10, 21, 12);

export interface DemoPorts extends Ports {
  readonly store: StoreInMemory;
  readonly clock: { now: number };
  now(): number;
}

/** Ports with a store in memory and a clock that the test moves. */
export function portsInMemory(fault: Ports['fault']): DemoPorts {
  const clock = { now: NOON };
  return { fault, store: storeInMemory(), clock, now: () => clock.now, address: () => 'https://floors.example' };
}

/** The same with the asker's projects in it. */
export async function demoPorts(asker: Asker, fault: Ports['fault']): Promise<DemoPorts> {
  const ports = portsInMemory(fault);
  const access = openAccess(asker, ports);
  if (!access) throw new Error('no desk');
  await access.create(emptyContent('Old house'));
  await access.change('own', () => ({ parts: { state: { kind: 'deleted', at: NOON } }, said: 'deleted', result: 0 }));
  const { picks, ...flat } = flatContent();
  await access.create({ ...flat, picks: {} });
  const { gap = '', ...others } = picks;
  await access.change('measure', () => ({ parts: { picks: others }, said: 'plank: 7 x 48 in', result: 0 }));
  await access.change('measure', () => ({ parts: { picks: { ...others, gap } }, said: `gap: ${gap}`, result: 0 }));
  return ports;
}
