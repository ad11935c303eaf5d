/** The floor coverings whose tear-out is worked out. */

export type Covering = 'carpet' | 'sheet vinyl' | 'plank vinyl' | 'laminate' | 'tile';

/** Coverings cut into strips and rolled; the others come up in pieces. */
export function isRolled(covering: Covering): boolean {
  return covering === 'carpet' || covering === 'sheet vinyl';
}
