package loadwalk.view.state;

import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import loadwalk.bench.ReadingId;
import loadwalk.plan.Rules;
import loadwalk.quantity.EntryParser;
import loadwalk.quantity.Printer;
import loadwalk.walk.Model;

/**
 * Everything the screens show, whichever screen is open.
 *
 * @param walk the open walk
 * @param library what there is to start from
 * @param practice what the practice bench's meters show, where the walk is on it
 * @param meters the connected meters of the bench
 * @param waves the captured waves of the walk
 * @param live what the live input shows
 * @param notice a sentence to show until the next key
 * @param home the folder everything is kept in, as shown on the home screen
 * @param rules what forecasts and results go by
 */
public record ProgramState(
    Optional<Model> walk,
    Library library,
    Optional<Practice> practice,
    ConnectedMeters meters,
    Waves waves,
    Live live,
    Optional<String> notice,
    String home,
    Rules rules) {

  /**
   * The practice bench beside the walk.
   *
   * @param meters what each meter shows for the current step, as an operator would type it
   * @param speed how many warm-up seconds pass in one second
   */
  public record Practice(Map<ReadingId, String> meters, int speed) {
    /** Copies the map. */
    public Practice {
      Map<ReadingId, String> copy = new EnumMap<>(ReadingId.class);
      copy.putAll(meters);
      meters = Collections.unmodifiableMap(copy);
    }
  }

  /** Returns the state at start: no walk, nothing read yet. */
  public static ProgramState atStart(String home, Rules rules) {
    return new ProgramState(
        Optional.empty(),
        Library.empty(),
        Optional.empty(),
        ConnectedMeters.none(),
        Waves.none(),
        Live.OFF,
        Optional.empty(),
        home,
        rules);
  }

  /** Returns the state with a walk just opened or read back. */
  public ProgramState opened(Model model) {
    return with(Optional.of(model)).capturing(Waves.of(model.state())).hearing(Live.OFF);
  }

  /** Returns the state without its walk. */
  public ProgramState closed() {
    return with(Optional.<Model>empty())
        .practising(Optional.empty())
        .metering(ConnectedMeters.none())
        .capturing(Waves.none())
        .hearing(Live.OFF);
  }

  /** Tells whether the open walk is at a step. */
  public boolean isAt(String step) {
    return walk.filter(model -> model.state().currentId().equals(step)).isPresent();
  }

  /** Tells whether a screen would show the same of another state; compares no contents. */
  public boolean showsTheSameAs(ProgramState other) {
    return walk.orElse(null) == other.walk.orElse(null)
        && library == other.library
        && practice == other.practice
        && meters == other.meters
        && waves == other.waves
        && live == other.live
        && notice.equals(other.notice);
  }

  /** Returns the state with this walk. */
  public ProgramState with(Optional<Model> model) {
    return new ProgramState(model, library, practice, meters, waves, live, notice, home, rules);
  }

  /** Returns the state with this library. */
  public ProgramState with(Library read) {
    return new ProgramState(walk, read, practice, meters, waves, live, notice, home, rules);
  }

  /** Returns the state with these practice meters. */
  public ProgramState practising(Optional<Practice> bench) {
    return new ProgramState(walk, library, bench, meters, waves, live, notice, home, rules);
  }

  /** Returns the state with these meters connected. */
  public ProgramState metering(ConnectedMeters read) {
    return new ProgramState(walk, library, practice, read, waves, live, notice, home, rules);
  }

  /** Returns the state with these captured waves. */
  public ProgramState capturing(Waves next) {
    return new ProgramState(walk, library, practice, meters, next, live, notice, home, rules);
  }

  /** Returns the state with this on the live input. */
  public ProgramState hearing(Live now) {
    return new ProgramState(walk, library, practice, meters, waves, now, notice, home, rules);
  }

  /** Returns the state with this notice. */
  public ProgramState saying(Optional<String> sentence) {
    return new ProgramState(walk, library, practice, meters, waves, live, sentence, home, rules);
  }

  /** Returns what the meter of a reading shows now, or why that is no reading. */
  public Optional<String> meterWords(ReadingId id) {
    return practice
        .map(p -> p.meters().get(id))
        .map(typed -> onDisplay(id, typed))
        .or(() -> meters.of(id).map(watch -> meters.words(watch)));
  }

  /** A practice meter shows its reading in one manner, however a hand would type it. */
  private static String onDisplay(ReadingId id, String typed) {
    return EntryParser.parse(typed, id.unit())
        .number()
        .map(number -> Printer.UTF8.reading(number.value(), number.unit(), number.resolution()))
        .orElse(typed);
  }
}
