package loadwalk.walk;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.util.List;
import loadwalk.json.JsonOut;

/** The form of a captured wave in a journal record. */
final class CaptureForm {
  private CaptureForm() {}

  static void write(JsonGenerator out, Capture c) throws IOException {
    out.writeStringField("file", c.file());
    out.writeStringField("sha256", c.sha256());
    out.writeNumberField("channel", c.channel());
    JsonOut.number(out, "frequencyHertz", c.hertz());
    JsonOut.number(out, "outputVolts", c.volts());
    JsonOut.number(out, "scatterVolts", c.scatterVolts());
    JsonOut.number(out, "voltsPerUnit", c.voltsPerUnit());
    if (c.calibrationU().isPresent()) {
      JsonOut.number(out, "calibrationU", c.calibrationU().getAsDouble());
    }
    out.writeStringField("calibration", c.calibration());
    if (c.thdPercent().isPresent()) {
      JsonOut.number(out, "thdPercent", c.thdPercent().getAsDouble());
    }
    out.writeBooleanField("atLimit", c.atLimit());
    out.writeStringField("method", c.method());
    out.writeStringField("shape", c.shape());
    out.writeStringField("overdriven", c.overdriven());
    JsonOut.numbers(out, "cycleVolts", c.cycle());
    JsonOut.numbers(out, "harmonicPercents", c.harmonics());
  }

  static Capture read(Members m) {
    return new Capture(
        m.text("file"),
        m.text("sha256"),
        (int) m.number("channel"),
        m.number("frequencyHertz"),
        m.number("outputVolts"),
        m.number("scatterVolts"),
        m.number("voltsPerUnit"),
        m.optionalNumber("calibrationU"),
        m.text("calibration"),
        m.optionalNumber("thdPercent"),
        m.truth("atLimit"),
        m.text("method"),
        m.text("shape"),
        m.text("overdriven"),
        numbers(m, "cycleVolts"),
        numbers(m, "harmonicPercents"));
  }

  private static List<Double> numbers(Members m, String key) {
    return m.items(key).stream().map(node -> Members.number(node, key)).toList();
  }
}
