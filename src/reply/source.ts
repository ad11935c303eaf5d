/** Where a figure comes from, and how far it was checked. */

export type Standing = 'published' | 'reported' | 'common practice' | 'from memory';

export interface Source {
  readonly title: string;
  readonly standing: Standing;
  readonly publisher?: string;
  readonly year?: number;
  readonly section?: string;
}
