package loadwalk.result;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** The words that journals and JSON hold and the phrases that sheets show: files must stay read. */
class ResultWordsTest {
  @Test
  void criteria_keepTheirWordsAndPhrases() {
    assertEquals(
        List.of("thd-limit", "clipping-onset", "not-known", "below-limit", "above-limit"),
        Arrays.stream(Criterion.values()).map(Criterion::word).toList());
    assertEquals(
        List.of(
            "at the THD limit",
            "at the onset of clipping",
            "at an unknown distortion",
            "below the limit",
            "above the limit"),
        Arrays.stream(Criterion.values()).map(Criterion::text).toList());
  }

  @Test
  void criterion_isFoundByItsWordAlone() {
    for (Criterion criterion : Criterion.values()) {
      assertEquals(Optional.of(criterion), Criterion.ofWord(criterion.word()));
    }
    assertEquals(Optional.empty(), Criterion.ofWord("at the THD limit"));
    assertEquals(Optional.empty(), Criterion.ofWord(""));
  }

  @Test
  void verdicts_keepTheirWordsAndPhrases() {
    assertEquals(
        List.of("meets", "misses", "too-close", "other-conditions"),
        Arrays.stream(RatingComparison.Verdict.values())
            .map(RatingComparison.Verdict::word)
            .toList());
    assertEquals(
        List.of("met", "missed", "too close to call", "other conditions"),
        Arrays.stream(RatingComparison.Verdict.values())
            .map(RatingComparison.Verdict::text)
            .toList());
  }

  @Test
  void outcomesOfARecheck_keepTheirWords() {
    assertEquals(
        List.of("agrees", "disagrees", "not-comparable"),
        Arrays.stream(RecheckAgreement.Outcome.values())
            .map(RecheckAgreement.Outcome::word)
            .toList());
  }

  @Test
  void remarks_areTheSameByCodeAndText() {
    Remark remark = new Remark("one-channel", "text");
    assertEquals(new Remark("one-channel", "text"), remark);
    assertEquals(new Remark("one-channel", "text").hashCode(), remark.hashCode());
    assertNotEquals(new Remark("one-channel", "other text"), remark);
    assertNotEquals(new Remark("load-assumed", "text"), remark);
    assertNotEquals(remark.hashCode(), new Remark("one-channel", "other text").hashCode());
    assertNotEquals(remark.hashCode(), new Remark("text", "one-channel").hashCode());
  }
}
