package loadwalk.bench;

import java.util.Optional;
import java.util.function.Supplier;
import loadwalk.json.Fields;

/**
 * Reads the {@code connection} of a meter: {@code {"tcp":"host:5025","query":"MEAS:VOLT:AC?"}} or
 * {@code {"serial":"/dev/ttyUSB0","baud":9600,"query":…}}, with {@code unit}, {@code scale} and
 * {@code timeoutMillis} where they differ from the reading's own unit, 1 and 2000.
 */
final class ConnectionReader {
  private static final double LARGEST_SCALE = 1e9;
  private static final int SLOWEST_ANSWER = 60_000;

  private ConnectionReader() {}

  /** Returns the connection; nothing is found exactly when a fault is kept. */
  static Optional<Connection> read(Fields fields, ReadingId reads) {
    Optional<Connection.Line> line = line(fields);
    String query = fields.requiredText("query");
    if (!query.isEmpty() && !Connection.isQuestion(query)) {
      fields.fault(
          "query",
          "«query» is not one question that only reads: Loadwalk sends queries such as"
              + " MEAS:VOLT:AC? and controls nothing");
    }
    String own = reads.unit().asciiSymbol();
    String unit = fields.text("unit").orElse(own);
    boolean scaled = fields.node("scale").isPresent();
    double scale = fields.number("scale", -LARGEST_SCALE, LARGEST_SCALE).orElse(1);
    if (!scaled && !unit.equals(own) && !unit.equals(reads.unit().symbol())) {
      fields.fault("unit", "a reply in another unit needs a «scale» that makes it " + own);
    }
    int millis =
        fields
            .integer("timeoutMillis", 10, SLOWEST_ANSWER)
            .orElse(Connection.DEFAULT_ANSWER_MILLIS);
    return fields.build(() -> new Connection(line.orElseThrow(), query, unit, scale, millis));
  }

  private static Optional<Connection.Line> line(Fields fields) {
    boolean tcp = fields.node("tcp").isPresent();
    boolean serial = fields.node("serial").isPresent();
    Optional<String> host = fields.text("tcp");
    Optional<String> device = fields.text("serial");
    int baud = fields.integer("baud", 300, 4_000_000).orElse(Connection.Serial.DEFAULT_BAUD);
    if (tcp == serial) {
      fields.fault("a connection needs exactly one of «tcp» and «serial»");
      return Optional.empty();
    }
    if (tcp && fields.node("baud").isPresent()) {
      fields.fault("baud", "«baud» is for a serial port");
    }
    return tcp
        ? host.flatMap(text -> made(fields, "tcp", () -> Connection.Tcp.of(text)))
        : device.flatMap(path -> made(fields, "serial", () -> new Connection.Serial(path, baud)));
  }

  private static Optional<Connection.Line> made(
      Fields fields, String key, Supplier<Connection.Line> maker) {
    try {
      return Optional.of(maker.get());
    } catch (IllegalArgumentException refused) {
      fields.fault(key, refused.getMessage());
      return Optional.empty();
    }
  }
}
