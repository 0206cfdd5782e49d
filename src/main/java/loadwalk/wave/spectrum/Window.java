package loadwalk.wave.spectrum;

/** Windows that fade a block in and out, as sums of cosines. */
public enum Window {
  /**
   * Four terms with a continuous first derivative (Nuttall, 1981): for blocks of eight periods,
   * whose harmonics are eight bins apart. Side lobes below -93 dB.
   */
  NUTTALL(0.355768, -0.487396, 0.144232, -0.012604),

  /**
   * Seven terms with the lowest side lobes (Albrecht, 2001; from memory, checked by a test): -160
   * dB.
   */
  SEVEN_TERMS(
      0.27105140069342,
      -0.43329793923448,
      0.21812299954311,
      -0.06592544638803,
      0.01081174209837,
      -0.00077658482522,
      0.00001388721735);

  private final double[] terms;

  Window(double... terms) {
    this.terms = terms;
  }

  /** Returns the weight at a place in the block, from 0 to 1. */
  double at(double part) {
    double sum = 0;
    for (int term = 0; term < terms.length; term++) {
      sum += terms[term] * Math.cos(2 * Math.PI * term * part);
    }
    return sum;
  }

  /** Returns half the width of the main lobe, in bins of an unpadded block. */
  int lobe() {
    return terms.length;
  }
}
