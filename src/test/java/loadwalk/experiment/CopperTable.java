package loadwalk.experiment;

import loadwalk.bench.Lead;

/** Leads as published: AWG conductors at 30 °C (33 CFR 183.425, Table 5). */
final class CopperTable {
  private static final int[] AWG = {18, 16, 14, 12, 10, 8, 6, 4, 3, 2, 1, 0, -1, -2, -3};
  private static final double[] AT_105 = {
    20, 25, 35, 45, 60, 80, 120, 160, 180, 210, 245, 285, 330, 385, 445
  };
  private static final double[] AT_75 = {
    10, 15, 20, 25, 40, 65, 95, 125, 145, 170, 195, 230, 265, 310, 360
  };
  private static final double HOT = 105;
  private static final double UNSAID = 75;
  private static final int MOST_PARALLEL = 24;
  private static final double OHM_MM2_PER_METRE = 0.0193;

  private CopperTable() {}

  /** Returns the thinnest run for 105 °C that carries a current, or the thickest there is. */
  static Lead notBelow(String label, double amps, double metres) {
    for (int parallel = 1; parallel <= MOST_PARALLEL; parallel++) {
      for (int i = 0; i < AWG.length; i++) {
        if (AT_105[i] * parallel * bundled(parallel) >= amps) {
          return run(label, AWG[i], metres, parallel);
        }
      }
    }
    return run(label, AWG[AWG.length - 1], metres, MOST_PARALLEL);
  }

  private static Lead run(String label, int awg, double metres, int parallel) {
    return new Lead(label, new Lead.Awg(awg), metres, parallel).insulatedFor(HOT);
  }

  /** Returns what a run carries, amperes; what does not say its insulation counts as 75 °C. */
  static double amps(Lead lead) {
    double[] amps = lead.insulationCelsius().orElse(UNSAID) < HOT ? AT_75 : AT_105;
    for (int i = 0; i < AWG.length; i++) {
      if (lead.gauge().equals(new Lead.Awg(AWG[i]))) {
        return amps[i] * lead.parallel() * bundled(lead.parallel());
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
