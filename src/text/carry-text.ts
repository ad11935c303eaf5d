/** The words of the answer about carrying a delivery. */

export const CARRY = {
  headline: (trips: number, load: string, weight: string) =>
    `${trips === 1 ? '1 trip' : `${trips} trips`} of ${load} for ${weight}.`,
  two: (each: number) =>
    `With two people that is ${each === 1 ? '1 trip' : `${each} trips`} each; a dolly does most of it.`,
  boxes: (load: string) => `Open boxes heavier than ${load} and carry them in parts.`,
  assumed: (load: string) => `Assuming ${load} a trip.`,
} as const;
