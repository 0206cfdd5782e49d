package loadwalk.walk.rehearse;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import loadwalk.bench.Outcome;
import loadwalk.json.Nearest;
import loadwalk.text.Sentence;

/**
 * How the answers of a step say that it ended before it was measured.
 *
 * @param outcome the outcome, where they say one that the step can have
 * @param fault why what they say cannot be used
 */
record SaidOutcome(Optional<Outcome> outcome, Optional<String> fault) {
  /** The key of the outcome, beside the readings of a step. */
  static final String KEY = "outcome";

  /**
   * Reads the answers of a step.
   *
   * @param drives whether the step drives a load
   */
  static SaidOutcome of(Map<String, String> answers, boolean drives) {
    Optional<String> text = Optional.ofNullable(answers.get(KEY));
    Optional<Outcome> said =
        text.flatMap(word -> Outcome.said(word.strip())).filter(outcome -> drives);
    return new SaidOutcome(
        said,
        text.filter(word -> said.isEmpty())
            .map(word -> drives ? strange(word) : "the step drives no load"));
  }

  private static String strange(String word) {
    List<String> words = Outcome.sayable().stream().map(Outcome::word).toList();
    return Sentence.of(
        "«{}» is not a way for a step to end; nearest: «{}»", word, Nearest.of(word, words));
  }
}
