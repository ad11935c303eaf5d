/** What an answer needs of one item: the exact amount before rounding up to what is sold. */

// The stages of a job, in order.

export const STAGES = [
  'clear',
  'tear-out',
  'subfloor',
  'flat',
  'dry',
  'acclimate',
  'lay',
  'transitions',
  'baseboards',
  'caulk',
  'paint',
] as const;

export type Stage = (typeof STAGES)[number];

/** Pieces, ticks, square ticks, liters, kilograms. */
export type NeedUnit = 'count' | 'length' | 'area' | 'volume' | 'weight';

/** `amount` is exact: fractions of a tube, planks that don't fill cartons. */
interface Quantity {
  readonly unit: NeedUnit;
  readonly amount: number;
}

/** How it is sold: the content of one package in the quantity's unit, and its name in singular and plural. */
export interface Package {
  readonly size: number;
  readonly label: string;
  readonly labels: string;
}

export interface PackagePrice {
  readonly cents: number;
  /** ISO 4217. */
  readonly currency: string;
  /** Sales tax on top, in hundredths of a percent. */
  readonly tax?: number;
}

/** One thing to have for the job. Needs for the same item are added up before rounding. */
export interface Need {
  /** A stable key for the thing and its size, the same for every command. */
  readonly item: string;
  readonly label: string;
  readonly stage: Stage;
  readonly quantity: Quantity;
  /** Absent if it comes in many sizes or is sold by the piece. */
  readonly package?: Package;
  readonly price?: PackagePrice;
  readonly room?: string;
  readonly note?: string;
}
