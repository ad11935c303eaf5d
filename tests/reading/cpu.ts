/** Processor time of this process, so that a loaded machine makes nothing slow. */

/** Milliseconds of processor time that some work takes: the least of a few runs, for the first one compiles it and garbage is collected when it suits. */
export function cpuOf(work: () => unknown, enough = 50, runs = 4): number {
  let least = Number.POSITIVE_INFINITY;
  for (let run = 0; run < runs && least >= enough; run++) {
    const before = process.cpuUsage();
    work();
    const { user, system } = process.cpuUsage(before);
    least = Math.min(least, (user + system) / 1000);
  }
  return least;
}
