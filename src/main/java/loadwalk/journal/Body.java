package loadwalk.journal;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.core.StreamReadFeature;
import java.io.IOException;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Checks a body as far as framing needs: whether it is one JSON object, and which format it names.
 */
final class Body {
  /** The format that new journals are written in. */
  static final String FORMAT = "loadwalk-journal/2";

  private static final int NEWEST = 2;

  private static final JsonFactory JSON =
      JsonFactory.builder().enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION).build();
  private static final Pattern OUR_FORMAT = Pattern.compile("loadwalk-journal/([1-9][0-9]{0,8})");

  private Body() {}

  /**
   * Returns what makes a text invalid as a body; empty if it is valid.
   *
   * @param bytes the text in UTF-8, which is much faster to scan
   */
  static Optional<String> fault(byte[] bytes, String text) {
    for (byte each : bytes) {
      if (each >= 0 && each < 0x20) {
        return Optional.of("holds a control character");
      }
    }
    try (JsonParser parser = JSON.createParser(text)) {
      if (parser.nextToken() != JsonToken.START_OBJECT) {
        return Optional.of("is not a JSON object");
      }
      parser.skipChildren();
      boolean closed = parser.currentToken() == JsonToken.END_OBJECT;
      return closed && parser.nextToken() == null
          ? Optional.empty()
          : Optional.of("does not end with its JSON object");
    } catch (IOException e) {
      return Optional.of("is not JSON");
    }
  }

  /** Returns which format the body of a first record names. */
  static Facts.Head head(String text) {
    Matcher named = OUR_FORMAT.matcher(format(text));
    if (!named.matches()) {
      return Facts.Head.ALIEN;
    }
    return Integer.parseInt(named.group(1)) <= NEWEST ? Facts.Head.OURS : Facts.Head.NEWER;
  }

  /** Tells whether the records of a journal with this first body name the record before them. */
  static boolean isChained(String text) {
    return format(text).equals(FORMAT);
  }

  /** Returns the value of the key {@code format} as text; empty if there is none. */
  static String format(String text) {
    try (JsonParser parser = JSON.createParser(text)) {
      parser.nextToken();
      while (parser.nextToken() == JsonToken.FIELD_NAME) {
        String key = parser.currentName();
        parser.nextToken();
        if (key.equals("format")) {
          return parser.getText();
        }
        parser.skipChildren();
      }
      return "";
    } catch (IOException e) {
      return "";
    }
  }
}
