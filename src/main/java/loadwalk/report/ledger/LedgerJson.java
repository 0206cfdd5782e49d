package loadwalk.report.ledger;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.time.Instant;
import java.util.OptionalDouble;
import loadwalk.json.JsonOut;
import loadwalk.report.page.JsonParts;

/** Writes a ledger as JSON. */
public final class LedgerJson {
  /** The format named in the output. */
  public static final String FORMAT = "loadwalk-ledger/1";

  private LedgerJson() {}

  /** Returns the whole text, indented, ending with a line break. */
  public static String text(Ledger ledger) {
    return JsonParts.harmless(
        JsonOut.pretty(
            out -> {
              out.writeStartObject();
              out.writeStringField("format", FORMAT);
              JsonOut.objects(
                  out,
                  "ways",
                  ledger.ways().entrySet(),
                  way -> way(out, way.getValue(), way.getKey()));
              JsonOut.objects(
                  out, "walks", ledger.entries(), entry -> entry(out, ledger.way(entry), entry));
              out.writeArrayFieldStart("notes");
              for (String note : ledger.notes()) {
                out.writeString(note);
              }
              out.writeEndArray();
              out.writeEndObject();
            }));
  }

  private static void way(JsonGenerator out, String letter, LedgerEntry.Done done)
      throws IOException {
    out.writeStringField("way", letter);
    out.writeStringField("sequence", done.sequence());
    out.writeStringField("sha256", done.contentHash());
    JsonOut.number(out, "toneHertz", done.toneHertz());
    JsonOut.number(out, "limitThdPercent", done.limitThdPercent());
    JsonOut.number(out, "supplyVolts", done.supplyVolts());
  }

  private static void entry(JsonGenerator out, String way, LedgerEntry e) throws IOException {
    out.writeStringField("walk", e.walk());
    out.writeStringField("amplifier", e.amplifier());
    out.writeStringField("at", Instant.ofEpochMilli(e.wallMillis()).toString());
    out.writeBooleanField("practice", e.practice());
    out.writeBooleanField("finished", e.finished());
    out.writeStringField("journal", e.soundness().standing().word());
    if (!e.soundness().told().isEmpty()) {
      out.writeStringField("told", e.soundness().told());
    }
    out.writeNumberField("openDoubts", e.openDoubts());
    out.writeStringField("way", way);
    optional(out, "fuseAmps", e.fuseAmps());
    if (e.regulated().isPresent()) {
      out.writeBooleanField("regulated", e.regulated().get());
    }
    optional(out, "wattsPerFuseAmp", e.wattsPerFuseAmp());
    optional(out, "bestEfficiency", e.bestEfficiency());
    if (e.worstOfRated().isPresent()) {
      optional(out, "lowestRatio", e.worstOfRated().get().ratio());
    }
    JsonOut.objects(out, "loads", e.loads(), load -> load(out, load));
  }

  private static void load(JsonGenerator out, LedgerEntry.Load load) throws IOException {
    out.writeStringField("mode", load.mode().word());
    JsonOut.number(out, "ohms", load.ohms());
    out.writeStringField("criterion", load.criterion().word());
    pair(out, "watts", load.watts(), load.wattsU());
    pair(out, "totalWatts", load.totalWatts(), load.totalU());
    optional(out, "ratio", load.ratio());
    if (load.verdict().isPresent()) {
      out.writeStringField("verdict", load.verdict().get().word());
    }
    optional(out, "efficiency", load.efficiency());
    optional(out, "supplyVolts", load.supplyVolts());
  }

  private static void pair(JsonGenerator out, String key, double value, double u)
      throws IOException {
    out.writeObjectFieldStart(key);
    JsonOut.number(out, "value", value);
    JsonOut.number(out, "u", u);
    out.writeEndObject();
  }

  private static void optional(JsonGenerator out, String key, OptionalDouble value)
      throws IOException {
    if (value.isPresent()) {
      JsonOut.number(out, key, value.getAsDouble());
    }
  }
}
