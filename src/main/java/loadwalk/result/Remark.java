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

  /**
   * Compares as a record does, without linking that at run time, which costs more than a remark.
   */
  @Override
  public boolean equals(Object other) {
    return other instanceof Remark remark && code.equals(remark.code) && text.equals(remark.text);
  }

  @Override
  public int hashCode() {
    return 31 * code.hashCode() + text.hashCode();
  }
}
