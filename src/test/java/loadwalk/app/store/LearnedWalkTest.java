package loadwalk.app.store;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalLong;
import loadwalk.app.MachineEffects;
import loadwalk.app.TextsForScreen;
import loadwalk.app.loop.FakeClocks;
import loadwalk.bench.Amplifier;
import loadwalk.bench.Bench;
import loadwalk.bench.Meter;
import loadwalk.bench.ReadingId;
import loadwalk.plan.StockRules;
import loadwalk.result.Repeatability;
import loadwalk.sequence.SequenceReader;
import loadwalk.view.Program;
import loadwalk.walk.Effect;
import loadwalk.walk.fact.Fact;
import loadwalk.walk.fact.FactText;
import loadwalk.walk.fact.Learned;
import loadwalk.walk.fact.Stamped;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What a new walk learns from the walks kept of its bench. */
class LearnedWalkTest {
  private static final long AT = 1_773_480_600_000L;
  private static final Amplifier AMPLIFIER = Amplifier.named("Verrin", "V 4");

  @TempDir private Path home;

  private static Bench bench(String name, double percent) {
    return new Bench(
        name,
        List.of(),
        List.of(),
        OptionalDouble.empty(),
        List.of(),
        List.of(new Meter("AC volts", ReadingId.OUTPUT_VOLTS, percent, 0, 0, Optional.empty())),
        0.9);
  }

  /** Keeps a walk that reads the same load once more than it has volts differ. */
  private void keep(String name, Bench bench, OptionalLong practice, double... volts)
      throws IOException {
    String step = ",{\"do\":\"measure\",\"mode\":\"stereo\",\"ohms\":4}";
    String text =
        "{\"format\":\"loadwalk-sequence/1\",\"name\":\"again\",\"title\":\"Again\","
            + "\"tone\":{\"hertz\":40},\"limit\":{\"thdPercent\":1},\"supplyVolts\":13.8,"
            + "\"steps\":["
            + step.repeat(volts.length).substring(1)
            + "]}";
    List<Stamped> facts = new ArrayList<>();
    facts.add(
        new Stamped(
            new Fact.Opened(
                name,
                "1.0.0",
                SequenceReader.read(text.getBytes(StandardCharsets.UTF_8), "again")
                    .found()
                    .orElseThrow(),
                text,
                AMPLIFIER,
                bench,
                practice),
            AT));
    for (int i = 0; i < volts.length; i++) {
      String id = i == 0 ? "stereo-4" : "stereo-4#" + (i + 1);
      facts.add(new Stamped(new Fact.Begun(id), AT));
      facts.add(entered(id, ReadingId.OUTPUT_VOLTS, volts[i]));
      facts.add(entered(id, ReadingId.THD_PERCENT, 1));
    }
    new JournalFolder(new DataHome(home)).create(new WalkName(name), FactText.body(facts));
  }

  private static Stamped entered(String id, ReadingId reading, double value) {
    return new Stamped(
        new Fact.Entered(
            id,
            reading,
            String.valueOf(value),
            value,
            0,
            List.of(),
            0,
            Optional.empty(),
            OptionalDouble.empty()),
        AT);
  }

  private Fact.Opened opened(Bench bench, OptionalLong practice) throws IOException {
    WalkFolder walks = new WalkFolder(new JournalFolder(new DataHome(home)));
    MachineEffects effects =
        new MachineEffects(
            walks,
            new SequenceFinder(new DataHome(home)),
            new TextsForScreen(StockRules.RULES, false),
            new FakeClocks(),
            () -> {});
    String before = String.valueOf(walks.store().list().walks());
    effects.open(new Effect.OpenWalk("stereo-only", AMPLIFIER, bench, practice, 1));
    effects.perform(new Effect.Leave(), Program.atHome("home", StockRules.RULES));
    return walks.store().list().walks().stream()
        .filter(listed -> !before.contains(listed.name().text() + "]"))
        .map(listed -> walks.peek(listed.name()).orElseThrow().state().opened())
        .filter(walk -> walk.sequence().name().equals("stereo-only"))
        .findFirst()
        .orElseThrow();
  }

  /**
   * Twelve runs that go up and down between 9.96 and 10.04 V: eleven pairs, of which the mean
   * square over two is that of the twelve about their mean, 0.04 V · √(12/11) = 0.0418 V, 0.418 %.
   */
  private static double[] upAndDown() {
    double[] volts = new double[12];
    for (int i = 0; i < volts.length; i++) {
      volts[i] = i % 2 == 0 ? 9.96 : 10.04;
    }
    return volts;
  }

  @Test
  void newWalk_keepsWhatItsBenchWasLearnedToRepeat() throws IOException {
    keep("kept", bench("North", 0.5), OptionalLong.empty(), upAndDown());
    Fact.Opened opened = opened(bench("North", 0.5), OptionalLong.empty());
    Learned learned = opened.learned().orElseThrow();
    assertEquals(11, learned.pairs());
    assertEquals(0.418, learned.percent(), 0.004);
    assertEquals(learned.percent() / 100, opened.repeatability().relativeVolts(), 1e-12);
  }

  @Test
  void otherBench_otherMeters_andPractice_teachNothing() throws IOException {
    keep("kept", bench("North", 0.5), OptionalLong.empty(), upAndDown());
    assertEquals(Optional.empty(), opened(bench("South", 0.5), OptionalLong.empty()).learned());
    assertEquals(Optional.empty(), opened(bench("North", 1), OptionalLong.empty()).learned());
    assertEquals(Optional.empty(), opened(bench("North", 0.5), OptionalLong.of(3)).learned());
  }

  @Test
  void practice_learnsFromPractice_andNotTheReal() throws IOException {
    keep("kept", bench("North", 0.5), OptionalLong.of(3), upAndDown());
    assertEquals(Optional.empty(), opened(bench("North", 0.5), OptionalLong.empty()).learned());
    assertEquals(
        11, opened(bench("North", 0.5), OptionalLong.of(4)).learned().orElseThrow().pairs());
  }

  @Test
  void tooFewPairs_leaveTheDefault() throws IOException {
    keep("kept", bench("North", 0.5), OptionalLong.empty(), 10, 10.05, 10);
    Fact.Opened opened = opened(bench("North", 0.5), OptionalLong.empty());
    assertEquals(Optional.empty(), opened.learned());
    assertEquals(Repeatability.DEFAULT, opened.repeatability());
  }
}
