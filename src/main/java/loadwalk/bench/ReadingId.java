package loadwalk.bench;

import java.util.Optional;
import loadwalk.quantity.Unit;

/** The readings of a step, each with the id used in every file and output. */
public enum ReadingId {
  /** RMS volts across one load. */
  OUTPUT_VOLTS("outputVolts", "output volts", Unit.VOLT),
  /** Watts in one load, where the meter shows watts; replaces {@link #OUTPUT_VOLTS}. */
  OUTPUT_WATTS("outputWatts", "output watts", Unit.WATT),
  /** RMS volts across the other channel's load, where both channels are measured. */
  OTHER_OUTPUT_VOLTS("otherOutputVolts", "other channel volts", Unit.VOLT),
  /** DC volts at the amplifier's terminals. */
  SUPPLY_VOLTS("supplyVolts", "supply volts", Unit.VOLT),
  /** DC amperes drawn from the supplies. */
  SUPPLY_AMPS("supplyAmps", "supply amps", Unit.AMPERE),
  /** Heatsink temperature. */
  SINK_CELSIUS("sinkCelsius", "heatsink", Unit.CELSIUS),
  /** Load measured cold at the amplifier's end of the speaker lead, amplifier off. */
  LOAD_OHMS("loadOhms", "load ohms", Unit.OHM),
  /** The other channel's load measured likewise, where both are loaded. */
  OTHER_LOAD_OHMS("loadOhms#2", "other load ohms", Unit.OHM),
  /** Total harmonic distortion at the reading. */
  THD_PERCENT("thdPercent", "THD", Unit.PERCENT),
  /** Frequency of the test tone. */
  FREQUENCY_HERTZ("frequencyHertz", "tone", Unit.HERTZ),
  /** RMS output volts with the load disconnected, generator untouched. */
  OPEN_VOLTS("openVolts", "unloaded volts", Unit.VOLT),
  /** Temperature of the air around the amplifier. */
  AMBIENT_CELSIUS("ambientCelsius", "ambient", Unit.CELSIUS);

  private final String key;
  private final String label;
  private final Unit unit;

  ReadingId(String key, String label, Unit unit) {
    this.key = key;
    this.label = label;
    this.unit = unit;
  }

  /** Returns the id used in files and JSON output. */
  public String key() {
    return key;
  }

  /** Returns the words used on screens. */
  public String label() {
    return label;
  }

  /** Returns the unit of the reading. */
  public Unit unit() {
    return unit;
  }

  /**
   * Returns the reading whose meter is used where this one has none of its own: other volts are
   * read by moving the output meter's leads, the other load by moving the ohmmeter's. For all
   * others it is the reading itself.
   */
  public ReadingId meteredAs() {
    return switch (this) {
      case OTHER_OUTPUT_VOLTS, OPEN_VOLTS -> OUTPUT_VOLTS;
      case OTHER_LOAD_OHMS -> LOAD_OHMS;
      default -> this;
    };
  }

  /** Finds the reading with the given id. */
  public static Optional<ReadingId> ofKey(String key) {
    for (ReadingId id : values()) {
      if (id.key.equals(key)) {
        return Optional.of(id);
      }
    }
    return Optional.empty();
  }
}
