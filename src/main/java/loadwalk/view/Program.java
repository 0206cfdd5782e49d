package loadwalk.view;

import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import loadwalk.bench.ReadingId;
import loadwalk.plan.Rules;
import loadwalk.quantity.EntryParser;
import loadwalk.quantity.Printer;
import loadwalk.walk.Model;

/**
 * All that is on the screen and behind it.
 *
 * @param screen where the operator is
 * @param walk the open walk
 * @param library what is at hand to start from
 * @param practice what the practice bench's meters show, where the walk is on it
 * @param meters the connected meters of the bench
 * @param waves what captured waves are to the walk
 * @param live what the live input shows
 * @param notice a sentence to show until the next key
 * @param home the folder everything is kept in, as shown on the home screen
 * @param rules what forecasts and results go by
 */
public record Program(
    Screen screen,
    Optional<Model> walk,
    Library library,
    Optional<Practice> practice,
    Meters meters,
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

  /** Returns the program at start: the home screen, nothing read yet. */
  public static Program atHome(String home, Rules rules) {
    return new Program(
        new HomeScreen(0),
        Optional.empty(),
        Library.empty(),
        Optional.empty(),
        Meters.none(),
        Waves.none(),
        Live.OFF,
        Optional.empty(),
        home,
        rules);
  }

  /** Returns the program with a walk just opened or read back. */
  Program opened(Model model) {
    return with(Optional.of(model))
        .capturing(Waves.of(model.state()))
        .hearing(Live.OFF)
        .on(WalkScreen.fresh());
  }

  /** Returns the program without its walk, at home. */
  Program closed() {
    return with(Optional.<Model>empty())
        .practising(Optional.empty())
        .metering(Meters.none())
        .capturing(Waves.none())
        .hearing(Live.OFF)
        .on(new HomeScreen(0));
  }

  /** Tells whether the open walk stands at a step. */
  boolean isAt(String step) {
    return walk.filter(model -> model.state().currentId().equals(step)).isPresent();
  }

  Program on(Screen next) {
    return new Program(next, walk, library, practice, meters, waves, live, notice, home, rules);
  }

  Program with(Optional<Model> model) {
    return new Program(screen, model, library, practice, meters, waves, live, notice, home, rules);
  }

  Program with(Library read) {
    return new Program(screen, walk, read, practice, meters, waves, live, notice, home, rules);
  }

  Program practising(Optional<Practice> bench) {
    return new Program(screen, walk, library, bench, meters, waves, live, notice, home, rules);
  }

  Program metering(Meters read) {
    return new Program(screen, walk, library, practice, read, waves, live, notice, home, rules);
  }

  Program capturing(Waves next) {
    return new Program(screen, walk, library, practice, meters, next, live, notice, home, rules);
  }

  Program hearing(Live now) {
    return new Program(screen, walk, library, practice, meters, waves, now, notice, home, rules);
  }

  Program saying(Optional<String> sentence) {
    return new Program(screen, walk, library, practice, meters, waves, live, sentence, home, rules);
  }

  /** Returns the lines of the text on the screen; empty where another screen shows. */
  public List<String> text() {
    return screen.text();
  }

  /** Returns the program with its notice taken down. */
  public Program silent() {
    return saying(Optional.empty());
  }

  /** Returns what the meter of a reading shows now, or why that is no reading. */
  Optional<String> meterWords(ReadingId id) {
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

  /**
   * An alarm stands at the top of every screen whose foot does not tell it, on one line so that it
   * covers no more than the heading: without its remedy where there is no room for both.
   */
  private void paintAlarm(Canvas canvas, int row) {
    boolean told = screen.ofWalk().filter(walking -> walking.prompt().isEmpty()).isPresent();
    if (!told && meters.alarm().isPresent()) {
      Alarm alarm = meters.alarm().get();
      int room = canvas.columns() - 2;
      String line = alarm.sentence().length() <= room ? alarm.sentence() : alarm.what();
      canvas.fill(row, Style.HALT);
      canvas.text(1, row, canvas.shortened(line, room), Style.HALT);
    }
  }

  /** Paints the program for a terminal. */
  public Frame paint(Size size, Look look) {
    Canvas canvas = new Canvas(size, look);
    if (size.isEnough()) {
      screen.paint(canvas, this);
      Optional<String> notKept = walk.flatMap(Model::keepProblem);
      paintAlarm(canvas, notKept.isPresent() ? 1 : 0);
      notKept.ifPresent(why -> paintNotKept(canvas, why));
    } else {
      TooSmall.paint(canvas, this);
    }
    return canvas.frame();
  }

  /** A disk that takes nothing is told on every screen; the walk itself tells it at its foot. */
  private void paintNotKept(Canvas canvas, String why) {
    boolean told =
        screen
            .ofWalk()
            .filter(walking -> walking.prompt().isEmpty() || walk.orElseThrow().isStopped())
            .isPresent();
    if (!told) {
      canvas.fill(0, Style.HALT);
      String text = "NOT ON DISK: " + why + " The walk holds. Trying again.";
      canvas.text(1, 0, canvas.shortened(text, canvas.columns() - 2), Style.HALT);
    }
  }
}
