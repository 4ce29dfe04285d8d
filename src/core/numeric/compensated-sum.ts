/**
 * A sum that keeps what rounding drops from it, so that the order of its terms does not matter beyond the last digits.
 * Neumaier's variant of Kahan summation.
 */
export class CompensatedSum {
  private sum = 0;
  private dropped = 0;

  add(term: number): void {
    const next = this.sum + term;
    this.dropped += Math.abs(this.sum) >= Math.abs(term) ? this.sum - next + term : term - next + this.sum;
    this.sum = next;
  }

  get total(): number {
    return this.sum + this.dropped;
  }
}
