package loadwalk.scenario;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import loadwalk.app.loop.FakeClocks;
import loadwalk.app.store.ProgramUnderTest;
import loadwalk.view.ProgramEvent;
import loadwalk.view.canvas.Frame;
import loadwalk.view.canvas.Key;
import loadwalk.view.canvas.Look;
import loadwalk.view.canvas.Size;
import loadwalk.walk.Model;
import loadwalk.walk.fact.Fact;
import loadwalk.walk.fact.FactText;
import loadwalk.walk.fact.Stamped;
import loadwalk.walk.fact.WalkState;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Presses keys at random, on a disk that fails now and then and clocks that jump. */
class KeyWalkPropertyTest {
  private static final int KEYS_A_WALK = 500;
  private static final String[] TEXTS = {
    "4",
    "2",
    "1",
    "0.5",
    "13.4 V",
    "1,34",
    "15.5",
    "70 W",
    "17 A",
    "950m",
    "1/2",
    "-3",
    "1e9",
    "no reason",
    "owner wants it",
    "..",
    "\ud83d\udd25",
    "\ud83d",
    "\u0007\u001b[31m",
    "Ω",
    "9999 V"
  };
  private static final Size[] SIZES = {
    new Size(1, 1),
    new Size(3, 2),
    new Size(79, 24),
    new Size(80, 24),
    new Size(81, 25),
    new Size(120, 40),
    new Size(400, 3),
    new Size(2, 200)
  };

  @TempDir Path folder;

  private Random random;
  private FakeClocks clocks;
  private ProgramUnderTest program;
  private String where = "";
  private boolean full;
  private final Map<String, Integer> kinds = new TreeMap<>();
  private long stops;
  private long checked;

  @Test
  void fiveThousandKeys_keepEverySafetyRule() {
    press(5_000, 20_260_301L);
  }

  @Test
  @Tag("long")
  void hundredThousandKeys_keepEverySafetyRule() {
    press(100_000, Long.getLong("keys.seed", 7L));
  }

  private void press(int keys, long seed) {
    long facts = 0;
    for (int walk = 0; walk * KEYS_A_WALK < keys; walk++) {
      random = new Random(seed + walk);
      clocks = new FakeClocks();
      program =
          new ProgramUnderTest(folder.resolve("home-" + walk), clocks, new Look(walk % 2 == 1));
      full = false;
      open();
      for (int key = 0; key < KEYS_A_WALK; key++) {
        where = "seed " + (seed + walk) + ", key " + key;
        act();
        check();
      }
      facts += end();
    }
    System.out.printf(
        "key walks: %d keys and more, seed %d, %d facts kept, %d stops pressed, %d models"
            + " checked%n%s%n",
        keys, seed, facts, stops, checked, kinds);
    for (String kind : List.of("Begun", "Armed", "HaltLifted", "StoodBy", "Stopped")) {
      assertTrue(kinds.getOrDefault(kind, 0) > 0, "never reached: " + kind);
    }
  }

  /** Starts a practice walk of some seed and sequence. */
  private void open() {
    key(Key.Kind.ENTER);
    key(Key.Kind.DOWN);
    for (int i = random.nextInt(6); i > 0; i--) {
      key(Key.Kind.RIGHT);
    }
    key(Key.Kind.DOWN);
    for (int i = random.nextInt(5); i > 0; i--) {
      key(Key.Kind.RIGHT);
    }
    key(Key.Kind.ENTER);
    assertTrue(program.program().walk().isPresent());
  }

  private void act() {
    int dice = random.nextInt(100);
    if (program.program().walk().isEmpty()) {
      reopen();
    } else if (held() && dice < 40) {
      type("held");
      key(Key.Kind.ENTER);
    } else if (dice >= 40 && dice < 45) {
      onward();
    } else if (dice < 30) {
      key(Key.Kind.ENTER);
    } else if (dice < 45) {
      type(TEXTS[random.nextInt(TEXTS.length)]);
    } else if (dice < 55) {
      type(rightOhms());
    } else if (dice < 65) {
      key(random.nextBoolean() ? Key.Kind.F8 : Key.Kind.F9);
    } else if (dice < 75) {
      key(random.nextBoolean() ? Key.Kind.TAB : Key.Kind.F7);
    } else if (dice < 76) {
      escape();
    } else if (dice < 85) {
      key(Key.Kind.values()[1 + random.nextInt(Key.Kind.values().length - 1)]);
    } else if (dice < 97) {
      clocks.goOn(random.nextInt(3) == 0 ? 15 : 1);
      program.tick();
    } else {
      world();
    }
  }

  private boolean held() {
    return program.model().isStopped() || program.model().state().hold() == WalkState.Hold.PAUSED;
  }

  /** Does what brings the walk a step further, so that the heavy steps are reached as well. */
  private void onward() {
    key(Key.Kind.F7);
    type("a reason");
    key(Key.Kind.ENTER);
    type(rightOhms());
    key(Key.Kind.ENTER);
    key(Key.Kind.F8);
    key(Key.Kind.F9);
  }

  private void world() {
    int dice = random.nextInt(6);
    if (dice == 0) {
      clocks.goOn(3600 * (1 + random.nextInt(12)));
    } else if (dice == 1) {
      clocks.setForward(-3600);
    } else if (dice == 2) {
      program.accept(
          new ProgramEvent.Pasted("pasted\n4\n\u001b" + TEXTS[random.nextInt(TEXTS.length)]));
    } else if (dice == 3 && !full) {
      program.disk().fill();
      full = true;
    } else {
      program.disk().makeRoom();
      full = false;
    }
    program.tick();
  }

  private void reopen() {
    program.disk().makeRoom();
    full = false;
    key(Key.Kind.END);
    key(Key.Kind.ENTER);
    if (program.program().walk().isEmpty()) {
      key(Key.Kind.F10);
      key(Key.Kind.HOME);
      open();
    }
  }

  private String rightOhms() {
    String step = program.model().state().currentId();
    int dash = step.lastIndexOf('-');
    String ohms = dash < 0 ? "1" : step.substring(dash + 1);
    return ohms.equals("up") ? "4" : ohms;
  }

  private void type(String text) {
    for (char c : text.toCharArray()) {
      program.accept(new ProgramEvent.Pressed(Key.of(c)));
    }
  }

  private void key(Key.Kind kind) {
    program.accept(new ProgramEvent.Pressed(Key.of(kind)));
  }

  private void escape() {
    stops++;
    boolean free = !full && !program.model().isWriting();
    key(Key.Kind.ESCAPE);
    assertTrue(program.model().isStopped(), where);
    if (free) {
      assertFalse(program.model().stopping(), where);
    }
  }

  private void check() {
    checked++;
    Size size = SIZES[random.nextInt(SIZES.length)];
    Frame frame = program.paint(size);
    assertEquals(size, frame.size(), where);
    program
        .program()
        .walk()
        .ifPresent(model -> assertEquals(model.waiting().isEmpty(), !model.isWriting(), where));
  }

  private static String kind(Fact fact) {
    boolean doubted = fact instanceof Fact.Entered entered && !entered.doubts().isEmpty();
    return doubted ? "EnteredDoubted" : fact.getClass().getSimpleName();
  }

  /** Reads the journals back from their files and holds them against the rules and the model. */
  private long end() {
    program.disk().makeRoom();
    for (int i = 0; i < 5; i++) {
      clocks.goOn(1);
      program.tick();
    }
    if (program.program().walk().isEmpty()) {
      reopen();
    }
    Model model = program.model();
    assertFalse(model.isWriting(), where);
    List<String> bodies = program.bodies();
    assertEquals(model.state(), FactText.walk(bodies), where);
    List<Fact> facts = new ArrayList<>();
    bodies.forEach(b -> FactText.read(b).stream().map(Stamped::fact).forEach(facts::add));
    facts.forEach(f -> kinds.merge(kind(f), 1, Integer::sum));
    SafetyRules.check(facts, where);
    return facts.size();
  }
}
