/** Why something was not worked out: not a fault, and asking again may do. */

/**
 * `crowded`: too many wait already; `own`: too many of the same person's; `large`: it took more time or memory than an ask may;
 * `unread`: reading its text took longer than a text may.
 */
export type Why = 'crowded' | 'own' | 'large' | 'unread';

export class Unworked extends Error {
  override readonly name = 'Unworked';
  readonly why: Why;

  constructor(why: Why, options?: ErrorOptions) {
    super(`not worked out: ${why}`, options);
    this.why = why;
  }
}
