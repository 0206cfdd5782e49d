package loadwalk.walk;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import loadwalk.bench.BenchFiles;
import loadwalk.bench.ReadingId;
import loadwalk.forecast.Band;
import loadwalk.forecast.Caution;
import loadwalk.forecast.Doubt;
import loadwalk.forecast.Forecast;
import loadwalk.json.JsonOut;

/**
 * Writes the facts of one moment as the body of one journal record, so that they are kept together
 * or not at all.
 *
 * <p>A body is {@code {"format"?,"at":"2026-01-31T09:30:00.123Z","facts":[{"fact":…,…,"at"?}]}};
 * only the first record of a walk carries the format, and a fact carries a time only where it
 * differs from the record's: facts that waited for a disk are written together.
 */
public final class FactWriter {
  /** The format named by the first record of a walk. */
  public static final String FORMAT = "loadwalk-journal/1";

  private FactWriter() {}

  /** Returns the body of one record; a fact of another moment than the first carries its own. */
  public static String body(List<Stamped> facts) {
    return JsonOut.line(
        out -> {
          out.writeStartObject();
          if (facts.get(0).fact() instanceof Fact.Opened) {
            out.writeStringField("format", FORMAT);
          }
          out.writeStringField("at", Instant.ofEpochMilli(facts.get(0).wallMillis()).toString());
          out.writeArrayFieldStart("facts");
          for (Stamped stamped : facts) {
            out.writeStartObject();
            new FactWriter().write(out, stamped.fact());
            if (stamped.wallMillis() != facts.get(0).wallMillis()) {
              out.writeStringField("at", Instant.ofEpochMilli(stamped.wallMillis()).toString());
            }
            out.writeEndObject();
          }
          out.writeEndArray();
          out.writeEndObject();
        });
  }

  private void write(JsonGenerator out, Fact fact) throws IOException {
    if (fact instanceof Fact.Opened opened) {
      opened(out, opened);
    } else if (fact instanceof Fact.Briefed briefed) {
      named(out, "briefed", briefed.step());
      out.writeFieldName("forecast");
      forecast(out, briefed.forecast());
    } else if (fact instanceof Fact.Entered entered) {
      entered(out, entered);
    } else if (fact instanceof Fact.Captured captured) {
      named(out, "captured", captured.step());
      CaptureForm.write(out, captured.capture());
    } else if (fact instanceof Fact.Doubted doubted) {
      named(out, "doubted", doubted.step());
      out.writeStringField("reading", doubted.reading().key());
      doubts(out, doubted.doubts());
    } else if (fact instanceof Fact.PairAdded pair) {
      named(out, "pair-added", pair.step());
      JsonOut.number(out, "volts", pair.pair().volts());
      JsonOut.number(out, "thdPercent", pair.pair().thdPercent());
    } else if (fact instanceof Fact.HaltLifted lifted) {
      named(out, "halt-lifted", lifted.step());
      out.writeArrayFieldStart("codes");
      for (String code : lifted.codes()) {
        out.writeString(code);
      }
      out.writeEndArray();
      out.writeStringField("reason", lifted.reason());
    } else {
      plain(out, fact);
    }
  }

  /** Facts of a step and at most one more value. */
  private static void plain(JsonGenerator out, Fact fact) throws IOException {
    if (fact instanceof Fact.Armed armed) {
      named(out, "armed", armed.step());
      out.writeStringField("text", armed.text());
      JsonOut.number(out, "ohms", armed.ohms());
    } else if (fact instanceof Fact.Begun begun) {
      named(out, "begun", begun.step());
    } else if (fact instanceof Fact.Warmed warmed) {
      named(out, "warmed", warmed.step());
      JsonOut.number(out, "seconds", warmed.seconds());
    } else if (fact instanceof Fact.StoodBy stood) {
      named(out, "stood-by", stood.step());
      out.writeStringField("reading", stood.reading().key());
      out.writeStringField("reason", stood.reason());
    } else if (fact instanceof Fact.CriterionSet set) {
      named(out, "criterion-set", set.step());
      out.writeStringField("criterion", set.criterion().word());
    } else if (fact instanceof Fact.EndedEarly early) {
      reasoned(out, "ended-early", early.step(), early.reason());
    } else if (fact instanceof Fact.Done done) {
      named(out, "done", done.step());
    } else if (fact instanceof Fact.Skipped skipped) {
      reasoned(out, "skipped", skipped.step(), skipped.reason());
    } else if (fact instanceof Fact.Cooled cooled) {
      reasoned(out, "cooled", cooled.step(), cooled.why());
    } else {
      ofWalk(out, fact);
    }
  }

  /** Facts of the walk as a whole. */
  private static void ofWalk(JsonGenerator out, Fact fact) throws IOException {
    if (fact instanceof Fact.WarmAgain again) {
      named(out, "warm-again", again.step());
    } else if (fact instanceof Fact.Noted noted) {
      named(out, "noted", noted.step());
      out.writeStringField("text", noted.text());
    } else if (fact instanceof Fact.Attached attached) {
      named(out, "attached", attached.step());
      out.writeStringField("path", attached.path());
      out.writeStringField("caption", attached.caption());
      out.writeStringField("sha256", attached.sha256());
      out.writeStringField("mediaType", attached.mediaType());
    } else if (fact instanceof Fact.Stopped stopped) {
      named(out, "stopped", stopped.step());
    } else if (fact instanceof Fact.StopExplained explained) {
      out.writeStringField("fact", "stop-explained");
      out.writeStringField("reason", explained.reason());
    } else if (fact instanceof Fact.Paused) {
      out.writeStringField("fact", "paused");
    } else if (fact instanceof Fact.Resumed) {
      out.writeStringField("fact", "resumed");
    } else {
      throw new IllegalStateException("a fact without a form: " + fact.getClass());
    }
  }

  private static void named(JsonGenerator out, String name, String step) throws IOException {
    out.writeStringField("fact", name);
    out.writeStringField("step", step);
  }

  private static void reasoned(JsonGenerator out, String name, String step, String reason)
      throws IOException {
    named(out, name, step);
    out.writeStringField("reason", reason);
  }

  private static void opened(JsonGenerator out, Fact.Opened opened) throws IOException {
    out.writeStringField("fact", "opened");
    out.writeStringField("walk", opened.walk());
    out.writeStringField("version", opened.version());
    out.writeStringField("sequenceText", opened.sequenceText());
    out.writeFieldName("amplifier");
    BenchFiles.AMPLIFIER.write(out, opened.amplifier());
    out.writeFieldName("bench");
    BenchFiles.BENCH.write(out, opened.bench());
    if (opened.practiceSeed().isPresent()) {
      out.writeNumberField("practiceSeed", opened.practiceSeed().getAsLong());
    }
  }

  private static void entered(JsonGenerator out, Fact.Entered entered) throws IOException {
    named(out, "entered", entered.step());
    out.writeStringField("reading", entered.reading().key());
    out.writeStringField("text", entered.text());
    JsonOut.number(out, "value", entered.value());
    JsonOut.number(out, "resolution", entered.resolution());
    JsonOut.number(out, "warmSeconds", entered.warmSeconds());
    doubts(out, entered.doubts());
    if (entered.instrument().isPresent()) {
      out.writeObjectFieldStart("instrument");
      instrument(out, entered.instrument().get());
      out.writeEndObject();
    }
  }

  private static void instrument(JsonGenerator out, Instrument by) throws IOException {
    out.writeStringField("meter", by.meter());
    out.writeStringField("identity", by.identity());
    out.writeStringField("raw", by.raw());
    out.writeStringField("at", Instant.ofEpochMilli(by.wallMillis()).toString());
    out.writeNumberField("count", by.count());
    JsonOut.number(out, "scatter", by.scatter());
  }

  private static void doubts(JsonGenerator out, List<Doubt> doubts) throws IOException {
    out.writeArrayFieldStart("doubts");
    for (Doubt doubt : doubts) {
      out.writeStartObject();
      out.writeStringField("reading", doubt.reading().key());
      out.writeStringField("slip", doubt.slip().code());
      out.writeStringField("text", doubt.text());
      out.writeStringField("lookAt", doubt.lookAt());
      if (doubt.earlierStep().isPresent()) {
        out.writeStringField("earlierStep", doubt.earlierStep().get());
      }
      out.writeEndObject();
    }
    out.writeEndArray();
  }

  private static void forecast(JsonGenerator out, Forecast forecast) throws IOException {
    out.writeStartObject();
    JsonOut.number(out, "level", forecast.level());
    out.writeStringField("verdict", forecast.verdict().word());
    out.writeStringField("basis", forecast.basis());
    out.writeObjectFieldStart("readings");
    for (Map.Entry<ReadingId, Band> e : forecast.readings().entrySet()) {
      band(out, e.getKey().key(), Optional.of(e.getValue()));
    }
    out.writeEndObject();
    out.writeObjectFieldStart("demand");
    band(out, "loadWatts", forecast.demand().loadWatts());
    band(out, "totalWatts", forecast.demand().totalWatts());
    band(out, "heatWatts", forecast.demand().heatWatts());
    band(out, "leadVolts", forecast.demand().leadVolts());
    out.writeEndObject();
    out.writeArrayFieldStart("cautions");
    for (Caution caution : forecast.cautions()) {
      out.writeStartObject();
      out.writeStringField("code", caution.code());
      out.writeStringField("gravity", caution.gravity().word());
      out.writeStringField("text", caution.text());
      if (Double.isFinite(caution.severity())) {
        JsonOut.number(out, "severity", caution.severity());
      }
      out.writeEndObject();
    }
    out.writeEndArray();
    out.writeEndObject();
  }

  private static void band(JsonGenerator out, String key, Optional<Band> band) throws IOException {
    if (band.isPresent()) {
      out.writeArrayFieldStart(key);
      JsonOut.number(out, band.get().low());
      JsonOut.number(out, band.get().middle());
      JsonOut.number(out, band.get().high());
      out.writeEndArray();
    }
  }
}
