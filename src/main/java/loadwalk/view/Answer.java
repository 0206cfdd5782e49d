package loadwalk.view;

import java.util.List;
import java.util.Optional;
import loadwalk.walk.Intent;

/**
 * What a key did.
 *
 * @param next the screen to show
 * @param intents what the operator wants of the walk
 * @param wishes what is asked of the outside world
 * @param notice a sentence to show, such as why a key does nothing now
 */
public record Answer(
    Screen next, List<Intent> intents, List<Wish> wishes, Optional<String> notice) {
  /** Copies the lists. */
  public Answer {
    intents = List.copyOf(intents);
    wishes = List.copyOf(wishes);
  }

  static Answer stay(Screen screen) {
    return new Answer(screen, List.of(), List.of(), Optional.empty());
  }

  static Answer want(Screen next, Intent... intents) {
    return new Answer(next, List.of(intents), List.of(), Optional.empty());
  }

  static Answer wish(Screen next, Wish... wishes) {
    return new Answer(next, List.of(), List.of(wishes), Optional.empty());
  }

  static Answer say(Screen next, String notice) {
    return new Answer(next, List.of(), List.of(), Optional.of(notice));
  }
}
