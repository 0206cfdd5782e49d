package loadwalk.app.sound;

import java.io.IOException;
import java.nio.file.InvalidPathException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import loadwalk.app.store.DiskFaults;
import loadwalk.cli.CaptureFile;
import loadwalk.quantity.Printer;
import loadwalk.quantity.Quantity;
import loadwalk.quantity.Unit;
import loadwalk.text.Sentence;
import loadwalk.text.Visible;
import loadwalk.view.state.WaveFound;
import loadwalk.walk.fact.Capture;
import loadwalk.wave.Calibration;
import loadwalk.wave.CaptureException;
import loadwalk.wave.Clipping;
import loadwalk.wave.WaveReading;
import loadwalk.wave.analysis.LimitFinder;
import loadwalk.wave.analysis.LimitFinding;
import loadwalk.wave.analysis.WaveAnalysis;
import loadwalk.wave.file.CaptureSetup;

/** Reads a captured wave from a file and makes it fit to enter a step. */
public final class CaptureReader {
  private static final int LONGEST_NAME = 200;
  private static final int SHOWN_HASH = 16;

  private final CaptureSetup setup;
  private final double limitPercent;
  private final List<String> lines = new ArrayList<>();

  private CaptureReader(CaptureSetup setup, double limitPercent) {
    this.setup = setup;
    this.limitPercent = limitPercent;
  }

  /**
   * Reads a file; what is wrong with it is told in the result.
   *
   * @param limitPercent the THD that is looked for on a rising tone
   */
  public static WaveFound read(String file, CaptureSetup setup, double limitPercent) {
    try {
      try (CaptureFile capture = CaptureFile.named(unquoted(file), setup.given())) {
        return new CaptureReader(setup, limitPercent).read(capture);
      }
    } catch (InvalidPathException e) {
      return WaveFound.nothing(
          setup, Sentence.of("There is no file {}.", Visible.line(file, LONGEST_NAME)));
    } catch (CaptureException | IllegalArgumentException e) {
      return WaveFound.nothing(setup, e.getMessage());
    } catch (IOException e) {
      return WaveFound.nothing(setup, DiskFaults.sentence(e));
    }
  }

  /** Terminals put a path that is dropped on them in quotes. */
  private static String unquoted(String typed) {
    String text = typed.strip();
    boolean quoted =
        text.length() > 1
            && (text.charAt(0) == '"' || text.charAt(0) == '\'')
            && text.charAt(text.length() - 1) == text.charAt(0);
    return quoted ? text.substring(1, text.length() - 1) : text;
  }

  private WaveFound read(CaptureFile file) throws IOException, CaptureException {
    CaptureFile.Outcome<WaveReading> first =
        file.read(s -> WaveAnalysis.of(s, setup.channel(), setup.calibration(s)));
    WaveReading reading = first.value();
    CaptureSetup kept = setup;
    if (setup.knownVolts().isPresent()) {
      Calibration known = setup.known(reading);
      reading = file.read(s -> WaveAnalysis.of(s, setup.channel(), known)).value();
      kept = kept(known, file.isTable());
    }
    Calibration calibration = reading.calibration();
    if (!calibration.known()) {
      return WaveFound.nothing(
          setup,
          "First say what a sample is in volts: full scale and divider, or one known voltage.");
    }
    Capture.Source source =
        new Capture.Source(
            Visible.line(file.name(), LONGEST_NAME), first.sha256(), setup.channel());
    Optional<LimitFinding> limit = Optional.empty();
    if (!reading.steady()) {
      limit =
          Optional.of(
              file.read(s -> LimitFinder.find(s, setup.channel(), limitPercent, calibration))
                  .value());
    }
    Optional<LimitFinding.Found> found = limit.flatMap(LimitFinding::reached);
    Capture capture =
        found.isPresent() ? Capture.of(source, reading, found.get()) : Capture.of(source, reading);
    tell(capture, reading, first.notes(), limit);
    return new WaveFound(Optional.of(capture), kept, lines);
  }

  /** A known voltage holds for one level; the scale that follows from it holds for all. */
  private CaptureSetup kept(Calibration known, boolean table) {
    OptionalDouble scale = OptionalDouble.of(known.voltsPerUnit());
    return new CaptureSetup(
        table ? OptionalDouble.empty() : scale,
        table ? scale : OptionalDouble.of(1),
        OptionalDouble.empty(),
        setup.calibrationPercent(),
        setup.channel(),
        setup.given());
  }

  /** The volts with what is known of their uncertainty. */
  private static Quantity volts(Capture capture) {
    double gain = capture.volts() * capture.calibrationU().orElse(0);
    return Quantity.of(
        capture.volts(), Unit.VOLT, "capture", Math.hypot(capture.scatterVolts(), gain));
  }

  private static Optional<String> overdriven(Clipping.Overdriven input) {
    return switch (input) {
      case NO -> Optional.empty();
      case YES -> Optional.of("The recording input was overdriven.");
      case CANNOT_TELL -> Optional.of("Whether the recording input was overdriven cannot be told.");
    };
  }

  /** Words the volts, the THD and the tone of a capture. */
  private static String level(Capture capture, Printer print) {
    String volts = print.quantity(volts(capture));
    String hertz = print.value(capture.hertz(), Unit.HERTZ, 5);
    if (capture.thdPercent().isEmpty()) {
      return Sentence.of(
          capture.atLimit()
              ? "{} at the limit, no harmonics found, {}"
              : "{} rms, no harmonics found, {}",
          volts,
          hertz);
    }
    return Sentence.of(
        capture.atLimit() ? "{} at the limit, THD {}, {}" : "{} rms, THD {}, {}",
        volts,
        print.value(capture.thdPercent().getAsDouble(), Unit.PERCENT, 3),
        hertz);
  }

  private void tell(
      Capture capture, WaveReading reading, List<String> notes, Optional<LimitFinding> limit) {
    Printer print = Printer.UTF8;
    lines.add(
        Sentence.of("{}, sha-256 {}…", capture.file(), capture.sha256().substring(0, SHOWN_HASH)));
    lines.add(level(capture, print));
    lines.add(Sentence.of("Shape: {}. Method: {}.", capture.shape(), capture.method()));
    lines.add(
        Sentence.of(
            capture.calibrationU().isPresent()
                ? "Calibration: {}, {} for a sample of 1."
                : "Calibration: {}, {} for a sample of 1; its uncertainty is not stated.",
            capture.calibration(),
            print.value(capture.voltsPerUnit(), Unit.VOLT, 5)));
    overdriven(reading.clipping().capture()).ifPresent(lines::add);
    lines.addAll(notes);
    limit.flatMap(LimitFinding::missing).ifPresent(lines::add);
    if (!capture.atLimit()) {
      reading.notes().forEach(lines::add);
    }
  }
}
