package loadwalk.view;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertNotSame;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import java.util.OptionalLong;
import java.util.Random;
import loadwalk.bench.Amplifier;
import loadwalk.bench.Bench;
import loadwalk.forecast.StandardForecaster;
import loadwalk.sequence.SequenceReader;
import loadwalk.walk.Effect;
import loadwalk.walk.Event;
import loadwalk.walk.Fact;
import loadwalk.walk.FactReader;
import loadwalk.walk.FactWriter;
import loadwalk.walk.Model;
import loadwalk.walk.Stamped;
import loadwalk.walk.Walker;
import org.junit.jupiter.api.Test;

/** What was foreseen against what a loop that foresees nothing does. */
class LookAheadTest {
  private static final long SEED = 20260909;
  private static final int KEYS = 3000;
  private static final String SEQUENCE =
      """
      {"format":"loadwalk-sequence/1","name":"short","title":"Short","tone":{"hertz":40},
       "limit":{"thdPercent":1},"supplyVolts":13.8,"steps":[{"do":"idle"},
       {"do":"measure","mode":"stereo","ohms":4},{"do":"measure","mode":"bridged","ohms":4}]}
      """;
  private static final ProgramEvent ENTER = new ProgramEvent.Pressed(Key.of(Key.Kind.ENTER));

  private final ProgramUpdate loop = new ProgramUpdate(new Walker(new StandardForecaster()));
  private final LookAhead ahead = new LookAhead(loop);
  private Program program = opened();
  private int foreseen;

  private Program opened() {
    byte[] bytes = SEQUENCE.getBytes(StandardCharsets.UTF_8);
    Fact.Opened opened =
        new Fact.Opened(
            "2026-02-02-0000-test",
            "1.0.0",
            SequenceReader.read(bytes, "short").found().orElseThrow(),
            SEQUENCE,
            Amplifier.named("Verrin", "V1"),
            Bench.unknown(),
            OptionalLong.empty());
    String line = FactWriter.body(List.of(new Stamped(opened, 0)));
    Model model = Model.of(FactReader.walk(List.of(line)), 1);
    return loop.update(Program.atHome("home"), new ProgramEvent.WalkReady(model)).program();
  }

  /** Takes an event and the answers of a disk that keeps all, each beside the plain loop. */
  private void hear(ProgramEvent first) {
    Deque<ProgramEvent> waiting = new ArrayDeque<>(List.of(first));
    while (!waiting.isEmpty()) {
      ProgramEvent event = waiting.poll();
      ProgramNext next = ahead.update(program, event);
      assertEquals(loop.update(program, event), next, () -> "seed " + SEED + ", " + event);
      foreseen += next == ahead.update(program, event) ? 1 : 0;
      program = next.program();
      for (Effect effect : next.effects()) {
        if (effect instanceof Effect.AppendJournal append) {
          waiting.add(new ProgramEvent.OfWalk(new Event.Kept(append.facts())));
        }
      }
    }
  }

  private void press(Key.Kind kind) {
    hear(new ProgramEvent.Pressed(Key.of(kind)));
  }

  private void type(String text) {
    text.chars().forEach(c -> hear(new ProgramEvent.Pressed(Key.of((char) c))));
  }

  private void running() {
    hear(new ProgramEvent.OfWalk(new Event.Reopened(0, 0)));
    press(Key.Kind.ENTER);
  }

  @Test
  void typedReading_isForeseenUntilItIsKept() {
    running();
    type("1.5");
    List<ProgramNext> updates = ahead.look(program);
    assertEquals(2, updates.size());
    assertTrue(updates.get(0).effects().get(0) instanceof Effect.AppendJournal);
    assertEquals(List.of(), ahead.look(program), "looked twice at one program");
    hear(ENTER);
    assertSame(updates.get(1).program(), program);
  }

  @Test
  void deskThatChangedMeanwhile_isUpdatedAnew() {
    running();
    type("1.5");
    ProgramNext expected = ahead.look(program).get(0);
    hear(new ProgramEvent.OfWalk(new Event.Tick(9_000_000_000L, 9000)));
    assertNotSame(expected, ahead.update(program, ENTER));
    assertNotEquals(
        expected.effects(), ahead.update(program, ENTER).effects(), "the time is another");
  }

  @Test
  void nothingTyped_orAQuestionOpen_foreseesNothing() {
    running();
    assertEquals(List.of(), ahead.look(program));
    press(Key.Kind.F2);
    type("a note");
    assertEquals(List.of(), ahead.look(program));
  }

  @Test
  void unreadableText_foreseesTheRefusalAlone() {
    running();
    type("1.5 Q");
    assertEquals(1, ahead.look(program).size());
  }

  @Test
  void coldLoad_isForeseenWithTheBriefItChanges() {
    running();
    press(Key.Kind.F3);
    type("not for this test");
    press(Key.Kind.ENTER);
    press(Key.Kind.TAB);
    type("40");
    List<ProgramNext> updates = ahead.look(program);
    assertEquals(3, updates.size(), "the load kept, the brief made and kept");
    hear(ENTER);
    assertSame(updates.get(2).program(), program);
  }

  @Test
  void keysAtRandom_giveWhatThePlainLoopGives() {
    Random random = new Random(SEED);
    Key.Kind[] others = {
      Key.Kind.TAB, Key.Kind.UP, Key.Kind.F9, Key.Kind.F5, Key.Kind.BACKSPACE, Key.Kind.F2
    };
    running();
    for (int i = 0; i < KEYS; i++) {
      int choice = random.nextInt(12);
      if (choice < 6) {
        type(String.valueOf("0123456789.4".charAt(random.nextInt(12))));
      } else if (choice < 10) {
        hear(ENTER);
      } else if (choice == 10) {
        hear(new ProgramEvent.OfWalk(new Event.Tick(1_000_000_000L * i, 1000L * i)));
      } else {
        press(others[random.nextInt(others.length)]);
      }
      ahead.look(program);
    }
    assertTrue(foreseen > 100, foreseen + " updates were foreseen");
  }
}
