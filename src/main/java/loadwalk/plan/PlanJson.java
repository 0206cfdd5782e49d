package loadwalk.plan;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.util.Optional;
import java.util.OptionalDouble;
import loadwalk.bench.Bench;
import loadwalk.bench.FuseCurve;
import loadwalk.bench.LoadResistor;
import loadwalk.bench.Tables;
import loadwalk.bench.Wire;
import loadwalk.forecast.Band;
import loadwalk.forecast.Evidence;
import loadwalk.forecast.ForecastJson;
import loadwalk.forecast.caution.Stress;
import loadwalk.json.JsonOut;
import loadwalk.plan.wiring.Network;
import loadwalk.plan.wiring.WiringAnswer;
import loadwalk.plan.wiring.WiringPicture;
import loadwalk.plan.wiring.WiringSummary;

/** Writes a plan as JSON; a band is [low, expected, high], and unknown values are left out. */
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
    JsonOut.objects(out, "steps", plan.steps(), step -> step(plan, step));
    JsonOut.texts(out, "needs", plan.needs());
    JsonOut.texts(
        out,
        "notSaid",
        NotSaid.sentences(evidence.amplifier(), evidence.bench(), new Wire(tables)));
    out.writeEndObject();
  }

  private void step(BenchPlan plan, StepPlan step) throws IOException {
    out.writeStringField("step", step.target().stepId());
    out.writeStringField("instruction", plan.instruction(step));
    out.writeStringField("verdict", step.forecast().verdict().word());
    ForecastJson.opening(out, step.forecast());
    ForecastJson.cautions(out, step.forecast(), true);
    out.writeObjectFieldStart("forecast");
    ForecastJson.EXPECTED.readings(out, step.forecast());
    out.writeEndObject();
    ForecastJson.EXPECTED.watts(out, step.forecast());
    band("terminalVolts", step.terminalVolts());
    batterySeconds(plan.evidence().bench(), step.amps());
    supplies(step);
    leads(step);
    fuses(step);
    if (step.givesFirst().isPresent()) {
      first(step.givesFirst().get());
    }
    if (step.wiring().isPresent()) {
      wiring(step, step.wiring().get());
    }
  }

  private void band(String key, Optional<Band> band) throws IOException {
    ForecastJson.EXPECTED.band(out, key, band);
  }

  private void supplies(StepPlan step) throws IOException {
    JsonOut.objects(
        out,
        "supplies",
        step.shares(),
        share -> {
          JsonOut.number(out, "ratedAmps", share.ratedAmps());
          JsonOut.number(out, "amps", share.amps());
          JsonOut.number(out, "worstAmps", share.worstAmps());
        });
  }

  private void batterySeconds(Bench bench, Optional<Band> amps) throws IOException {
    OptionalDouble expected = bench.batterySeconds(amps.map(Band::middle).orElse(Double.NaN));
    OptionalDouble worst = bench.batterySeconds(amps.map(Band::high).orElse(Double.NaN));
    if (expected.isPresent() && worst.isPresent()) {
      JsonOut.number(out, "batterySeconds", expected.getAsDouble());
      JsonOut.number(out, "batterySecondsAtWorst", worst.getAsDouble());
    }
  }

  private void leads(StepPlan step) throws IOException {
    JsonOut.objects(
        out,
        "leads",
        step.leads(),
        lead -> {
          out.writeStringField("label", lead.label());
          band("volts", Optional.of(lead.volts()));
          band("watts", Optional.of(lead.watts()));
        });
  }

  private void fuses(StepPlan step) throws IOException {
    JsonOut.objects(
        out,
        "fuses",
        step.fuses(),
        fuse -> {
          out.writeStringField("label", fuse.label());
          out.writeStringField("type", fuse.type());
          opening("expected", fuse.expected());
          opening("worst", fuse.worst());
        });
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
    JsonOut.number(out, "bears", stress.bears().counted());
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
    JsonOut.objects(
        out,
        "loads",
        wiring.loads(),
        load -> {
          Network network = load.network();
          out.writeStringField("plus", load.plus());
          out.writeStringField("minus", load.minus());
          out.writeStringField("formula", network.formula());
          JsonOut.number(out, "ohms", network.ohms());
          JsonOut.number(out, "u", network.value().u());
          JsonOut.objects(
              out,
              "parts",
              network.heats(wiring.watts()),
              heat -> {
                out.writeStringField("name", heat.part().name());
                JsonOut.number(out, "ohms", heat.part().ohms());
                JsonOut.number(out, "watts", heat.watts());
                JsonOut.number(out, "ratedWatts", heat.part().kind().watts());
              });
          JsonOut.texts(out, "picture", WiringPicture.lines(network, load.plus(), load.minus()));
          JsonOut.texts(out, "joints", WiringPicture.joints(network, load.plus(), load.minus()));
        });
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
