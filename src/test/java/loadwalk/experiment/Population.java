package loadwalk.experiment;

/** A way of drawing simulated amplifiers; the same seed and number give the same member. */
interface Population {
  /** Returns what the table calls it. */
  String name();

  /** Draws one member. */
  Specimen specimen(long seed, int number);
}
