package loadwalk.json;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.exc.StreamConstraintsException;
import com.fasterxml.jackson.core.io.JsonEOFException;
import java.util.LinkedHashMap;
import java.util.Map;
import loadwalk.text.Sentence;
import loadwalk.text.Visible;

/** Says in one plain sentence why a text is not JSON. */
final class SyntaxSentence {
  private static final Map<String, String> SENTENCES = new LinkedHashMap<>();

  private static final String VALUE =
      "expected text in double quotes, a number, true, false, null or an opening bracket here";

  private static final String NO_COMMENTS = "this kind of file takes no comments";
  private static final String NO_NUMBER = "no meter reads NaN or Infinity; write a number";

  static {
    say("comma to separate", "a comma or a closing bracket is missing before this");
    say("to start field name", "expected a key in double quotes here");
    say("colon to separate", "a colon is missing between key and value");
    say("non-standard) comment", NO_COMMENTS);
    say("maybe a (non-standard)", NO_COMMENTS);
    say("NaN'", NO_NUMBER);
    say("Infinity'", NO_NUMBER);
    say("zeroes", "a number must not have leading zeros");
    say("decimal point", "a decimal point needs a digit on each side");
    say("unquoted character", "a line break or control character within quotes must be escaped");
    say("escape", "JSON does not know this escape");
    say("surrogate", "this text holds half a character (a lone surrogate)");
    say("was expecting closing", "the closing double quote is missing");
    say("close marker", "this closing bracket does not match the opening one");
    say("numeric value", "JSON does not write numbers this way");
    say("Unrecognized token", VALUE);
    say("expected a va", VALUE);
  }

  private SyntaxSentence() {}

  private static void say(String part, String sentence) {
    SENTENCES.put(part, sentence);
  }

  static String of(JsonProcessingException e, String text) {
    if (e instanceof StreamConstraintsException) {
      return "a key, text or number in the file is too long, or the nesting is too deep";
    }
    String said = e.getOriginalMessage() == null ? "" : e.getOriginalMessage();
    if (e instanceof JsonEOFException && !said.contains("closing quote")) {
      return "the text ends too early: a bracket or a value is not closed";
    }
    for (Map.Entry<String, String> entry : SENTENCES.entrySet()) {
      if (said.contains(entry.getKey())) {
        return entry.getValue();
      }
    }
    return notJson(e, text);
  }

  private static String notJson(JsonProcessingException e, String text) {
    long at = e.getLocation() == null ? -1 : e.getLocation().getCharOffset();
    if (at < 0 || at >= text.length()) {
      return "this is not JSON";
    }
    int end = (int) Math.min(at + 12, text.length());
    return Sentence.of("this is not JSON near {}", Visible.quoted(text.substring((int) at, end)));
  }
}
