package loadwalk.experiment;

import java.util.Optional;
import loadwalk.bench.Mount;

/**
 * A load resistor that gets hot: its wire in its case, both with a mass, second by second.
 *
 * <p>In full at 25 °C and not at all at 250 °C (MIL-PRF-39009), so the wire rises 225 K over the
 * case at the rated watts. Five times the rating for five seconds (catalogues, from memory, not
 * sure) gives the wire its mass. A case of aluminium weighs about 1.1 g a rated watt (from memory,
 * not sure), at 0.9 J/(g K). In free air the watts of catalogues (from memory, moderately sure) are
 * borne without end; beyond the largest body they grow as its surface. Moving air takes three times
 * the heat of still air, oil five times (heat transfer, textbook).
 *
 * @param watts what it takes
 * @param ratedWatts its rating with its case at 25 °C
 * @param mount how it is mounted; what is not said counts as free air
 */
record HotResistor(double watts, double ratedWatts, Optional<Mount> mount) {
  private static final double RISE = 225;
  private static final double OVERLOAD = 5;
  private static final double OVERLOAD_SECONDS = 5;
  private static final double CASE_JOULES_PER_KELVIN_AND_WATT = 1.0;
  private static final double[] RATED = {10, 25, 50, 100, 150, 200, 300};
  private static final double[] FREE_AIR = {5.5, 12.5, 20, 50, 50, 50, 75};
  private static final double PLATE_KELVIN_PER_WATT = 1.1;
  private static final double MOVING_AIR = 3;
  private static final double OIL = 5;
  private static final double STEP_SECONDS = 0.05;
  private static final int HALVINGS = 40;

  /** Returns the most watts that it bears from cold for a time, seconds; infinite for ever. */
  double bears(double seconds) {
    double low = 0;
    double high = OVERLOAD * ratedWatts;
    for (int i = 0; i < HALVINGS; i++) {
      double middle = (low + high) / 2;
      if (rise(middle, seconds) <= RISE) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return low;
  }

  /** Returns the rise of the wire over the air after a time, K. */
  double rise(double taken, double seconds) {
    double wireOhms = RISE / ratedWatts;
    double caseOhms = caseOhms(RISE / freeAirWatts() - wireOhms);
    if (Double.isInfinite(seconds)) {
      return taken * (wireOhms + caseOhms);
    }
    double wireSeconds = -OVERLOAD_SECONDS / Math.log(1 - 1 / OVERLOAD);
    double wireMass = wireSeconds / wireOhms;
    double caseMass = CASE_JOULES_PER_KELVIN_AND_WATT * ratedWatts;
    double wire = 0;
    double body = 0;
    long steps = Math.round(seconds / STEP_SECONDS);
    for (long i = 0; i < steps; i++) {
      double across = (wire - body) / wireOhms;
      wire += STEP_SECONDS * (taken - across) / wireMass;
      body += STEP_SECONDS * (across - body / caseOhms) / caseMass;
    }
    return wire;
  }

  /** Returns the heat resistance from case to air, K/W. */
  private double caseOhms(double freeAir) {
    Mount on = mount.orElse(Mount.PRESUMED);
    return switch (on.kind()) {
      case HEATSINK -> Math.min(freeAir, on.kelvinPerWatt().getAsDouble());
      case METAL -> Math.min(freeAir, PLATE_KELVIN_PER_WATT);
      case FREE_AIR -> freeAir;
      case FAN -> freeAir / MOVING_AIR;
      case OIL -> freeAir / OIL;
    };
  }

  /** Between sizes of the catalogues on a straight line. */
  private double freeAirWatts() {
    int last = RATED.length - 1;
    if (ratedWatts <= RATED[0]) {
      return ratedWatts * FREE_AIR[0] / RATED[0];
    }
    if (ratedWatts >= RATED[last]) {
      return FREE_AIR[last] * Math.pow(ratedWatts / RATED[last], 2.0 / 3);
    }
    int i = 1;
    while (RATED[i] < ratedWatts) {
      i++;
    }
    double part = (ratedWatts - RATED[i - 1]) / (RATED[i] - RATED[i - 1]);
    return FREE_AIR[i - 1] + part * (FREE_AIR[i] - FREE_AIR[i - 1]);
  }
}
