package loadwalk.plain;

import java.util.List;
import java.util.Optional;
import loadwalk.walk.Effect;
import loadwalk.walk.Intent;

/**
 * What a line of plain mode comes to, as a screen's answer is what a key comes to.
 *
 * @param intents what the operator wants of the walk
 * @param effects what is asked of the outside world
 * @param text the text that is to be shown
 * @param notice a sentence to tell, such as why the line is not understood
 */
public record PlainAnswer(
    List<Intent> intents, List<Effect> effects, Optional<Text> text, Optional<String> notice) {

  /** The texts that plain mode has of its own. */
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
