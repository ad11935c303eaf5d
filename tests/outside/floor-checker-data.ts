/** The plain data of a laid floor as an outsider reads it: declared anew here, sharing nothing with what lays floors. */

import { z } from 'zod';

const whole = z.int();
const positive = z.int().positive();
const nonNegative = z.int().nonnegative();
const point = z.tuple([whole, whole]);
const outline = z.array(point).min(3);
const slant = z.object({ near: nonNegative, far: nonNegative, degrees: z.number().positive().lt(90) });

const pattern = z.discriminatedUnion('name', [
  z.object({ name: z.literal('stair-step'), step: positive, rows: positive }),
  z.object({ name: z.enum(['half', 'thirds', 'scattered', 'offcut-first']) }),
]);

const piece = z.object({
  u: whole,
  length: positive,
  plank: positive,
  part: z.enum(['whole', 'start', 'end', 'any']),
  edge: z.enum(['full', 'near', 'far']),
  shape: z.array(outline).min(1).optional(),
  left: slant.optional(),
  right: slant.optional(),
});

const row = z.object({ v: whole, height: positive, pieces: z.array(piece) });

const region = z.object({
  name: z.string().min(1),
  outline,
  holes: z.array(outline),
  openings: z.array(z.object({ from: point, to: point })),
  frame: z.object({ origin: point, angle: z.number().min(0).lt(360) }),
  rows: z.array(row),
});

const floor = z.object({
  kind: z.literal('floor'),
  ticksPerInch: z.literal(8128),
  plank: z.object({ width: positive, length: positive, perCarton: positive, lock: z.enum(['click', 'none']) }),
  rules: z.object({
    gap: nonNegative,
    kerf: nonNegative,
    stagger: nonNegative,
    minEnd: nonNegative,
    minRip: nonNegative,
    pattern,
  }),
  regions: z.array(region).min(1),
  count: z.object({
    planks: nonNegative,
    reused: nonNegative,
    mistakes: nonNegative,
    spares: nonNegative,
    cartons: nonNegative,
  }),
  bound: z.object({
    area: nonNegative,
    row: nonNegative,
    flow: nonNegative.optional(),
    best: nonNegative,
    proven: z.boolean(),
  }),
  broken: z.array(
    z.object({
      rule: z.enum(['stagger', 'minEnd', 'minRip', 'pattern']),
      region: z.string(),
      row: nonNegative,
      at: whole,
    }),
  ),
  cost: z.object({ cents: nonNegative, tax: nonNegative }).optional(),
});

export type FloorData = z.infer<typeof floor>;
export type RegionData = z.infer<typeof region>;
export type RowData = z.infer<typeof row>;
export type PieceData = z.infer<typeof piece>;
export type PointData = z.infer<typeof point>;

/** The floor that `data` holds, or every place where its shape is wrong. */
export function readFloor(data: unknown): { floor: FloorData } | { faults: string[] } {
  const read = floor.safeParse(data);
  if (read.success) return { floor: read.data };
  return { faults: read.error.issues.map((issue) => `data at ${issue.path.join('.') || 'the top'}: ${issue.message}`) };
}
