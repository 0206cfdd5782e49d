package loadwalk.meter;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.OptionalLong;
import java.util.Random;
import java.util.function.Function;

/**
 * A simulated instrument that answers SCPI queries, with faults drawn from a seed. The caller
 * delivers its answers to the line at their times.
 */
public final class SimulatedInstrument {
  /** The average number of good answers for each faulty one. */
  public static final int GOOD_FOR_ONE_FAULT = 8;

  private static final int MOST_ERRORS = 20;
  private static final long ANSWER_MILLIS = 20;
  private static final long PIECE_MILLIS = 150;

  private final Identity identity;
  private final Function<String, OptionalDouble> readings;
  private final OptionalLong seed;
  private final Random faults;
  private final Deque<String> errors = new ArrayDeque<>();

  /** The possible faults of an answer. */
  public enum Fault {
    NONE,
    /** It never comes. */
    SILENT,
    /** It comes after the time allowed. */
    LATE,
    /** It comes in two pieces. */
    PIECES,
    /** It ends with CR LF and begins with blanks. */
    CR_LF,
    /** It is not a number. */
    GARBAGE,
    /** It never ends. */
    ENDLESS,
    /** It says overload. */
    OVERLOAD,
    /** It says not a number. */
    NOT_A_NUMBER,
    /** The cable is pulled. */
    CUT
  }

  /**
   * A piece of an answer.
   *
   * @param delayMillis how long after the question, or after the previous piece, ms
   * @param text the characters
   * @param cuts whether the line then breaks
   */
  public record Delivery(long delayMillis, String text, boolean cuts) {}

  /**
   * Makes an instrument.
   *
   * @param identity its identity
   * @param readings the number for a query, in the unit of the reply; empty if the query is unknown
   * @param faultSeed the seed for faults; without it there are none
   */
  public SimulatedInstrument(
      Identity identity, Function<String, OptionalDouble> readings, OptionalLong faultSeed) {
    this.identity = identity;
    this.readings = readings;
    this.seed = faultSeed;
    this.faults = new Random(faultSeed.orElse(0));
  }

  /**
   * Answers a line.
   *
   * @param line the question, without its line feed
   * @param patience the time that the caller allows for an answer, ms; late answers come after it
   */
  public List<Delivery> hear(String line, long patience) {
    String query = line.strip();
    if (query.equalsIgnoreCase(Dialogue.WHO)) {
      return answer(identity.text(), 0);
    }
    if (query.equalsIgnoreCase(Dialogue.ERRORS)) {
      return answer(errors.isEmpty() ? "0,\"No error\"" : errors.poll(), 0);
    }
    OptionalDouble value = readings.apply(query);
    if (value.isEmpty()) {
      if (errors.size() < MOST_ERRORS) {
        errors.add("-113,\"Undefined header;" + query.replace("\"", "\"\"") + "\"");
      }
      return List.of();
    }
    String reply = String.format(Locale.ROOT, "%+.8E", value.getAsDouble());
    return faulty(drawn(), reply, patience);
  }

  private Fault drawn() {
    if (seed.isEmpty() || faults.nextInt(GOOD_FOR_ONE_FAULT + 1) > 0) {
      return Fault.NONE;
    }
    Fault[] all = Fault.values();
    return all[1 + faults.nextInt(all.length - 1)];
  }

  /** Returns an answer with one fault. */
  List<Delivery> faulty(Fault fault, String reply, long patience) {
    return switch (fault) {
      case NONE -> answer(reply, 0);
      case SILENT -> List.of();
      case LATE -> answer(reply, patience + 50);
      case PIECES -> {
        int middle = reply.length() / 2;
        yield List.of(
            new Delivery(ANSWER_MILLIS, reply.substring(0, middle), false),
            new Delivery(PIECE_MILLIS, reply.substring(middle) + "\n", false));
      }
      case CR_LF -> List.of(new Delivery(ANSWER_MILLIS, "  " + reply + "\r\n", false));
      case GARBAGE -> answer("\u0000\u00ff+1.3?" + (char) (33 + faults.nextInt(90)), 0);
      case ENDLESS -> List.of(new Delivery(ANSWER_MILLIS, "x".repeat(5000), false));
      case OVERLOAD -> answer("+9.90000000E+37", 0);
      case NOT_A_NUMBER -> answer("+9.91000000E+37", 0);
      case CUT -> List.of(new Delivery(ANSWER_MILLIS, reply.substring(0, 4), true));
    };
  }

  private static List<Delivery> answer(String reply, long more) {
    return List.of(new Delivery(ANSWER_MILLIS + more, reply + "\n", false));
  }
}
