package loadwalk.walk;

import java.util.List;
import java.util.OptionalLong;
import loadwalk.bench.Amplifier;
import loadwalk.bench.Bench;
import loadwalk.walk.fact.Stamped;
import loadwalk.wave.file.CaptureSetup;

/**
 * An effect: something that a walk or a screen wants done in the outside world.
 *
 * <p>Effects are plain data, so that a test can compare them with what is expected. {@link
 * EffectPerformer} performs them, and every answer comes back as an event.
 */
public sealed interface Effect {

  /**
   * Performs this effect.
   *
   * @throws X what the performer throws if it cannot
   */
  <R, X extends Exception> R performedBy(EffectPerformer<R, X> performer) throws X;

  /**
   * Writes facts to the journal, in order, and forces them to disk.
   *
   * @param facts the facts; the answer is {@link Event.Kept} or {@link Event.NotKept}
   */
  record AppendJournal(List<Stamped> facts) implements Effect {
    /** Copies the list. */
    public AppendJournal {
      facts = List.copyOf(facts);
    }

    @Override
    public <R, X extends Exception> R performedBy(EffectPerformer<R, X> performer) throws X {
      return performer.appendJournal(this);
    }
  }

  /**
   * Writes the whole walk anew, with facts behind those on the disk so far, and goes on there.
   *
   * @param place a folder or a file, as typed; blank for where the journal was
   * @param facts the facts; the answer is {@link Event.Kept} or {@link Event.NotWrittenAnew}
   */
  record WriteAnew(String place, List<Stamped> facts) implements Effect {
    /** Copies the list. */
    public WriteAnew {
      facts = List.copyOf(facts);
    }

    @Override
    public <R, X extends Exception> R performedBy(EffectPerformer<R, X> performer) throws X {
      return performer.writeAnew(this);
    }
  }

  /**
   * Finds a photo and keeps a copy of it beside the walk's journal.
   *
   * @param walk the walk's name
   * @param path the path of the photo, as typed
   * @param caption what it shows; the answer, {@link Event.PhotoKept} or {@link
   *     Event.PhotoRefused}, gives it back
   */
  record KeepPhoto(String walk, String path, String caption) implements Effect {
    @Override
    public <R, X extends Exception> R performedBy(EffectPerformer<R, X> performer) throws X {
      return performer.keepPhoto(this);
    }
  }

  /** Rings the terminal's bell. */
  record Bell() implements Effect {
    @Override
    public <R, X extends Exception> R performedBy(EffectPerformer<R, X> performer) throws X {
      return performer.bell();
    }
  }

  /**
   * Open a new walk.
   *
   * @param sequence the sequence's name
   * @param amplifier the amplifier
   * @param bench the bench
   * @param practiceSeed the seed of the practice amplifier, if it is one
   * @param speed how many warm-up seconds pass in one second
   */
  record OpenWalk(
      String sequence, Amplifier amplifier, Bench bench, OptionalLong practiceSeed, int speed)
      implements Effect {
    @Override
    public <R, X extends Exception> R performedBy(EffectPerformer<R, X> performer) throws X {
      return performer.openWalk(this);
    }
  }

  /** Open a walk of the practice amplifier with a seed. */
  record OpenPractice(String sequence, long seed, int speed) implements Effect {
    @Override
    public <R, X extends Exception> R performedBy(EffectPerformer<R, X> performer) throws X {
      return performer.openPractice(this);
    }
  }

  /** Continue a kept walk. */
  record ResumeWalk(String walk) implements Effect {
    @Override
    public <R, X extends Exception> R performedBy(EffectPerformer<R, X> performer) throws X {
      return performer.resumeWalk(this);
    }
  }

  /** Show the plan of the bench for a sequence before anything is connected. */
  record ShowPlan(String sequence, Amplifier amplifier, Bench bench) implements Effect {
    @Override
    public <R, X extends Exception> R performedBy(EffectPerformer<R, X> performer) throws X {
      return performer.showPlan(this);
    }
  }

  /** Show the plan of the bench for the open walk, with what has been measured so far. */
  record ShowPlanSoFar() implements Effect {
    @Override
    public <R, X extends Exception> R performedBy(EffectPerformer<R, X> performer) throws X {
      return performer.showPlanSoFar();
    }
  }

  /** Show the sheet of the open walk or of a kept one. */
  record ShowSheet(String walk) implements Effect {
    @Override
    public <R, X extends Exception> R performedBy(EffectPerformer<R, X> performer) throws X {
      return performer.showSheet(this);
    }
  }

  /**
   * Show all walks side by side.
   *
   * @param sort the index of the order, wrapping around
   * @param filter words that each walk shown must contain
   */
  record ShowLedger(int sort, String filter) implements Effect {
    @Override
    public <R, X extends Exception> R performedBy(EffectPerformer<R, X> performer) throws X {
      return performer.showLedger(this);
    }
  }

  /** Compare two to four walks, by name. */
  record Compare(List<String> walks) implements Effect {
    /** Copies the list. */
    public Compare {
      walks = List.copyOf(walks);
    }

    @Override
    public <R, X extends Exception> R performedBy(EffectPerformer<R, X> performer) throws X {
      return performer.compare(this);
    }
  }

  /** Stop the work that runs in the background. */
  record StopWork() implements Effect {
    @Override
    public <R, X extends Exception> R performedBy(EffectPerformer<R, X> performer) throws X {
      return performer.stopWork();
    }
  }

  /** Let the simulated operator answer the current step. */
  record FillStep() implements Effect {
    @Override
    public <R, X extends Exception> R performedBy(EffectPerformer<R, X> performer) throws X {
      return performer.fillStep();
    }
  }

  /**
   * Read a captured wave from a file.
   *
   * @param file its path
   * @param setup its channel and calibration
   * @param take whether its values enter the current step at once
   */
  record ReadCapture(String file, CaptureSetup setup, boolean take) implements Effect {
    @Override
    public <R, X extends Exception> R performedBy(EffectPerformer<R, X> performer) throws X {
      return performer.readCapture(this);
    }
  }

  /** Record that the operator has read and confirmed the cautions of a capture. */
  record ConfirmCautions() implements Effect {
    @Override
    public <R, X extends Exception> R performedBy(EffectPerformer<R, X> performer) throws X {
      return performer.confirmCautions();
    }
  }

  /** Enter the values of the last wave read into a step. */
  record TakeCapture(String step) implements Effect {
    @Override
    public <R, X extends Exception> R performedBy(EffectPerformer<R, X> performer) throws X {
      return performer.takeCapture(this);
    }
  }

  /** Start or stop listening to the sound input. */
  record Listen(boolean on) implements Effect {
    @Override
    public <R, X extends Exception> R performedBy(EffectPerformer<R, X> performer) throws X {
      return performer.listen(this);
    }
  }

  /** Hold the values of the sound input, or release them. */
  record Hold(boolean on) implements Effect {
    @Override
    public <R, X extends Exception> R performedBy(EffectPerformer<R, X> performer) throws X {
      return performer.hold(this);
    }
  }

  /** Keep the held wave as a file, so that a step can take its values. */
  record KeepHeld(String step) implements Effect {
    @Override
    public <R, X extends Exception> R performedBy(EffectPerformer<R, X> performer) throws X {
      return performer.keepHeld(this);
    }
  }

  /** Open the addresses of meters that the bench of the open walk names, as the operator wants. */
  record ConnectMeters() implements Effect {
    @Override
    public <R, X extends Exception> R performedBy(EffectPerformer<R, X> performer) throws X {
      return performer.connectMeters();
    }
  }

  /** Close the open walk and return to the home screen; the walk stays on disk. */
  record CloseWalk() implements Effect {
    @Override
    public <R, X extends Exception> R performedBy(EffectPerformer<R, X> performer) throws X {
      return performer.closeWalk();
    }
  }

  /** Leave Loadwalk; an open walk stays on disk. */
  record Leave() implements Effect {
    @Override
    public <R, X extends Exception> R performedBy(EffectPerformer<R, X> performer) throws X {
      return performer.leave();
    }
  }
}
