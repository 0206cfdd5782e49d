package loadwalk.report.sheet;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.time.Instant;
import loadwalk.bench.BenchFiles;
import loadwalk.forecast.ForecastJson;
import loadwalk.json.JsonOut;
import loadwalk.quantity.Quantity;
import loadwalk.report.page.JsonParts;
import loadwalk.result.OutputFit;
import loadwalk.result.PublishedPower;
import loadwalk.result.RatingComparison;
import loadwalk.result.Ratio;

/** Writes a sheet as JSON; its schema is {@code /loadwalk/schema/sheet.schema.json}. */
public final class SheetJson {
  /** The format named in the output. */
  public static final String FORMAT = "loadwalk-sheet/1";

  private SheetJson() {}

  /** Returns the whole text, indented, ending with a line break. */
  public static String text(Sheet sheet) {
    return JsonParts.harmless(JsonOut.pretty(out -> write(out, sheet)));
  }

  /** Writes a sheet as one object that names its format. */
  static void write(JsonGenerator out, Sheet sheet) throws IOException {
    write(out, sheet, true);
  }

  /** Writes a sheet without its steps, for output that writes the steps separately. */
  public static void writeWithoutSteps(JsonGenerator out, Sheet sheet) throws IOException {
    write(out, sheet, false);
  }

  private static void write(JsonGenerator out, Sheet sheet, boolean steps) throws IOException {
    out.writeStartObject();
    out.writeStringField("format", FORMAT);
    out.writeStringField("walk", sheet.walk());
    out.writeStringField("version", sheet.version());
    if (sheet.practiceSeed().isPresent()) {
      out.writeNumberField("practiceSeed", sheet.practiceSeed().getAsLong());
    }
    out.writeStringField("at", Instant.ofEpochMilli(sheet.lastWallMillis()).toString());
    out.writeBooleanField("finished", sheet.finished());
    out.writeStringField("journal", sheet.soundness().standing().word());
    JsonOut.texts(out, "warnings", sheet.warnings());
    out.writeFieldName("amplifier");
    BenchFiles.AMPLIFIER.write(out, sheet.amplifier());
    out.writeBooleanField("serialKeptBack", sheet.serialKeptBack());
    sequence(out, sheet);
    out.writeFieldName("bench");
    BenchFiles.BENCH.write(out, sheet.bench());
    JsonOut.objects(out, "loads", sheet.loads(), line -> load(out, line));
    if (steps) {
      JsonOut.objects(out, "steps", sheet.steps(), step -> SheetJsonSteps.write(out, step));
    }
    results(out, sheet);
    SheetJsonRecord.write(out, sheet.record());
    assumptions(out, sheet);
    budget(out, sheet);
    StandardSection.write(out, sheet);
    out.writeEndObject();
  }

  private static void sequence(JsonGenerator out, Sheet sheet) throws IOException {
    out.writeObjectFieldStart("sequence");
    out.writeStringField("name", sheet.sequence().name());
    out.writeStringField("title", sheet.sequence().title());
    out.writeStringField("sha256", sheet.sequence().contentHash());
    JsonOut.number(out, "toneHertz", sheet.sequence().toneHertz());
    JsonOut.number(out, "limitThdPercent", sheet.sequence().limitThdPercent());
    JsonOut.number(out, "supplyVolts", sheet.sequence().supplyVolts());
    out.writeEndObject();
  }

  private static void load(JsonGenerator out, Sheet.LoadLine line) throws IOException {
    PublishedPower power = line.power();
    out.writeStringField("mode", power.mode().word());
    JsonOut.number(out, "ohms", power.ohms());
    out.writeStringField("step", power.fromStepId());
    out.writeStringField("criterion", power.criterion().word());
    JsonParts.quantity(out, "watts", power.watts());
    JsonParts.quantity(out, "otherWatts", power.channelWatts().stream().skip(1).findFirst());
    JsonParts.quantity(out, "meanWatts", power.meanWatts());
    JsonParts.quantity(out, "balance", power.balance());
    JsonParts.quantity(out, "totalWatts", power.totalWatts());
    JsonOut.texts(out, "runs", power.runs());
    if (power.spread().isPresent()) {
      out.writeObjectFieldStart("spread");
      JsonParts.quantity(out, "lowestWatts", power.spread().get().low());
      JsonParts.quantity(out, "highestWatts", power.spread().get().high());
      out.writeEndObject();
    }
    ConditionsJson.write(out, power.conditions(), power.marks());
    ForecastJson.ENDS.band(out, "forecastWatts", line.forecast());
    if (!power.why().isEmpty()) {
      out.writeStringField("why", power.why());
    }
    if (line.rating().isPresent()) {
      rating(out, line.rating().get());
    }
  }

  static void rating(JsonGenerator out, RatingComparison rating) throws IOException {
    out.writeObjectFieldStart("rating");
    JsonOut.number(out, "watts", rating.ratingWatts());
    JsonParts.quantity(out, "ratio", rating.ratio());
    if (Double.isFinite(rating.decibels())) {
      JsonOut.number(out, "decibels", rating.decibels());
    }
    out.writeStringField("verdict", rating.verdict().word());
    RatingJson.unlike(out, rating);
    out.writeEndObject();
  }

  private static void results(JsonGenerator out, Sheet sheet) throws IOException {
    out.writeObjectFieldStart("repeatability");
    JsonOut.number(out, "relativeVolts", sheet.result().repeatability().relativeVolts());
    out.writeNumberField("pairs", sheet.result().repeatability().pairs());
    out.writeEndObject();
    if (sheet.result().outputFit().isPresent()) {
      OutputFit fit = sheet.result().outputFit().get();
      out.writeObjectFieldStart("outputFit");
      JsonParts.quantity(out, "openVolts", fit.openVolts());
      JsonParts.quantity(out, "seriesOhms", fit.seriesOhms());
      JsonOut.texts(out, "steps", fit.stepIds());
      JsonOut.number(out, "worstResidual", fit.worstResidual());
      out.writeEndObject();
    }
    JsonParts.quantity(out, "sourceOhms", sheet.result().sourceResistance());
    if (sheet.result().dampingFactor().isPresent()) {
      Ratio factor = sheet.result().dampingFactor().get();
      out.writeObjectFieldStart("dampingFactor");
      JsonOut.number(out, "value", factor.value());
      JsonOut.number(out, "low", factor.low());
      if (factor.high().isPresent()) {
        JsonOut.number(out, "high", factor.high().getAsDouble());
      }
      out.writeEndObject();
    }
    JsonOut.objects(
        out,
        "bridges",
        sheet.result().bridges(),
        b -> {
          out.writeStringField("bridged", b.bridgedId());
          out.writeStringField("stereo", b.stereoId());
          JsonParts.quantity(out, "ratio", b.ratio());
          out.writeBooleanField("withinUncertainty", b.withinUncertainty());
          out.writeStringField("text", b.text());
        });
    JsonOut.objects(
        out,
        "rechecks",
        sheet.result().rechecks(),
        r -> {
          out.writeStringField("first", r.firstId());
          out.writeStringField("recheck", r.recheckId());
          JsonParts.quantity(out, "differenceWatts", r.difference());
          JsonOut.number(out, "limitWatts", r.limitWatts());
          out.writeStringField("outcome", r.outcome().word());
          out.writeStringField("text", r.text());
        });
  }

  private static void assumptions(JsonGenerator out, Sheet sheet) throws IOException {
    JsonOut.objects(
        out,
        "assumptions",
        sheet.assumptions(),
        a -> {
          out.writeStringField("code", a.remark().code());
          out.writeStringField("text", a.remark().text());
          JsonOut.texts(out, "steps", a.stepIds());
        });
  }

  private static void budget(JsonGenerator out, Sheet sheet) throws IOException {
    if (sheet.budgetOf().isEmpty()) {
      return;
    }
    PublishedPower power = sheet.budgetOf().get();
    Quantity watts = power.totalWatts();
    out.writeObjectFieldStart("budget");
    JsonOut.texts(out, "runs", power.runs());
    JsonParts.quantity(out, "totalWatts", watts);
    JsonOut.number(out, "coverageFactor", watts.coverageFactor());
    degrees(out, watts.effectiveDegreesOfFreedom());
    JsonOut.objects(
        out,
        "parts",
        power.budget(),
        line -> {
          out.writeStringField("source", line.source());
          JsonOut.number(out, "inputU", line.inputU());
          out.writeStringField("inputUnit", line.inputUnit().symbol());
          JsonOut.number(out, "sensitivity", line.sensitivity());
          JsonOut.number(out, "contribution", line.contribution());
          degrees(out, line.degreesOfFreedom());
        });
    out.writeEndObject();
  }

  /** Writes degrees of freedom; infinitely many are left out. */
  private static void degrees(JsonGenerator out, double degreesOfFreedom) throws IOException {
    if (!Double.isInfinite(degreesOfFreedom)) {
      JsonOut.number(out, "degreesOfFreedom", degreesOfFreedom);
    }
  }
}
