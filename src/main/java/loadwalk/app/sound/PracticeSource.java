package loadwalk.app.sound;

import java.util.OptionalDouble;
import loadwalk.practice.PracticeTone;
import loadwalk.wave.file.AudioSource;

/** The practice amplifier's output as the practice bench's sound input takes it, 16 bit. */
final class PracticeSource implements AudioSource {
  private static final int RATE = 48_000;

  private final PracticeTone tone;
  private final double fullScaleVolts;
  private long frame;

  PracticeSource(PracticeTone tone, double fullScaleVolts) {
    this.tone = tone;
    this.fullScaleVolts = fullScaleVolts;
  }

  @Override
  public double samplesPerSecond() {
    return RATE;
  }

  @Override
  public int channels() {
    return 1;
  }

  @Override
  public OptionalDouble step() {
    return OptionalDouble.of(Math.scalb(1.0, -15));
  }

  @Override
  public int read(double[][] block) {
    for (int i = 0; i < block[0].length; i++) {
      long code = Math.round(tone.volts((double) frame / RATE) / fullScaleVolts * 32768);
      block[0][i] = Math.max(Short.MIN_VALUE, Math.min(Short.MAX_VALUE, code)) / 32768.0;
      frame++;
    }
    return block[0].length;
  }
}
