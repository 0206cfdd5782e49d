package loadwalk.report.rehearsal;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.util.List;
import java.util.Optional;
import loadwalk.forecast.Forecast;
import loadwalk.forecast.ForecastJson;
import loadwalk.json.Format;
import loadwalk.json.JsonOut;
import loadwalk.plan.Rules;
import loadwalk.quantity.Quantity;
import loadwalk.report.page.JsonParts;
import loadwalk.report.sheet.ConditionsJson;
import loadwalk.report.sheet.RatingJson;
import loadwalk.report.sheet.Sheet;
import loadwalk.report.sheet.SheetJson;
import loadwalk.report.sheet.SheetOptions;
import loadwalk.result.RatingComparison;
import loadwalk.result.StepResult;
import loadwalk.walk.fact.StepState;
import loadwalk.walk.rehearse.Rehearsal;
import loadwalk.walk.rehearse.Rehearsal.Problem;

/** Writes a rehearsed walk as one line of JSON. */
public final class RehearsalJson {
  /** The format of a line, in and out. */
  public static final Format FORMAT = new Format("rehearsal", 1);

  private final Rehearsal.Outcome outcome;
  private final Sheet sheet;

  private RehearsalJson(Rehearsal.Outcome outcome, Rules rules) {
    this.outcome = outcome;
    this.sheet = Sheet.of(outcome.state(), SheetOptions.DEFAULT, rules);
  }

  /** Returns the line of a rehearsed walk, without a line break. */
  public static String line(Rehearsal.Outcome outcome, Rules rules) {
    return JsonParts.harmless(JsonOut.line(new RehearsalJson(outcome, rules)::write));
  }

  private void write(JsonGenerator out) throws IOException {
    out.writeStartObject();
    out.writeStringField(Format.KEY, FORMAT.text());
    out.writeStringField("name", outcome.state().opened().walk());
    JsonOut.objects(out, "steps", outcome.steps(), step -> step(out, step));
    List<String> known = outcome.steps().stream().map(Rehearsal.Rehearsed::step).toList();
    problems(
        out, outcome.problems().stream().filter(p -> !known.contains(p.step())).toList(), true);
    out.writeFieldName("sheet");
    SheetJson.writeWithoutSteps(out, sheet);
    out.writeEndObject();
  }

  private void step(JsonGenerator out, Rehearsal.Rehearsed step) throws IOException {
    out.writeStringField("step", step.step());
    out.writeStringField("verdict", step.brief().verdict().word());
    ForecastJson.opening(out, step.brief());
    ForecastJson.cautions(out, step.brief(), false);
    forecast(out, step.brief());
    doubts(out, step);
    out.writeObjectFieldStart("result");
    Optional<StepResult> found = sheet.result().step(step.step());
    if (found.isPresent()) {
      result(out, found.get());
      ConditionsJson.write(out, found.get().conditions(), found.get().marks());
    }
    StepState state = outcome.state().step(step.step());
    if (state.ended().isPresent()) {
      out.writeStringField("outcome", state.ended().get().word());
    }
    out.writeEndObject();
    if (state.status() == StepState.Status.SKIPPED) {
      out.writeStringField("skipped", state.reason().orElse(""));
    }
    problems(
        out, outcome.problems().stream().filter(p -> p.step().equals(step.step())).toList(), false);
  }

  private static void forecast(JsonGenerator out, Forecast brief) throws IOException {
    out.writeObjectFieldStart("forecast");
    ForecastJson.ENDS.readings(out, brief);
    ForecastJson.ENDS.watts(out, brief);
    ForecastJson.ENDS.band(out, "leadVolts", brief.demand().leadVolts());
    out.writeEndObject();
  }

  private static void doubts(JsonGenerator out, Rehearsal.Rehearsed step) throws IOException {
    JsonOut.objects(
        out,
        "doubts",
        step.doubts(),
        doubt -> {
          out.writeStringField("reading", doubt.reading().key());
          out.writeStringField("slip", doubt.slip().code());
          out.writeStringField("text", doubt.text());
          out.writeStringField("lookAt", doubt.lookAt());
          if (doubt.earlierStep().isPresent()) {
            out.writeStringField("earlierStep", doubt.earlierStep().get());
          }
        });
  }

  private static void result(JsonGenerator out, StepResult result) throws IOException {
    number(out, "outputVolts", result.outputVolts().map(Quantity::value));
    number(out, "watts", result.watts().map(Quantity::value));
    number(out, "u", result.watts().map(Quantity::u));
    number(out, "otherWatts", result.otherWatts().map(Quantity::value));
    number(out, "totalWatts", result.totalWatts().map(Quantity::value));
    number(out, "totalU", result.totalWatts().map(Quantity::u));
    number(out, "inputWatts", result.inputWatts().map(Quantity::value));
    number(out, "efficiency", result.efficiency().map(Quantity::value));
    number(out, "heatWatts", result.heatWatts().map(Quantity::value));
    number(out, "loadOhms", result.loadOhms().map(Quantity::value));
    number(out, "leadDropVolts", result.leadDropVolts().map(Quantity::value));
    number(out, "leadWatts", result.leadWatts().map(Quantity::value));
    if (result.rating().isPresent()) {
      RatingComparison rating = result.rating().get();
      out.writeObjectFieldStart("rating");
      number(out, "watts", Optional.of(rating.ratingWatts()));
      number(out, "ratio", Optional.of(rating.ratio().value()));
      number(out, "u", Optional.of(rating.ratio().u()));
      number(out, "decibels", Optional.of(rating.decibels()));
      out.writeStringField("verdict", rating.verdict().word());
      RatingJson.unlike(out, rating);
      out.writeEndObject();
    }
  }

  /** Writes a number if it is known and finite; 0 W, minus infinity in decibels, is left out. */
  private static void number(JsonGenerator out, String key, Optional<Double> value)
      throws IOException {
    if (value.filter(Double::isFinite).isPresent()) {
      JsonOut.number(out, key, value.get());
    }
  }

  private static void problems(JsonGenerator out, List<Problem> problems, boolean named)
      throws IOException {
    if (problems.isEmpty()) {
      return;
    }
    JsonOut.objects(
        out,
        "problems",
        problems,
        problem -> {
          if (named) {
            out.writeStringField("step", problem.step());
          }
          out.writeStringField("reading", problem.reading());
          out.writeStringField("text", problem.text());
        });
  }
}
