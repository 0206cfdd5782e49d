package loadwalk.report.sheet;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import loadwalk.json.JsonOut;
import loadwalk.walk.fact.Capture;

/** Writes the captured wave of a step as JSON. */
final class CaptureJson {
  private CaptureJson() {}

  static void write(JsonGenerator out, Capture wave) throws IOException {
    out.writeStringField("file", wave.file());
    out.writeStringField("sha256", wave.sha256());
    out.writeNumberField("channel", wave.channel());
    JsonOut.number(out, "frequencyHertz", wave.hertz());
    JsonOut.number(out, "outputVolts", wave.volts());
    if (wave.thdPercent().isPresent()) {
      JsonOut.number(out, "thdPercent", wave.thdPercent().getAsDouble());
    }
    out.writeBooleanField("atLimit", wave.atLimit());
    out.writeStringField("method", wave.method());
    out.writeStringField("calibration", wave.calibration());
    out.writeStringField("looksLike", wave.shape());
    out.writeStringField("captureOverdriven", wave.overdriven());
    JsonOut.numbers(out, "cycleVolts", wave.cycle());
    JsonOut.numbers(out, "harmonicPercents", wave.harmonics());
  }
}
