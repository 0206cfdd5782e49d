package loadwalk.report.sheet;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import loadwalk.forecast.Forecast;
import loadwalk.forecast.ForecastJson;
import loadwalk.json.JsonOut;
import loadwalk.report.page.JsonParts;
import loadwalk.result.StepResult;

/** Writes the steps of a sheet as JSON. */
final class SheetJsonSteps {
  private SheetJsonSteps() {}

  /** Writes the keys of one step. */
  static void write(JsonGenerator out, Sheet.StepLine step) throws IOException {
    out.writeStringField("step", step.id());
    out.writeStringField("do", step.verb());
    out.writeStringField("instruction", step.instruction());
    out.writeStringField("status", step.status().word());
    if (step.outcome().isPresent()) {
      out.writeStringField("outcome", step.outcome().get().word());
    }
    if (step.recheckOf().isPresent()) {
      out.writeStringField("recheckOf", step.recheckOf().get());
    }
    if (step.armedOhms().isPresent()) {
      JsonOut.number(out, "armedOhms", step.armedOhms().getAsDouble());
    }
    if (step.brief().isPresent()) {
      brief(out, step.brief().get());
    }
    if (!step.readings().isEmpty()) {
      out.writeStringField("criterion", step.criterion().word());
    }
    readings(out, step);
    if (step.wave().isPresent()) {
      out.writeObjectFieldStart("wave");
      CaptureJson.write(out, step.wave().get());
      out.writeEndObject();
    }
    if (step.result().isPresent()) {
      result(out, step.result().get());
    }
  }

  private static void brief(JsonGenerator out, Forecast brief) throws IOException {
    out.writeStringField("verdict", brief.verdict().word());
    ForecastJson.cautions(out, brief, true);
    out.writeObjectFieldStart("forecast");
    ForecastJson.ENDS.readings(out, brief);
    out.writeEndObject();
  }

  private static void readings(JsonGenerator out, Sheet.StepLine step) throws IOException {
    out.writeObjectFieldStart("readings");
    for (Sheet.ReadingLine r : step.readings()) {
      out.writeObjectFieldStart(r.id().key());
      out.writeStringField("typed", r.typed());
      JsonOut.number(out, "value", r.value());
      JsonOut.number(out, "resolution", r.resolution());
      out.writeEndObject();
    }
    out.writeEndObject();
    JsonOut.objects(
        out,
        "pairs",
        step.pairs(),
        pair -> {
          JsonOut.number(out, "outputVolts", pair.volts());
          JsonOut.number(out, "thdPercent", pair.thdPercent());
        });
  }

  private static void result(JsonGenerator out, StepResult r) throws IOException {
    out.writeObjectFieldStart("result");
    out.writeStringField("criterion", r.criterion().word());
    ConditionsJson.write(out, r.conditions(), r.marks());
    JsonParts.quantity(out, "outputVolts", r.outputVolts());
    JsonParts.quantity(out, "loadOhms", r.loadOhms());
    JsonParts.quantity(out, "watts", r.watts());
    JsonParts.quantity(out, "otherWatts", r.otherWatts());
    JsonParts.quantity(out, "totalWatts", r.totalWatts());
    JsonParts.quantity(out, "inputWatts", r.inputWatts());
    JsonParts.quantity(out, "efficiency", r.efficiency());
    JsonParts.quantity(out, "heatWatts", r.heatWatts());
    JsonParts.quantity(out, "leadDropVolts", r.leadDropVolts());
    JsonParts.quantity(out, "leadWatts", r.leadWatts());
    if (r.rating().isPresent()) {
      SheetJson.rating(out, r.rating().get());
    }
    out.writeEndObject();
  }
}
