package loadwalk.view.state;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.LongSummaryStatistics;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import loadwalk.bench.ReadingId;
import loadwalk.meter.MeterReading;
import loadwalk.meter.MeterWatch;
import loadwalk.meter.Scatter;
import loadwalk.quantity.Printer;
import loadwalk.sequence.PlannedStep;
import loadwalk.text.Sentence;
import loadwalk.walk.Intent;
import loadwalk.walk.fact.Instrument;
import loadwalk.walk.fact.StepState;
import loadwalk.walk.fact.WalkState;

/**
 * What the connected meters put into the fields of a step, all read at the same moment.
 *
 * @param intent the readings to be entered, where there are any
 * @param told what was read with its spread, and what was not entered and why
 */
public record MeterFill(Optional<Intent> intent, String told) {
  private static final MathContext KEPT_DIGITS = new MathContext(7);
  private static final int SPREAD_DIGITS = 2;
  private static final double MILLIS = 1000;

  /** A spread that is more than a tenth of the reading and far outside its specification. */
  private static final double UNSETTLED_PART = 0.1;

  private static final double UNSETTLED_SPECIFICATIONS = 5;

  private static final String NO_METER = "No meter is connected; type the readings.";

  /**
   * Fills every reading of the current step that is not in yet, and takes the doubted ones again,
   * so that all are judged together; a warm-up takes its temperature each time. Cold load ohms are
   * left out: a meter on a live output shows something else.
   */
  public static MeterFill all(ProgramState program) {
    WalkState state = program.walk().orElseThrow().state();
    Optional<PlannedStep> current = state.current();
    List<ReadingId> open =
        current
            .map(planned -> planned.readings(state.context(planned)).stream())
            .orElseGet(Stream::empty)
            .filter(id -> id.meteredAs() != ReadingId.LOAD_OHMS)
            .filter(id -> program.meters().of(id).isPresent())
            .toList();
    if (open.isEmpty()) {
      return new MeterFill(Optional.empty(), NO_METER);
    }
    StepState step = state.step(state.currentId());
    boolean warming = current.flatMap(planned -> planned.step().warmUp()).isPresent();
    List<ReadingId> missing =
        open.stream()
            .filter(id -> warming || step.latest(id).isEmpty() || step.openDoubts().contains(id))
            .toList();
    return missing.isEmpty()
        ? new MeterFill(Optional.empty(), "Every reading with a meter is in; F11 takes one again.")
        : of(program, state.currentId(), missing);
  }

  /** Fills one reading of the current step. */
  public static MeterFill one(ProgramState program, ReadingId id) {
    String step = program.walk().orElseThrow().state().currentId();
    return program.meters().nearest(id).isPresent()
        ? of(program, step, List.of(id))
        : new MeterFill(Optional.empty(), Sentence.of("No meter is connected for {}.", id.label()));
  }

  private static MeterFill of(ProgramState program, String step, List<ReadingId> ids) {
    ConnectedMeters meters = program.meters();
    Map<ReadingId, String> texts = new LinkedHashMap<>();
    Map<ReadingId, Instrument> instruments = new LinkedHashMap<>();
    List<String> told = new ArrayList<>();
    List<String> spreads = new ArrayList<>();
    List<String> moving = new ArrayList<>();
    for (ReadingId id : ids) {
      MeterWatch watch = meters.nearest(id).orElseThrow();
      MeterReading reading = meters.reading(watch);
      Optional<MeterReading.Value> fresh = reading.fresh();
      if (fresh.isPresent()) {
        MeterReading.Value value = fresh.get();
        texts.put(id, text(value, watch.meter().resolution()));
        instruments.put(id, instrument(watch, value, meters));
        spreads.add(id.label() + " " + spread(watch, value));
        if (isMoving(watch, value)) {
          moving.add(id.label());
        }
      } else {
        told.add(reading.refusal(watch.meter().label()));
      }
    }
    if (!moving.isEmpty()) {
      told.add(
          Sentence.of(
              "NOT SETTLED: {}. Wait, then read again with F11.", String.join(", ", moving)));
    }
    if (!spreads.isEmpty()) {
      told.add(entered(instruments.values(), spreads));
    }
    Optional<Intent> intent =
        texts.isEmpty()
            ? Optional.empty()
            : Optional.of(new Intent.EnterAll(step, texts, instruments));
    return new MeterFill(intent, String.join(" ", told));
  }

  private static String entered(Collection<Instrument> from, List<String> spreads) {
    int count = from.stream().mapToInt(Instrument::count).max().orElse(1);
    String each = String.join(", ", spreads);
    if (from.size() > 1) {
      return count > 1
          ? Sentence.of(
              "Entered. Spread of the last {}: {}; read within {}.", count, each, apart(from))
          : Sentence.of("Entered: {}; read within {}.", each, apart(from));
    }
    return count > 1
        ? Sentence.of("Entered. Spread of the last {}: {}.", count, each)
        : Sentence.of("Entered: {}.", each);
  }

  /** Says how far apart in time the meters took what is entered as one moment. */
  private static String apart(Collection<Instrument> from) {
    LongSummaryStatistics times =
        from.stream().mapToLong(Instrument::wallMillis).summaryStatistics();
    double seconds = (times.getMax() - times.getMin()) / MILLIS;
    return String.format(Locale.ROOT, "%.1f s", Math.ceil(seconds * 10) / 10);
  }

  /** Writes the number as finely as the meter shows it, so that it counts as read no coarser. */
  private static String text(MeterReading.Value value, double resolution) {
    BigDecimal exact = new BigDecimal(value.value());
    int places = (int) Math.ceil(-Math.log10(resolution) - 1e-9);
    BigDecimal number =
        resolution > 0
            ? exact.setScale(Math.max(0, places), RoundingMode.HALF_EVEN)
            : exact.round(KEPT_DIGITS);
    return number.toPlainString() + " " + value.unit().symbol();
  }

  private static Instrument instrument(
      MeterWatch watch, MeterReading.Value value, ConnectedMeters meters) {
    Optional<Scatter> scatter = watch.scatter();
    return new Instrument(
        watch.meter().label(),
        watch.identity().map(who -> who.text()).orElse(""),
        value.raw(),
        meters.wallMillis() - (meters.nowMillis() - watch.lastMillis()),
        scatter.map(Scatter::count).orElse(1),
        scatter.map(Scatter::deviation).orElse(0.0));
  }

  private static String spread(MeterWatch watch, MeterReading.Value value) {
    return watch
        .scatter()
        .map(s -> Printer.UTF8.value(s.spread(), value.unit(), SPREAD_DIGITS))
        .orElse("(one reading)");
  }

  /** Tells whether a reading was taken before it had settled. */
  private static boolean isMoving(MeterWatch watch, MeterReading.Value value) {
    double spread = watch.scatter().map(Scatter::spread).orElse(0.0);
    return spread > UNSETTLED_PART * Math.abs(value.value())
        && spread > UNSETTLED_SPECIFICATIONS * watch.meter().halfWidth(value.value());
  }
}
