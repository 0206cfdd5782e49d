package loadwalk.plain;

import java.util.Locale;
import java.util.Optional;
import loadwalk.result.Criterion;
import loadwalk.text.Sentence;
import loadwalk.view.state.Waves;
import loadwalk.walk.Effect;
import loadwalk.walk.Intent;
import loadwalk.walk.Model;

/** Reads a line of plain mode: a command word, then its arguments. */
public final class PlainParser {
  private PlainParser() {}

  /**
   * Returns what a line means at this point of a walk; never throws.
   *
   * @param waves the captured waves of the walk so far
   */
  public static PlainAnswer parse(String line, Model model, Waves waves) {
    String text = line.strip();
    if (text.isEmpty()) {
      return PlainAnswer.nothing();
    }
    String word = text.split("\\s+", 2)[0];
    String rest = text.substring(word.length()).strip();
    Optional<ReadingName> reading = ReadingName.at(text);
    String step = model.state().currentId();
    if (reading.isPresent()) {
      return PlainAnswer.want(new Intent.Enter(step, reading.get().id(), reading.get().rest()));
    }
    switch (word.toLowerCase(Locale.ROOT)) {
      case "help":
        return PlainAnswer.show(PlainAnswer.Text.HELP);
      case "brief":
        return PlainAnswer.show(PlainAnswer.Text.BRIEF);
      case "sheet":
        return PlainAnswer.ask(new Effect.ShowSheet(model.state().opened().walk()));
      case "fill":
        return PlainAnswer.ask(new Effect.FillStep());
      case "quit":
        return PlainAnswer.ask(new Effect.Leave());
      case "amend":
        return amend(rest);
      case "stand":
        return stand(rest, step);
      case "criterion":
        return criterion(rest, step);
      case "pair":
        return pair(rest, step);
      case "wave":
        return PlainWave.parse(rest, waves.setup(), waves.cautioned());
      default:
        return plain(word, rest);
    }
  }

  private static PlainAnswer plain(String word, String rest) {
    switch (word.toLowerCase(Locale.ROOT)) {
      case "begin":
        return PlainAnswer.want(new Intent.Begin());
      case "arm":
        return PlainAnswer.want(new Intent.Arm(rest));
      case "lift":
        return PlainAnswer.want(new Intent.LiftHalt(rest));
      case "done":
        return PlainAnswer.want(new Intent.Finish());
      case "early":
        return PlainAnswer.want(new Intent.EndEarly(rest));
      case "ended":
        return ended(rest);
      case "skip":
        return PlainAnswer.want(new Intent.Skip(rest));
      case "note":
        return rest.isBlank()
            ? PlainAnswer.say("Type: note TEXT.")
            : PlainAnswer.want(new Intent.Note(rest));
      case "controls":
        return PlainAnswer.want(new Intent.SayControls(rest));
      case "photo":
        return PlainAnswer.want(Intent.Attach.typed(rest));
      case "warm-again":
        return PlainAnswer.want(new Intent.WarmAgain());
      case "stop":
        return PlainAnswer.want(new Intent.Stop());
      case "because":
        return PlainAnswer.want(new Intent.ExplainStop(rest));
      case "pause":
        return PlainAnswer.want(new Intent.Pause());
      case "go-on":
        return PlainAnswer.want(new Intent.Resume());
      case "connect":
        return PlainAnswer.ask(new Effect.ConnectMeters());
      case "write-all":
        return PlainAnswer.want(new Intent.WriteAnew(rest));
      case "retry":
        return PlainAnswer.want(new Intent.Retry());
      default:
        return PlainAnswer.say(Sentence.of("«{}» is not a command; type help.", shown(word)));
    }
  }

  private static PlainAnswer amend(String rest) {
    String[] words = rest.split("\\s+", 2);
    Optional<ReadingName> reading = words.length == 2 ? ReadingName.at(words[1]) : Optional.empty();
    return reading.filter(read -> !read.rest().isEmpty()).isPresent()
        ? PlainAnswer.want(new Intent.Enter(words[0], reading.get().id(), reading.get().rest()))
        : PlainAnswer.say(
            "Type: amend STEP READING VALUE, as in amend stereo-4 outputVolts 13.4 V.");
  }

  private static PlainAnswer stand(String rest, String step) {
    Optional<ReadingName> reading = ReadingName.at(rest);
    return reading.filter(read -> !read.rest().isEmpty()).isPresent()
        ? PlainAnswer.want(new Intent.StandBy(step, reading.get().id(), reading.get().rest()))
        : PlainAnswer.say("Type: stand READING REASON.");
  }

  private static PlainAnswer criterion(String rest, String step) {
    Optional<Criterion> criterion = Criterion.ofWord(rest).filter(Criterion.sayable()::contains);
    return criterion.isPresent()
        ? PlainAnswer.want(new Intent.SetCriterion(step, criterion.get()))
        : PlainAnswer.say(
            "Type: criterion thd-limit, criterion clipping-onset, criterion below-limit or"
                + " criterion above-limit.");
  }

  private static PlainAnswer ended(String rest) {
    return Intent.EndAs.typed(rest)
        .map(PlainAnswer::want)
        .orElseGet(
            () ->
                PlainAnswer.say(
                    "Type: ended protected, ended fuse-opened, ended gave-out or ended not-reached,"
                        + " then what you saw."));
  }

  private static PlainAnswer pair(String rest, String step) {
    String[] words = rest.split("\\s+", 2);
    return words.length == 2
        ? PlainAnswer.want(new Intent.AddPair(step, words[0], words[1]))
        : PlainAnswer.say("Type: pair VOLTS THD, as in pair 13.2 0.8%.");
  }

  private static String shown(String word) {
    String clean = word.replaceAll("\\p{C}", "?");
    return clean.length() <= 30 ? clean : clean.substring(0, 30) + "…";
  }
}
