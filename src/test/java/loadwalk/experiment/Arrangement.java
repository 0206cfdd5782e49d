package loadwalk.experiment;

/**
 * Which meters are read at every step, and whether loads are measured again at the end.
 *
 * <p>All channels are those that a reading can be of: channel 1, and in stereo the other one.
 */
enum Arrangement {
  AMPS("with supply amps", true, false),
  VOLTS("volts only", false, false),
  ALL_CHANNELS("both channels and rechecks, with supply amps", true, true),
  ALL_CHANNELS_VOLTS("both channels and rechecks, volts only", false, true);

  final String words;

  /** Whether supply volts and amps are read. */
  final boolean withAmps;

  /** Whether the other channel is read too, and two loads are measured again at the end. */
  final boolean allChannels;

  Arrangement(String words, boolean withAmps, boolean allChannels) {
    this.words = words;
    this.withAmps = withAmps;
    this.allChannels = allChannels;
  }

  /** Returns how many steps of the ladder are taken. */
  int steps() {
    return Ladder.STEPS.size() + (allChannels ? Ladder.RECHECKS.size() : 0);
  }
}
