package loadwalk.view.screen;

import java.util.List;
import java.util.Optional;
import loadwalk.walk.Effect;
import loadwalk.walk.Intent;

/**
 * What a key did.
 *
 * @param next the screen to show
 * @param intents what the operator wants of the walk
 * @param effects what the outside world is to do
 * @param notice a sentence to show, such as why a key does nothing now
 */
public record Answer(
    Screen next, List<Intent> intents, List<Effect> effects, Optional<String> notice) {
  /** Copies the lists. */
  public Answer {
    intents = List.copyOf(intents);
    effects = List.copyOf(effects);
  }

  /** Shows a screen; nothing else comes of the key. */
  public static Answer stay(Screen screen) {
    return new Answer(screen, List.of(), List.of(), Optional.empty());
  }

  /** Shows a screen and asks something of the walk. */
  public static Answer want(Screen next, Intent... intents) {
    return new Answer(next, List.of(intents), List.of(), Optional.empty());
  }

  /** Shows a screen and asks something of the outside world. */
  public static Answer ask(Screen next, Effect... effects) {
    return new Answer(next, List.of(), List.of(effects), Optional.empty());
  }

  /** Shows a screen and a sentence on it. */
  public static Answer say(Screen next, String notice) {
    return new Answer(next, List.of(), List.of(), Optional.of(notice));
  }
}
