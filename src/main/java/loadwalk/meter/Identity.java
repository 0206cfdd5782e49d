package loadwalk.meter;

import java.util.Optional;

/**
 * The identity that a meter reports: the four fields of its reply to {@code *IDN?} (IEEE 488.2,
 * 10.14).
 *
 * @param maker its maker
 * @param model its model
 * @param serial its serial number, 0 if it reports none
 * @param firmware its firmware, 0 if it reports none
 */
public record Identity(String maker, String model, String serial, String firmware) {
  private static final int FIELDS = 4;

  /** Reads a reply; empty if it does not have four fields or begins with a number. */
  static Optional<Identity> of(String reply) {
    String[] fields = reply.strip().split("\\s*,\\s*", FIELDS);
    if (fields.length < FIELDS
        || fields[0].isBlank()
        || fields[1].isBlank()
        || ScpiReply.of(fields[0]).isAnswer()) {
      return Optional.empty();
    }
    return Optional.of(
        new Identity(
            ScpiReply.shown(fields[0]),
            ScpiReply.shown(fields[1]),
            ScpiReply.shown(fields[2]),
            ScpiReply.shown(fields[3])));
  }

  /** Returns the identity in the form of the reply. */
  public String text() {
    return String.join(",", maker, model, serial, firmware);
  }
}
