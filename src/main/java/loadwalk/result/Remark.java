package loadwalk.result;

import java.util.Objects;

/**
 * One sentence on the basis of a result.
 *
 * @param code a fixed word for programs, such as {@code total-is-twice-one}
 * @param text one short sentence without a full stop
 */
public record Remark(String code, String text) {
  /** Rejects missing parts. */
  public Remark {
    Objects.requireNonNull(code, "code");
    Objects.requireNonNull(text, "text");
  }

  /**
   * Compares like the generated record method, but avoids its run-time linking, which costs more
   * than the remark itself.
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
