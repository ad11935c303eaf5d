/** What a link leads to, from the desk of whoever holds it. */

import { createHash } from 'node:crypto';
import { openDesk } from '../../accounts/project-access.ts';
import { questionsAt } from '../../chat/notifications.ts';
import type { Ports } from '../../chat/ports.ts';
import type { WebPorts } from './ports.ts';

/** Looks links up where projects are kept. The look is the same for a link that leads nowhere. Throws Outage. */
export function openedBy(ports: Ports): WebPorts['opened'] {
  return async (asker) => {
    const desk = openDesk(asker, ports);
    const share = await desk?.share();
    if (!desk || !share) return undefined;
    desk.cover();
    const project = await desk.inUse();
    if (!project) return undefined;
    // A room's guide is that of the whole floor: it is another when other rooms change.
    const whole = (await desk.inUse('whole')) ?? project;
    const { id, shares: _shares, history: _history, undone: _undone, ...shown } = whole;
    const { what, room, role, until, label } = share;
    const standing = [shown, what, room, role, until, label, await desk.ownersSettings()];
    return {
      project: id,
      role,
      ...(until !== undefined && { until }),
      state: createHash('sha256').update(JSON.stringify(standing)).digest('base64url'),
      questions: role === 'measure' ? await questionsAt(desk) : [],
    };
  };
}
