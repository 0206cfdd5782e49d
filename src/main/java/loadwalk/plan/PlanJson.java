package loadwalk.plan;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.util.Map;
import java.util.Optional;
import loadwalk.bench.FuseCurve;
import loadwalk.bench.LoadResistor;
import loadwalk.bench.ReadingId;
import loadwalk.bench.Tables;
import loadwalk.forecast.Band;
import loadwalk.forecast.Caution;
import loadwalk.forecast.Evidence;
import loadwalk.forecast.caution.Stress;
import loadwalk.json.JsonOut;
import loadwalk.plan.wiring.Network;
import loadwalk.plan.wiring.WiringAnswer;
import loadwalk.plan.wiring.WiringPicture;
import loadwalk.plan.wiring.WiringSummary;

/** Writes a plan as JSON; a band is [low, expected, high], what is not known is left out. */
public final class PlanJson {
  private final Tables tables;
  private final JsonGenerator out;

  private PlanJson(Tables tables, JsonGenerator out) {
    this.tables = tables;
    this.out = out;
  }

  /** Returns the plan as indented JSON text. */
  public static String text(BenchPlan plan, Tables tables) {
    return JsonOut.pretty(out -> new PlanJson(tables, out).plan(plan));
  }

  private void plan(BenchPlan plan) throws IOException {
    Evidence evidence = plan.evidence();
    out.writeStartObject();
    out.writeStringField("format", BenchPlan.FORMAT);
    out.writeStringField("sequence", plan.sequence());
    out.writeStringField("amplifier", evidence.amplifier().name());
    out.writeStringField("bench", evidence.bench().name());
    JsonOut.number(out, "supplyVolts", evidence.conditions().supplyVolts());
    JsonOut.number(out, "measuredSteps", evidence.observations().size());
    out.writeStringField("verdict", plan.verdict().word());
    out.writeArrayFieldStart("steps");
    for (StepPlan step : plan.steps()) {
      step(step, plan.instruction(step));
    }
    out.writeEndArray();
    out.writeArrayFieldStart("needs");
    for (String need : plan.needs()) {
      out.writeString(need);
    }
    out.writeEndArray();
    out.writeEndObject();
  }

  private void step(StepPlan step, String instruction) throws IOException {
    out.writeStartObject();
    out.writeStringField("step", step.target().stepId());
    out.writeStringField("instruction", instruction);
    out.writeStringField("verdict", step.forecast().verdict().word());
    out.writeArrayFieldStart("cautions");
    for (Caution caution : step.forecast().cautions()) {
      out.writeStartObject();
      out.writeStringField("code", caution.code());
      out.writeStringField("gravity", caution.gravity().word());
      out.writeStringField("text", caution.text());
      out.writeEndObject();
    }
    out.writeEndArray();
    out.writeObjectFieldStart("forecast");
    for (Map.Entry<ReadingId, Band> reading : step.forecast().readings().entrySet()) {
      band(reading.getKey().key(), Optional.of(reading.getValue()));
    }
    out.writeEndObject();
    band("loadWatts", step.forecast().demand().loadWatts());
    band("totalWatts", step.forecast().demand().totalWatts());
    band("heatWatts", step.forecast().demand().heatWatts());
    band("terminalVolts", step.terminalVolts());
    supplies(step);
    leads(step);
    fuses(step);
    if (step.givesFirst().isPresent()) {
      first(step.givesFirst().get());
    }
    if (step.wiring().isPresent()) {
      wiring(step, step.wiring().get());
    }
    out.writeEndObject();
  }

  private void band(String key, Optional<Band> band) throws IOException {
    if (band.isEmpty()) {
      return;
    }
    out.writeArrayFieldStart(key);
    JsonOut.number(out, band.get().low());
    JsonOut.number(out, band.get().middle());
    JsonOut.number(out, band.get().high());
    out.writeEndArray();
  }

  private void supplies(StepPlan step) throws IOException {
    out.writeArrayFieldStart("supplies");
    for (StepPlan.SupplyShare share : step.shares()) {
      out.writeStartObject();
      JsonOut.number(out, "ratedAmps", share.ratedAmps());
      JsonOut.number(out, "amps", share.amps());
      JsonOut.number(out, "worstAmps", share.worstAmps());
      out.writeEndObject();
    }
    out.writeEndArray();
  }

  private void leads(StepPlan step) throws IOException {
    out.writeArrayFieldStart("leads");
    for (StepPlan.LeadLoss lead : step.leads()) {
      out.writeStartObject();
      out.writeStringField("label", lead.label());
      band("volts", Optional.of(lead.volts()));
      band("watts", Optional.of(lead.watts()));
      out.writeEndObject();
    }
    out.writeEndArray();
  }

  private void fuses(StepPlan step) throws IOException {
    out.writeArrayFieldStart("fuses");
    for (StepPlan.FuseTime fuse : step.fuses()) {
      out.writeStartObject();
      out.writeStringField("label", fuse.label());
      out.writeStringField("type", fuse.type());
      opening("expected", fuse.expected());
      opening("worst", fuse.worst());
      out.writeEndObject();
    }
    out.writeEndArray();
  }

  private void opening(String key, FuseCurve.Opening opening) throws IOException {
    out.writeObjectFieldStart(key);
    if (Double.isFinite(opening.minSeconds())) {
      JsonOut.number(out, "minSeconds", opening.minSeconds());
    }
    if (opening.maxSeconds().isPresent()) {
      JsonOut.number(out, "maxSeconds", opening.maxSeconds().getAsDouble());
    }
    out.writeStringField("text", opening.text());
    out.writeEndObject();
  }

  private void first(Stress stress) throws IOException {
    out.writeObjectFieldStart("givesFirst");
    out.writeStringField("code", stress.code());
    out.writeStringField("what", stress.what());
    JsonOut.number(out, "atWorst", stress.demand().high());
    JsonOut.number(out, "bears", stress.limit());
    JsonOut.number(out, "marginPercent", stress.marginPercent());
    out.writeEndObject();
  }

  private void wiring(StepPlan step, WiringAnswer answer) throws IOException {
    out.writeObjectFieldStart("wiring");
    Optional<WiringSummary> wired = step.wired(tables);
    if (wired.isPresent()) {
      found(wired.get());
    }
    Optional<WiringAnswer.None> lacking = answer.lacking();
    if (lacking.isPresent()) {
      out.writeStringField("none", lacking.get().sentence());
      if (lacking.get().purchase().isPresent()) {
        buy(lacking.get().purchase().get());
      }
    }
    out.writeEndObject();
  }

  private void found(WiringSummary wiring) throws IOException {
    out.writeBooleanField("fewestProved", wiring.fewest());
    JsonOut.number(out, "wattsEachAtWorst", wiring.watts());
    if (Double.isFinite(wiring.burstSeconds())) {
      JsonOut.number(out, "burstSeconds", wiring.burstSeconds());
    }
    out.writeArrayFieldStart("loads");
    for (WiringSummary.Load load : wiring.loads()) {
      Network network = load.network();
      out.writeStartObject();
      out.writeStringField("plus", load.plus());
      out.writeStringField("minus", load.minus());
      out.writeStringField("formula", network.formula());
      JsonOut.number(out, "ohms", network.ohms());
      JsonOut.number(out, "u", network.value().u());
      out.writeArrayFieldStart("parts");
      for (Network.Heat heat : network.heats(wiring.watts())) {
        out.writeStartObject();
        out.writeStringField("name", heat.part().name());
        JsonOut.number(out, "watts", heat.watts());
        JsonOut.number(out, "ratedWatts", heat.part().ratedWatts());
        out.writeEndObject();
      }
      out.writeEndArray();
      texts("picture", WiringPicture.lines(network, load.plus(), load.minus()));
      texts("joints", WiringPicture.joints(network, load.plus(), load.minus()));
      out.writeEndObject();
    }
    out.writeEndArray();
  }

  private void texts(String key, Iterable<String> texts) throws IOException {
    out.writeArrayFieldStart(key);
    for (String text : texts) {
      out.writeString(text);
    }
    out.writeEndArray();
  }

  private void buy(LoadResistor kind) throws IOException {
    out.writeObjectFieldStart("buy");
    out.writeStringField("label", kind.label());
    JsonOut.number(out, "ohms", kind.ohms());
    JsonOut.number(out, "watts", kind.watts());
    JsonOut.number(out, "count", kind.count());
    out.writeEndObject();
  }
}
