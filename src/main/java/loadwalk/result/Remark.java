package loadwalk.result;

import java.util.Objects;

/**
 * Says in one sentence what a result rests on.
 *
 * @param code a fixed word for programs, such as {@code total-is-twice-one}
 * @param text one short sentence without a full stop
 */
public record Remark(String code, String text) {
  /** Checks that nothing is missing. */
  public Remark {
    Objects.requireNonNull(code, "code");
    Objects.requireNonNull(text, "text");
  }
}
