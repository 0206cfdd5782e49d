package loadwalk.bench;

import static loadwalk.json.JsonOut.number;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.util.OptionalDouble;
import loadwalk.json.Format;
import loadwalk.json.JsonOut;

/** Writes an amplifier as JSON that {@link AmplifierReader} reads back the same. */
public final class AmplifierWriter {
  private AmplifierWriter() {}

  /** Returns the text of an amplifier file. */
  public static String text(Amplifier amplifier) {
    return JsonOut.pretty(out -> write(out, amplifier));
  }

  /** Writes an amplifier as one object with its format. */
  public static void write(JsonGenerator out, Amplifier amplifier) throws IOException {
    out.writeStartObject();
    out.writeStringField(Format.KEY, AmplifierReader.FORMAT.text());
    out.writeStringField("maker", amplifier.maker());
    out.writeStringField("model", amplifier.model());
    if (amplifier.serial().isPresent()) {
      out.writeStringField("serial", amplifier.serial().get());
    }
    if (amplifier.year().isPresent()) {
      out.writeNumberField("year", amplifier.year().getAsInt());
    }
    if (amplifier.amplifierClass().isPresent()) {
      out.writeStringField("class", amplifier.amplifierClass().get());
    }
    if (amplifier.channels().isPresent()) {
      out.writeNumberField("channels", amplifier.channels().getAsInt());
    }
    writeRatings(out, amplifier);
    writeMinimum(out, amplifier);
    writeFuses(out, amplifier);
    if (amplifier.regulated().isPresent()) {
      out.writeBooleanField("regulated", amplifier.regulated().get());
    }
    out.writeEndObject();
  }

  private static void writeRatings(JsonGenerator out, Amplifier amplifier) throws IOException {
    if (amplifier.ratings().isEmpty()) {
      return;
    }
    out.writeArrayFieldStart("ratings");
    for (Rating rating : amplifier.ratings()) {
      out.writeStartObject();
      out.writeStringField("mode", rating.mode().word());
      number(out, "ohms", rating.ohms());
      number(out, "watts", rating.watts());
      writeOptional(out, "supplyVolts", rating.supplyVolts());
      writeOptional(out, "thdPercent", rating.thdPercent());
      out.writeEndObject();
    }
    out.writeEndArray();
  }

  private static void writeMinimum(JsonGenerator out, Amplifier amplifier) throws IOException {
    if (amplifier.minimumStereoOhms().isPresent() || amplifier.minimumBridgedOhms().isPresent()) {
      out.writeObjectFieldStart("minimumOhms");
      writeOptional(out, "stereo", amplifier.minimumStereoOhms());
      writeOptional(out, "bridged", amplifier.minimumBridgedOhms());
      out.writeEndObject();
    }
  }

  private static void writeFuses(JsonGenerator out, Amplifier amplifier) throws IOException {
    if (!amplifier.fuses().isEmpty()) {
      out.writeArrayFieldStart("fuses");
      for (double amps : amplifier.fuses()) {
        number(out, amps);
      }
      out.writeEndArray();
    }
  }

  static void writeOptional(JsonGenerator out, String key, OptionalDouble value)
      throws IOException {
    if (value.isPresent()) {
      number(out, key, value.getAsDouble());
    }
  }
}
