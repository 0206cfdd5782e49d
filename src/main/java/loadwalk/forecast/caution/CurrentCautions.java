package loadwalk.forecast.caution;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import loadwalk.bench.Figures;
import loadwalk.bench.FuseCurve;
import loadwalk.bench.Tables;
import loadwalk.forecast.Caution;
import loadwalk.forecast.Verdict;
import loadwalk.text.Sentence;

/** Words what the supply current of a step may make give: supplies, fuses and leads. */
final class CurrentCautions {
  private final Tables tables;
  private final CurrentStresses stresses;

  CurrentCautions(Tables tables, CurrentStresses stresses) {
    this.tables = tables;
    this.stresses = stresses;
  }

  List<Caution> of(StepQuestion step) {
    List<Caution> found = new ArrayList<>();
    for (Stress stress : stresses.of(step)) {
      caution(step, stress).ifPresent(found::add);
    }
    return found;
  }

  private Optional<Caution> caution(StepQuestion step, Stress stress) {
    Verdict verdict = stress.verdict(step.watchesAmps());
    if (verdict == Verdict.CLEAR) {
      return Optional.empty();
    }
    String text =
        verdict == Verdict.HEED
            ? heed(step, stress)
            : Sentence.of(
                "{} {}",
                draws(stress),
                stress.isLikely() || step.watchesAmps() ? halt(step, stress) : unseen(stress));
    return Optional.of(
        Caution.giving(
            stress.code(), stress.what(), verdict, text, stress.demand().middle(), stress.share()));
  }

  private static String draws(Stress stress) {
    return Sentence.of(
        "The step draws {}; {} {} A.",
        StepQuestion.words(stress.demand(), "A"),
        stress.part(),
        Figures.three(stress.bears().counted()));
  }

  private static String heed(StepQuestion step, Stress stress) {
    String stop = Figures.three(Figures.down(stress.bears().stop()));
    return step.watchesAmps()
        ? Sentence.of("{} Raise the output slowly and stop at {} A.", draws(stress), stop)
        : Sentence.of(
            "{} Read the supply current while you raise the output and stop at {} A.",
            draws(stress),
            stop);
  }

  private String halt(StepQuestion step, Stress stress) {
    switch (stress.code()) {
      case CurrentStresses.SUPPLY:
        return "Use a bigger supply or a lighter load.";
      case CurrentStresses.LEAD:
        return "Use a heavier lead or a lighter load.";
      default:
        return Sentence.of(
            "Time to blow at worst: {}. Use a lighter load or less output.",
            opening(step, stress).text());
    }
  }

  private static String unseen(Stress stress) {
    return Sentence.of(
        "No ammeter is entered that shows it in time. Enter one, or use a lighter load{}.",
        stress.code().equals(CurrentStresses.SUPPLY) ? " or a bigger supply" : "");
  }

  private FuseCurve.Opening opening(StepQuestion step, Stress stress) {
    boolean own = stress.code().equals(CurrentStresses.AMPLIFIER_FUSE);
    double rating =
        own ? step.amplifier().fuseAmps().orElseThrow() : step.bench().fuseAmps().orElseThrow();
    double single = own ? step.amplifier().fuses().get(0) : rating;
    return tables.fuseFor(single).opening(Math.max(0, stress.demand().high() / rating));
  }
}
