package loadwalk.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.InvalidPathException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import loadwalk.report.wave.JudgedWave;
import loadwalk.report.wave.JudgedWaveJson;
import loadwalk.report.wave.WavePage;
import loadwalk.text.Sentence;
import loadwalk.text.Visible;
import loadwalk.wave.Calibration;
import loadwalk.wave.CaptureException;
import loadwalk.wave.WaveReading;
import loadwalk.wave.analysis.LimitFinder;
import loadwalk.wave.analysis.LimitFinding;
import loadwalk.wave.analysis.WaveAnalysis;
import loadwalk.wave.file.AudioSource;
import loadwalk.wave.file.CaptureCaution;
import loadwalk.wave.file.CsvUnits;
import loadwalk.wave.file.ScopeCsv;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Measures a captured wave: level, distortion, clipping, frequency, and the output at a limit. */
@Command(
    name = "wave",
    description = "Measure a captured tone: level, distortion, clipping, frequency.",
    footer = {
      "",
      "Always put a divider between an amplifier and a sound input.",
      "When bridged, add isolation as well. See safety-notes.md."
    },
    mixinStandardHelpOptions = true)
public final class WaveCommand implements Callable<Integer> {
  @Spec private CommandSpec spec;
  @Mixin private CommonOptions common;
  @Mixin private PageOptions outputs;

  @Parameters(
      arity = "0..1",
      hideParamSyntax = true,
      paramLabel = "FILE",
      description = "A WAV file or a CSV file from a scope; - is stdin.")
  private String file;

  @Option(
      names = "--channel",
      paramLabel = "N",
      defaultValue = "1",
      description = "The channel, from 1 (default 1).")
  private int channel;

  @Option(
      names = "--full-scale",
      paramLabel = "VOLTS",
      description = "WAV: peak volts at the input that read full scale.")
  private Double fullScale;

  @Option(
      names = "--divider",
      paramLabel = "RATIO",
      description = "Volts at the amplifier for 1 V at the input.")
  private Double divider;

  @Option(
      names = "--known",
      paramLabel = "VOLTS",
      description = "The rms volts that a meter showed during the capture.")
  private Double known;

  @Option(
      names = "--calibration-percent",
      paramLabel = "PERCENT",
      description = "Standard uncertainty of the calibration in percent.")
  private Double calibrationPercent;

  @Option(
      names = "--limit",
      paramLabel = "PERCENT",
      description = "Find the rms volts at this THD in a rising or stepped tone.")
  private Double limit;

  @Option(
      names = "--time-unit",
      paramLabel = "UNIT",
      defaultValue = "",
      description = "CSV: unit of time, s, ms, us or ns.")
  private String timeUnit;

  @Option(
      names = "--volt-unit",
      paramLabel = "UNIT",
      defaultValue = "",
      description = "CSV: unit of voltage, V, mV or kV.")
  private String voltUnit;

  @Override
  public Integer call() {
    PrintWriter err = spec.commandLine().getErr();
    file = file == null ? outputs.fileBehindJson() : file;
    if (file == null) {
      throw new ParameterException(spec.commandLine(), "Give the FILE of a capture.");
    }
    if (calibrationPercent != null && !(calibrationPercent >= 0 && calibrationPercent <= 100)) {
      throw new ParameterException(
          spec.commandLine(), "--calibration-percent takes a number from 0 to 100.");
    }
    try {
      JudgedWave findings = findings();
      if (outputs.printsText()) {
        CaptureCaution.LINES.forEach(err::println);
        err.flush();
      }
      return write(findings);
    } catch (CaptureException | IllegalArgumentException e) {
      err.println(e.getMessage());
    } catch (IOException e) {
      err.println(Sentence.of("The file cannot be read: {}.", e.getMessage()));
    }
    err.flush();
    return ExitCode.BAD_INPUT;
  }

  private int write(JudgedWave findings) {
    outputs.sparing(file);
    try {
      outputs.write(
          common,
          WavePage.of(findings),
          () -> JudgedWaveJson.text(findings),
          spec.commandLine().getOut());
      return ExitCode.DONE;
    } catch (IOException e) {
      spec.commandLine().getErr().println(e.getMessage());
      return ExitCode.BAD_INPUT;
    }
  }

  private JudgedWave findings() throws IOException, CaptureException {
    ScopeCsv.Given given = CsvUnits.given(timeUnit, voltUnit, "--");
    try (CaptureFile capture = CaptureFile.open(file, System.in, given)) {
      CaptureFile.Outcome<WaveReading> first =
          capture.read(source -> WaveAnalysis.of(source, channel, calibration(source)));
      WaveReading reading = first.value();
      Calibration calibration = reading.calibration();
      if (known != null) {
        double captured = reading.output().value() / calibration.voltsPerUnit();
        Calibration measured = certain(Calibration.knownVoltage(known, captured));
        reading = capture.read(s -> WaveAnalysis.of(s, channel, measured)).value();
        calibration = measured;
      }
      Optional<LimitFinding> found = Optional.empty();
      if (limit != null) {
        Calibration scale = calibration;
        found = Optional.of(capture.read(s -> LimitFinder.find(s, channel, limit, scale)).value());
      }
      List<String> notes = new ArrayList<>(first.notes());
      notes.addAll(reading.notes());
      if (!calibration.known()) {
        notes.add(
            "No calibration was given: volts are fractions of full scale. Give --full-scale or"
                + " --known.");
      }
      return new JudgedWave(capture.name(), first.sha256(), channel, reading, found, notes);
    } catch (InvalidPathException e) {
      throw new CaptureException(Sentence.of("There is no file {}.", Visible.line(file, 200)));
    }
  }

  private Calibration calibration(AudioSource source) {
    if (known != null) {
      if (fullScale != null || divider != null) {
        throw new IllegalArgumentException("Give --known or --full-scale and --divider, not both.");
      }
      return Calibration.NONE;
    }
    double ratio = divider == null ? 1 : divider;
    if (source.isInVolts()) {
      return certain(Calibration.volts(ratio));
    }
    if (fullScale == null && divider != null) {
      throw new IllegalArgumentException("--divider needs --full-scale with a WAV file.");
    }
    return fullScale == null ? Calibration.NONE : certain(Calibration.fullScale(fullScale, ratio));
  }

  private Calibration certain(Calibration calibration) {
    return calibrationPercent == null
        ? calibration
        : calibration.withRelativeU(calibrationPercent / 100);
  }
}
