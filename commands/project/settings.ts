/** `project settings`: how you write and what is taken where you tell nothing, for you alone. */

import { z } from 'zod';
import { defineCommand } from '../../src/chat/command.ts';
import { SETTINGS } from '../../src/text/project-text.ts';
import { atDesk, problem } from './parts/at-desk.ts';
import { projectReply } from './parts/reply.ts';
import { settingFacts, settled } from './parts/settings.ts';
import { AS_IT_IS, settingsOptions } from './parts/settings-options.ts';

export default defineCommand({
  group: 'project',
  name: 'settings',
  summary: 'Your units, decimal mark, currency and country, and what is taken where you tell nothing',
  options: z.object(settingsOptions),
  examples: [
    { ask: 'project settings', headline: 'Your settings.' },
    {
      ask: 'project settings units: metric, decimal: comma, currency: EUR',
      headline: 'Units metric; decimal comma; currency EUR.',
    },
    { ask: 'project settings country: UK', headline: 'Country UK.' },
    {
      ask: 'project settings mistakes: 5 %, spares: 3, rules: gap: 3/8 in',
      headline: 'Mistakes 5 %; spares 3; gap 3/8 in.',
    },
  ],
  run: (told, context) =>
    atDesk(context, async (desk) => {
      const change = settled(told, context);
      if ('problem' in change) return problem(change.problem);
      const before = (await desk.person())?.settings;
      const settings = change.said.length === 0 ? before : (await desk.settle(change.apply)).settings;
      return projectReply(context, {
        headline: change.said.length === 0 ? SETTINGS.headline : SETTINGS.changed(change.said),
        blocks: [{ kind: 'facts', title: SETTINGS.title, facts: settingFacts(settings, before, context.habits) }],
        assumed: [...change.notes, ...(told.units === AS_IT_IS ? [] : [SETTINGS.toldUnits])],
      });
    }),
});
