/** The words of cutting sticks: pieces to cut, stock lengths to buy or at hand, and a plan of sticks. Lengths in ticks, money in cents. */

/** A piece as it takes up a stick: its length long point to long point and the kerf of the one cut that parts it from the next. */
export interface StickPiece {
  readonly id: string;
  readonly length: number;
  /** The kerf along the stick: it grows with the setting of the cut. */
  readonly kerf: number;
}

/** A stock length. `have` sticks are at hand and cost nothing more; without it any number can be bought at `cents` each. */
export interface Stock {
  readonly length: number;
  readonly cents: number;
  readonly have?: number;
}

/** `endTrim` is cut off each stick before anything else. The last piece of a stick needs no kerf behind it. */
export interface StickTask {
  readonly pieces: readonly StickPiece[];
  readonly stock: readonly Stock[];
  readonly endTrim: number;
}

/** One stick: which stock, which pieces in the order in which they are cut (longest first), and what is left. */
export interface Stick {
  readonly stock: number;
  readonly pieces: readonly string[];
  readonly leftover: number;
}

/** Sticks that give every piece once. `bound`: no way to cut the pieces costs less; `proven` when the cost equals it. */
export interface StickPlan {
  readonly sticks: readonly Stick[];
  readonly cents: number;
  readonly bound: number;
  readonly proven: boolean;
}
