package loadwalk.json;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import loadwalk.text.Sentence;
import loadwalk.text.Visible;

/**
 * The format that a file states in its key {@code format}: a kind and a number.
 *
 * @param kind the kind, such as "sequence"
 * @param number the version of the format
 */
public record Format(String kind, int number) {
  /** The key that carries the format. */
  public static final String KEY = "format";

  private static final Pattern FORM = Pattern.compile("loadwalk-([a-z-]{1,30})/([1-9]\\d{0,8})");

  /** Reads a format such as {@code loadwalk-sequence/1}. */
  static Optional<Format> of(String text) {
    Matcher matcher = FORM.matcher(text);
    return matcher.matches()
        ? Optional.of(new Format(matcher.group(1), Integer.parseInt(matcher.group(2))))
        : Optional.empty();
  }

  /** Finds the format that a file states, if it is an object that states one. */
  public static Optional<Format> stated(Node node) {
    return node.object()
        .flatMap(object -> object.get(KEY))
        .flatMap(Node::string)
        .flatMap(Format::of);
  }

  /** Returns the text as written in a file. */
  public String text() {
    return "loadwalk-" + kind + "/" + number;
  }

  /**
   * Checks that a file states this format; a wrong or newer one is a fault.
   *
   * @param fields the file's outermost object
   * @param required whether the key must be there
   * @return whether the rest of the file may be read
   */
  public boolean check(Fields fields, boolean required) {
    Optional<Node> node = fields.node(KEY);
    if (node.isEmpty()) {
      if (required) {
        String line = "\"" + KEY + "\": \"" + text() + "\"";
        String sentence = Sentence.of("key «format» is missing; add {}", line);
        fields.faults().add(fields.place(), KEY, sentence);
      }
      return true;
    }
    Optional<String> said = fields.text(KEY);
    if (said.isEmpty()) {
      return false;
    }
    Optional<Format> stated = of(said.get());
    if (stated.isPresent() && stated.get().isSame(this)) {
      return true;
    }
    fields.fault(KEY, refusal(said.get(), stated));
    return false;
  }

  /**
   * Compares like {@code equals}; the one a record generates is linked at first use, which takes as
   * long as reading a file.
   */
  private boolean isSame(Format other) {
    return kind.equals(other.kind) && number == other.number;
  }

  private String refusal(String said, Optional<Format> stated) {
    String quoted = Visible.quoted(said);
    if (stated.isPresent() && stated.get().kind.equals(kind)) {
      return Sentence.of(
          "this file is in the newer format {}; this Loadwalk reads up to «{}»: use a newer"
              + " Loadwalk",
          quoted,
          text());
    }
    return Sentence.of("the format must be «{}», not {}", text(), quoted);
  }
}
