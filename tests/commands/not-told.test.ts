/** Nothing that decides a tear-out is taken silently. */

import { describe, expect, it } from 'vitest';
import { replyTo } from '../chat/asked.ts';

describe.each(['tearout', 'prep plan'])('%s', (command) => {
  it('says what it takes for floor, year, doors and country that were not told', async () => {
    const { assumed } = await replyTo(`${command} room: 12x14`);
    for (const option of ['floor', 'built', 'doors', 'country'])
      expect(assumed.join('\n')).toContain(`${option}: assuming`);
  });

  it('says nothing of what was told', async () => {
    const { assumed } = await replyTo(
      `${command} room: 12' x 14', floor: carpet, built: 1995, doors: 30 in, country: US`,
    );
    expect(assumed.join('\n')).not.toContain('assuming');
  });
});
