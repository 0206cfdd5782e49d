package loadwalk.cli;

import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.Callable;
import loadwalk.json.Format;
import loadwalk.json.JsonOut;
import loadwalk.text.Sentence;
import loadwalk.wave.CaptureException;
import loadwalk.wave.file.Cue;
import loadwalk.wave.tone.AudioSink;
import loadwalk.wave.tone.Tone;
import loadwalk.wave.tone.WavWriter;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Makes a test tone as a WAV file, or plays it. */
@Command(
    name = "tone",
    description = "Make a test tone: steady, stepped in level, or in bursts.",
    mixinStandardHelpOptions = true)
public final class ToneCommand implements Callable<Integer> {
  private static final List<Integer> RATES = List.of(44_100, 48_000, 96_000);
  private static final int BLOCKS_A_SECOND = 20;
  private static final double LEAST_SECONDS = 0.001;
  private static final double MOST_SECONDS = 86_400;

  private final AudioSink.Output output;
  private final OutputStream stdout;

  @Spec private CommandSpec spec;
  @Mixin private CommonOptions common;

  @Parameters(arity = "0..1", paramLabel = "FILE", description = "The WAV file; - is stdout.")
  private String file;

  @Option(
      names = "--hertz",
      paramLabel = "HZ",
      defaultValue = "40",
      description = "Frequency in Hz (default 40).")
  private double hertz;

  @Option(
      names = "--dbfs",
      paramLabel = "DB",
      defaultValue = "0",
      description = "Peak level in dBFS (default 0).")
  private double dbfs;

  @Option(
      names = "--seconds",
      paramLabel = "SECONDS",
      description = "Length of the tone (default 30), or of each step (default 2).")
  private Double seconds;

  @Option(
      names = "--rate",
      paramLabel = "RATE",
      defaultValue = "48000",
      description = "Samples per second: 44100, 48000 (default) or 96000.")
  private int rate;

  @Option(
      names = "--bits",
      paramLabel = "BITS",
      defaultValue = "16",
      description = "Bits per sample, 16 (default) or 24.")
  private int bits;

  @Option(
      names = "--channels",
      paramLabel = "N",
      defaultValue = "2",
      description = "Channels, 1 or 2, all alike (default 2).")
  private int channels;

  @Option(
      names = "--fade",
      paramLabel = "SECONDS",
      defaultValue = "0.05",
      description = "Fade in and out (default 0.05).")
  private double fade;

  @Option(
      names = "--seed",
      paramLabel = "SEED",
      defaultValue = "1",
      description = "Dither seed (default 1).")
  private long seed;

  @Option(
      names = "--steps",
      paramLabel = "FROM:TO:BY",
      description = "Step the level in dBFS, such as -20:0:1; each step has a cue.")
  private String steps;

  @Option(names = "--burst", paramLabel = "SECONDS", description = "Make bursts of this length.")
  private Double burst;

  @Option(
      names = "--every",
      defaultValue = "0.5",
      paramLabel = "SECONDS",
      description = "Time from one burst to the next (default 0.5).")
  private double every;

  @Option(
      names = "--rest",
      defaultValue = "-20",
      paramLabel = "DB",
      description = "Level between bursts, relative to the burst (default -20).")
  private double rest;

  @Option(names = "--json", description = "Print what was made as JSON.")
  private boolean json;

  @Option(
      names = "--play",
      description = "Play the tone; + and - change the level by 1 dB, q stops (each with Enter).")
  private boolean play;

  /** Makes the command for a machine without a sound output. */
  public ToneCommand() {
    this(AudioSink.NONE, System.out);
  }

  /**
   * Makes the command.
   *
   * @param output the machine's sound output
   * @param stdout where samples go that are not for a file
   */
  public ToneCommand(AudioSink.Output output, OutputStream stdout) {
    this.output = output;
    this.stdout = stdout;
  }

  @Override
  public Integer call() {
    PrintWriter err = spec.commandLine().getErr();
    try {
      if (play == (file != null)) {
        throw new IllegalArgumentException("Give a FILE to write, or --play.");
      }
      Tone tone = tone();
      if (play) {
        play(tone);
      } else {
        write(tone);
        report(tone);
      }
      return ExitCode.DONE;
    } catch (CaptureException | IllegalArgumentException e) {
      err.println(e.getMessage());
    } catch (IOException e) {
      err.println(Sentence.of("The tone cannot be written: {}.", e.getMessage()));
    }
    err.flush();
    return ExitCode.BAD_INPUT;
  }

  private Tone tone() {
    if (!RATES.contains(rate)) {
      throw new IllegalArgumentException(
          Sentence.of("--rate must be 44100, 48000 or 96000, not {}.", rate));
    }
    if (steps != null && burst != null) {
      throw new IllegalArgumentException("Give --steps or --burst, not both.");
    }
    if (steps != null) {
      return Tone.stepped(hertz, levels(steps), rate, seconds == null ? 2 : seconds, fade);
    }
    double length = seconds == null ? 30 : seconds;
    if (burst != null) {
      requireTime("--burst", burst);
      requireTime("--seconds", length);
      requireTime("--every", every);
      int repeats = (int) Math.max(1, Math.round(length / every));
      return Tone.burst(hertz, dbfs, rest, rate, burst, every, repeats);
    }
    return Tone.steady(hertz, dbfs, rate, length, fade);
  }

  /** A length of nothing, or less, would be taken for the shortest one. */
  private static void requireTime(String option, double seconds) {
    if (!(seconds >= LEAST_SECONDS && seconds <= MOST_SECONDS)) {
      throw new IllegalArgumentException(
          Sentence.of(
              "{} takes seconds from 0.001 to 86400, not {}.", option, String.valueOf(seconds)));
    }
  }

  private static List<Double> levels(String text) {
    String[] parts = text.split(":");
    try {
      double from = Double.parseDouble(parts[0]);
      double to = Double.parseDouble(parts[1]);
      double by = Math.abs(Double.parseDouble(parts[2]));
      List<Double> levels = new ArrayList<>();
      int count = (int) Math.floor(Math.abs(to - from) / by + 1e-9) + 1;
      if (parts.length == 3 && by > 0 && count <= 1000) {
        for (int i = 0; i < count; i++) {
          levels.add(from + Math.signum(to - from) * i * by);
        }
        return levels;
      }
    } catch (NumberFormatException | ArrayIndexOutOfBoundsException e) {
      // The sentence below says what is wanted.
    }
    throw new IllegalArgumentException(
        Sentence.of("--steps takes FROM:TO:BY in dBFS, such as -20:0:1, not {}.", text));
  }

  private void write(Tone tone) throws IOException {
    WavWriter writer = new WavWriter(bits, channels, seed);
    if (file.equals("-")) {
      OutputStream samples = new BufferedOutputStream(stdout);
      writer.write(tone, samples);
      samples.flush();
      return;
    }
    Destination.write(
        Path.of(file),
        out -> {
          OutputStream samples = new BufferedOutputStream(out);
          writer.write(tone, samples);
          samples.flush();
        });
  }

  private void report(Tone tone) {
    // With the samples on stdout, words would spoil them.
    boolean onStdout = file.equals("-");
    PrintWriter out = onStdout ? spec.commandLine().getErr() : spec.commandLine().getOut();
    if (json) {
      out.println(json(tone));
    } else {
      lines(tone, InputFile.shown(file)).forEach(line -> out.println(common.text(line)));
    }
    out.flush();
  }

  private List<String> lines(Tone tone, String name) {
    String hertz = fixed("%.6g", tone.hertz());
    String length = fixed("%.3f", (double) tone.frames() / rate);
    List<String> lines = new ArrayList<>();
    lines.add(
        channels == 1
            ? Sentence.of(
                "{}: {} Hz, {} s, {} samples per second, {} bits, 1 channel",
                name,
                hertz,
                length,
                rate,
                bits)
            : Sentence.of(
                "{}: {} Hz, {} s, {} samples per second, {} bits, {} channels",
                name,
                hertz,
                length,
                rate,
                bits,
                channels));
    for (Cue cue : tone.cues()) {
      lines.add("  " + fixed("%8.3f", (double) cue.frame() / rate) + " s  " + cue.label());
    }
    return lines;
  }

  private static String fixed(String form, double value) {
    return String.format(Locale.ROOT, form, value);
  }

  private String json(Tone tone) {
    return JsonOut.line(
        out -> {
          out.writeStartObject();
          out.writeStringField(Format.KEY, new Format("tone", 1).text());
          JsonOut.number(out, "frequencyHertz", tone.hertz());
          JsonOut.number(out, "frames", tone.frames());
          JsonOut.number(out, "samplesPerSecond", rate);
          JsonOut.number(out, "bits", bits);
          out.writeArrayFieldStart("cues");
          for (Cue cue : tone.cues()) {
            out.writeStartObject();
            JsonOut.number(out, "seconds", (double) cue.frame() / rate);
            out.writeStringField("label", cue.label());
            out.writeEndObject();
          }
          out.writeEndArray();
          out.writeEndObject();
        });
  }

  private void play(Tone tone) throws IOException, CaptureException {
    PrintWriter out = spec.commandLine().getOut();
    double[] block = new double[rate / BLOCKS_A_SECOND];
    double trimDb = 0;
    try (AudioSink sink = output.open(rate)) {
      long frame = 0;
      while (frame < tone.frames()) {
        int key = key(System.in);
        if (key == 'q') {
          return;
        }
        if (key == '+' || key == '-') {
          trimDb = Math.min(-dbfs, trimDb + (key == '+' ? 1 : -1));
          out.println(Sentence.of("{} dBFS", fixed("%.1f", dbfs + trimDb)));
          out.flush();
        }
        double gain = Math.pow(10, trimDb / 20);
        int count = (int) Math.min(block.length, tone.frames() - frame);
        for (int i = 0; i < count; i++) {
          block[i] = gain * tone.at(frame + i);
        }
        sink.write(block, count);
        frame += count;
      }
    }
  }

  private static int key(InputStream in) throws IOException {
    while (in.available() > 0) {
      int key = in.read();
      if (key == '+' || key == '-' || key == 'q') {
        return key;
      }
    }
    return 0;
  }
}
