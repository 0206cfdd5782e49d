package loadwalk.json;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.exc.StreamConstraintsException;
import com.fasterxml.jackson.core.io.JsonEOFException;
import java.util.LinkedHashMap;
import java.util.Map;
import loadwalk.text.Visible;

/** Says in one plain sentence why a text is not JSON. */
final class Complaint {
  private static final Map<String, String> SENTENCES = new LinkedHashMap<>();

  private static final String VALUE =
      "a text in double quotes, a number, true, false, null or an opening bracket is expected";

  static {
    say("comma to separate", "a comma or a closing bracket is missing before this");
    say("to start field name", "a key in double quotes is expected here");
    say("colon to separate", "a colon is missing between key and value");
    say("non-standard) comment", "comments are not taken in this kind of file");
    say("maybe a (non-standard)", "comments are not taken in this kind of file");
    say("NaN'", "NaN and Infinity are not numbers that can be measured");
    say("Infinity'", "NaN and Infinity are not numbers that can be measured");
    say("zeroes", "a number must not start with a zero before other digits");
    say("decimal point", "a decimal point needs a digit on each side");
    say("unquoted character", "a line break or control character inside a text must be escaped");
    say("escape", "an escape inside a text is not one that JSON knows");
    say("surrogate", "this text holds half a character (a lone surrogate)");
    say("was expecting closing", "a text is not closed by a double quote");
    say("close marker", "a closing bracket does not fit here");
    say("numeric value", "a number is not written as JSON has it");
    say("Unrecognized token", VALUE);
    say("expected a va", VALUE);
  }

  private Complaint() {}

  private static void say(String part, String sentence) {
    SENTENCES.put(part, sentence);
  }

  static String of(JsonProcessingException e, String text) {
    if (e instanceof StreamConstraintsException) {
      return "the file holds a key, text or number that is too long, or is nested too deep";
    }
    String said = e.getOriginalMessage() == null ? "" : e.getOriginalMessage();
    if (e instanceof JsonEOFException && !said.contains("closing quote")) {
      return "the text ends before its last bracket or value is closed";
    }
    for (Map.Entry<String, String> entry : SENTENCES.entrySet()) {
      if (said.contains(entry.getKey())) {
        return entry.getValue();
      }
    }
    return "this is not JSON" + character(e, text);
  }

  private static String character(JsonProcessingException e, String text) {
    long at = e.getLocation() == null ? -1 : e.getLocation().getCharOffset();
    if (at < 0 || at >= text.length()) {
      return "";
    }
    return " near "
        + Visible.quoted(text.substring((int) at, (int) Math.min(at + 12, text.length())));
  }
}
