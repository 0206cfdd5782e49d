package loadwalk.app;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import loadwalk.app.store.OpeningOutcome;
import loadwalk.app.store.SequenceFinder;
import loadwalk.app.store.WalkFolder;
import loadwalk.app.store.WalkName;
import loadwalk.bench.Amplifier;
import loadwalk.bench.Bench;
import loadwalk.forecast.Observation;
import loadwalk.journal.Soundness;
import loadwalk.json.Read;
import loadwalk.plan.Rules;
import loadwalk.report.page.Page;
import loadwalk.report.page.TextPage;
import loadwalk.report.plan.PlanPage;
import loadwalk.report.sheet.Sheet;
import loadwalk.report.sheet.SheetOptions;
import loadwalk.report.sheet.SheetPage;
import loadwalk.sequence.Sequence;
import loadwalk.text.Sentence;
import loadwalk.view.Program;
import loadwalk.view.ProgramEvent;
import loadwalk.walk.Effect;
import loadwalk.walk.Model;
import loadwalk.walk.Targets;
import loadwalk.walk.fact.UnreadableFact;
import loadwalk.walk.fact.WalkState;

/**
 * Makes the texts that screens show: sheets, the ledger, plans.
 *
 * @param rules what plans and sheets go by
 * @param ascii whether only plain ASCII may be used
 */
public record TextsForScreen(Rules rules, boolean ascii) {
  private static final int COLUMNS = 78;

  /** Returns the sheet of the open walk, or of a kept one. */
  ProgramEvent sheet(WalkFolder walks, String name, Program program) {
    Optional<WalkFolder.Peeked> walk =
        program
            .walk()
            .map(Model::state)
            .filter(s -> s.opened().walk().equals(name))
            .map(s -> new WalkFolder.Peeked(s, Soundness.WHOLE))
            .or(() -> walks.peek(new WalkName(name)));
    return walk.map(w -> sheet(Sentence.of("Sheet of {}", name), List.of(), w))
        .orElse(new ProgramEvent.Told(Sentence.of("The walk {} cannot be read.", name)));
  }

  private ProgramEvent sheet(String title, List<String> before, WalkFolder.Peeked walk) {
    Sheet sheet = Sheet.of(walk.state(), walk.soundness(), SheetOptions.DEFAULT, rules);
    Page page = SheetPage.of(sheet);
    List<String> lines = new ArrayList<>(before);
    lines.addAll(TextPage.lines(page, COLUMNS, ascii));
    return new ProgramEvent.TextReady(title, lines, page.charts());
  }

  /** Returns a walk that can be read only, with the reason. */
  ProgramEvent watching(OpeningOutcome.Watching watching) {
    String title = "Watching only";
    List<String> why = List.of(watching.why(), "");
    try {
      return sheet(title, why, WalkFolder.peeked(watching.read()));
    } catch (UnreadableFact foreign) {
      String cannot = Sentence.of("This walk cannot be read: {}.", foreign.getMessage());
      return new ProgramEvent.TextReady(title, List.of(watching.why(), "", cannot));
    }
  }

  /** Returns the plan of the bench before anything is connected. */
  ProgramEvent plan(SequenceFinder sequences, Effect.ShowPlan asked) throws IOException {
    Optional<SequenceFinder.Found> found = sequences.find(asked.sequence()).flatMap(Read::found);
    return found.isEmpty()
        ? new ProgramEvent.Told(Sentence.of("The sequence {} cannot be read.", asked.sequence()))
        : plan(found.get().sequence(), asked.amplifier(), asked.bench(), List.of());
  }

  /** Returns the plan of the bench with what has been measured in the open walk. */
  ProgramEvent planSoFar(Program program) {
    WalkState state = program.walk().orElseThrow().state();
    return plan(
        state.opened().sequence(),
        state.opened().amplifier(),
        state.opened().bench(),
        Targets.evidenceBefore(state, state.currentId()).observations());
  }

  private ProgramEvent plan(
      Sequence sequence, Amplifier amplifier, Bench bench, List<Observation> measured) {
    Page page = PlanPage.of(rules.plan(sequence, amplifier, bench, measured), rules.tables());
    List<String> lines = TextPage.lines(page, COLUMNS, ascii);
    return new ProgramEvent.TextReady(Sentence.of("Plan of {}", sequence.name()), lines);
  }
}
