package loadwalk.view.state;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import loadwalk.sequence.PlannedStep;
import loadwalk.walk.fact.Capture;
import loadwalk.walk.fact.WalkState;
import loadwalk.wave.Calibration;
import loadwalk.wave.file.CaptureSetup;
import loadwalk.wave.file.ScopeCsv;

/**
 * What captured waves are to the open walk.
 *
 * @param cautioned whether the cautions of a capture were read and confirmed
 * @param setup what is kept of the calibration for the next wave
 * @param found the last wave read
 */
public record Waves(boolean cautioned, CaptureSetup setup, Optional<WaveFound> found) {

  /** Returns what holds before anything was captured. */
  static Waves none() {
    return new Waves(false, CaptureSetup.NONE, Optional.empty());
  }

  /** Returns what a resumed walk has kept: its last calibration, its cautions read. */
  static Waves of(WalkState state) {
    Optional<Capture> last =
        state.plan().stream()
            .map(PlannedStep::id)
            .flatMap(id -> state.step(id).captures().stream())
            .reduce((first, second) -> second);
    return last.map(c -> new Waves(true, setup(c), Optional.empty())).orElseGet(Waves::none);
  }

  private static CaptureSetup setup(Capture capture) {
    boolean volts = Calibration.Origin.FILE.isIn(capture.calibration());
    OptionalDouble scale = OptionalDouble.of(capture.voltsPerUnit());
    OptionalDouble percent =
        capture.calibrationU().isPresent()
            ? OptionalDouble.of(100 * capture.calibrationU().getAsDouble())
            : OptionalDouble.empty();
    return new CaptureSetup(
        volts ? OptionalDouble.empty() : scale,
        volts ? scale : OptionalDouble.of(1),
        OptionalDouble.empty(),
        percent,
        capture.channel(),
        ScopeCsv.Given.NOTHING);
  }

  /** Returns that the cautions were read. */
  public Waves confirmed() {
    return new Waves(true, setup, found);
  }

  /** Returns that the samples stand for this, where nothing else was said before. */
  public Waves calibrated(CaptureSetup known) {
    return setup.equals(CaptureSetup.NONE) ? new Waves(cautioned, known, found) : this;
  }

  /** Returns what holds after a wave was read. */
  public Waves after(WaveFound read) {
    return new Waves(cautioned, read.kept(), Optional.of(read));
  }

  /** Returns the lines that describe the last wave read. */
  public List<String> lines() {
    return found.map(WaveFound::lines).orElse(List.of());
  }
}
