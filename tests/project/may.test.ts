/** Who may do what: the whole table, and nobody else anything. */

import { expect, test } from 'vitest';
import { may, PERMISSIONS, ROLES } from '../../src/project/project-limits.ts';

test('the table of roles and deeds', () => {
  const table = ROLES.map((role) => `${role}: ${PERMISSIONS.filter((permission) => may(role, permission)).join(' ')}`);
  expect(table).toEqual([
    'owner: look tick note measure keep spend own',
    'measure: look tick note measure keep',
    'tick: look tick note',
    'look: look',
  ]);
});

test.each(PERMISSIONS)('a stranger may not %s', (permission) => expect(may(undefined, permission)).toBe(false));
