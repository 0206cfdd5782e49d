package loadwalk.plain;

import java.util.Locale;
import java.util.Optional;
import loadwalk.bench.ReadingId;
import loadwalk.plain.PlainLine.Question;
import loadwalk.result.Criterion;
import loadwalk.walk.Intent;
import loadwalk.walk.Model;
import loadwalk.wave.CaptureSetup;

/** Reads a line of plain mode: a word, then what belongs to it. */
public final class PlainParser {
  private PlainParser() {}

  /**
   * Returns what a line means at this point of a walk; never throws.
   *
   * @param kept what was said of captured waves so far
   */
  public static PlainLine parse(String line, Model model, CaptureSetup kept) {
    String text = line.strip();
    if (text.isEmpty()) {
      return new PlainLine.Asks(Question.NOTHING);
    }
    String word = text.split("\\s+", 2)[0];
    String rest = text.substring(word.length()).strip();
    Optional<ReadingId> reading = ReadingId.ofKey(word);
    String step = model.state().currentId();
    if (reading.isPresent()) {
      return new PlainLine.Wants(new Intent.Enter(step, reading.get(), rest));
    }
    switch (word.toLowerCase(Locale.ROOT)) {
      case "help":
        return new PlainLine.Asks(Question.HELP);
      case "brief":
        return new PlainLine.Asks(Question.BRIEF);
      case "sheet":
        return new PlainLine.Asks(Question.SHEET);
      case "fill":
        return new PlainLine.Asks(Question.FILL);
      case "quit":
        return new PlainLine.Asks(Question.QUIT);
      case "amend":
        return amend(rest);
      case "stand":
        return stand(rest, step);
      case "criterion":
        return criterion(rest, step);
      case "pair":
        return pair(rest, step);
      case "wave":
        return PlainWave.parse(rest, kept);
      default:
        return plain(word, rest);
    }
  }

  private static PlainLine plain(String word, String rest) {
    switch (word.toLowerCase(Locale.ROOT)) {
      case "begin":
        return new PlainLine.Wants(new Intent.Begin());
      case "arm":
        return new PlainLine.Wants(new Intent.Arm(rest));
      case "lift":
        return new PlainLine.Wants(new Intent.LiftHalt(rest));
      case "done":
        return new PlainLine.Wants(new Intent.Finish());
      case "early":
        return new PlainLine.Wants(new Intent.EndEarly(rest));
      case "skip":
        return new PlainLine.Wants(new Intent.Skip(rest));
      case "note":
        return rest.isBlank()
            ? new PlainLine.Problem("Type: note TEXT.")
            : new PlainLine.Wants(new Intent.Note(rest));
      case "photo":
        return new PlainLine.Wants(Intent.Attach.typed(rest));
      case "warm-again":
        return new PlainLine.Wants(new Intent.WarmAgain());
      case "stop":
        return new PlainLine.Wants(new Intent.Stop());
      case "because":
        return new PlainLine.Wants(new Intent.ExplainStop(rest));
      case "pause":
        return new PlainLine.Wants(new Intent.Pause());
      case "go-on":
        return new PlainLine.Wants(new Intent.Resume());
      case "retry":
        return new PlainLine.Wants(new Intent.Retry());
      default:
        return new PlainLine.Problem("«" + shown(word) + "» is no word of plain mode; type help.");
    }
  }

  private static PlainLine amend(String rest) {
    String[] words = rest.split("\\s+", 3);
    Optional<ReadingId> reading = words.length == 3 ? ReadingId.ofKey(words[1]) : Optional.empty();
    return reading.isPresent()
        ? new PlainLine.Wants(new Intent.Enter(words[0], reading.get(), words[2]))
        : new PlainLine.Problem(
            "Type: amend STEP READING VALUE, as in amend stereo-4 outputVolts 13.4 V.");
  }

  private static PlainLine stand(String rest, String step) {
    String[] words = rest.split("\\s+", 2);
    Optional<ReadingId> reading = words.length == 2 ? ReadingId.ofKey(words[0]) : Optional.empty();
    return reading.isPresent()
        ? new PlainLine.Wants(new Intent.StandBy(step, reading.get(), words[1]))
        : new PlainLine.Problem("Type: stand READING REASON.");
  }

  private static PlainLine criterion(String rest, String step) {
    Optional<Criterion> criterion = Criterion.ofWord(rest);
    return criterion.isPresent()
        ? new PlainLine.Wants(new Intent.SetCriterion(step, criterion.get()))
        : new PlainLine.Problem(
            "Type: criterion thd-limit, criterion clipping-onset or criterion below-limit.");
  }

  private static PlainLine pair(String rest, String step) {
    String[] words = rest.split("\\s+", 2);
    return words.length == 2
        ? new PlainLine.Wants(new Intent.AddPair(step, words[0], words[1]))
        : new PlainLine.Problem("Type: pair VOLTS THD, as in pair 13.2 0.8%.");
  }

  private static String shown(String word) {
    String clean = word.replaceAll("\\p{C}", "?");
    return clean.length() <= 30 ? clean : clean.substring(0, 30) + "…";
  }
}
