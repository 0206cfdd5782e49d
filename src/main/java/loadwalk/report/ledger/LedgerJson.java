package loadwalk.report.ledger;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.time.Instant;
import java.util.Map;
import java.util.OptionalDouble;
import loadwalk.json.JsonOut;
import loadwalk.report.page.JsonParts;
import loadwalk.report.sheet.ConditionsJson;

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
              out.writeStringField("order", ledger.sort().word());
              Map<String, String> places = ledger.places();
              JsonOut.objects(out, "walks", ledger.entries(), entry -> entry(out, places, entry));
              JsonOut.objects(
                  out, "best", BestAtLoad.of(ledger.entries()), best -> best(out, best));
              JsonOut.texts(out, "unranked", LoadWords.unranked(ledger.entries()));
              out.writeArrayFieldStart("notes");
              for (String note : ledger.notes()) {
                out.writeString(note);
              }
              out.writeEndArray();
              out.writeEndObject();
            }));
  }

  private static void asked(JsonGenerator out, LedgerEntry.Done done) throws IOException {
    out.writeObjectFieldStart("asked");
    out.writeStringField("sequence", done.sequence());
    out.writeStringField("sha256", done.contentHash());
    JsonOut.number(out, "toneHertz", done.toneHertz());
    JsonOut.number(out, "limitThdPercent", done.limitThdPercent());
    JsonOut.number(out, "supplyVolts", done.supplyVolts());
    out.writeEndObject();
  }

  private static void entry(JsonGenerator out, Map<String, String> places, LedgerEntry e)
      throws IOException {
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
    asked(out, e.done());
    if (places.containsKey(e.walk())) {
      out.writeStringField("rank", places.get(e.walk()));
    }
    optional(out, "fuseAmps", e.fuseAmps());
    if (e.regulated().isPresent()) {
      out.writeBooleanField("regulated", e.regulated().get());
    }
    optional(out, "wattsPerFuseAmp", e.wattsPerFuseAmp());
    optional(out, "bestEfficiency", e.bestEfficiency());
    if (e.worstOfRated().isPresent()) {
      optional(out, "lowestRatio", e.worstOfRated().get().ratio());
    }
    JsonOut.objects(out, "loads", e.loads(), load -> load(out, e, load));
    if (!e.ended().isEmpty()) {
      JsonOut.objects(out, "ended", e.ended(), ended -> ended(out, ended));
    }
  }

  private static void load(JsonGenerator out, LedgerEntry walk, LedgerEntry.Load load)
      throws IOException {
    out.writeStringField("mode", load.mode().word());
    JsonOut.number(out, "ohms", load.ohms());
    out.writeStringField("criterion", load.criterion().word());
    out.writeBooleanField("ranked", walk.ranks(load));
    ConditionsJson.write(out, load.conditions(), load.marks());
    JsonOut.objects(out, "channelWatts", load.channelWatts(), watts -> watts(out, watts));
    out.writeObjectFieldStart("totalWatts");
    watts(out, load.totalWatts());
    out.writeEndObject();
    optional(out, "ratio", load.ratio());
    if (load.verdict().isPresent()) {
      out.writeStringField("verdict", load.verdict().get().word());
    }
    optional(out, "efficiency", load.efficiency());
  }

  private static void ended(JsonGenerator out, LedgerEntry.Ended ended) throws IOException {
    out.writeStringField("mode", ended.mode().word());
    JsonOut.number(out, "ohms", ended.ohms());
    out.writeStringField("outcome", ended.outcome().word());
  }

  private static void best(JsonGenerator out, BestAtLoad best) throws IOException {
    out.writeStringField("walk", best.best().walk().walk());
    out.writeStringField("mode", best.load().mode().word());
    JsonOut.number(out, "ohms", best.load().ohms());
    out.writeStringField("conditions", LoadWords.conditions(best.compared()));
    out.writeNumberField("compared", best.compared().size());
    JsonOut.texts(out, "tooClose", best.tooClose().stream().map(LedgerEntry::walk).toList());
  }

  private static void watts(JsonGenerator out, KeptWatts watts) throws IOException {
    JsonOut.number(out, "value", watts.value());
    JsonOut.number(out, "u", watts.u());
    JsonOut.number(out, "k", watts.quantity("").coverageFactor());
  }

  private static void optional(JsonGenerator out, String key, OptionalDouble value)
      throws IOException {
    if (value.isPresent()) {
      JsonOut.number(out, key, value.getAsDouble());
    }
  }
}
