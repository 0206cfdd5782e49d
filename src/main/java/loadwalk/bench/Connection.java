package loadwalk.bench;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.regex.Pattern;
import loadwalk.json.Shape;
import loadwalk.json.Shaped;
import loadwalk.quantity.Unit;
import loadwalk.text.Sentence;

/**
 * How to query a meter: where it is, the query to send and what the reply means.
 *
 * <p>Only queries are ever sent. The header of a SCPI query ends in a question mark (IEEE 488.2,
 * 7.3.1), a semicolon would start another command, and a common query ({@code *TST?}, {@code
 * *CAL?}) or one of the CALibration, DIAGnostic and TEST subsystems does more than read.
 *
 * @param line where the meter is
 * @param query the question, such as {@code MEAS:VOLT:AC?}
 * @param unit the unit of the reply, as the bench file states it
 * @param scale the reading, in its own unit, for one unit of the reply; 100 for a clamp of 10 mV/A
 * @param answerMillis how long the meter has to answer, ms
 */
public record Connection(Line line, String query, String unit, double scale, int answerMillis)
    implements Shaped<Connection> {
  /** How long a meter has to answer where the bench does not state it, ms. */
  public static final int DEFAULT_ANSWER_MILLIS = 2000;

  private static final double LARGEST_SCALE = 1e9;
  private static final int SLOWEST_ANSWER = 60_000;
  private static final int LONGEST_QUERY = 120;
  private static final Pattern QUESTION = Pattern.compile(":?\\w+(:\\w+)*\\?( [ -:<-~]*)?");
  private static final Pattern ACTING =
      Pattern.compile(":?(CAL|CALIBRATION|DIAG|DIAGNOSTIC|TEST)[:?].*", Pattern.CASE_INSENSITIVE);

  /** Checks the query and the numbers. */
  public Connection {
    Objects.requireNonNull(line, "line");
    Checks.text(unit, "unit");
    if (!isQuestion(query)) {
      throw new IllegalArgumentException(
          "query must be one question that only reads, such as MEAS:VOLT:AC?, got " + query);
    }
    if (!(Double.isFinite(scale) && scale != 0)) {
      throw new IllegalArgumentException("scale must be a number other than 0, got " + scale);
    }
    if (answerMillis < 1) {
      throw new IllegalArgumentException("timeoutMillis must be above 0, got " + answerMillis);
    }
  }

  static Connection blank(ReadingId reads) {
    String own = reads.unit().asciiSymbol();
    return new Connection(Line.BLANKS.get("tcp"), "READ?", own, 1, DEFAULT_ANSWER_MILLIS);
  }

  /** When a file is read, {@code unit} comes in as the unit of the meter's reading. */
  @Override
  public Connection shape(Shape in) {
    Line itsLine = in.oneOf("a connection", line, line.key(), Line.BLANKS);
    if (in.has("baud", false) && in.has("tcp", false) && !in.has("serial", false)) {
      in.refuse("baud", "«baud» is for serial ports only");
    }
    String itsQuery = in.text("query", query);
    if (!isQuestion(itsQuery)) {
      in.refuse(
          "query",
          "«query» must be one query that only reads, such as MEAS:VOLT:AC?; Loadwalk controls"
              + " nothing");
    }
    String itsUnit = in.textOr("unit", unit);
    double itsScale = in.numberOr("scale", scale, -LARGEST_SCALE, LARGEST_SCALE);
    if (!in.has("scale", true) && !isSame(itsUnit, unit)) {
      in.refuse(
          "unit",
          Sentence.of("a reply in another unit needs a «scale» that converts it to {}", unit));
    }
    return new Connection(
        itsLine,
        itsQuery,
        itsUnit,
        itsScale,
        in.wholeOr("timeoutMillis", answerMillis, 10, SLOWEST_ANSWER));
  }

  /** Tells whether a text names the unit that has this symbol in ASCII. */
  private static boolean isSame(String text, String ascii) {
    for (Unit unit : Unit.values()) {
      if (unit.asciiSymbol().equals(ascii) && unit.symbol().equals(text)) {
        return true;
      }
    }
    return text.equals(ascii);
  }

  /** Tells whether a text is a single SCPI query that only reads. */
  static boolean isQuestion(String text) {
    return text.length() <= LONGEST_QUERY
        && QUESTION.matcher(text).matches()
        && !ACTING.matcher(text).matches();
  }

  /** Where a meter is. */
  public sealed interface Line extends Shaped<Line> {
    /** A blank of each kind by its key, in the order messages list them. */
    Map<String, Line> BLANKS = blanks();

    private static Map<String, Line> blanks() {
      Map<String, Line> blanks = new LinkedHashMap<>();
      List.of(new Tcp("localhost", Tcp.SCPI_RAW), new Serial("/dev/tty", Serial.DEFAULT_BAUD))
          .forEach(line -> blanks.put(line.key(), line));
      return blanks;
    }

    /** Returns the key of the kind in a file. */
    String key();

    /** Returns the place in words, such as {@code 127.0.0.1:5025}. */
    String text();

    /** Calls the method of {@code kinds} that fits this kind of line. */
    <R> R to(Kinds<R> kinds);
  }

  /**
   * One method for each kind of line, so that the compiler finds a missing one.
   *
   * @param <R> the result
   */
  public interface Kinds<R> {
    /** Takes a TCP socket. */
    R tcp(Tcp line);

    /** Takes a serial port. */
    R serial(Serial line);
  }

  /**
   * SCPI over a raw TCP socket.
   *
   * @param host the host's name or address
   * @param port the port, 1 to 65535
   */
  public record Tcp(String host, int port) implements Line {
    /** The port that IANA assigns to scpi-raw. */
    public static final int SCPI_RAW = 5025;

    private static final int MOST_PORT = 65_535;

    /** Checks the host and the port. */
    public Tcp {
      Checks.text(host, "host");
      if (!host.matches("[\\w.:%-]+")) {
        throw new IllegalArgumentException("tcp must be a host and a port, got host " + host);
      }
      if (port < 1 || port > MOST_PORT) {
        throw new IllegalArgumentException("port must be between 1 and 65535, got " + port);
      }
    }

    /**
     * Reads {@code host}, {@code host:port} or {@code [IPv6]:port}.
     *
     * @throws IllegalArgumentException if the text is none of these
     */
    static Tcp of(String text) {
      int bracket = text.startsWith("[") ? text.indexOf(']') : -1;
      int colon = text.indexOf(':', Math.max(bracket, 0));
      String host = colon < 0 ? text : text.substring(0, colon);
      String bare = bracket > 0 && host.endsWith("]") ? host.substring(1, bracket) : host;
      if (colon < 0) {
        return new Tcp(bare, SCPI_RAW);
      }
      String port = text.substring(colon + 1);
      if (!port.matches("\\d{1,5}")) {
        throw new IllegalArgumentException("port must be between 1 and 65535, got " + port);
      }
      return new Tcp(bare, Integer.parseInt(port));
    }

    @Override
    public String text() {
      return (host.indexOf(':') >= 0 ? "[" + host + "]" : host) + ":" + port;
    }

    @Override
    public String key() {
      return "tcp";
    }

    @Override
    public <R> R to(Kinds<R> kinds) {
      return kinds.tcp(this);
    }

    @Override
    public Line shape(Shape in) {
      String text = in.text("tcp", text());
      try {
        return of(text);
      } catch (IllegalArgumentException refused) {
        in.refuse("tcp", refused.getMessage());
        return this;
      }
    }
  }

  /**
   * SCPI over a serial port with 8 data bits, no parity, 1 stop bit.
   *
   * @param device the device's path below {@code /dev/}, or {@code COM1} and so on
   * @param baud bits per second
   */
  public record Serial(String device, int baud) implements Line {
    /** The speed of a port that states none. */
    public static final int DEFAULT_BAUD = 9600;

    private static final int SLOWEST = 300;
    private static final int FASTEST = 4_000_000;

    /** Checks the path, so that a bench file cannot name a file to be written, and the speed. */
    public Serial {
      Objects.requireNonNull(device, "device");
      if (!device.matches("/dev/[\\w./+-]+|COM\\d{1,3}") || device.contains("..")) {
        throw new IllegalArgumentException(
            "serial must be a device below /dev/, or COM and its number, got " + device);
      }
      if (baud < SLOWEST || baud > FASTEST) {
        throw new IllegalArgumentException("baud must be between 300 and 4000000, got " + baud);
      }
    }

    @Override
    public String text() {
      return Sentence.of("{} at {} baud", device, baud);
    }

    @Override
    public String key() {
      return "serial";
    }

    @Override
    public <R> R to(Kinds<R> kinds) {
      return kinds.serial(this);
    }

    @Override
    public Line shape(Shape in) {
      String path = in.text("serial", device);
      int speed = in.wholeOr("baud", baud, SLOWEST, FASTEST);
      try {
        return new Serial(path, speed);
      } catch (IllegalArgumentException refused) {
        in.refuse("serial", refused.getMessage());
        return this;
      }
    }
  }
}
