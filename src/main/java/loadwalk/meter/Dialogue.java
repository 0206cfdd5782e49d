package loadwalk.meter;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import loadwalk.text.Sentence;

/**
 * The dialogue on the line of one instrument, as a pure fold of what happens on it.
 *
 * <p>Raw SCPI has nothing that ties a reply to its question. After a question gets garbage or no
 * answer in time, the dialogue therefore asks {@code *IDN?}. An instrument answers in order, so
 * anything that comes before the identity is a late reply and is dropped. If an instrument does not
 * report its identity, its line is closed and opened again instead.
 *
 * @param questions the questions, asked in turn
 * @param phase the current phase
 * @param turn the question asked last
 * @param sinceMillis when the phase began, ms
 * @param partial the part received so far of an unfinished reply
 * @param failures the number of consecutive failures
 * @param identity the identity that the instrument reports
 * @param tellsErrors whether the dialogue may ask it for its errors
 */
public record Dialogue(
    List<Question> questions,
    Phase phase,
    int turn,
    long sinceMillis,
    String partial,
    int failures,
    Optional<Identity> identity,
    boolean tellsErrors) {
  /** The pause between a reply and the next question, ms. */
  public static final long REST_MILLIS = 200;

  static final String WHO = "*IDN?";
  static final String ERRORS = "SYST:ERR?";
  private static final long FIRST_RETRY_MILLIS = 1000;
  private static final long LAST_RETRY_MILLIS = 15_000;
  private static final int LONGEST_REPLY = 4096;
  private static final int FAILURES_TO_CLOSE = 3;

  /** The phases of a dialogue. */
  public enum Phase {
    /** The line is closed; a new try comes later. */
    CLOSED,
    /** The line is being opened. */
    OPENING,
    /** Asked for its identity for the first time. */
    IDENTIFYING,
    /** Asked for a reading. */
    ASKING,
    /** Between a reply and the next question. */
    RESTING,
    /** Asked for its identity, to make sure that no late reply is on its way. */
    CLEARING,
    /** Asked for the error that prevented an answer. */
    EXPLAINING
  }

  /** The next state and the acts to perform. */
  public record Turn(Dialogue next, List<Act> acts) {
    /** Copies the list. */
    public Turn {
      acts = List.copyOf(acts);
    }
  }

  /** Copies the list. */
  public Dialogue {
    questions = List.copyOf(questions);
    if (questions.isEmpty()) {
      throw new IllegalArgumentException("a dialogue needs a question");
    }
  }

  /** Returns a dialogue that opens its line immediately. */
  public static Turn begin(List<Question> questions, long nowMillis) {
    Dialogue closed =
        new Dialogue(
            questions,
            Phase.CLOSED,
            questions.size() - 1,
            nowMillis,
            "",
            0,
            Optional.empty(),
            true);
    return new Turn(closed.in(Phase.OPENING, nowMillis), List.of(new Act.Open()));
  }

  /**
   * Returns when the passing of time will next change something, ms; far in the future while the
   * line is opening.
   */
  public long wakeMillis() {
    return switch (phase) {
      case CLOSED -> sinceMillis + retryMillis();
      case OPENING -> Long.MAX_VALUE;
      case RESTING -> sinceMillis + REST_MILLIS;
      case IDENTIFYING, ASKING, CLEARING, EXPLAINING ->
          sinceMillis + questions.get(turn).answerMillis();
    };
  }

  /** Returns the turn that follows a signal. */
  public Turn on(Signal signal) {
    return signal.reach(this);
  }

  /** Handles the opening of the line. */
  Turn opened(long now) {
    return phase == Phase.OPENING
        ? new Turn(in(Phase.IDENTIFYING, now).holding(""), List.of(new Act.Send(WHO)))
        : new Turn(this, List.of());
  }

  /** Handles the loss of the line. */
  Turn lost(String why, long now) {
    return phase == Phase.CLOSED ? new Turn(this, List.of()) : closing(why, now);
  }

  /** Handles the passing of time. */
  Turn clock(long now) {
    return now >= wakeMillis() ? timeUp(now) : new Turn(this, List.of());
  }

  private boolean isOpen() {
    return phase != Phase.CLOSED && phase != Phase.OPENING;
  }

  /** Handles received characters; they are ignored while the line is not open. */
  Turn received(String text, long now) {
    if (!isOpen()) {
      return new Turn(this, List.of());
    }
    String all = partial + text;
    List<Act> acts = new ArrayList<>();
    Dialogue state = this;
    int from = 0;
    for (int end = all.indexOf('\n'); end >= 0; end = all.indexOf('\n', from)) {
      String line = all.substring(from, end).strip();
      from = end + 1;
      if (!line.isEmpty() && state.isOpen()) {
        Turn turn = state.heard(line, now);
        state = turn.next();
        acts.addAll(turn.acts());
      }
    }
    String rest = all.substring(from);
    if (rest.length() > LONGEST_REPLY && state.isOpen()) {
      Turn turn = state.heard(rest, now);
      return new Turn(turn.next().holding(""), joined(acts, turn.acts()));
    }
    return new Turn(state.isOpen() ? state.holding(rest) : state, acts);
  }

  private Turn heard(String line, long now) {
    Optional<Identity> said = Identity.of(line);
    return switch (phase) {
      case IDENTIFYING, CLEARING -> said.isPresent() ? identified(said.get(), now) : late(line);
      case ASKING -> said.isPresent() ? lateIdentity(said.get(), line) : answered(line, now);
      case EXPLAINING -> explained(line, now);
      case CLOSED, OPENING, RESTING -> late(line);
    };
  }

  private Turn identified(Identity who, long now) {
    Dialogue known =
        new Dialogue(questions, phase, turn, now, partial, failures, Optional.of(who), tellsErrors);
    List<Act> acts = List.of(new Act.Identified(who));
    Turn next =
        phase == Phase.CLEARING && tellsErrors
            ? new Turn(known.in(Phase.EXPLAINING, now), List.of(new Act.Send(ERRORS)))
            : known.asking(now);
    return new Turn(next.next(), joined(acts, next.acts()));
  }

  /** Handles an identity that arrives in place of a reading; the reading is still to come. */
  private Turn lateIdentity(Identity who, String line) {
    Turn late = late(line);
    return identity.isPresent()
        ? late
        : new Turn(known(who), joined(List.of(new Act.Identified(who)), late.acts()));
  }

  private Turn answered(String line, long now) {
    MeterReading reading = MeterReading.of(questions.get(turn), line);
    Act heard = new Act.Heard(turn, reading);
    if (reading.isUnderstood()) {
      return new Turn(failed(0).in(Phase.RESTING, now), List.of(heard));
    }
    Turn next = doubting("its replies cannot be read", now);
    return new Turn(next.next(), joined(List.of(heard), next.acts()));
  }

  private Turn explained(String line, long now) {
    Optional<ScpiError> error = ScpiError.of(line);
    if (error.isEmpty()) {
      return late(line);
    }
    // A reported error means that the line works and the question is wrong.
    return error.get().isError()
        ? new Turn(failed(0).in(Phase.RESTING, now), List.of(heardGarbage(line)))
        : new Turn(in(Phase.RESTING, now), List.of());
  }

  private Act heardGarbage(String line) {
    String shown = ScpiReply.shown(line);
    String query = questions.get(turn).query();
    return new Act.Heard(
        turn,
        new MeterReading.Garbage(
            shown, Sentence.of("{} is answered with the error {}", query, shown)));
  }

  private Turn late(String line) {
    MeterReading late = new MeterReading.Late(ScpiReply.shown(line));
    return new Turn(this, List.of(new Act.Heard(turn, late)));
  }

  private Turn timeUp(long now) {
    return switch (phase) {
      case CLOSED -> new Turn(in(Phase.OPENING, now), List.of(new Act.Open()));
      case RESTING, IDENTIFYING -> asking(now);
      case ASKING -> unanswered(now);
      case EXPLAINING ->
          new Dialogue(questions, phase, turn, now, partial, failures, identity, false)
              .clearing(now);
      case OPENING, CLEARING -> closing(Sentence.of("no answer to {}", WHO), now);
    };
  }

  private Turn unanswered(long now) {
    Question asked = questions.get(turn);
    String why = Sentence.of("no answer to {} within {} ms", asked.query(), asked.answerMillis());
    Turn next = doubting(why, now);
    Act silent = new Act.Heard(turn, new MeterReading.Silent(why));
    return new Turn(next.next(), joined(List.of(silent), next.acts()));
  }

  /** Checks for a late reply, or gives up the line. */
  private Turn doubting(String why, long now) {
    Dialogue worse = failed(failures + 1);
    return worse.identity.isEmpty() || worse.failures >= FAILURES_TO_CLOSE
        ? worse.closing(why, now)
        : worse.clearing(now);
  }

  private Turn clearing(long now) {
    return new Turn(in(Phase.CLEARING, now), List.of(new Act.Send(WHO)));
  }

  private Turn asking(long now) {
    int next = (turn + 1) % questions.size();
    Dialogue asking =
        new Dialogue(questions, Phase.ASKING, next, now, partial, failures, identity, tellsErrors);
    return new Turn(asking, List.of(new Act.Send(questions.get(next).query())));
  }

  private Turn closing(String why, long now) {
    Dialogue closed =
        new Dialogue(
            questions, Phase.CLOSED, turn, now, "", failures + 1, Optional.empty(), tellsErrors);
    List<Act> acts = new ArrayList<>();
    acts.add(new Act.Close());
    for (int i = 0; i < questions.size(); i++) {
      acts.add(new Act.Heard(i, new MeterReading.Silent(why)));
    }
    return new Turn(closed, acts);
  }

  private long retryMillis() {
    long doubled = FIRST_RETRY_MILLIS << Math.min(Math.max(failures - 1, 0), 4);
    return Math.min(doubled, LAST_RETRY_MILLIS);
  }

  private static List<Act> joined(List<Act> first, List<Act> second) {
    List<Act> all = new ArrayList<>(first);
    all.addAll(second);
    return all;
  }

  private Dialogue in(Phase next, long now) {
    return new Dialogue(questions, next, turn, now, partial, failures, identity, tellsErrors);
  }

  private Dialogue holding(String piece) {
    return new Dialogue(
        questions, phase, turn, sinceMillis, piece, failures, identity, tellsErrors);
  }

  private Dialogue known(Identity who) {
    return new Dialogue(
        questions, phase, turn, sinceMillis, partial, failures, Optional.of(who), tellsErrors);
  }

  private Dialogue failed(int times) {
    return new Dialogue(questions, phase, turn, sinceMillis, partial, times, identity, tellsErrors);
  }
}
