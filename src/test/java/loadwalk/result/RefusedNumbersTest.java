package loadwalk.result;

import static loadwalk.result.Readings.of;
import static loadwalk.result.Readings.volts;
import static org.junit.jupiter.api.Assertions.assertDoesNotThrow;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import loadwalk.bench.Mode;
import loadwalk.bench.ReadingId;
import loadwalk.bench.Target;
import loadwalk.quantity.Quantity;
import loadwalk.quantity.Unit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** A number that cannot be is refused by name, never computed with. */
class RefusedNumbersTest {
  private static final double NAN = Double.NaN;
  private static final double INFINITE = Double.POSITIVE_INFINITY;
  private static final Quantity WATTS = Quantity.exact(100, Unit.WATT);

  static Stream<Arguments> refused() {
    return Stream.of(
        row("limitThdPercent must be a number above 0, got 0.0", () -> walk(0, 14.4, 40)),
        row("limitThdPercent must be a number above 0, got NaN", () -> walk(NAN, 14.4, 40)),
        row("supplyVolts must be a number above 0, got -1.0", () -> walk(1, -1, 40)),
        row("supplyVolts must be a number above 0, got Infinity", () -> walk(1, INFINITE, 40)),
        row("toneHertz must be a number above 0, got 0.0", () -> walk(1, 14.4, 0)),
        row("toneHertz must be a number above 0, got Infinity", () -> walk(1, 14.4, INFINITE)),
        row("volts of a limit pair must be a number above 0, got 0.0", () -> new LimitPair(0, 1)),
        row(
            "volts of a limit pair must be a number above 0, got Infinity",
            () -> new LimitPair(INFINITE, 1)),
        row(
            "thdPercent of a limit pair must be a number above 0, got NaN",
            () -> new LimitPair(10, NAN)),
        row(
            "thdPercent of a limit pair must be a number above 0, got Infinity",
            () -> new LimitPair(10, INFINITE)),
        row("budget line gain holds a bad number", () -> budget(-1, 1, 1, 5)),
        row("budget line gain holds a bad number", () -> budget(NAN, 1, 1, 5)),
        row("budget line gain holds a bad number", () -> budget(1, INFINITE, 1, 5)),
        row("budget line gain holds a bad number", () -> budget(1, NAN, 1, 5)),
        row("budget line gain holds a bad number", () -> budget(1, 1, -1, 5)),
        row("budget line gain holds a bad number", () -> budget(1, 1, 1, 0.99)),
        row("ohms of step stereo-0 must be a number above 0, got 0.0", () -> step(0)),
        row("ohms of step stereo--4 must be a number above 0, got -4.0", () -> step(-4)),
        row(
            "ohms of step s must be a number above 0, got Infinity",
            () -> kind(Target.Kind.IDLE, INFINITE)),
        row(
            "ohms of step s must be a number above 0, got NaN",
            () -> kind(Target.Kind.LOADED, NAN)),
        row("outputVolts must be finite, got Infinity", () -> volts(INFINITE)),
        row("resolution of outputVolts must be a number from 0 up, got -0.1", () -> taken(-0.1)),
        row(
            "resolution of outputVolts must be a number from 0 up, got Infinity",
            () -> taken(INFINITE)),
        row(
            "scatter of outputVolts must be a number from 0 up, got -0.1",
            () -> scattered(-0.1, 5)),
        row(
            "scatter of outputVolts must be a number from 0 up, got Infinity",
            () -> scattered(INFINITE, 5)),
        row(
            "degrees of freedom of outputVolts must be 1 or more, got 0.99",
            () -> scattered(0.1, 0.99)),
        row(
            "degrees of freedom of outputVolts must be 1 or more, got NaN",
            () -> scattered(0.1, NAN)),
        row(
            "supply volts of the measurement must be above 0, got 1.0E-6",
            () -> estimate(1e-6, 14.4)),
        row("supplyVolts must be a number above 0, got 0.0", () -> estimate(12, 0)),
        row("supplyVolts must be a number above 0, got Infinity", () -> estimated(INFINITE)),
        row("limitWatts must be 0 or more, got -1.0", () -> agreement(-1)),
        row("limitWatts must be 0 or more, got NaN", () -> agreement(NAN)),
        row("decibels must be a number", () -> comparison(NAN)),
        row(
            "otherOutputVolts is filed under outputVolts",
            () -> filed(ReadingId.OUTPUT_VOLTS, of(ReadingId.OTHER_OUTPUT_VOLTS, 1))));
  }

  @ParameterizedTest(name = "[{index}] {0}")
  @MethodSource
  void refused(String message, Executable made) {
    assertEquals(message, assertThrows(IllegalArgumentException.class, made).getMessage());
  }

  static Stream<Arguments> atTheEdge() {
    return Stream.of(
        row("no uncertainty, one degree", () -> budget(0, 0, 0, 1)),
        row("no scatter, one degree", () -> scattered(0, 1)),
        row("no resolution", () -> taken(0)),
        row("an idle step has no load", () -> kind(Target.Kind.IDLE, NAN)),
        row("an idle step may name one", () -> kind(Target.Kind.IDLE, 4)),
        row("runs that agree to 0 W", () -> agreement(0)),
        row("no watts at all", () -> comparison(Double.NEGATIVE_INFINITY)),
        row("a microvolt above nothing", () -> estimate(1.1e-6, 14.4)));
  }

  @ParameterizedTest(name = "[{index}] {0}")
  @MethodSource
  void atTheEdge(String what, Executable made) {
    assertDoesNotThrow(made, what);
  }

  @Test
  void missingParts_areRefused() {
    for (Executable made :
        List.<Executable>of(
            () -> new Remark(null, "text"),
            () -> new Remark("code", null),
            () -> new OutputFit(null, WATTS, List.of(), 0),
            () -> new OutputFit(WATTS, null, List.of(), 0),
            () -> new BudgetLine(null, 0, Unit.WATT, 0, 0, 1),
            () -> new BudgetLine("gain", 0, null, 0, 0, 1),
            () -> new TakenReading(null, 1, 0),
            () -> new PowerAtSupply(null, 14.4, "estimate"),
            () -> new PowerAtSupply(WATTS, 14.4, null))) {
      assertThrows(NullPointerException.class, made);
    }
  }

  private static Arguments row(String what, Executable made) {
    return Arguments.of(what, made);
  }

  private static void walk(double limit, double supply, double tone) {
    ResultComputation.walk(
        Readings.plain(),
        Readings.usual(),
        limit,
        supply,
        tone,
        Readings.WIRE,
        Readings.EXACTLY_SET,
        List.of());
  }

  private static void budget(double u, double sensitivity, double part, double degrees) {
    new BudgetLine("gain", u, Unit.VOLT, sensitivity, part, degrees);
  }

  private static void step(double ohms) {
    Readings.stereo(ohms, volts(20));
  }

  private static void kind(Target.Kind kind, double ohms) {
    new MeasuredStep(
        "s", kind, Mode.STEREO, ohms, Map.of(), List.of(), Optional.empty(), Circumstances.UNKNOWN);
  }

  private static void filed(ReadingId id, TakenReading taken) {
    new MeasuredStep(
        "s",
        Target.Kind.LOADED,
        Mode.STEREO,
        4,
        Map.of(id, taken),
        List.of(),
        Optional.empty(),
        Circumstances.UNKNOWN);
  }

  private static void taken(double resolution) {
    new TakenReading(ReadingId.OUTPUT_VOLTS, 1, resolution);
  }

  private static void scattered(double scatter, double degrees) {
    new TakenReading(ReadingId.OUTPUT_VOLTS, 1, 0, scatter, degrees);
  }

  private static void estimate(double at, double supply) {
    PowerAtSupply.of(WATTS, Quantity.exact(at, Unit.VOLT), supply, Optional.of(true));
  }

  private static void estimated(double supply) {
    new PowerAtSupply(WATTS, supply, "estimate");
  }

  private static void agreement(double limit) {
    new RecheckAgreement(
        "a", "b", Optional.empty(), limit, RecheckAgreement.Outcome.NOT_COMPARABLE, "");
  }

  private static void comparison(double decibels) {
    new RatingComparison(
        100,
        WATTS,
        WATTS,
        decibels,
        RatingComparison.Verdict.MISSES,
        List.of(),
        List.of(),
        Optional.empty());
  }
}
