package loadwalk.view;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.Set;
import loadwalk.plain.PlainWriter;
import loadwalk.plain.SimulatedHand;
import loadwalk.plan.PlanExample;
import loadwalk.plan.StockRules;
import loadwalk.practice.PracticeAmplifier;
import loadwalk.practice.PracticeBench;
import loadwalk.quantity.Printer;
import loadwalk.report.page.TextPage;
import loadwalk.report.plan.PlanPage;
import loadwalk.report.sheet.Sheet;
import loadwalk.report.sheet.SheetOptions;
import loadwalk.report.sheet.SheetPage;
import loadwalk.sequence.PlannedStep;
import loadwalk.sequence.Sequence;
import loadwalk.sequence.SequenceReader;
import loadwalk.text.Ascii;
import loadwalk.view.canvas.Key;
import loadwalk.view.canvas.Look;
import loadwalk.view.canvas.Size;
import loadwalk.view.walk.WalkScreen;
import loadwalk.walk.Effect;
import loadwalk.walk.Event;
import loadwalk.walk.Intent;
import loadwalk.walk.Model;
import loadwalk.walk.Next;
import loadwalk.walk.Walker;
import loadwalk.walk.fact.Fact;
import loadwalk.walk.fact.StepState.Status;
import loadwalk.walk.fact.WalkState;
import loadwalk.walk.rehearse.PracticeAnswers;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Screen, plain mode, plan and sheet say what a step asks in the same words. */
class InstructionTest {
  private static final long WALL = 1_773_480_600_000L;
  private static final long SEED = 1;
  private static final int PACE = 25;
  private static final List<Size> SIZES = List.of(new Size(80, 24), new Size(120, 40));

  /** The columns of the walk's own panel beside what the side panel shows. */
  private static final int PANEL = 81;

  private static final String EVERY_KIND =
      """
      {"format":"loadwalk-sequence/1","name":"every","title":"Every kind","tone":{"hertz":1000},
       "limit":{"thdPercent":0.5},"supplyVolts":13.8,"steps":[
       {"do":"note","text":"Two lines:\\nread the manual first. %s"},
       {"do":"warm-up","minutes":5,"powerFraction":0.125},{"do":"idle"},
       {"do":"measure","mode":"bridged","ohms":4},
       {"do":"measure","mode":"stereo","ohms":4},{"do":"open-load"},
       {"do":"music","minutes":2.5},
       {"do":"recheck","of":["stereo-4","heaviest"],"afterWarmMinutes":3}]}
      """
          .formatted("Mind the fan, the leads and the fuse. ".repeat(14));

  private final Walker walker = new Walker(StockRules.RULES);
  private final Map<String, String> asked = new LinkedHashMap<>();
  private final Set<String> heard = new HashSet<>();
  private Model model;
  private WalkState fresh;
  private long seconds;

  @ParameterizedTest
  @ValueSource(
      strings = {"full-walk", "stereo-only", "bridged-only", "low-ohm-recheck", "rated-conditions"})
  void stockSequence_isAskedInTheSameWordsEverywhere(String name) throws IOException {
    everywhere(Files.readString(Path.of("sequences", name + ".json")));
  }

  @Test
  void sequenceOfEveryKind_isAskedInTheSameWordsEverywhere() {
    everywhere(EVERY_KIND);
    assertEquals(10, asked.size());
    assertEquals(
        "Connect one 4 Ω load across the bridge; both terminals are live. Run at about 12.5 % of"
            + " full power for 5 min.",
        asked.get("warm-up"));
    assertTrue(asked.get("recheck#2").startsWith("Measure bridged-4 again. "), asked.toString());
  }

  @Test
  void stockSequences_areAllWalkedHere() throws IOException {
    try (var files = Files.list(Path.of("sequences"))) {
      assertEquals(5, files.count());
    }
  }

  private void everywhere(String text) {
    Sequence sequence =
        SequenceReader.read(text.getBytes(StandardCharsets.UTF_8), "test").found().orElseThrow();
    walk(sequence, text);
    WalkState state = model.state();
    assertEquals(state.plan().stream().map(PlannedStep::id).toList(), List.copyOf(asked.keySet()));
    String sheet = sheetOf(state);
    String sheetOfNothingDone = sheetOf(fresh);
    String plan =
        squeezed(
            TextPage.lines(
                PlanPage.of(
                    PlanExample.plan(sequence, state.opened().amplifier(), state.opened().bench()),
                    PlanExample.TABLES),
                80,
                false));
    asked.forEach(
        (id, words) -> {
          String said = squeezed(List.of(id + " " + words));
          assertTrue(sheet.contains(said), () -> "the sheet does not say: " + said);
          assertTrue(
              sheetOfNothingDone.contains(said),
              () -> "a fresh walk's sheet does not say: " + said);
          assertTrue(plan.contains(said), () -> "the plan does not say: " + said + " in " + plan);
        });
  }

  @Test
  void noteLongerThanThePanel_isShownWholeByF1() {
    String note =
        "Check that no 0.5 Ω load, lead or clip is hotter than 60 °C. ".repeat(32).strip();
    String text =
        """
        {"format":"loadwalk-sequence/1","name":"long","title":"A long note","tone":{"hertz":40},
         "limit":{"thdPercent":1},"supplyVolts":13.8,"steps":[{"do":"note","text":"%s"},
         {"do":"measure","mode":"stereo","ohms":4}]}
        """
            .formatted(note);
    heard.add("note " + Status.BRIEFED); // The panel alone has no room for it.
    open(
        SequenceReader.read(text.getBytes(StandardCharsets.UTF_8), "t").found().orElseThrow(),
        text);
    String panel = squeezed(program().paint(Size.LEAST, new Look(false)).lines());
    assertFalse(panel.contains(note), panel);
    assertTrue(panel.contains("F1 shows all of it"), panel);
    WalkState state = model.state();
    List<String> plain = new PlainWriter(Printer.UTF8).brief(state, state.plan().get(0));
    assertEquals("  Type done.", plain.get(plain.size() - 1), "as Enter does on the screen");
    List<String> help =
        program().screen().press(Key.of(Key.Kind.F1), program().state()).next().text();
    assertTrue(squeezed(help).contains(note), help.toString());
    int room = Size.LEAST.columns() - 1;
    help.forEach(line -> assertTrue(Ascii.of(line).length() <= room, line));
  }

  /** Walks a sequence to its end on the practice bench and hears what is asked on the way. */
  private static String sheetOf(WalkState state) {
    Sheet sheet = Sheet.of(state, SheetOptions.DEFAULT, StockRules.RULES);
    return squeezed(TextPage.lines(SheetPage.of(sheet), 80, false));
  }

  private void walk(Sequence sequence, String text) {
    Fact.Opened opened = open(sequence, text);
    fresh = model.state();
    SimulatedHand hand = new SimulatedHand(PracticeAnswers.in(opened).orElseThrow());
    for (int i = 0; i < 5_000 && !model.state().isFinished(); i++) {
      seconds++;
      hear(new Event.Tick(seconds * 1_000_000_000L, WALL + 1000 * seconds));
      Optional<Intent> next = hand.next(model);
      next.ifPresent(this::hear);
    }
  }

  private Fact.Opened open(Sequence sequence, String text) {
    Fact.Opened opened =
        new Fact.Opened(
            "test",
            "1.0.0",
            sequence,
            text,
            PracticeAmplifier.ofSeed(SEED).printed(),
            PracticeBench.ofSeed(SEED).described(),
            OptionalLong.of(SEED));
    model = Model.of(opened.applyTo(null, WALL), PACE);
    hear(new Event.Reopened(0, WALL));
    return opened;
  }

  private void hear(Event event) {
    Next next = walker.update(model, event);
    model = next.model();
    model.state().current().ifPresent(this::listen);
    for (Effect effect : next.effects()) {
      if (effect instanceof Effect.AppendJournal append) {
        hear(new Event.Kept(append.facts()));
      }
    }
  }

  /** Holds the screen, in each size, and the brief of plain mode against what the step asks. */
  private void listen(PlannedStep planned) {
    WalkState state = model.state();
    Status status = state.step(planned.id()).status();
    boolean open = status == Status.BRIEFED || status == Status.RUNNING;
    if (!open || !heard.add(planned.id() + " " + status)) {
      return;
    }
    String words = planned.instruction(state.context(planned));
    String before = asked.put(planned.id(), words);
    assertTrue(before == null || before.equals(words), before + " became " + words);
    String running = planned.running(state.context(planned));
    assertTrue(words.contains(running), words + " does not hold " + running);
    String said = squeezed(List.of(status == Status.RUNNING ? running : words));
    for (Size size : SIZES) {
      String screen = screen(size);
      assertTrue(screen.contains(said), () -> size + " does not say: " + said + "\n" + screen);
    }
    String plain = squeezed(new PlainWriter(Printer.UTF8).brief(state, planned));
    assertTrue(
        plain.contains(squeezed(List.of(words))),
        () -> "plain mode does not say: " + words + "\n" + plain);
  }

  private Program program() {
    return Program.atHome("home", StockRules.RULES).on(WalkScreen.fresh()).with(Optional.of(model));
  }

  private String screen(Size size) {
    List<String> lines = new ArrayList<>();
    for (String line : program().paint(size, new Look(false)).lines()) {
      lines.add(line.length() > PANEL ? line.substring(0, PANEL) : line);
    }
    return squeezed(lines);
  }

  private static String squeezed(List<String> lines) {
    return String.join(" ", lines).replaceAll("[\\s\\u00a0\\u2028]+", " ").strip();
  }
}
