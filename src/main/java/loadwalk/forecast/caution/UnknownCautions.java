package loadwalk.forecast.caution;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import loadwalk.bench.Bench;
import loadwalk.forecast.Band;
import loadwalk.forecast.Caution;
import loadwalk.forecast.Verdict;
import loadwalk.text.Sentence;

/** Says what nobody entered or nothing can forecast; each once, the plan says what is presumed. */
final class UnknownCautions {
  private UnknownCautions() {}

  static List<Caution> of(StepQuestion step) {
    List<Caution> found = new ArrayList<>();
    if (!step.driven()) {
      return found;
    }
    if (step.amps().isEmpty()) {
      found.add(
          new Caution(
              "unknown-forecast",
              Verdict.HEED,
              "The current of this step cannot be forecast. Raise the output slowly and watch the"
                  + " supply.",
              Double.POSITIVE_INFINITY));
    }
    if (step.bench().usableAmps().isEmpty()) {
      found.add(withoutSupply(step.amps()));
    }
    if (step.amplifier().fuseAmps().isEmpty() && step.bench().fuseAmps().isEmpty()) {
      found.add(
          Caution.once(
              "bench-fuse",
              "not entered",
              Verdict.HEED,
              "No fuse is entered, neither the amplifier's nor one at the source. Nothing known"
                  + " stops a short: fit a fuse at the source.",
              1));
    }
    notEntered(step).ifPresent(found::add);
    return found;
  }

  private static Caution withoutSupply(Optional<Band> amps) {
    String text =
        amps.map(
                a ->
                    Sentence.of(
                        "The step draws {}. No supply is entered: check its rating yourself.",
                        StepQuestion.words(a, "A")))
            .orElse("No supply is entered: check its rating yourself.");
    double number = amps.map(Band::middle).orElse(1.0);
    return Caution.once("supply-amps", "not entered", Verdict.HEED, text, number);
  }

  private static Optional<Caution> notEntered(StepQuestion step) {
    Bench bench = step.bench();
    boolean anyFuse = step.amplifier().fuseAmps().isPresent() || bench.fuseAmps().isPresent();
    List<String> missing = new ArrayList<>();
    if (bench.leads().isEmpty()) {
      missing.add("supply leads");
    }
    if (bench.loads().isEmpty()) {
      missing.add("load resistors");
    }
    if (anyFuse && step.amplifier().fuseAmps().isEmpty()) {
      missing.add("the amplifier's own fuses");
    }
    if (anyFuse && bench.fuseAmps().isEmpty()) {
      missing.add("a fuse at the source");
    }
    String text = Sentence.of("Not entered, so not checked: {}.", String.join(", ", missing));
    return missing.isEmpty()
        ? Optional.empty()
        : Optional.of(Caution.once("not-entered", "", Verdict.CLEAR, text, missing.size()));
  }
}
