/** Who may do what: the whole table, and nobody else anything. */

import { expect, test } from 'vitest';
import { DEEDS, may, ROLES } from '../../src/project/project-limits.ts';

test('the table of roles and deeds', () => {
  const table = ROLES.map((role) => `${role}: ${DEEDS.filter((deed) => may(role, deed)).join(' ')}`);
  expect(table).toEqual([
    'owner: look tick note measure keep spend own',
    'measure: look tick note measure keep',
    'tick: look tick note',
    'look: look',
  ]);
});

test.each(DEEDS)('a stranger may not %s', (deed) => expect(may(undefined, deed)).toBe(false));
