package loadwalk.plain;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.OptionalLong;
import loadwalk.bench.ReadingId;
import loadwalk.plan.StockRules;
import loadwalk.practice.PracticeRig;
import loadwalk.quantity.Printer;
import loadwalk.sequence.Sequence;
import loadwalk.sequence.SequenceReader;
import loadwalk.view.Program;
import loadwalk.view.ProgramEvent;
import loadwalk.view.ProgramUpdate;
import loadwalk.view.Snapshots;
import loadwalk.view.state.Waves;
import loadwalk.walk.Effect;
import loadwalk.walk.Event;
import loadwalk.walk.Intent;
import loadwalk.walk.Model;
import loadwalk.walk.Next;
import loadwalk.walk.Walker;
import loadwalk.walk.fact.Fact;
import loadwalk.walk.rehearse.PracticeAnswers;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** A walk talked through line by line: what is typed, what is asked outside, what is said. */
class PlainTalkSnapshotTest {
  private static final long WALL = 1_773_480_600_000L;
  private static final long SEED = 1;
  private static final String SEQUENCE =
      """
      {"format":"loadwalk-sequence/1","name":"talk","title":"Talk","tone":{"hertz":40},
       "limit":{"thdPercent":1},"supplyVolts":13.8,"steps":[
       {"do":"note","text":"Read the manual.\\nMind the fan."},
       {"do":"warm-up","minutes":5,"powerFraction":0.5},{"do":"idle"},
       {"do":"measure","mode":"stereo","ohms":4},{"do":"measure","mode":"bridged","ohms":0.25}]}
      """;

  private final PlainWriter writer = new PlainWriter(Printer.UTF8);
  private final Walker walker = new Walker(StockRules.RULES);
  private final StringBuilder talk = new StringBuilder();
  private Model model;
  private Waves waves;
  private boolean diskIsFull;
  private long seconds;

  @BeforeEach
  void openTheWalk() {
    Sequence sequence =
        SequenceReader.read(SEQUENCE.getBytes(StandardCharsets.UTF_8), "talk")
            .found()
            .orElseThrow();
    PracticeRig rig = PracticeRig.ofSeed(SEED);
    Fact.Opened opened =
        new Fact.Opened(
            "2026-03-14-0930-talk",
            "1.0.0",
            sequence,
            SEQUENCE,
            rig.amplifier().printed(),
            rig.bench().described(),
            OptionalLong.of(SEED));
    model = Model.of(opened.applyTo(null, WALL), 60);
    waves =
        new ProgramUpdate(walker)
            .update(Program.atHome("home", StockRules.RULES), new ProgramEvent.WalkReady(model))
            .program()
            .state()
            .waves();
    hears(new Event.Reopened(0, WALL));
  }

  private void hears(Event event) {
    Model before = model;
    update(event);
    writer.changes(before, model).forEach(line -> talk.append(line).append('\n'));
  }

  private void update(Event event) {
    Next next = walker.update(model, event);
    model = next.model();
    for (Effect effect : next.effects()) {
      if (effect instanceof Effect.AppendJournal append) {
        update(
            diskIsFull ? new Event.NotKept("The disk is full.") : new Event.Kept(append.facts()));
      } else {
        talk.append("[asked: ").append(effect).append("]\n");
      }
    }
  }

  private void types(String... lines) {
    for (String line : lines) {
      talk.append("> ").append(line.replace('\u001b', '␛')).append('\n');
      PlainAnswer answer = PlainParser.parse(line, model, waves);
      answer.notice().ifPresent(told -> talk.append(told).append('\n'));
      answer.text().ifPresent(text -> talk.append("[shows: ").append(text).append("]\n"));
      answer.intents().forEach(this::hears);
      answer.effects().forEach(this::done);
    }
  }

  private void done(Effect effect) {
    if (effect instanceof Effect.FillStep) {
      PracticeAnswers bench = PracticeAnswers.in(model.state().opened()).orElseThrow();
      Map<ReadingId, String> shown = bench.of(model.state(), model.clock().warmSeconds());
      String step = model.state().currentId();
      hears(new Intent.EnterAll(step, PracticeAnswers.missing(shown, model.state().step(step))));
    } else {
      talk.append("[asked: ").append(effect).append("]\n");
    }
  }

  private void waits(int count) {
    for (int i = 0; i < count; i++) {
      seconds++;
      hears(new Event.Tick(seconds * 1_000_000_000L, WALL + 1000 * seconds));
    }
  }

  private void warmedUp() {
    types("done", "begin");
    waits(6);
    types("done");
  }

  @Test
  void walk_fromItsFirstNoteToItsEnd() throws IOException {
    types("done", "begin", "early", "fill", "early it is warm", "begin", "fill", "done");
    types("begin", "arm", "arm 8", "arm 4 ohm", "outputVolts 1.55 V", "done");
    types("stand outputVolts", "stand outputVolts the meter shows it");
    types("amend stereo-4 outputVolts", "amend stereo-4 outputVolts 15,5 V", "fill", "done");
    types(
        "begin", "arm 0.25", "lift", "lift a short burst only", "arm 0.25", "skip", "skip enough");
    types("sheet", "quit");
    Snapshots.holds("plain/walk", talk.toString());
  }

  @Test
  void pointAndWhatContradictsIt_areSaid() throws IOException {
    warmedUp();
    types("begin", "fill", "done", "controls", "controls gain at noon, bass 0", "arm 4");
    types("output volts 15.5", "other load ohms 4.01", "THD 5.3", "criterion thd-limit");
    types("criterion above-limit", "tone 1000", "stand tone the generator shows it", "thd 1.1 %");
    types("amend stereo-4 THD 0.2", "done");
    Snapshots.holds("plain/point", talk.toString());
  }

  @Test
  void stopPauseAndAFullDisk_areSaid() throws IOException {
    warmedUp();
    types("begin", "stop", "begin", "because", "because smoke from the fuse", "begin", "go-on");
    types("pause", "outputVolts 1 V", "go-on", "retry", "warm-again");
    diskIsFull = true;
    types("note the fan runs", "note another", "stop");
    diskIsFull = false;
    types("retry", "because the disk was full", "note", "photo \"my photo.png\" the bench");
    Snapshots.holds("plain/holds", talk.toString());
  }

  @Test
  void pairsCriterionAndWhatIsNotUnderstood_getTheirSentences() throws IOException {
    warmedUp();
    types("begin", "fill", "done", "arm 4");
    types("pair 13.2 0.8%", "pair 13.2", "pair 13.2 V 0.8", "criterion clipping-onset");
    types("criterion loud", "outputWatts 60 W", "sinkCelsius hot", "supplyAmps", "SUPPLYAMPS 17");
    types("wave", "wave a.wav full-scale 1.5", "wave confirm", "help", "brief", "", "  ");
    types("boil", "x".repeat(40), "\u001b[31mred", "amend stereo-4 volts 3", "stand volts so");
    Snapshots.holds("plain/words", talk.toString());
  }
}
