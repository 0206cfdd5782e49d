package loadwalk.cautions;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import loadwalk.bench.Amplifier;
import loadwalk.bench.Bench;
import loadwalk.bench.Outcome;
import loadwalk.bench.ReadingId;
import loadwalk.forecast.Forecast;
import loadwalk.forecast.Forecaster;
import loadwalk.forecast.Verdict;
import loadwalk.quantity.Printer;
import loadwalk.quantity.Unit;
import loadwalk.result.Criterion;
import loadwalk.sequence.PlannedStep;
import loadwalk.walk.Effect;
import loadwalk.walk.Event;
import loadwalk.walk.Gate;
import loadwalk.walk.Intent;
import loadwalk.walk.Model;
import loadwalk.walk.Next;
import loadwalk.walk.Targets;
import loadwalk.walk.Walker;
import loadwalk.walk.fact.Fact;
import loadwalk.walk.fact.StepState;
import loadwalk.walk.fact.WalkState;

/**
 * Walks to the brief of a step as an operator would: measures what the situation names, skips the
 * rest. Every fact is kept at once.
 */
final class WalkToBrief {
  private static final long WALL = 1_770_000_000_000L;
  private static final double TICK_SECONDS = 300;
  private static final String HERE = "here";
  private static final String REASON = "as the situation says";

  private static final Pattern REST = Pattern.compile("rest (?<minutes>[\\d.]+) min");
  private static final Pattern DONE = Pattern.compile("(?<step>[a-z0-9.#-]+): (?<values>.+)");
  private static final Pattern VALUE =
      Pattern.compile(
          "(?<other>other )?(?<open>open )?(?<value>[\\d.]+ (?<unit>V|A|W|Ω|°C|min))"
              + "(?<supply> supply)?");

  private final Walker walker;
  private final String step;
  private Model model;

  WalkToBrief(Forecaster forecaster, StepCell step, Amplifier amplifier, Bench bench) {
    walker = new Walker(forecaster);
    this.step = step.id();
    Fact.Opened opened =
        new Fact.Opened(
            "situation",
            "test",
            step.sequence(),
            step.text(),
            amplifier,
            bench,
            OptionalLong.empty());
    model = Model.of(WalkState.begin(opened, WALL), 1);
    hear(new Event.Reopened(0, WALL));
  }

  /** Does what the situation says was done so far and returns the brief of its step. */
  Forecast brief(String soFar) {
    Words.list(soFar, ";", part -> part).forEach(this::happens);
    skipTo(step);
    StepState state = model.state().step(step);
    if (!model.state().currentId().equals(step)) {
      throw new IllegalArgumentException("the walk is at " + model.state().currentId());
    }
    return state.brief().orElseThrow();
  }

  private void happens(String part) {
    Matcher rest = REST.matcher(part);
    if (rest.matches()) {
      pass(60 * Words.number(rest, "minutes", 0));
      return;
    }
    Matcher done =
        Words.match(DONE, part, "what was done, such as stereo-4: 13.4 V, 16 A or rest 20 min");
    boolean here = done.group("step").equals(HERE);
    String id = here ? step : done.group("step");
    if (model.state().planned(id).isEmpty()) {
      throw new IllegalArgumentException("the sequence has no step «" + id + "»");
    }
    skipTo(id);
    if (!here) {
      start(id);
    }
    Words.list(done.group("values"), ",", value -> value).forEach(value -> enter(id, value));
    if (!here && model.state().step(id).outcome().isEmpty()) {
      hear(new Intent.Finish());
      require(model.state().step(id).status() == StepState.Status.DONE, id + " does not end");
    }
  }

  private void skipTo(String id) {
    while (!model.state().currentId().equals(id) && !model.state().isFinished()) {
      hear(new Intent.Skip("not in this situation"));
    }
  }

  private void start(String id) {
    PlannedStep planned = model.state().planned(id).orElseThrow();
    Verdict verdict = model.state().step(id).brief().orElseThrow().verdict();
    if (verdict == Verdict.HALT) {
      hear(new Intent.LiftHalt(REASON));
    }
    if (Gate.needsArming(model.state(), planned)) {
      double ohms = Targets.of(model.state(), planned).orElseThrow().ohms();
      hear(new Intent.Arm(Printer.UTF8.exact(ohms, Unit.OHM)));
    } else {
      hear(new Intent.Begin());
    }
    require(model.state().step(id).status() == StepState.Status.RUNNING, id + " does not start");
  }

  private void enter(String id, String text) {
    if (text.equals("stood by")) {
      List<ReadingId> open = model.state().step(id).openDoubts();
      require(!open.isEmpty(), "nothing is doubted in " + id);
      open.forEach(reading -> hear(new Intent.StandBy(id, reading, "read twice")));
      return;
    }
    if (text.equals("below the limit")) {
      hear(new Intent.SetCriterion(id, Criterion.BELOW_LIMIT));
      return;
    }
    Optional<Outcome> outcome = Outcome.said(text);
    if (outcome.isPresent()) {
      hear(new Intent.EndAs(outcome.get(), ""));
      require(model.state().step(id).outcome().equals(outcome), id + " does not end " + text);
      return;
    }
    Matcher found = Words.match(VALUE, text, "a reading such as 13.4 V, 16 A or 13.7 V supply");
    if (found.group("unit").equals("min")) {
      double minutes = Double.parseDouble(found.group("value").split(" ")[0]);
      for (double left = 60 * minutes; left > 0; left -= TICK_SECONDS) {
        pass(Math.min(left, TICK_SECONDS));
      }
      return;
    }
    int before = model.state().step(id).entryCount();
    hear(new Intent.EnterAll(id, Map.of(reading(found), found.group("value"))));
    require(model.state().step(id).entryCount() > before, text + " is not taken");
  }

  private static ReadingId reading(Matcher found) {
    return switch (found.group("unit")) {
      case "A" -> ReadingId.SUPPLY_AMPS;
      case "W" -> ReadingId.OUTPUT_WATTS;
      case "Ω" -> ReadingId.LOAD_OHMS;
      case "°C" -> ReadingId.SINK_CELSIUS;
      default ->
          found.group("supply") != null
              ? ReadingId.SUPPLY_VOLTS
              : found.group("open") != null
                  ? ReadingId.OPEN_VOLTS
                  : found.group("other") != null
                      ? ReadingId.OTHER_OUTPUT_VOLTS
                      : ReadingId.OUTPUT_VOLTS;
    };
  }

  private void require(boolean held, String otherwise) {
    if (!held) {
      throw new IllegalArgumentException(otherwise + ": " + model.message().orElse(""));
    }
  }

  private void pass(double seconds) {
    Model.Clock clock = model.clock();
    long nanos = clock.monoNanos().orElse(0) + Math.round(seconds * 1e9);
    hear(new Event.Tick(nanos, clock.wallMillis() + Math.round(seconds * 1000)));
  }

  private void hear(Event event) {
    Next next = walker.update(model, event);
    model = next.model();
    for (Effect effect : next.effects()) {
      if (effect instanceof Effect.AppendJournal append) {
        hear(new Event.Kept(append.facts()));
      }
    }
  }
}
