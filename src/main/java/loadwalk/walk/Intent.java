package loadwalk.walk;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import loadwalk.bench.ReadingId;
import loadwalk.result.Criterion;

/** Something the operator wants. */
public sealed interface Intent extends Event {

  /** Start the briefed step; only a clear one starts without arming. */
  record Begin() implements Intent {}

  /**
   * Arm the briefed step.
   *
   * @param text the load in ohms that is really connected, as typed
   */
  record Arm(String text) implements Intent {
    /** Makes the text whole. */
    public Arm {
      text = TypedText.text(text);
    }
  }

  /**
   * Lift the halt of the briefed step.
   *
   * @param reason why, as typed
   */
  record LiftHalt(String reason) implements Intent {
    /** Makes the text whole. */
    public LiftHalt {
      reason = TypedText.text(reason);
    }
  }

  /**
   * Enter or amend a reading.
   *
   * @param step the step's id
   * @param reading the reading
   * @param text the value as typed
   */
  record Enter(String step, ReadingId reading, String text) implements Intent {
    /** Makes the text whole. */
    public Enter {
      text = TypedText.text(text);
    }
  }

  /**
   * Enter several readings of a step taken at one moment; they are judged together.
   *
   * @param step the step's id
   * @param texts the values as typed, in order
   * @param instruments what those were read from for which a meter itself was asked
   */
  record EnterAll(String step, Map<ReadingId, String> texts, Map<ReadingId, Instrument> instruments)
      implements Intent {
    /** Makes values that were typed. */
    public EnterAll(String step, Map<ReadingId, String> texts) {
      this(step, texts, Map.of());
    }

    /** Copies the maps, order kept, and makes the texts whole. */
    public EnterAll {
      Map<ReadingId, String> copy = new LinkedHashMap<>(texts);
      copy.replaceAll((id, text) -> TypedText.text(text));
      texts = Collections.unmodifiableMap(copy);
      instruments = Map.copyOf(instruments);
    }
  }

  /**
   * Take what a captured wave shows as the readings of a step.
   *
   * @param step the step's id
   * @param capture what the wave shows
   * @param wallMillis when it was read, ms since 1970
   */
  record TakeCapture(String step, Capture capture, long wallMillis) implements Intent {}

  /** Stand by a doubted reading. */
  record StandBy(String step, ReadingId reading, String reason) implements Intent {
    /** Makes the text whole. */
    public StandBy {
      reason = TypedText.text(reason);
    }
  }

  /** Say at what the step's output was read. */
  record SetCriterion(String step, Criterion criterion) implements Intent {}

  /**
   * Add volts and THD read together near the limit.
   *
   * @param voltsText output volts, as typed
   * @param thdText THD in percent, as typed
   */
  record AddPair(String step, String voltsText, String thdText) implements Intent {
    /** Makes the text whole. */
    public AddPair {
      voltsText = TypedText.text(voltsText);
      thdText = TypedText.text(thdText);
    }
  }

  /** Finish the running step. */
  record Finish() implements Intent {}

  /** End the running warm-up before its time. */
  record EndEarly(String reason) implements Intent {
    /** Makes the text whole. */
    public EndEarly {
      reason = TypedText.text(reason);
    }
  }

  /** Pass over the current step. */
  record Skip(String reason) implements Intent {
    /** Makes the text whole. */
    public Skip {
      reason = TypedText.text(reason);
    }
  }

  /** Go back to the warm-up before going on. */
  record WarmAgain() implements Intent {}

  /** Write a note at the current step. */
  record Note(String text) implements Intent {
    /** Makes the text whole. */
    public Note {
      text = TypedText.text(text);
    }
  }

  /**
   * Attach a photo at the current step.
   *
   * @param path where it lies, as typed
   * @param caption what it shows, as typed
   */
  record Attach(String path, String caption) implements Intent {
    /** Makes the texts whole. */
    public Attach {
      path = TypedText.text(path);
      caption = TypedText.text(caption);
    }

    /** Reads one line: the path, in double quotes where it holds spaces, then the caption. */
    public static Attach typed(String line) {
      String text = line.strip();
      int close = text.startsWith("\"") ? text.indexOf('"', 1) : -1;
      if (close > 0) {
        return new Attach(text.substring(1, close), text.substring(close + 1).strip());
      }
      String[] parts = text.split("\\s+", 2);
      return new Attach(parts[0], parts.length == 2 ? parts[1] : "");
    }
  }

  /** Stop at once: output down, supply off. */
  record Stop() implements Intent {}

  /** Say why the walk was stopped. */
  record ExplainStop(String reason) implements Intent {
    /** Makes the text whole. */
    public ExplainStop {
      reason = TypedText.text(reason);
    }
  }

  /** Pause the walk. */
  record Pause() implements Intent {}

  /** Go on after a pause or a stop. */
  record Resume() implements Intent {}

  /** Try again to write what is not on disk yet. */
  record Retry() implements Intent {}
}
