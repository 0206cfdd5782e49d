package loadwalk.report.sheet;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import loadwalk.bench.ThdKind;
import loadwalk.json.JsonOut;
import loadwalk.result.Circumstances;
import loadwalk.result.Conditions;
import loadwalk.result.Mark;
import loadwalk.result.ReadBy;

/** Writes as JSON the conditions that a result was reached under; what nobody read is null. */
public final class ConditionsJson {
  private ConditionsJson() {}

  /** Writes the conditions and the marks of a result. */
  public static void write(JsonGenerator out, Conditions conditions, List<Mark> marks)
      throws IOException {
    Circumstances around = conditions.around();
    out.writeObjectFieldStart("conditions");
    out.writeNullField("section");
    out.writeStringField("mode", conditions.mode().word());
    number(out, "ohms", OptionalDouble.of(conditions.ohms()));
    number(out, "ohmsRead", conditions.ohmsRead());
    out.writeStringField("driven", Conditions.ALL_DRIVEN);
    out.writeNumberField("channelsRead", conditions.channelsRead());
    number(out, "hertz", conditions.hertz());
    out.writeStringField("criterion", conditions.criterion().word());
    out.writeBooleanField("criterionSaid", conditions.said());
    number(out, "thdPercent", conditions.thdPercent());
    text(out, "thdKind", around.thdKind().map(ThdKind::word));
    number(out, "thdBandwidthHertz", around.thdBandwidthHertz());
    number(out, "supplyVolts", conditions.supplyVolts());
    if (around.warm().isPresent()) {
      out.writeBooleanField("warm", around.warm().get());
    } else {
      out.writeNullField("warm");
    }
    number(out, "heldSeconds", around.heldSeconds());
    number(out, "ambientCelsius", around.ambientCelsius());
    text(out, "readBy", around.readBy().map(ReadBy::word));
    out.writeEndObject();
    JsonOut.texts(out, "marks", marks.stream().map(Mark::word).toList());
  }

  private static void number(JsonGenerator out, String key, OptionalDouble value)
      throws IOException {
    if (value.isPresent() && Double.isFinite(value.getAsDouble())) {
      JsonOut.number(out, key, value.getAsDouble());
    } else {
      out.writeNullField(key);
    }
  }

  private static void text(JsonGenerator out, String key, Optional<String> value)
      throws IOException {
    if (value.isPresent()) {
      out.writeStringField(key, value.get());
    } else {
      out.writeNullField(key);
    }
  }
}
