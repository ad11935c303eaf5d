/** The configuration, read from the environment: every fault told at once. */

import { z } from 'zod';

const configuration = z.object({
  FLOORHAND_UNITS: z.enum(['imperial', 'metric']).default('imperial'),
  FLOORHAND_DECIMAL: z.enum(['.', ',']).default('.'),
  FLOORHAND_CURRENCY: z
    .string()
    .regex(/^[A-Z]{3}$/, 'an ISO 4217 code such as USD')
    .default('USD'),
  FLOORHAND_HISTORY: z.string().default(''),
  FLOORHAND_PICTURES: z.string().default('pictures'),
  FLOORHAND_STORE: z
    .string()
    .regex(/^(|postgres(ql)?:\/\/.+|rediss?:\/\/.+)$/, 'empty, postgres://… or redis://…')
    .default(''),
  FLOORHAND_DATA: z.string().default(''),
});

/** What whoever runs the bot has chosen. */
export interface Config {
  readonly units: 'imperial' | 'metric';
  readonly decimal: '.' | ',';
  readonly currency: string;
  /** File for the terminal's history; empty for none. */
  readonly history: string;
  /** Folder for the pictures of the terminal's answers. */
  readonly pictures: string;
  /** Address of the server that keeps projects; empty for the data folder. */
  readonly store: string;
  /** The data folder; empty for the one that the system has for it. */
  readonly data: string;
}

/** Reads the configuration; empty variables count as not set. Throws an Error that names every fault. */
export function readConfig(environment: Readonly<Record<string, string | undefined>>): Config {
  const told = Object.fromEntries(
    Object.entries(environment).filter(([, value]) => value !== undefined && value !== ''),
  );
  const result = configuration.safeParse(told);
  if (!result.success) {
    const faults = result.error.issues.map(({ path, message }) => `${path.join('.')}: ${message}`);
    throw new Error(`The configuration cannot be read.\n${faults.join('\n')}`);
  }
  const read = result.data;
  return {
    units: read.FLOORHAND_UNITS,
    decimal: read.FLOORHAND_DECIMAL,
    currency: read.FLOORHAND_CURRENCY,
    history: read.FLOORHAND_HISTORY,
    pictures: read.FLOORHAND_PICTURES,
    store: read.FLOORHAND_STORE,
    data: read.FLOORHAND_DATA,
  };
}
