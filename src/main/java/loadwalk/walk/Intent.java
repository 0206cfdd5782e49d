package loadwalk.walk;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import loadwalk.bench.Outcome;
import loadwalk.bench.ReadingId;
import loadwalk.result.Criterion;
import loadwalk.sequence.PlannedStep;
import loadwalk.walk.fact.Capture;
import loadwalk.walk.fact.Instrument;

/** An intent: something the operator wants; each intent defines its own outcome. */
public sealed interface Intent extends Event {

  /** An intent that waits its turn: first for the disk, then for the walk to be running. */
  sealed interface InTurn extends Intent {
    @Override
    default Next reach(Model model, Walker walker) {
      return walker.intended(model.silent(), this);
    }

    /** Returns the outcome while the walk runs. */
    Next whileRunning(Model model, Steps steps);

    /** Returns the outcome while the walk is paused. */
    default Next whilePaused(Model model) {
      return Next.refused(model, "The walk is paused: go on first.");
    }

    /** Returns the outcome after a stop that still needs its reason. */
    default Next whileStopped(Model model) {
      return Next.refused(model, "The walk was stopped: say why first.");
    }
  }

  /** An intent about the current step. */
  sealed interface OfCurrent extends InTurn {
    /** Returns the outcome at the current step. */
    Next at(PlannedStep current, Model model, Steps steps);

    @Override
    default Next whileRunning(Model model, Steps steps) {
      Optional<PlannedStep> current = model.state().current();
      return current.isPresent()
          ? at(current.get(), model, steps)
          : Next.refused(model, "Every step is done.");
    }
  }

  /** An intent that is accepted at any time, whether or not the walk runs. */
  sealed interface AnyTime extends InTurn {
    /** Returns the outcome. */
    Next taken(Model model);

    @Override
    default Next whileRunning(Model model, Steps steps) {
      return taken(model);
    }

    @Override
    default Next whilePaused(Model model) {
      return taken(model);
    }

    @Override
    default Next whileStopped(Model model) {
      return taken(model);
    }
  }

  /** Start the briefed step; only a clear step starts without arming. */
  record Begin() implements OfCurrent {
    @Override
    public Next at(PlannedStep current, Model model, Steps steps) {
      return steps.begin(model, current);
    }
  }

  /**
   * Arm the briefed step.
   *
   * @param text the load in ohms that is really connected, as typed
   */
  record Arm(String text) implements OfCurrent {
    /** Makes the text fit for the journal. */
    public Arm {
      text = JournalText.text(text);
    }

    @Override
    public Next at(PlannedStep current, Model model, Steps steps) {
      return steps.arm(model, current, text);
    }
  }

  /**
   * Lift the halt of the briefed step.
   *
   * @param reason why, as typed
   */
  record LiftHalt(String reason) implements OfCurrent {
    /** Makes the text fit for the journal. */
    public LiftHalt {
      reason = JournalText.text(reason);
    }

    @Override
    public Next at(PlannedStep current, Model model, Steps steps) {
      return Steps.lift(model, current, reason);
    }
  }

  /**
   * Enter or amend a reading.
   *
   * @param step the step's id
   * @param reading the reading
   * @param text the value as typed
   */
  record Enter(String step, ReadingId reading, String text) implements InTurn {
    /** Makes the text fit for the journal. */
    public Enter {
      text = JournalText.text(text);
    }

    @Override
    public Next whileRunning(Model model, Steps steps) {
      return steps.enter(model, step, Map.of(reading, text), Map.of());
    }
  }

  /**
   * Enter several readings of a step taken together; they are judged together.
   *
   * @param step the step's id
   * @param texts the values as typed, in order
   * @param instruments the meters, for the readings taken from a meter directly
   */
  record EnterAll(String step, Map<ReadingId, String> texts, Map<ReadingId, Instrument> instruments)
      implements InTurn {
    /** Makes an intent whose values were all typed. */
    public EnterAll(String step, Map<ReadingId, String> texts) {
      this(step, texts, Map.of());
    }

    /** Copies the maps, keeping their order, and makes the texts fit for the journal. */
    public EnterAll {
      Map<ReadingId, String> copy = new LinkedHashMap<>(texts);
      copy.replaceAll((id, text) -> JournalText.text(text));
      texts = Collections.unmodifiableMap(copy);
      instruments = Map.copyOf(instruments);
    }

    @Override
    public Next whileRunning(Model model, Steps steps) {
      return steps.enter(model, step, texts, instruments);
    }
  }

  /**
   * Enter the values of a captured wave as the readings of a step.
   *
   * @param step the step's id
   * @param capture what the wave shows
   * @param wallMillis when it was read, ms since 1970
   */
  record TakeCapture(String step, Capture capture, long wallMillis) implements InTurn {
    @Override
    public Next whileRunning(Model model, Steps steps) {
      return steps.take(model, this);
    }
  }

  /** Stand by a doubted reading. */
  record StandBy(String step, ReadingId reading, String reason) implements InTurn {
    /** Makes the text fit for the journal. */
    public StandBy {
      reason = JournalText.text(reason);
    }

    @Override
    public Next whileRunning(Model model, Steps steps) {
      return Steps.standBy(model, this);
    }
  }

  /** Say at which criterion the step's output was read. */
  record SetCriterion(String step, Criterion criterion) implements InTurn {
    @Override
    public Next whileRunning(Model model, Steps steps) {
      return Steps.say(model, this);
    }
  }

  /**
   * Add volts and THD read together near the limit.
   *
   * @param voltsText output volts, as typed
   * @param thdText THD in percent, as typed
   */
  record AddPair(String step, String voltsText, String thdText) implements InTurn {
    /** Makes the text fit for the journal. */
    public AddPair {
      voltsText = JournalText.text(voltsText);
      thdText = JournalText.text(thdText);
    }

    @Override
    public Next whileRunning(Model model, Steps steps) {
      return Steps.addPair(model, this);
    }
  }

  /** Finish the running step. */
  record Finish() implements OfCurrent {
    @Override
    public Next at(PlannedStep current, Model model, Steps steps) {
      return steps.finish(model, current);
    }
  }

  /** End the running warm-up before its time. */
  record EndEarly(String reason) implements OfCurrent {
    /** Makes the text fit for the journal. */
    public EndEarly {
      reason = JournalText.text(reason);
    }

    @Override
    public Next at(PlannedStep current, Model model, Steps steps) {
      return Steps.endEarly(model, current, reason);
    }
  }

  /**
   * End the running step, which drives a load, before it could be measured.
   *
   * @param outcome how it ended
   * @param text what was seen, as typed; may be empty
   */
  record EndAs(Outcome outcome, String text) implements OfCurrent {
    /** Makes the text fit for the journal. */
    public EndAs {
      text = JournalText.text(text);
    }

    /**
     * Reads one line: the outcome by its number, its word or the start of its word, then what was
     * seen; empty where it names no outcome.
     */
    public static Optional<EndAs> typed(String line) {
      String[] parts = line.strip().split("\\s+", 2);
      String seen = parts.length == 2 ? parts[1] : "";
      return Outcome.typed(parts[0]).map(outcome -> new EndAs(outcome, seen));
    }

    @Override
    public Next at(PlannedStep current, Model model, Steps steps) {
      return Steps.endAs(model, current, this);
    }
  }

  /** Skip the current step. */
  record Skip(String reason) implements OfCurrent {
    /** Makes the text fit for the journal. */
    public Skip {
      reason = JournalText.text(reason);
    }

    @Override
    public Next at(PlannedStep current, Model model, Steps steps) {
      return Steps.skip(model, current, reason);
    }
  }

  /** Repeat the warm-up before continuing. */
  record WarmAgain() implements OfCurrent {
    @Override
    public Next at(PlannedStep current, Model model, Steps steps) {
      return Steps.warmAgain(model, current);
    }
  }

  /** Write a note at the current step. */
  record Note(String text) implements AnyTime {
    /** Makes the text fit for the journal. */
    public Note {
      text = JournalText.text(text);
    }

    @Override
    public Next taken(Model model) {
      return Steps.note(model, this);
    }
  }

  /**
   * Say how the amplifier's gain and controls are set.
   *
   * @param text as typed
   */
  record SayControls(String text) implements AnyTime {
    /** Makes the text fit for the journal. */
    public SayControls {
      text = JournalText.text(text);
    }

    @Override
    public Next taken(Model model) {
      return Steps.controls(model, text);
    }
  }

  /**
   * Attach a photo at the current step.
   *
   * @param path the path of the photo, as typed
   * @param caption what it shows, as typed
   */
  record Attach(String path, String caption) implements AnyTime {
    /** Makes the texts fit for the journal. */
    public Attach {
      path = JournalText.text(path);
      caption = JournalText.text(caption);
    }

    /** Reads one line: the path, in double quotes if it contains spaces, then the caption. */
    public static Attach typed(String line) {
      String text = line.strip();
      int close = text.startsWith("\"") ? text.indexOf('"', 1) : -1;
      if (close > 0) {
        return new Attach(text.substring(1, close), text.substring(close + 1).strip());
      }
      String[] parts = text.split("\\s+", 2);
      return new Attach(parts[0], parts.length == 2 ? parts[1] : "");
    }

    @Override
    public Next taken(Model model) {
      return Steps.attach(model, this);
    }
  }

  /** Stop at once: output down, supply off. */
  record Stop() implements Intent {
    @Override
    public Next reach(Model model, Walker walker) {
      return Walker.stop(model.silent());
    }
  }

  /** Say why the walk was stopped. */
  record ExplainStop(String reason) implements InTurn {
    /** Makes the text fit for the journal. */
    public ExplainStop {
      reason = JournalText.text(reason);
    }

    @Override
    public Next whileRunning(Model model, Steps steps) {
      return Next.refused(model, PausedWalk.NOTHING_HELD);
    }

    @Override
    public Next whileStopped(Model model) {
      return PausedWalk.explain(model, reason);
    }
  }

  /** Pause the walk. */
  record Pause() implements InTurn {
    @Override
    public Next whileRunning(Model model, Steps steps) {
      return Steps.pause(model);
    }
  }

  /** Continue after a pause or a stop. */
  record Resume() implements InTurn {
    @Override
    public Next whileRunning(Model model, Steps steps) {
      return Next.refused(model, PausedWalk.NOTHING_HELD);
    }

    @Override
    public Next whilePaused(Model model) {
      return PausedWalk.resume(model);
    }
  }

  /**
   * Write the whole walk anew, what waits for the disk with it, and go on there.
   *
   * @param place a folder or a file, as typed; blank for where the journal was
   */
  record WriteAnew(String place) implements Intent {
    @Override
    public Next reach(Model model, Walker walker) {
      return Walker.writeAnew(model.silent(), place.strip());
    }
  }

  /** Try again to write the facts that are not on disk yet. */
  record Retry() implements Intent {
    @Override
    public Next reach(Model model, Walker walker) {
      return Walker.retry(model.silent());
    }
  }
}
