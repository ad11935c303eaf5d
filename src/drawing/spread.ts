/** Labels beside what they name: each as near to its own level as a least distance between neighbours allows. */

/** Levels nearest in all to the wanted ones (in order, ascending), neighbours at least `apart` from each other. */
export function spread(wanted: readonly number[], apart: number): readonly number[] {
  // With i × apart taken off, "at least apart" is "never falling": the nearest such run is found by pooling neighbours.
  const pools: { sum: number; count: number }[] = [];
  wanted.forEach((level, i) => {
    let pool = { sum: level - i * apart, count: 1 };
    for (let last = pools.at(-1); last && last.sum / last.count > pool.sum / pool.count; last = pools.at(-1)) {
      pool = { sum: last.sum + pool.sum, count: last.count + pool.count };
      pools.pop();
    }
    pools.push(pool);
  });
  return pools.flatMap(({ sum, count }) => Array<number>(count).fill(sum / count)).map((level, i) => level + i * apart);
}
