package loadwalk.result;

import java.util.ArrayList;
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

/**
 * Chooses the load resistance used to compute the power of one channel of a step.
 *
 * @param step the step
 * @param id the reading that measures this load: {@link ReadingId#LOAD_OHMS} for channel 1
 * @param bench the bench, with its stock
 * @param readings gives readings their uncertainty
 */
record LoadChoice(MeasuredStep step, ReadingId id, Bench bench, ReadingUncertainty readings) {
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

  /** Resistors in stock that make the load. */
  private record Stock(LoadResistor part, long count, double ohms) {
    Load.Made made() {
      return new Load.Made(part, count);
    }
  }

  /** Returns the load of channel 1, or the one bridged load. */
  static Load of(
      MeasuredStep step, Bench bench, ReadingUncertainty readings, List<Remark> remarks) {
    return new LoadChoice(step, ReadingId.LOAD_OHMS, bench, readings).choose(remarks);
  }

  /**
   * Returns the load of channel 2, which is its own whether channel 1's was measured or not.
   *
   * @param remarks what is said of a stock load is said of channel 1's already
   */
  static Load ofOther(
      MeasuredStep step, Bench bench, ReadingUncertainty readings, List<Remark> remarks) {
    LoadChoice choice = new LoadChoice(step, ReadingId.OTHER_LOAD_OHMS, bench, readings);
    if (!choice.isRead()) {
      remarks.add(
          new Remark(
              "other-load-not-measured",
              "the other channel's load was not measured: it counts with a tolerance of its own"));
    }
    return choice.choose(new ArrayList<>());
  }

  /**
   * Returns the load and adds a remark on its origin. The first of these that is available is used:
   * the measured load, the resistor in stock with that value, equal resistors in stock wired in
   * series or parallel, the nominal load ±5 %.
   *
   * <p>A tolerance is rectangular, u = a/√3 (JCGM 100:2008, 4.3.7). A network of parts with the
   * same relative tolerance has no wider tolerance itself, because its value rises with each part
   * and scales with all of them. A load from the stock lies behind a lead that nobody measured.
   */
  private Load choose(List<Remark> remarks) {
    Optional<Stock> stock = stock();
    String nominal = Printer.UTF8.exact(step.ohms(), Unit.OHM);
    String name = stock.map(s -> s.part.label()).orElse(nominal);
    Optional<Load.Made> made = stock.map(Stock::made);
    if (isRead()) {
      return new Load(measured(), name, made);
    }
    step.reading(id).ifPresent(read -> remarks.add(unusable(read)));
    double percent = stock.map(s -> s.part.tolerancePercent()).orElse(ASSUMED_PERCENT);
    double ohms = stock.map(Stock::ohms).orElse(step.ohms());
    stock
        .map(s -> s.count == 1 ? Optional.<Remark>empty() : Optional.of(network(s)))
        .orElseGet(() -> Optional.of(assumed(nominal)))
        .ifPresent(remarks::add);
    Quantity cold = Quantity.exact(ohms, Unit.OHM);
    if (percent > 0) {
      cold = cold.withRectangular(source(name), ohms * percent / 100);
    }
    return new Load(Load.oneSided(cold, "speaker lead", Load.LEAD_OHMS), name, made);
  }

  private String source(String name) {
    return id == ReadingId.LOAD_OHMS
        ? Sentence.of("load {}", name)
        : Sentence.of("other channel's load {}", name);
  }

  private boolean isRead() {
    return step.reading(id).filter(r -> r.value() > ReadingUncertainty.LEAST).isPresent();
  }

  /** Measured at the amplifier's end of the lead: the lead is in it, the tips' contact is not. */
  private Quantity measured() {
    String source = Sentence.of("contact at the {}, {}", id.label(), step.stepId());
    return readings.of(step, id).orElseThrow().withRectangular(source, Load.CONTACT_OHMS);
  }

  private Optional<Stock> stock() {
    double ohms = step.ohms();
    Optional<Stock> single =
        bench.loads().stream()
            .filter(part -> Math.abs(part.ohms() - ohms) <= NEAR * ohms)
            .min(Comparator.comparingDouble(part -> Math.abs(part.ohms() - ohms)))
            .map(part -> new Stock(part, 1, part.ohms()));
    return single.or(() -> bench.loads().stream().flatMap(p -> network(p).stream()).findFirst());
  }

  private Optional<Stock> network(LoadResistor part) {
    double ohms = step.ohms();
    double ratio = Math.max(part.ohms() / ohms, ohms / part.ohms());
    long parts = Math.round(ratio);
    boolean fits = Math.abs(ratio - parts) <= NEAR_NETWORK * ratio;
    double made = part.ohms() > ohms ? part.ohms() / parts : part.ohms() * parts;
    return fits && parts * step.mode().loads() <= part.count()
        ? Optional.of(new Stock(part, parts, made))
        : Optional.empty();
  }

  private static Remark unusable(TakenReading read) {
    return new Remark(
        "load-reading-unusable",
        Sentence.of(
            "{} was read as the load, which cannot be: it is left out",
            Printer.UTF8.exact(read.value(), Unit.OHM)));
  }

  private Remark network(Stock stock) {
    return new Remark(
        "load-network-assumed",
        Sentence.of(
            stock.part.ohms() > step.ohms()
                ? "the load was not measured: taken as {} × {} in parallel"
                : "the load was not measured: taken as {} × {} in series",
            stock.count,
            stock.part.label()));
  }

  private static Remark assumed(String nominal) {
    return new Remark(
        "load-assumed",
        Sentence.of(
            "the load was not measured and the bench has none of {}: taken as nominal ±5 %",
            nominal));
  }
}
