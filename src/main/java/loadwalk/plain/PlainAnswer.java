package loadwalk.plain;

import java.util.List;
import java.util.Optional;
import loadwalk.walk.Effect;
import loadwalk.walk.Intent;

/**
 * The outcome of a line in plain mode, like a screen's answer to a key.
 *
 * @param intents the operator's intents for the walk
 * @param effects the effects requested outside the walk
 * @param text the text to show
 * @param notice a message to the operator, such as why the line is not understood
 */
public record PlainAnswer(
    List<Intent> intents, List<Effect> effects, Optional<Text> text, Optional<String> notice) {

  /** The texts that only plain mode has. */
  public enum Text {
    HELP,
    BRIEF,
    CAUTIONS
  }

  /** Copies the lists. */
  public PlainAnswer {
    intents = List.copyOf(intents);
    effects = List.copyOf(effects);
  }

  static PlainAnswer nothing() {
    return new PlainAnswer(List.of(), List.of(), Optional.empty(), Optional.empty());
  }

  static PlainAnswer want(Intent intent) {
    return new PlainAnswer(List.of(intent), List.of(), Optional.empty(), Optional.empty());
  }

  static PlainAnswer ask(Effect effect) {
    return new PlainAnswer(List.of(), List.of(effect), Optional.empty(), Optional.empty());
  }

  static PlainAnswer show(Text text) {
    return new PlainAnswer(List.of(), List.of(), Optional.of(text), Optional.empty());
  }

  static PlainAnswer say(String notice) {
    return new PlainAnswer(List.of(), List.of(), Optional.empty(), Optional.of(notice));
  }

  PlainAnswer saying(String sentence) {
    return new PlainAnswer(intents, effects, text, Optional.of(sentence));
  }
}
