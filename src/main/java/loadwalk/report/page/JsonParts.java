package loadwalk.report.page;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.util.Optional;
import loadwalk.json.JsonOut;
import loadwalk.quantity.Quantity;
import loadwalk.text.Visible;

/** Writes the parts that sheets and ledgers share as JSON. */
public final class JsonParts {
  private JsonParts() {}

  /**
   * Writes {@code {"value","u"}}, u being the standard uncertainty (k = 1), and {@code "k"}, the
   * factor that expands it to cover 95 %, where that is not 2.
   */
  public static void quantity(JsonGenerator out, String key, Quantity quantity) throws IOException {
    out.writeObjectFieldStart(key);
    JsonOut.number(out, "value", quantity.value());
    JsonOut.number(out, "u", quantity.u());
    if (quantity.coverageFactor() != Quantity.COVERAGE_FACTOR) {
      JsonOut.number(out, "k", quantity.coverageFactor());
    }
    out.writeEndObject();
  }

  /** Writes a quantity if there is one. */
  public static void quantity(JsonGenerator out, String key, Optional<Quantity> quantity)
      throws IOException {
    if (quantity.isPresent()) {
      quantity(out, key, quantity.get());
    }
  }

  /**
   * Returns a JSON text in which every character that would steer a terminal or change the reading
   * direction is escaped. Such characters occur only inside strings, so the meaning does not
   * change.
   */
  public static String harmless(String json) {
    StringBuilder safe = new StringBuilder();
    int plain = 0;
    for (int i = 0; i < json.length(); i++) {
      char c = json.charAt(i);
      if (c >= ' ' && c < 0x7f || c == '\n') {
        continue;
      }
      int code = json.codePointAt(i);
      boolean pair = Character.charCount(code) == 2;
      if (!Visible.is(code)) {
        safe.append(json, plain, i).append(String.format("\\u%04x", (int) c));
        plain = i + 1;
      } else if (pair) {
        i++;
      }
    }
    return plain == 0 ? json : safe.append(json, plain, json.length()).toString();
  }
}
