package loadwalk.app;

import java.io.IOException;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import loadwalk.cli.CaptureFile;
import loadwalk.json.Shown;
import loadwalk.quantity.Printer;
import loadwalk.quantity.Unit;
import loadwalk.view.WaveFound;
import loadwalk.walk.Capture;
import loadwalk.wave.Calibration;
import loadwalk.wave.CaptureException;
import loadwalk.wave.CaptureSetup;
import loadwalk.wave.LimitFinder;
import loadwalk.wave.LimitFinding;
import loadwalk.wave.WaveAnalysis;
import loadwalk.wave.WaveReading;

/** Reads a captured wave from a file and makes it fit to enter a step. */
final class CaptureReader {
  private static final int LONGEST_NAME = 200;

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
  static WaveFound read(String file, CaptureSetup setup, double limitPercent) {
    try {
      Path.of(file);
      try (CaptureFile capture = CaptureFile.named(file)) {
        return new CaptureReader(setup, limitPercent).read(capture);
      }
    } catch (InvalidPathException e) {
      return WaveFound.nothing(setup, "There is no file " + Shown.text(file, LONGEST_NAME) + ".");
    } catch (CaptureException | IllegalArgumentException e) {
      return WaveFound.nothing(setup, e.getMessage());
    } catch (IOException e) {
      return WaveFound.nothing(setup, "The capture cannot be read: " + e.getMessage() + ".");
    }
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
          "Say first what its samples are in volts: full scale and divider, or one known voltage.");
    }
    Capture.Source source =
        new Capture.Source(Shown.text(file.name(), LONGEST_NAME), first.sha256(), setup.channel());
    Optional<LimitFinding> limit = Optional.empty();
    if (!reading.steady()) {
      limit =
          Optional.of(
              file.read(s -> LimitFinder.find(s, setup.channel(), limitPercent, calibration))
                  .value());
    }
    Capture capture =
        limit.isPresent() && limit.get() instanceof LimitFinding.Found found
            ? Capture.of(source, reading, found)
            : Capture.of(source, reading);
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
        setup.channel());
  }

  private void tell(
      Capture capture, WaveReading reading, List<String> notes, Optional<LimitFinding> limit) {
    Printer print = Printer.UTF8;
    lines.add(capture.file() + ", sha-256 " + capture.sha256().substring(0, 16) + "…");
    String thd =
        capture.thdPercent().isPresent()
            ? ", THD " + print.value(capture.thdPercent().getAsDouble(), Unit.PERCENT, 3)
            : ", no harmonic to be seen";
    lines.add(
        print.value(capture.volts(), Unit.VOLT, 4)
            + (capture.atLimit() ? " at the limit" : " rms")
            + thd
            + ", "
            + print.value(capture.hertz(), Unit.HERTZ, 5));
    lines.add("It looks like " + capture.shape() + "; " + capture.method() + ".");
    lines.add(
        "Calibration: "
            + capture.calibration()
            + String.format(Locale.ROOT, " (%.6g V per unit).", capture.voltsPerUnit()));
    if (!capture.overdriven().equals("no")) {
      lines.add("Was the input that captured driven to its end? " + capture.overdriven() + ".");
    }
    notes.forEach(lines::add);
    if (limit.isPresent() && limit.get() instanceof LimitFinding.NotFound missing) {
      lines.add(missing.sentence());
    }
    if (!capture.atLimit()) {
      reading.notes().forEach(lines::add);
    }
  }
}
