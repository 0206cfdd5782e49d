package loadwalk.wave;

/** The kind of distortion in a wave, named only as far as the numbers show it. */
public enum WaveShape {
  CLEAN("no distortion to name"),
  HARD_CLIP_BOTH("hard clipping on both sides"),
  HARD_CLIP_TOP("hard clipping on the positive side only"),
  HARD_CLIP_BOTTOM("hard clipping on the negative side only"),
  CROSSOVER("crossover distortion: a dead zone around zero"),
  SLEWING("slew limiting: straight flanks"),
  UNNAMED("distorted, in no shape that can be named");

  private final String words;

  WaveShape(String words) {
    this.words = words;
  }

  /** Returns the shape as printed. */
  public String words() {
    return words;
  }
}
