package loadwalk.experiment;

import loadwalk.bench.Lead;

/** Leads as published: AWG conductors for 105 °C at 30 °C (33 CFR 183.425, Table 5). */
final class CopperTable {
  private static final int[] AWG = {18, 16, 14, 12, 10, 8, 6, 4, 3, 2, 1, 0, -1, -2, -3};
  private static final double[] AMPS = {
    20, 25, 35, 45, 60, 80, 120, 160, 180, 210, 245, 285, 330, 385, 445
  };
  private static final int MOST_PARALLEL = 24;
  private static final double OHM_MM2_PER_METRE = 0.0193;

  private CopperTable() {}

  /** Returns the thinnest run that carries a current, or the thickest there is. */
  static Lead notBelow(String label, double amps, double metres) {
    for (int parallel = 1; parallel <= MOST_PARALLEL; parallel++) {
      for (int i = 0; i < AWG.length; i++) {
        if (AMPS[i] * parallel * bundled(parallel) >= amps) {
          return new Lead(label, new Lead.Awg(AWG[i]), metres, parallel);
        }
      }
    }
    return new Lead(label, new Lead.Awg(AWG[AWG.length - 1]), metres, MOST_PARALLEL);
  }

  /** Returns what a run carries, amperes. */
  static double amps(Lead lead) {
    for (int i = 0; i < AWG.length; i++) {
      if (lead.gauge().equals(new Lead.Awg(AWG[i]))) {
        return AMPS[i] * lead.parallel() * bundled(lead.parallel());
      }
    }
    throw new IllegalArgumentException(lead + " is not in the table");
  }

  /** Returns the length of a run that has a resistance, warm. */
  static double metres(Lead lead, double ohms) {
    return ohms * lead.gauge().areaMm2() * lead.parallel() / OHM_MM2_PER_METRE;
  }

  private static double bundled(int conductors) {
    return conductors < 3 ? 1 : conductors == 3 ? 0.7 : conductors <= 6 ? 0.6 : 0.5;
  }
}
