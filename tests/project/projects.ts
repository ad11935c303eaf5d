/** Projects for tests: the demo flat, and whatever content is drawn. */

import fc from 'fast-check';
import { bornWith, type Content, emptyContent, type Project } from '../../src/project/project.ts';
import type { Share } from '../../src/project/shares.ts';

export const OWNER = 'owner-owner-owner-owner';
export const ID = 'flat-flat-flat-flat-flat';

/** The small upstairs flat: hall, living room with a bay, bedroom, closet, and a bath left as it is. */
export function flatContent(): Content {
  return {
    ...emptyContent('Upstairs flat'),
    rooms: [
      { name: 'hall', text: `3'6" x 14'`, notes: [], inScope: true, floor: 'carpet' },
      { name: 'living', text: `14' x 16' + bay 3' x 8'`, notes: [], inScope: true, floor: 'carpet' },
      { name: 'bedroom', text: `11' x 12'6"`, openings: '32 in on wall 2', notes: [], inScope: true, floor: 'carpet' },
      { name: 'closet', text: '3 x 5 ft', notes: [], inScope: true, floor: 'carpet' },
      { name: 'bath', text: '5 x 8 ft', notes: ['tile stays'], inScope: false, floor: 'ceramic tile' },
    ],
    picks: { plank: '7 x 48 in, 23.33 sq ft per carton, $2.89/sq ft', gap: '1/4 in' },
  };
}

export function flat(): Project {
  return bornWith(flatContent(), { id: ID, owner: OWNER });
}

/** The whole project, shared with a person. */
export function shareWith(person: string, role: Share['role']): Share {
  return { id: '1', what: 'project', role, with: { person }, at: 0, by: OWNER };
}

const text = fc.string({ minLength: 1, maxLength: 30, unit: 'grapheme' });

/** Content of a project as a person might come to have it. */
export const someContent: fc.Arbitrary<Content> = fc
  .record({
    name: text,
    rooms: fc.uniqueArray(
      fc.record({ name: text, text, notes: fc.array(text, { maxLength: 3 }), inScope: fc.boolean() }),
      {
        maxLength: 6,
        selector: ({ name }) => name,
      },
    ),
    picks: fc.dictionary(fc.constantFrom('plank', 'gap', 'edges stock', 'constructor', 'toString'), text),
    log: fc.array(fc.record({ text, at: fc.nat() }), { maxLength: 5 }),
  })
  .map((parts) => ({ ...emptyContent(parts.name), ...parts }));
