package loadwalk.numeric;

import java.util.Arrays;
import java.util.Optional;

/**
 * The settling of a temperature, fitted to warm-up readings as T(t) = T∞ − (T∞ − T₀)e^(−t/τ) with t
 * counted from the first reading.
 */
public sealed interface ThermalFit {
  /**
   * A slope of temperature at the last reading.
   *
   * @param celsiusPerMinute positive while it warms
   * @param u its standard uncertainty, from the scatter about the fit
   */
  record Slope(double celsiusPerMinute, double u) {}

  /**
   * A temperature that bends towards its final value.
   *
   * @param endCelsius T∞
   * @param endU its standard uncertainty
   * @param startCelsius T₀, at the first reading
   * @param tauMinutes τ
   * @param tauU its standard uncertainty
   * @param now the slope at the last reading
   * @param residualSd the scatter of the readings about the curve, in °C
   */
  record Settling(
      double endCelsius,
      double endU,
      double startCelsius,
      double tauMinutes,
      double tauU,
      Slope now,
      double residualSd)
      implements ThermalFit {
    /** Returns the temperature of the curve at a time in minutes after the first reading. */
    public double celsiusAt(double minutes) {
      return endCelsius - (endCelsius - startCelsius) * Math.exp(-minutes / tauMinutes);
    }

    @Override
    public Optional<Settling> settling() {
      return Optional.of(this);
    }
  }

  /**
   * Readings that do not show where the warm-up will end.
   *
   * @param reason why, one sentence
   */
  record CannotTell(String reason) implements ThermalFit {
    @Override
    public Optional<Settling> settling() {
      return Optional.empty();
    }
  }

  /** Returns the curve, where the readings show its end. */
  Optional<Settling> settling();

  /**
   * Fits the curve.
   *
   * @param minutes the time of each reading, increasing
   * @param celsius the temperature of each
   * @throws IllegalArgumentException if a number is not finite or the times do not increase
   */
  static ThermalFit of(double[] minutes, double[] celsius) {
    Samples.sameLength(minutes, celsius, "minutes and celsius");
    Samples.finite(minutes, 0, "minutes");
    Samples.finite(celsius, 0, "celsius");
    for (int i = 1; i < minutes.length; i++) {
      if (!(minutes[i] > minutes[i - 1])) {
        throw new IllegalArgumentException("minutes must rise, at reading " + (i + 1));
      }
    }
    if (minutes.length < 5) {
      return new CannotTell("Fewer than five temperatures are too few to tell.");
    }
    double[] t = Arrays.stream(minutes).map(m -> m - minutes[0]).toArray();
    double span = t[t.length - 1];
    double tau = Exponential.tau(t, celsius);
    LinearFit line = LinearFit.line(t, celsius);
    LinearFit bend = Exponential.along(t, celsius, tau);
    if (Statistics.standardDeviation(celsius) <= 1.5 * bend.residualSd()) {
      return new CannotTell("The temperature moves no more than its scatter.");
    }
    if (line.weightedSquares() < 1.5 * bend.weightedSquares() || tau > 3 * span) {
      return new CannotTell(
          "The temperature curve has not started to level off, so its end cannot be told.");
    }
    try {
      return settling(t, celsius, bend, tau);
    } catch (NonlinearFit.NoFitException e) {
      return new CannotTell("The temperatures do not follow a warm-up curve.");
    }
  }

  private static ThermalFit settling(double[] t, double[] celsius, LinearFit bend, double tau)
      throws NonlinearFit.NoFitException {
    double[] start = {bend.intercept(), bend.intercept() + bend.slope(), tau};
    NonlinearFit fit = NonlinearFit.of(ThermalFit::curve, t, celsius, start);
    double end = fit.parameter(0);
    double first = fit.parameter(1);
    double fittedTau = fit.parameter(2);
    double span = t[t.length - 1];
    if (!(fittedTau > 0) || fittedTau > 3 * span || fit.u(2) > fittedTau / 2) {
      return new CannotTell("The temperature curve levels off too little to tell its end.");
    }
    double fall = Math.exp(-span / fittedTau);
    double slope = (end - first) / fittedTau * fall;
    double[] gradient = {
      fall / fittedTau, -fall / fittedTau, slope / fittedTau * (span / fittedTau - 1)
    };
    Slope now = new Slope(slope, Propagation.u(gradient, fit.covariance()));
    return new Settling(end, fit.u(0), first, fittedTau, fit.u(2), now, fit.residualSd());
  }

  private static double curve(double t, double[] p) {
    return p[0] - (p[0] - p[1]) * Math.exp(-t / p[2]);
  }
}
