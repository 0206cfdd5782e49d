package loadwalk.report;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.time.Instant;
import loadwalk.json.JsonOut;
import loadwalk.numeric.ThermalFit;
import loadwalk.walk.WalkState;

/** Writes what happened in a walk besides its readings as JSON. */
final class SheetJsonHappenings {
  private SheetJsonHappenings() {}

  static void write(JsonGenerator out, Sheet.Happenings record) throws IOException {
    doubts(out, record);
    amendments(out, record);
    lifts(out, record);
    skips(out, record);
    warmUps(out, record);
    notes(out, record);
    photos(out, record);
  }

  private static void doubts(JsonGenerator out, Sheet.Happenings record) throws IOException {
    out.writeArrayFieldStart("doubts");
    for (Sheet.DoubtLine d : record.doubts()) {
      out.writeStartObject();
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
      out.writeEndObject();
    }
    out.writeEndArray();
  }

  private static void amendments(JsonGenerator out, Sheet.Happenings record) throws IOException {
    out.writeArrayFieldStart("amended");
    for (Sheet.Amendment a : record.amendments()) {
      out.writeStartObject();
      out.writeStringField("step", a.stepId());
      out.writeStringField("reading", a.reading().key());
      JsonParts.texts(out, "typed", a.typed());
      out.writeEndObject();
    }
    out.writeEndArray();
  }

  private static void lifts(JsonGenerator out, Sheet.Happenings record) throws IOException {
    out.writeArrayFieldStart("halts");
    for (Sheet.Lift lift : record.lifts()) {
      out.writeStartObject();
      out.writeStringField("step", lift.stepId());
      JsonParts.texts(out, "halts", lift.halts());
      out.writeStringField("reason", lift.reason());
      out.writeEndObject();
    }
    out.writeEndArray();
  }

  private static void skips(JsonGenerator out, Sheet.Happenings record) throws IOException {
    out.writeArrayFieldStart("skipped");
    for (Sheet.Skip skip : record.skips()) {
      out.writeStartObject();
      out.writeStringField("step", skip.stepId());
      out.writeStringField("reason", skip.reason());
      out.writeEndObject();
    }
    out.writeEndArray();
  }

  private static void warmUps(JsonGenerator out, Sheet.Happenings record) throws IOException {
    out.writeArrayFieldStart("warmUps");
    for (Sheet.WarmUp w : record.warmUps()) {
      out.writeStartObject();
      out.writeStringField("step", w.stepId());
      out.writeStringField("status", w.status().word());
      JsonOut.number(out, "plannedMinutes", w.plannedMinutes());
      JsonOut.number(out, "seconds", w.seconds());
      if (w.endedEarly().isPresent()) {
        out.writeStringField("endedEarly", w.endedEarly().get());
      }
      out.writeArrayFieldStart("temperatures");
      for (Sheet.Temperature t : w.temperatures()) {
        out.writeStartObject();
        JsonOut.number(out, "minutes", t.minutes());
        JsonOut.number(out, "sinkCelsius", t.celsius());
        out.writeEndObject();
      }
      out.writeEndArray();
      if (w.fit().isPresent()) {
        ThermalFit.Settling fit = w.fit().get();
        out.writeObjectFieldStart("fit");
        JsonOut.number(out, "endCelsius", fit.endCelsius());
        JsonOut.number(out, "tauMinutes", fit.tauMinutes());
        JsonOut.number(out, "celsiusPerMinute", fit.now().celsiusPerMinute());
        out.writeEndObject();
      }
      out.writeEndObject();
    }
    out.writeEndArray();
    if (record.cooled().isPresent()) {
      out.writeStringField("cooled", record.cooled().get());
    }
  }

  private static void notes(JsonGenerator out, Sheet.Happenings record) throws IOException {
    JsonParts.texts(out, "stops", record.stops());
    out.writeArrayFieldStart("notes");
    for (WalkState.Note note : record.notes()) {
      out.writeStartObject();
      out.writeStringField("at", Instant.ofEpochMilli(note.wallMillis()).toString());
      out.writeStringField("step", note.stepId());
      out.writeStringField("text", note.text());
      out.writeEndObject();
    }
    out.writeEndArray();
  }

  private static void photos(JsonGenerator out, Sheet.Happenings record) throws IOException {
    out.writeArrayFieldStart("photos");
    for (Sheet.Photo photo : record.photos()) {
      WalkState.Attachment a = photo.attachment();
      out.writeStartObject();
      out.writeStringField("at", Instant.ofEpochMilli(a.wallMillis()).toString());
      out.writeStringField("step", a.stepId());
      out.writeStringField("path", a.path());
      out.writeStringField("caption", a.caption());
      out.writeStringField("sha256", a.sha256());
      out.writeStringField("mediaType", a.mediaType());
      out.writeEndObject();
    }
    out.writeEndArray();
  }
}
