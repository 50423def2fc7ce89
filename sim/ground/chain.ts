// First-order Markov chain: what lies under a layer depends on that layer only.

/**
 * Rows of tallies or weights, each turned into shares that add up to 1.
 * Throws RangeError when a row holds a negative number or nothing but zeros.
 * Source: Davis, Statistics and Data Analysis in Geology, ch. 4. Worked value: [1, 3] -> [.25, .75].
 */
export function sharesOf(rows: readonly (readonly number[])[]): number[][] {
  return rows.map((row, i) => {
    const sum = row.reduce((total, weight) => total + weight, 0);
    if (!(sum > 0) || row.some((weight) => !(weight >= 0))) {
      throw new RangeError(`Row ${i} of the chain needs weights of 0 or more, at least one of them above 0.`);
    }
    return row.map((weight) => weight / sum);
  });
}

/** State that follows `from`, by a draw 0 <= u < 1: the first whose summed share passes u. Worked value: row [.2, 0, .8], u .2 -> 2. */
export function nextState(shares: readonly (readonly number[])[], from: number, u: number): number {
  const row = shares[from];
  let sum = 0;
  let last = from;
  for (let i = 0; i < row.length; i++) {
    if (row[i] === 0) continue;
    sum += row[i];
    last = i;
    if (u < sum) return i;
  }
  // Rounding may leave the sum a hair below 1.
  return last;
}
