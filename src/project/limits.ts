/** How much one person may keep. */

export const DAY = 24 * 3600 * 1000;

export const LIMITS = {
  projects: 20,
  /** Accounts linked to one person. */
  accounts: 10,
  /** With those deleted that can still be brought back. */
  projectsDeleted: 60,
  rooms: 50,
  picks: 40,
  kept: 50,
  /** Notes of one room. */
  notes: 20,
  /** Changes that can be taken back. */
  changes: 20,
  /** Characters of what they are kept as, together. */
  changesSize: 60_000,
  name: 60,
  /** One room as told. */
  room: 500,
  /** All rooms in scope: they must fit into one ask beside everything else. */
  roomsTold: 2500,
  /** Shares of one project. */
  shares: 30,
  /** Projects of others that one person is let into. */
  sharedWith: 30,
  /** What the owner calls a helper. */
  label: 40,
  note: 300,
  pick: 500,
  ask: 4000,
  headline: 500,
  /** Days for which a deleted project can be brought back. */
  restore: 30,
} as const;
