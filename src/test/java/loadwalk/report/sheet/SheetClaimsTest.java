package loadwalk.report.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import loadwalk.bench.ReadingId;
import loadwalk.journal.JournalRecord;
import loadwalk.journal.Recovery;
import loadwalk.report.page.Walks;
import loadwalk.result.Criterion;
import loadwalk.walk.Intent;
import loadwalk.walk.fact.FactText;
import loadwalk.walk.fact.WalkState;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A sheet says nothing that no reading supports. */
class SheetClaimsTest {
  private static final Map<ReadingId, String> NO_THD = Cases.but(Map.of(ReadingId.THD_PERCENT, ""));

  private static void assertTold(Sheet sheet, String words) {
    assertTrue(Cases.text(sheet).contains(words), words + " is not in\n" + Cases.text(sheet));
  }

  private static void assertUntold(Sheet sheet, String words) {
    assertFalse(Cases.text(sheet).contains(words), words + " is in\n" + Cases.text(sheet));
  }

  private static Walks saying(Criterion criterion) {
    Walks walk = Cases.warm();
    walk.begin();
    walk.hear(new Intent.SetCriterion("stereo-4", criterion));
    NO_THD.forEach((id, text) -> walk.enter("stereo-4", id, text));
    walk.standByAll("stereo-4", "read twice");
    walk.hear(new Intent.Finish());
    return walk;
  }

  @Test
  void thdRead_isNamedWithItsFigure() {
    Sheet sheet = Cases.sheet(Cases.read(Cases.warm(), Cases.FINE));
    assertTold(sheet, "At the limit of 1 % THD, by the THD read: stereo 4 Ω (0.98 %).");
  }

  @Test
  void wordAlone_isNamedAsThat() {
    Sheet sheet = Cases.sheet(saying(Criterion.THD_LIMIT));
    assertTold(
        sheet, "At the limit of 1 % THD, by the operator's word, with no THD read: stereo 4 Ω.");
    assertUntold(sheet, "by the THD read");
    assertTold(
        Cases.sheet(saying(Criterion.CLIPPING_ONSET)),
        "At the onset of clipping, by the operator's word, with no THD read: stereo 4 Ω.");
  }

  @Test
  void nothingReadAndNothingSaid_isAtNoLimit() {
    Sheet sheet = Cases.sheet(Cases.read(Cases.warm(), NO_THD));
    assertTold(sheet, "Not known at what distortion, with no THD read and nothing said: stereo 4");
    assertUntold(sheet, "At the limit of");
    assertUntold(sheet, "at the THD limit");
  }

  /** A THD read goes before what was said. */
  @Test
  void wordAgainstTheReading_theReadingStands() {
    Walks walk = saying(Criterion.THD_LIMIT);
    walk.enter("stereo-4", ReadingId.THD_PERCENT, "5.3 %");
    Sheet sheet = Cases.sheet(walk);
    assertTold(sheet, "Not read at 1 % THD but above it: stereo 4 Ω at 5.3 %.");
    assertUntold(sheet, "by the operator's word");
    assertUntold(sheet, "At the limit of");
  }

  @ParameterizedTest
  @ValueSource(strings = {"walk-v1", "walk-v2"})
  void journalOfAnEarlierVersion_claimsNoDistortion(String name) throws IOException {
    byte[] journal = Files.readAllBytes(Path.of("src/test/resources/journals", name + ".jsonl"));
    List<String> bodies =
        Recovery.read(journal).records().stream().map(JournalRecord::body).toList();
    WalkState state = FactText.walk(bodies);
    Sheet sheet = Cases.sheet(state);
    boolean read =
        sheet.steps().stream()
            .flatMap(step -> step.readings().stream())
            .anyMatch(reading -> reading.id() == ReadingId.THD_PERCENT);
    if (!read) {
      assertUntold(sheet, "by the THD read");
    }
    assertUntold(sheet, "Every load was read at");
  }

  /** The reading is at 1 % and 14.4 V, as rated: only then are ratio and decibels printed. */
  @Test
  void likeConditions_giveAVerdict_andOthersNoRatio() {
    Sheet like = Cases.sheet(Cases.read(Cases.warm(), Cases.FINE));
    assertEquals(1, like.loads().size());
    assertTold(like, "100 % -0.00");
    Sheet other =
        Cases.sheet(Cases.read(Cases.warm(), Cases.but(Map.of(ReadingId.SUPPLY_VOLTS, "13.4 V"))));
    assertTold(other, "other conditions");
    assertTold(
        other,
        "stereo 4 Ω: Other conditions than the rating's: rated at a supply of 14.4 V, read at"
            + " 13.40 V. About 57.7 ±");
    assertUntold(other, "100 %");
    assertUntold(other, "too close");
  }

  /** One channel read: the total is said to be twice it, and no mean is printed. */
  @Test
  void oneChannelRead_isChannelOne_andTheTotalTwiceIt() {
    Sheet sheet =
        Cases.sheet(Cases.read(Cases.warm(), Cases.but(Map.of(ReadingId.OTHER_OUTPUT_VOLTS, ""))));
    assertTold(sheet, "not read");
    assertTold(sheet, "One channel read, both loaded: stereo 4 Ω. The total is twice channel 1.");
    assertTrue(sheet.loads().get(0).power().balance().isEmpty());
  }

  /** 28.0 V and 13.8 V into 4 Ω: 196.0 W and 47.6 W, −6.1 dB; the mean, 121.8 W, is in no load. */
  @Test
  void unequalChannels_areNamedEach_andTheirMeanNowhere() {
    Sheet sheet =
        Cases.sheet(
            Cases.read(
                Cases.warm(),
                Cases.but(
                    Map.of(
                        ReadingId.OUTPUT_VOLTS, "28.0 V",
                        ReadingId.OTHER_OUTPUT_VOLTS, "13.8 V",
                        ReadingId.SUPPLY_AMPS, "30.0 A"))));
    String row =
        Cases.lines(sheet).stream().filter(l -> l.startsWith("stereo 4 Ω  ")).findFirst().get();
    assertTrue(
        row.matches("stereo 4 Ω +243\\.\\d ± .* 196\\.\\d ± .* 47\\.\\d+ ± .* -6\\.1\\d* ±.*"),
        row);
    assertUntold(sheet, "121.");
    SheetPage.of(sheet).charts().stream()
        .flatMap(chart -> chart.series().stream())
        .flatMap(series -> series.points().stream())
        .forEach(point -> assertTrue(Math.abs(point.y() - 121.8) > 0.5, point.toString()));
  }
}
