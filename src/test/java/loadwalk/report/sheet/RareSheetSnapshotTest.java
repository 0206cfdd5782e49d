package loadwalk.report.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalLong;
import loadwalk.bench.Bench;
import loadwalk.bench.Lead;
import loadwalk.bench.Meter;
import loadwalk.bench.Mode;
import loadwalk.bench.ReadingId;
import loadwalk.bench.Supply;
import loadwalk.plan.StockRules;
import loadwalk.quantity.Quantity;
import loadwalk.quantity.Unit;
import loadwalk.report.Documents;
import loadwalk.report.FrozenWalks;
import loadwalk.report.page.Page;
import loadwalk.report.page.TextPage;
import loadwalk.report.sheet.Sheet.Temperature;
import loadwalk.report.sheet.Sheet.WarmUp;
import loadwalk.result.Circumstances;
import loadwalk.result.Conditions;
import loadwalk.result.Criterion;
import loadwalk.result.PublishedPower;
import loadwalk.result.RatingComparison;
import loadwalk.result.RatingComparison.Verdict;
import loadwalk.walk.Steadiness;
import loadwalk.walk.fact.Capture;
import loadwalk.walk.fact.StepState.Status;
import org.junit.jupiter.api.Test;

/** A kept walk's sheet with what is rare put into it by hand, whole. */
class RareSheetSnapshotTest {
  private static final Steadiness NOT_KNOWN =
      new Steadiness(true, Steadiness.Told.TOO_FEW, Optional.empty(), 0.5, Optional.empty(), 0);

  private static Sheet rare() {
    Sheet s = Sheet.of(FrozenWalks.eventful(), SheetOptions.DEFAULT, StockRules.RULES);
    List<Sheet.StepLine> steps = new ArrayList<>();
    Map<String, Capture> waves =
        Map.of(
            "stereo-4", wave(OptionalDouble.empty(), 128, 12),
            "stereo-2", wave(OptionalDouble.of(0.04), 0, 3),
            "stereo-1", wave(OptionalDouble.of(2.5), 8, 0));
    s.steps().forEach(step -> steps.add(with(step, Optional.ofNullable(waves.get(step.id())))));
    return new Sheet(
        s.walk(),
        s.version(),
        OptionalLong.empty(),
        s.lastWallMillis(),
        s.amplifier(),
        false,
        bench(),
        s.sequence(),
        s.finished(),
        s.soundness(),
        List.of(),
        List.of(load(Criterion.CLIPPING_ONSET, 0), load(Criterion.CLIPPING_ONSET, 40)),
        steps,
        s.result(),
        record(),
        s.assumptions(),
        Optional.empty());
  }

  private static Sheet.StepLine with(Sheet.StepLine s, Optional<Capture> wave) {
    return new Sheet.StepLine(
        s.id(),
        s.verb(),
        s.instruction(),
        s.status(),
        Optional.empty(),
        s.armedOhms(),
        s.recheckOf(),
        s.criterion(),
        s.readings(),
        s.pairs(),
        s.result(),
        wave,
        Optional.empty());
  }

  /** A wave at one level, with as many samples a period and harmonics as asked for. */
  private static Capture wave(OptionalDouble thd, int samples, int harmonics) {
    List<Double> cycle = new ArrayList<>();
    for (int i = 0; i < samples; i++) {
      cycle.add(0.5 + 10 * Math.sin(2 * Math.PI * (i + 0.5) / samples));
    }
    List<Double> percents = new ArrayList<>();
    for (int i = 0; i < harmonics; i++) {
      percents.add(2.0 / (i + 1));
    }
    return new Capture(
        "one | level.wav",
        "ab".repeat(32),
        1,
        1000.25,
        7.0711,
        0.001,
        20,
        OptionalDouble.empty(),
        "none: volts are parts of full scale",
        thd,
        false,
        "sine fit",
        "no distortion to name",
        "cannot tell",
        cycle,
        percents);
  }

  /** A bench with one supply, one lead of a run, and meters of every kind of accuracy. */
  private static Bench bench() {
    return new Bench(
        "South bench",
        List.of(new Supply(13.8, 80)),
        List.of(new Lead("plus", new Lead.Awg(0), 12.25, 1)),
        OptionalDouble.of(7.5),
        List.of(),
        List.of(
            new Meter("one digit", ReadingId.OUTPUT_VOLTS, 0.5, 1, 0, Optional.empty()),
            new Meter("none", ReadingId.SUPPLY_AMPS, 1, 0, 0.001, Optional.empty()),
            new Meter(
                "half", ReadingId.THD_PERCENT, 2, 2.5, 0.01, Optional.of(new Meter.Band(20, 2e4)))),
        0.9);
  }

  private static Sheet.LoadLine load(Criterion criterion, double watts) {
    Quantity one = Quantity.of(watts, Unit.WATT, "v", 0.25);
    double ratio = watts / 40;
    return new Sheet.LoadLine(
        new PublishedPower(
            conditions(criterion, watts == 0 ? 8 : 4),
            List.of(),
            List.of("stereo-4"),
            List.of(one),
            one.scaledBy(2),
            Optional.empty(),
            Optional.empty(),
            "",
            List.of()),
        Optional.of(
            new RatingComparison(
                40,
                one,
                one.mapped(ratio, 1.0 / 40, Unit.ONE),
                10 * Math.log10(ratio),
                watts == 0 ? Verdict.MISSES : Verdict.MEETS,
                List.of(),
                List.of(),
                Optional.empty())),
        Optional.empty());
  }

  private static Conditions conditions(Criterion criterion, double ohms) {
    return new Conditions(
        Mode.STEREO,
        ohms,
        OptionalDouble.empty(),
        1,
        OptionalDouble.empty(),
        criterion,
        true,
        OptionalDouble.empty(),
        OptionalDouble.empty(),
        Circumstances.UNKNOWN.saying(criterion));
  }

  private static Sheet.WalkRecord record() {
    return new Sheet.WalkRecord(
        List.of(),
        List.of(),
        List.of(),
        List.of(),
        List.of(),
        List.of(
            warm("one", Status.RUNNING, 90.5, new Temperature(0, 22.55, 0.1)),
            warm(
                "two",
                Status.SKIPPED,
                30,
                new Temperature(0, 22.55, 0.1),
                new Temperature(1.5, 19.95, 0.25)),
            warm("none", Status.SKIPPED, 0),
            warm("no-time", Status.DONE, 0)),
        List.of(),
        List.of(),
        List.of(),
        Optional.empty(),
        Optional.empty());
  }

  private static WarmUp warm(String id, Status status, double seconds, Temperature... read) {
    return new WarmUp(
        id, 7.5, seconds, status, Optional.empty(), List.of(read), Optional.empty(), NOT_KNOWN);
  }

  @Test
  void text_isAsKept() {
    Page page = SheetPage.of(rare());
    Documents.same("rare-sheet.txt", TextPage.lines(page, 100, false));
    Documents.same("rare-charts.txt", Documents.numbers(page.charts()));
  }

  @Test
  void jsonAndCsv_areAsKept() {
    Documents.same("rare-sheet.json", Documents.nineDigits(SheetJson.text(rare())));
    String csv = SheetCsv.text(rare()).replace("\r\n", "␍\n");
    Documents.same("rare-sheet.csv", Documents.nineDigits(csv));
  }
}
