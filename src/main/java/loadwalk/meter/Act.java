package loadwalk.meter;

/** What a dialogue wants done. */
public sealed interface Act {

  /** Open the line. */
  record Open() implements Act {}

  /** Send a question with a line feed behind it. */
  record Send(String query) implements Act {}

  /** Close the line. */
  record Close() implements Act {}

  /**
   * Tell what a meter answered.
   *
   * @param question which question it was, from 0
   * @param reading what came of it
   */
  record Heard(int question, MeterReading reading) implements Act {}

  /** Tell who the instrument says it is. */
  record Identified(Identity identity) implements Act {}
}
