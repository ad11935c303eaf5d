/** What the pipeline needs from outside, handed in by main. */

export interface Ports {
  /** Tells whoever runs the bot of a fault: the short reference the asker was given, and the cause. */
  fault(reference: string, cause: unknown): void;
}
