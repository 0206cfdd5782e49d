package loadwalk.report.sheet;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.time.Instant;
import java.util.Map;
import java.util.TreeMap;
import loadwalk.bench.ReadingId;
import loadwalk.json.JsonOut;
import loadwalk.numeric.ThermalFit;
import loadwalk.walk.fact.WalkState;

/** Writes as JSON what happened in a walk, apart from its readings. */
final class SheetJsonRecord {
  private SheetJsonRecord() {}

  static void write(JsonGenerator out, Sheet.WalkRecord record) throws IOException {
    doubts(out, record);
    amendments(out, record);
    lifts(out, record);
    skips(out, record);
    ended(out, record);
    warmUps(out, record);
    notes(out, record);
    photos(out, record);
  }

  private static void doubts(JsonGenerator out, Sheet.WalkRecord record) throws IOException {
    JsonOut.objects(
        out,
        "doubts",
        record.doubts(),
        d -> {
          out.writeStringField("step", d.stepId());
          out.writeStringField("reading", d.reading().key());
          out.writeStringField("typed", d.typed());
          out.writeStringField("slip", d.doubt().slip().code());
          out.writeStringField("text", d.doubt().text());
          out.writeStringField("lookAt", d.doubt().lookAt());
          if (d.doubt().earlierStep().isPresent()) {
            out.writeStringField("earlierStep", d.doubt().earlierStep().get());
          }
          out.writeStringField("answer", d.answer().word());
          out.writeStringField("detail", d.detail());
        });
  }

  private static void amendments(JsonGenerator out, Sheet.WalkRecord record) throws IOException {
    JsonOut.objects(
        out,
        "amended",
        record.amendments(),
        a -> {
          out.writeStringField("step", a.stepId());
          out.writeStringField("reading", a.reading().key());
          JsonOut.texts(out, "typed", a.typed());
        });
  }

  private static void ended(JsonGenerator out, Sheet.WalkRecord record) throws IOException {
    JsonOut.objects(
        out,
        "ended",
        record.ended(),
        e -> {
          out.writeStringField("step", e.step().target().stepId());
          out.writeStringField("mode", e.step().target().mode().word());
          JsonOut.number(out, "ohms", e.step().target().ohms());
          out.writeStringField("outcome", e.step().outcome().word());
          out.writeObjectFieldStart("readings");
          for (Map.Entry<ReadingId, Double> last : new TreeMap<>(e.step().readings()).entrySet()) {
            JsonOut.number(out, last.getKey().key(), last.getValue());
          }
          out.writeEndObject();
          if (e.ratedWatts().isPresent()) {
            JsonOut.number(out, "ratedWatts", e.ratedWatts().getAsDouble());
          }
          if (!e.seen().isEmpty()) {
            out.writeStringField("seen", e.seen());
          }
        });
  }

  private static void lifts(JsonGenerator out, Sheet.WalkRecord record) throws IOException {
    JsonOut.objects(
        out,
        "halts",
        record.lifts(),
        lift -> {
          out.writeStringField("step", lift.stepId());
          JsonOut.texts(out, "halts", lift.halts());
          out.writeStringField("reason", lift.reason());
        });
  }

  private static void skips(JsonGenerator out, Sheet.WalkRecord record) throws IOException {
    JsonOut.objects(
        out,
        "skipped",
        record.skips(),
        skip -> {
          out.writeStringField("step", skip.stepId());
          out.writeStringField("reason", skip.reason());
        });
  }

  private static void warmUps(JsonGenerator out, Sheet.WalkRecord record) throws IOException {
    JsonOut.objects(
        out,
        "warmUps",
        record.warmUps(),
        w -> {
          out.writeStringField("step", w.stepId());
          out.writeStringField("status", w.status().word());
          JsonOut.number(out, "plannedMinutes", w.plannedMinutes());
          JsonOut.number(out, "seconds", w.seconds());
          if (w.endedEarly().isPresent()) {
            out.writeStringField("endedEarly", w.endedEarly().get());
          }
          JsonOut.objects(
              out,
              "temperatures",
              w.temperatures(),
              t -> {
                JsonOut.number(out, "minutes", t.minutes());
                JsonOut.number(out, "sinkCelsius", t.celsius());
              });
          if (w.fit().isPresent()) {
            ThermalFit.Settling fit = w.fit().get();
            out.writeObjectFieldStart("fit");
            JsonOut.number(out, "endCelsius", fit.endCelsius());
            JsonOut.number(out, "tauMinutes", fit.tauMinutes());
            JsonOut.number(out, "celsiusPerMinute", fit.now().celsiusPerMinute());
            out.writeEndObject();
          }
          if (w.atTheEnd().slope().isPresent()) {
            out.writeObjectFieldStart("slopeAtEnd");
            JsonOut.number(out, "celsiusPerMinute", w.atTheEnd().slope().get().celsiusPerMinute());
            JsonOut.number(out, "u", w.atTheEnd().slope().get().u());
            out.writeEndObject();
          }
        });
    if (record.cooled().isPresent()) {
      out.writeStringField("cooled", record.cooled().get());
    }
  }

  private static void notes(JsonGenerator out, Sheet.WalkRecord record) throws IOException {
    if (record.controls().isPresent()) {
      out.writeStringField("controls", record.controls().get());
    }
    JsonOut.objects(
        out,
        "stops",
        record.stops(),
        stop -> {
          out.writeStringField("at", Instant.ofEpochMilli(stop.wallMillis()).toString());
          out.writeStringField("step", stop.stepId());
          if (stop.reason().isPresent()) {
            out.writeStringField("reason", stop.reason().get());
          }
        });
    JsonOut.objects(
        out,
        "notes",
        record.notes(),
        note -> {
          out.writeStringField("at", Instant.ofEpochMilli(note.wallMillis()).toString());
          out.writeStringField("step", note.stepId());
          out.writeStringField("text", note.text());
        });
  }

  private static void photos(JsonGenerator out, Sheet.WalkRecord record) throws IOException {
    JsonOut.objects(
        out,
        "photos",
        record.photos(),
        photo -> {
          WalkState.Attachment a = photo.attachment();
          out.writeStringField("at", Instant.ofEpochMilli(a.wallMillis()).toString());
          out.writeStringField("step", a.stepId());
          out.writeStringField("path", a.path());
          out.writeStringField("caption", a.caption());
          out.writeStringField("sha256", a.sha256());
          out.writeStringField("mediaType", a.mediaType());
        });
  }
}
