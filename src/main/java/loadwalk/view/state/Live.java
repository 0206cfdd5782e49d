package loadwalk.view.state;

import java.util.Optional;
import loadwalk.wave.analysis.LiveReading;

/**
 * What the live input shows.
 *
 * @param state what it does
 * @param why why there is none, in a sentence
 * @param reading what it shows now, or showed when it was held
 */
public record Live(State state, Optional<String> why, Optional<LiveReading> reading) {

  /** What the input does. */
  public enum State {
    OFF,
    OPENING,
    NONE,
    HEARING,
    HELD
  }

  /** Nothing is listened to. */
  public static final Live OFF = new Live(State.OFF, Optional.empty(), Optional.empty());

  /** The input is being opened. */
  public static final Live OPENING = new Live(State.OPENING, Optional.empty(), Optional.empty());

  /** Returns that there is no input. */
  public static Live none(String why) {
    return new Live(State.NONE, Optional.of(why), Optional.empty());
  }

  /** Tells whether the input is open or being opened. */
  public boolean isOn() {
    return state != State.OFF && state != State.NONE;
  }
}
