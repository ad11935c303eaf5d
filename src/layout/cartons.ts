/** Cartons to buy for a number of planks, and what they cost. */

import { type Cents, cents, portion, roundUpRatio } from '../units/length.ts';

/** Hundredths of a percent: 12.5 % is 1250. */
type BasisPoints = number;

/** Counts are in planks, except `cartons`. */
export interface Purchase {
  readonly planks: number;
  readonly mistakes: number;
  readonly spares: number;
  readonly cartons: number;
  /** Planks in the last carton beyond the planks, mistakes and spares. */
  readonly left: number;
}

/** ⌈(planks + mistakes + spares) / perCarton⌉ cartons, where mistakes = ⌈planks × share⌉. */
export function purchaseOf(planks: number, mistakes: BasisPoints, spares: number, perCarton: number): Purchase {
  const extra = roundUpRatio(BigInt(planks) * BigInt(mistakes), 10_000n);
  const need = planks + extra + spares;
  const cartons = roundUpRatio(BigInt(need), BigInt(perCarton));
  return { planks, mistakes: extra, spares, cartons, left: cartons * perCarton - need };
}

/**
 * Planks from area alone: ⌈area × (1 + Σ allowances) / plank area⌉. Allowances add up; they don't compound. Areas in
 * square ticks.
 */
export function planksByArea(area: bigint, plankArea: bigint, allowances: readonly BasisPoints[]): number {
  const share = 10_000 + allowances.reduce((sum, allowance) => sum + allowance, 0);
  return roundUpRatio(area * BigInt(share), plankArea * 10_000n);
}

/** Price before tax and the tax on it, each rounded once to a cent. */
export function costOf(cartons: number, price: Cents, tax: BasisPoints): { cents: Cents; tax: Cents } {
  const net = cents(cartons * price);
  return { cents: net, tax: portion(BigInt(net), BigInt(tax), 10_000n) };
}
