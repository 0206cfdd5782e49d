package loadwalk.result;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import loadwalk.bench.Bench;
import loadwalk.bench.LoadResistor;
import loadwalk.bench.ReadingId;
import loadwalk.quantity.Printer;
import loadwalk.quantity.Quantity;
import loadwalk.quantity.Unit;
import loadwalk.text.Sentence;

/** Chooses the load resistance used to compute the power of a step. */
final class LoadChoice {
  /**
   * The half-width assumed for a load that the bench does not describe, percent: the usual
   * tolerance of power resistors.
   */
  static final double ASSUMED_PERCENT = 5;

  /**
   * How far a resistor may differ from the specified load and still count as that load, a fraction.
   * Chosen by hand.
   */
  private static final double NEAR = 0.1;

  /** How far a network of equal resistors may differ from it, a fraction. Chosen by hand. */
  private static final double NEAR_NETWORK = 0.02;

  private LoadChoice() {}

  /**
   * Returns the load and adds a remark on its origin. The first of these that is available is used:
   * the measured load, the resistor in stock with that value, equal resistors in stock wired in
   * series or parallel, the nominal load ±5 %.
   *
   * <p>A tolerance is rectangular, u = a/√3 (JCGM 100:2008, 4.3.7). A network of parts with the
   * same relative tolerance has no wider tolerance itself, because its value rises with each part
   * and scales with all of them.
   */
  static Quantity of(
      MeasuredStep step, Bench bench, ReadingUncertainty readings, List<Remark> remarks) {
    Optional<TakenReading> read = step.reading(ReadingId.LOAD_OHMS);
    if (read.isPresent() && read.get().value() > ReadingUncertainty.LEAST) {
      return readings.of(read.get());
    }
    if (read.isPresent()) {
      remarks.add(
          new Remark(
              "load-reading-unusable",
              Sentence.of(
                  "{} was read as the load, which cannot be: it is left out",
                  Printer.UTF8.exact(read.get().value(), Unit.OHM))));
    }
    Optional<Quantity> stock = ofStock(step.ohms(), step.mode().loads(), bench.loads(), remarks);
    return stock.orElseGet(() -> assumed(step.ohms(), remarks));
  }

  private static Optional<Quantity> ofStock(
      double ohms, int loads, List<LoadResistor> stock, List<Remark> remarks) {
    Optional<LoadResistor> single =
        stock.stream()
            .filter(part -> Math.abs(part.ohms() - ohms) <= NEAR * ohms)
            .min(Comparator.comparingDouble(part -> Math.abs(part.ohms() - ohms)));
    if (single.isPresent()) {
      return Optional.of(rectangular(single.get().ohms(), single.get()));
    }
    for (LoadResistor part : stock) {
      double ratio = Math.max(part.ohms() / ohms, ohms / part.ohms());
      long parts = Math.round(ratio);
      boolean fits = Math.abs(ratio - parts) <= NEAR_NETWORK * ratio;
      if (fits && parts * loads <= part.count()) {
        boolean parallel = part.ohms() > ohms;
        remarks.add(network(parts, part, parallel));
        double made = parallel ? part.ohms() / parts : part.ohms() * parts;
        return Optional.of(rectangular(made, part));
      }
    }
    return Optional.empty();
  }

  private static Remark network(long parts, LoadResistor part, boolean parallel) {
    return new Remark(
        "load-network-assumed",
        Sentence.of(
            parallel
                ? "the load was not measured: taken as {} × {} in parallel"
                : "the load was not measured: taken as {} × {} in series",
            parts,
            part.label()));
  }

  private static Quantity rectangular(double ohms, LoadResistor part) {
    double u = ReadingUncertainty.rectangular(ohms * part.tolerancePercent() / 100);
    return Quantity.of(ohms, Unit.OHM, Sentence.of("load {}", part.label()), u);
  }

  private static Quantity assumed(double ohms, List<Remark> remarks) {
    String name = Printer.UTF8.exact(ohms, Unit.OHM);
    remarks.add(
        new Remark(
            "load-assumed",
            Sentence.of(
                "the load was not measured and the bench has none of {}: taken as nominal ±5 %",
                name)));
    double u = ReadingUncertainty.rectangular(ohms * ASSUMED_PERCENT / 100);
    return Quantity.of(ohms, Unit.OHM, Sentence.of("load {}", name), u);
  }
}
