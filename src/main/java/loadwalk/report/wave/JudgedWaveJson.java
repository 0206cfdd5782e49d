package loadwalk.report.wave;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.util.List;
import java.util.Optional;
import loadwalk.json.Format;
import loadwalk.json.JsonOut;
import loadwalk.quantity.Quantity;
import loadwalk.wave.Clipping;
import loadwalk.wave.Harmonic;
import loadwalk.wave.WaveReading;
import loadwalk.wave.analysis.LimitFinding;

/** Writes what a captured wave shows as JSON. */
public final class JudgedWaveJson {
  private static final Format FORMAT = new Format("wave", 1);

  private JudgedWaveJson() {}

  /** Returns a judged wave as one line of JSON. */
  public static String text(JudgedWave f) {
    return JsonOut.line(
            out -> {
              out.writeStartObject();
              out.writeStringField(Format.KEY, FORMAT.text());
              reading(out, f.reading());
              out.writeObjectFieldStart("capture");
              out.writeStringField("name", f.name());
              out.writeStringField("sha256", f.sha256());
              out.writeNumberField("channel", f.channel());
              out.writeEndObject();
              if (f.limit().isPresent()) {
                limit(out, f.limit().get());
              }
              JsonOut.texts(out, "notes", f.notes());
              out.writeEndObject();
            })
        + "\n";
  }

  private static void reading(JsonGenerator out, WaveReading r) throws IOException {
    quantity(out, "frequencyHertz", r.frequency());
    quantity(out, "outputVolts", r.output());
    JsonOut.number(out, "peakVolts", r.peakVolts());
    JsonOut.number(out, "crestFactor", r.crestFactor());
    if (r.thd().isPresent()) {
      quantity(out, "thdPercent", r.thd().get());
    } else {
      out.writeNullField("thdPercent");
    }
    quantity(out, "thdNoisePercent", r.thdNoise());
    quantity(out, "dcVolts", r.dc());
    JsonOut.number(out, "noiseVolts", r.noiseVolts());
    clipping(out, r.clipping());
    harmonics(out, r.harmonics());
    out.writeStringField("looksLike", r.shape().words());
    out.writeStringField("method", r.method());
    out.writeBooleanField("calibrated", r.calibration().known());
  }

  private static void quantity(JsonGenerator out, String key, Quantity q) throws IOException {
    JsonOut.number(out, key, q.value());
    JsonOut.number(out, key + "U", q.u());
  }

  private static void clipping(JsonGenerator out, Clipping c) throws IOException {
    out.writeObjectFieldStart("clipping");
    out.writeBooleanField("top", c.top());
    out.writeBooleanField("bottom", c.bottom());
    JsonOut.number(out, "topFraction", c.topFraction());
    JsonOut.number(out, "bottomFraction", c.bottomFraction());
    out.writeStringField("captureOverdriven", c.capture().words());
    out.writeEndObject();
  }

  private static void harmonics(JsonGenerator out, List<Harmonic> harmonics) throws IOException {
    JsonOut.objects(
        out,
        "harmonics",
        harmonics,
        h -> {
          out.writeNumberField("number", h.number());
          JsonOut.number(out, "hertz", h.hertz());
          JsonOut.number(out, "percent", h.percent());
        });
  }

  private static void limit(JsonGenerator out, LimitFinding limit) throws IOException {
    out.writeObjectFieldStart("limit");
    Optional<LimitFinding.Found> found = limit.reached();
    if (found.isPresent()) {
      JsonOut.number(out, "thdPercent", found.get().limitPercent());
      quantity(out, "outputVolts", found.get().output());
      JsonOut.number(out, "seconds", found.get().seconds());
      out.writeStringField("method", found.get().method());
      harmonics(out, found.get().harmonics());
    }
    Optional<String> missing = limit.missing();
    if (missing.isPresent()) {
      out.writeStringField("notFound", missing.get());
    }
    out.writeEndObject();
  }
}
