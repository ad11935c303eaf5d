/** A fault of ours beyond the pipeline: told to whoever runs the bot under a short reference. */

import { faultReference } from '../../chat/request-id.ts';
import { Outage } from '../../storage/types.ts';
import type { Came } from './came.ts';
import type { Desk } from './desk.ts';
import type { Drawn } from './outgoing.ts';

/** Tells of a fault and gives the reference for the one who asked. */
export function tellFault(desk: Pick<Desk, 'fault'>, cause: unknown): string {
  const reference = faultReference();
  desk.fault(reference, cause);
  return reference;
}

/** Tells of a fault, unless it is an outage of the store, which tells of those itself, once and not for every ask. */
export function tellUnlessOutage(desk: Pick<Desk, 'fault'>, cause: unknown): void {
  if (!(cause instanceof Outage)) tellFault(desk, cause);
}

/** What making the pictures of an answer needs. */
export function drawnFor(desk: Desk, { fileBytes }: Came): Drawn {
  const { makeFile } = desk;
  return {
    toPng: (drawing) => desk.toPng(drawing),
    ...(makeFile && { makeFile }),
    fault: (cause) => tellFault(desk, cause),
    fileBytes,
  };
}
