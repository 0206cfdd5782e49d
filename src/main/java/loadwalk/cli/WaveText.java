package loadwalk.cli;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import loadwalk.json.Format;
import loadwalk.json.JsonOut;
import loadwalk.json.Shown;
import loadwalk.quantity.Printer;
import loadwalk.quantity.Quantity;
import loadwalk.quantity.Unit;
import loadwalk.wave.Clipping;
import loadwalk.wave.Harmonic;
import loadwalk.wave.LimitFinding;
import loadwalk.wave.WaveReading;

/** Prints what a captured wave shows, as lines or as JSON. */
final class WaveText {
  private static final Format FORMAT = new Format("wave", 1);
  private static final Printer PRINTER = Printer.UTF8;

  private WaveText() {}

  static List<String> lines(WaveCommand.Findings f) {
    WaveReading r = f.reading();
    List<String> lines = new ArrayList<>();
    lines.add(row("capture", Shown.text(f.name(), 200) + ", channel " + f.channel()));
    lines.add(row("sha-256", f.sha256()));
    lines.add(row("frequency", quantity(r.frequency())));
    lines.add(row("output", quantity(r.output()) + " rms, without DC"));
    lines.add(row("peak", PRINTER.value(r.peakVolts(), Unit.VOLT, 4)));
    lines.add(row("crest factor", number(r.crestFactor())));
    lines.add(
        row(
            "THD",
            r.thd().map(WaveText::quantity).orElse("no harmonic below half the sample rate")));
    for (Harmonic h : r.harmonics()) {
      lines.add(row("  harmonic " + h.number(), number(h.percent()) + " %"));
    }
    lines.add(row("THD+N", quantity(r.thdNoise()) + " of the fundamental"));
    lines.add(row("noise", PRINTER.value(r.noiseVolts(), Unit.VOLT, 3)));
    lines.add(row("DC", quantity(r.dc())));
    lines.add(row("clipping", clipping(r.clipping())));
    lines.add(row("overdriven", "the capture itself: " + r.clipping().capture().words()));
    lines.add(row("looks like", r.shape().words()));
    lines.add(row("method", r.method()));
    lines.add(row("calibration", r.calibration().how()));
    f.limit().ifPresent(limit -> lines.addAll(limitLines(limit)));
    f.notes().forEach(note -> lines.add(row("note", note)));
    return lines;
  }

  private static List<String> limitLines(LimitFinding limit) {
    if (limit instanceof LimitFinding.Found found) {
      String what = "at " + number(found.limitPercent()) + " % THD";
      return List.of(
          row(what, quantity(found.output()) + " rms"),
          row("", String.format(Locale.ROOT, "passed after %.2f s", found.seconds())),
          row("", found.method()));
    }
    return List.of(row("limit", ((LimitFinding.NotFound) limit).sentence()));
  }

  private static String clipping(Clipping c) {
    return "top "
        + side(c.top(), c.topFraction())
        + ", bottom "
        + side(c.bottom(), c.bottomFraction());
  }

  private static String side(boolean clipped, double part) {
    return clipped
        ? String.format(Locale.ROOT, "flat for %.1f %% of a period", 100 * part)
        : "none";
  }

  private static String row(String name, String value) {
    return String.format(Locale.ROOT, "%-15s%s", name, value);
  }

  /** One block shows no scatter; what is not known to many digits is not printed with them. */
  private static String quantity(Quantity quantity) {
    return quantity.u() > 0
        ? PRINTER.quantity(quantity)
        : PRINTER.value(quantity.value(), quantity.unit(), 4) + " (uncertainty not known)";
  }

  private static String number(double value) {
    return PRINTER.value(value, Unit.ONE, 4);
  }

  static String json(WaveCommand.Findings f) {
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
          out.writeArrayFieldStart("notes");
          for (String note : f.notes()) {
            out.writeString(note);
          }
          out.writeEndArray();
          out.writeEndObject();
        });
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
    out.writeArrayFieldStart("harmonics");
    for (Harmonic h : harmonics) {
      out.writeStartObject();
      out.writeNumberField("number", h.number());
      JsonOut.number(out, "hertz", h.hertz());
      JsonOut.number(out, "percent", h.percent());
      out.writeEndObject();
    }
    out.writeEndArray();
  }

  private static void limit(JsonGenerator out, LimitFinding limit) throws IOException {
    out.writeObjectFieldStart("limit");
    if (limit instanceof LimitFinding.Found found) {
      JsonOut.number(out, "thdPercent", found.limitPercent());
      quantity(out, "outputVolts", found.output());
      JsonOut.number(out, "seconds", found.seconds());
      out.writeStringField("method", found.method());
      harmonics(out, found.harmonics());
    } else {
      out.writeStringField("notFound", ((LimitFinding.NotFound) limit).sentence());
    }
    out.writeEndObject();
  }
}
