package loadwalk.bench;

import loadwalk.text.Sentence;

/** How the load is connected to the amplifier. */
public enum Mode {
  /** One load on each channel, both driven. */
  STEREO("stereo", 2),
  /** One load across two channels driven in opposite phase; each channel drives half the load. */
  BRIDGED("bridged", 1);

  private final String word;
  private final int loads;

  Mode(String word, int loads) {
    this.word = word;
    this.loads = loads;
  }

  /** Returns the word used in files and on screens. */
  public String word() {
    return word;
  }

  /** Returns the mode and a load in words: "stereo 4 Ω". */
  public String load(double ohms) {
    return Sentence.of("{} {} Ω", word, Figures.three(ohms));
  }

  /** Returns how many loads are connected: 2 in stereo, 1 bridged. */
  public int loads() {
    return loads;
  }

  /** Returns the load that each channel drives, in ohms. */
  public double channelOhms(double loadOhms) {
    return this == BRIDGED ? loadOhms / 2 : loadOhms;
  }
}
