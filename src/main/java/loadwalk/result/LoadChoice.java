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

/** Chooses the load that the power of a step is computed with. */
final class LoadChoice {
  /**
   * The half-width taken for a load of which the bench says nothing, percent: that of common power
   * resistors.
   */
  static final double ASSUMED_PERCENT = 5;

  /**
   * How far a resistor may lie from the load asked for and still be it, a fraction. Chosen by hand.
   */
  private static final double NEAR = 0.1;

  /** How far an integer number of equal resistors may lie from it, a fraction. Chosen by hand. */
  private static final double NEAR_NETWORK = 0.02;

  private LoadChoice() {}

  /**
   * Returns the measured load, else the resistor of the stock with that value, else equal resistors
   * of the stock in series or parallel, else the nominal load ±5 %; says which.
   *
   * <p>A tolerance is rectangular, u = a/√3 (JCGM 100:2008, 4.3.7). A network of parts with the
   * same relative tolerance has no wider one itself: its value grows in proportion to its parts and
   * rises with each.
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
