package loadwalk.report.sheet;

import java.util.List;
import java.util.Optional;
import loadwalk.bench.ReadingId;
import loadwalk.quantity.Quantity;
import loadwalk.quantity.Unit;
import loadwalk.report.page.CsvText;
import loadwalk.result.BudgetLine;
import loadwalk.result.Mark;
import loadwalk.result.PublishedPower;
import loadwalk.result.RatingComparison;
import loadwalk.result.Ratio;
import loadwalk.result.Repeatability;
import loadwalk.result.StepResult;
import loadwalk.text.Sentence;
import loadwalk.walk.fact.WalkState;

/**
 * Writes a sheet as CSV: one fact a line, so that every walk fits the same columns.
 *
 * <p>The columns are {@code section,step,name,value,u,unit,text}; u is the standard uncertainty (k
 * = 1).
 */
public final class SheetCsv {
  private final CsvText csv = new CsvText();

  private SheetCsv() {}

  /** Returns the whole text (RFC 4180), with its header. */
  public static String text(Sheet sheet) {
    SheetCsv out = new SheetCsv();
    out.csv.row("section", "step", "name", "value", "u", "unit", "text");
    out.sheet(sheet);
    return out.csv.text();
  }

  private void sheet(Sheet sheet) {
    texts(sheet);
    for (Sheet.LoadLine line : sheet.loads()) {
      String step = line.power().fromStepId();
      quantity("power", step, "watts", line.power().watts());
      line.power().channelWatts().stream()
          .skip(1)
          .forEach(other -> quantity("power", step, "otherWatts", other));
      line.power().meanWatts().ifPresent(mean -> quantity("power", step, "meanWatts", mean));
      quantity("power", step, "totalWatts", line.power().totalWatts());
      line.power().balance().ifPresent(balance -> quantity("power", step, "balance", balance));
      line.power().spread().ifPresent(spread -> spread(step, spread));
      text("power", step, "runs", String.join(" ", line.power().runs()));
      text("power", step, "criterion", line.power().criterion().word());
      marks("power", step, line.power().marks());
      line.rating().ifPresent(r -> rating(step, r));
    }
    for (Sheet.StepLine step : sheet.steps()) {
      text("step", step.id(), "status", step.status().word());
      step.outcome().ifPresent(how -> text("step", step.id(), "outcome", how.word()));
      step.readings().forEach(r -> reading(step.id(), r));
      step.result().ifPresent(this::result);
    }
    Optional<Quantity> source = sheet.result().sourceResistance();
    source.ifPresent(q -> quantity("walk", "", "sourceOhms", q));
    sheet.result().dampingFactor().ifPresent(this::dampingFactor);
    sheet
        .result()
        .outputFit()
        .ifPresent(
            fit -> {
              quantity("walk", "", "openVolts", fit.openVolts());
              quantity("walk", "", "seriesOhms", fit.seriesOhms());
            });
    Repeatability repeats = sheet.result().repeatability();
    number(
        "walk",
        "",
        "repeatability",
        repeats.relativeVolts(),
        Unit.ONE,
        Sentence.of("{} pairs", repeats.pairs()));
    sheet
        .result()
        .rechecks()
        .forEach(r -> text("recheck", r.recheckId(), r.outcome().word(), r.text()));
    walkRecord(sheet.record());
    sheet.budgetOf().ifPresent(this::budget);
  }

  private void dampingFactor(Ratio factor) {
    number("walk", "", "dampingFactor", factor.value(), Unit.ONE, "");
    number("walk", "", "dampingFactor.low", factor.low(), Unit.ONE, "");
    factor.high().ifPresent(high -> number("walk", "", "dampingFactor.high", high, Unit.ONE, ""));
  }

  private void spread(String step, PublishedPower.Spread spread) {
    quantity("power", step, "lowestWatts", spread.low());
    quantity("power", step, "highestWatts", spread.high());
  }

  private void marks(String section, String step, List<Mark> marks) {
    marks.forEach(mark -> text(section, step, "mark", mark.word()));
  }

  private void texts(Sheet sheet) {
    text("walk", "", "walk", sheet.walk());
    text("walk", "", "version", sheet.version());
    text("walk", "", "finished", sheet.finished() ? "yes" : "no");
    text("walk", "", "journal", sheet.soundness().standing().word());
    sheet.warnings().forEach(w -> text("walk", "", "warning", w));
    text("amplifier", "", "maker", sheet.amplifier().maker());
    text("amplifier", "", "model", sheet.amplifier().model());
    sheet.amplifier().serial().ifPresent(s -> text("amplifier", "", "serial", s));
    text("sequence", "", "name", sheet.sequence().name());
    text("sequence", "", "sha256", sheet.sequence().contentHash());
    number("sequence", "", "toneHertz", sheet.sequence().toneHertz(), Unit.HERTZ, "");
    number("sequence", "", "limitThdPercent", sheet.sequence().limitThdPercent(), Unit.PERCENT, "");
    number("sequence", "", "supplyVolts", sheet.sequence().supplyVolts(), Unit.VOLT, "");
    text("bench", "", "name", sheet.bench().name());
    sheet
        .assumptions()
        .forEach(
            a ->
                text(
                    "assumption",
                    String.join(" ", a.stepIds()),
                    a.remark().code(),
                    a.remark().text()));
  }

  private void rating(String step, RatingComparison rating) {
    number(
        "rating",
        step,
        "ratedWatts",
        rating.ratingWatts(),
        Unit.WATT,
        String.join("; ", rating.notes()));
    quantity("rating", step, "ratio", rating.ratio());
    if (Double.isFinite(rating.decibels())) {
      number("rating", step, "decibels", rating.decibels(), Unit.DECIBEL, "");
    }
    text("rating", step, "verdict", rating.verdict().word());
    rating.differs().forEach(why -> text("rating", step, "differs", why));
    rating
        .estimate()
        .ifPresent(
            e ->
                quantity(
                    "rating",
                    step,
                    "estimateWatts",
                    e.watts(),
                    Sentence.of("{} V: {}", String.valueOf(e.supplyVolts()), e.assumption())));
  }

  private void reading(String step, Sheet.ReadingLine r) {
    ReadingId id = r.id();
    number("reading", step, id.key(), r.value(), id.unit(), r.typed());
    r.forecast()
        .ifPresent(
            band -> {
              number("forecast", step, id.key() + ".low", band.low(), id.unit(), "");
              number("forecast", step, id.key() + ".high", band.high(), id.unit(), "");
            });
  }

  private void result(StepResult r) {
    r.outputVolts().ifPresent(q -> quantity("result", r.stepId(), "outputVolts", q));
    r.loadOhms().ifPresent(q -> quantity("result", r.stepId(), "loadOhms", q));
    r.watts().ifPresent(q -> quantity("result", r.stepId(), "watts", q));
    r.totalWatts().ifPresent(q -> quantity("result", r.stepId(), "totalWatts", q));
    r.inputWatts().ifPresent(q -> quantity("result", r.stepId(), "inputWatts", q));
    r.efficiency().ifPresent(q -> quantity("result", r.stepId(), "efficiency", q));
    r.heatWatts().ifPresent(q -> quantity("result", r.stepId(), "heatWatts", q));
    r.leadDropVolts().ifPresent(q -> quantity("result", r.stepId(), "leadDropVolts", q));
    r.leadWatts().ifPresent(q -> quantity("result", r.stepId(), "leadWatts", q));
    marks("result", r.stepId(), r.marks());
    ConditionsCsv.cells(r.conditions()).forEach(cell -> condition(r.stepId(), cell));
  }

  private void condition(String step, ConditionsCsv.Cell cell) {
    if (cell.value().isPresent()) {
      number("conditions", step, cell.key(), cell.value().getAsDouble(), cell.unit(), "");
    } else {
      text("conditions", step, cell.key(), cell.text().orElse(""));
    }
  }

  private void walkRecord(Sheet.WalkRecord record) {
    for (Sheet.DoubtLine d : record.doubts()) {
      String answer = d.answer().word() + (d.detail().isEmpty() ? "" : ": " + d.detail());
      text(
          "doubt", d.stepId(), d.reading().key() + "." + d.doubt().slip().code(), d.doubt().text());
      text("answer", d.stepId(), d.reading().key(), answer);
    }
    record
        .amendments()
        .forEach(
            a -> text("amended", a.stepId(), a.reading().key(), String.join(" > ", a.typed())));
    record.lifts().forEach(l -> text("halt lifted", l.stepId(), "", l.reason()));
    record.skips().forEach(s -> text("skipped", s.stepId(), "", s.reason()));
    record
        .ended()
        .forEach(
            e -> text("ended", e.step().target().stepId(), e.step().outcome().word(), e.seen()));
    for (Sheet.WarmUp w : record.warmUps()) {
      number("warm-up", w.stepId(), "seconds", w.seconds(), Unit.SECOND, w.endedEarly().orElse(""));
      w.temperatures()
          .forEach(
              t ->
                  number(
                      "warm-up",
                      w.stepId(),
                      "sinkCelsius",
                      t.celsius(),
                      Unit.CELSIUS,
                      Sentence.of("{} min", String.valueOf(t.minutes()))));
    }
    record.controls().ifPresent(set -> text("walk", "", "controls", set));
    record
        .stops()
        .forEach(
            s ->
                text(
                    "stop", s.stepId(), ResultWords.moment(s.wallMillis()), s.reason().orElse("")));
    record
        .notes()
        .forEach(n -> text("note", n.stepId(), ResultWords.moment(n.wallMillis()), n.text()));
    record.photos().forEach(p -> photo(p.attachment()));
  }

  private void photo(WalkState.Attachment photo) {
    text("photo", photo.stepId(), photo.path(), photo.caption());
    text("photo sha256", photo.stepId(), photo.path(), photo.sha256());
  }

  private void budget(PublishedPower power) {
    String runs = String.join(" ", power.runs());
    for (BudgetLine line : power.budget()) {
      number("budget", runs, line.source(), line.contribution(), Unit.WATT, "part of u");
    }
    number("budget", runs, "coverage factor", power.totalWatts().coverageFactor(), Unit.ONE, "");
  }

  private void quantity(String section, String step, String name, Quantity q) {
    quantity(section, step, name, q, "");
  }

  private void quantity(String section, String step, String name, Quantity q, String text) {
    csv.cells()
        .text(section)
        .text(step)
        .text(name)
        .number(q.value())
        .number(q.u())
        .unit(q.unit())
        .text(text)
        .end();
  }

  private void number(
      String section, String step, String name, double value, Unit unit, String text) {
    csv.cells()
        .text(section)
        .text(step)
        .text(name)
        .number(value)
        .text("")
        .unit(unit)
        .text(text)
        .end();
  }

  private void text(String section, String step, String name, String text) {
    csv.row(section, step, name, "", "", "", text);
  }
}
