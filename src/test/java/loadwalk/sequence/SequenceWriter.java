package loadwalk.sequence;

import static loadwalk.json.JsonOut.number;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import loadwalk.json.Format;
import loadwalk.json.JsonOut;

/** Writes a sequence as JSON that {@link SequenceReader} reads back the same, but for its hash. */
public final class SequenceWriter {
  private SequenceWriter() {}

  /** Returns the text of a sequence file. */
  public static String text(Sequence sequence) {
    return JsonOut.pretty(out -> write(out, sequence));
  }

  private static void write(JsonGenerator out, Sequence sequence) throws IOException {
    out.writeStartObject();
    out.writeStringField(Format.KEY, SequenceReader.FORMAT.text());
    out.writeStringField("name", sequence.name());
    out.writeStringField("title", sequence.title());
    out.writeObjectFieldStart("tone");
    number(out, "hertz", sequence.toneHertz());
    out.writeEndObject();
    out.writeObjectFieldStart("limit");
    number(out, "thdPercent", sequence.limitThdPercent());
    out.writeEndObject();
    number(out, "supplyVolts", sequence.supplyVolts());
    out.writeArrayFieldStart("steps");
    for (Step step : sequence.steps()) {
      out.writeStartObject();
      out.writeStringField("do", step.verb());
      writeRest(out, step);
      out.writeEndObject();
    }
    out.writeEndArray();
    out.writeEndObject();
  }

  private static void writeRest(JsonGenerator out, Step step) throws IOException {
    if (step instanceof WarmUp warmUp) {
      number(out, "minutes", warmUp.minutes());
      number(out, "powerFraction", warmUp.powerFraction());
      number(out, "steadyCelsiusPerMinute", warmUp.steadyCelsiusPerMinute());
    } else if (step instanceof Measure measure) {
      out.writeStringField("mode", measure.mode().word());
      number(out, "ohms", measure.ohms());
      if (measure.optional()) {
        out.writeBooleanField("optional", true);
      }
    } else if (step instanceof Recheck recheck) {
      out.writeArrayFieldStart("of");
      for (String target : recheck.of()) {
        out.writeString(target);
      }
      out.writeEndArray();
      number(out, "afterWarmMinutes", recheck.afterWarmMinutes());
    } else if (step instanceof Music music) {
      number(out, "minutes", music.minutes());
    } else if (step instanceof Note note) {
      out.writeStringField("text", note.text());
    }
  }
}
