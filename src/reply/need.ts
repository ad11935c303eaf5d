/** What an answer takes of one thing: the exact amount, not yet rounded up to what is sold. */

// The stages of a job in the order in which they come up.

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

/** Things, ticks, square ticks, litres, kilograms. */
export type NeedUnit = 'count' | 'length' | 'area' | 'volume' | 'weight';

/** `amount` is exact: parts of a tube, planks that are not whole cartons. */
interface Quantity {
  readonly unit: NeedUnit;
  readonly amount: number;
}

/** How it is sold: what one holds, in the unit of the quantity, and its name for one and for several. */
export interface Package {
  readonly size: number;
  readonly label: string;
  readonly labels: string;
}

/** What one package costs. */
export interface PackagePrice {
  readonly cents: number;
  /** ISO 4217. */
  readonly currency: string;
  /** Sales tax on top, in hundredths of a percent. */
  readonly tax?: number;
}

/** One thing to have for the job. Needs of the same item are added up before anything is rounded. */
export interface Need {
  /** A stable key of the thing and its size, the same whatever asks for it. */
  readonly item: string;
  readonly label: string;
  readonly stage: Stage;
  readonly quantity: Quantity;
  /** Without it, it is sold in many sizes, or by the piece. */
  readonly package?: Package;
  readonly price?: PackagePrice;
  readonly room?: string;
  /** What to know before buying it. */
  readonly note?: string;
}
