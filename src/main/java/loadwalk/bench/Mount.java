package loadwalk.bench;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import loadwalk.json.Shape;
import loadwalk.json.Words;
import loadwalk.text.Sentence;

/**
 * How a load resistor gets rid of its heat.
 *
 * @param kind what it is mounted on or in
 * @param kelvinPerWatt how much hotter than the air its heatsink gets for each watt of this
 *     resistor, K/W; only with a heatsink
 */
public record Mount(Kind kind, OptionalDouble kelvinPerWatt) {
  /** Tells one mount from another, by the word in a file. */
  public enum Kind {
    /** A heatsink of known K/W. */
    HEATSINK("heatsink", "on a heatsink"),
    /** A plate or a chassis of which no figure is known. */
    METAL("metal", "clamped to metal"),
    /** Nothing: the body alone, in still air. */
    FREE_AIR("free-air", "in free air"),
    /** A fan that blows over the body. */
    FAN("fan", "before a fan"),
    /** A bath of oil. */
    OIL("oil", "in oil");

    private final String word;
    private final String words;

    Kind(String word, String words) {
      this.word = word;
      this.words = words;
    }

    /** Returns the word in a file. */
    public String word() {
      return word;
    }

    /** Finds a kind by its word, in any case of letters; throws where there is none. */
    public static Kind ofWord(String word) {
      return Stream.of(values())
          .filter(kind -> kind.word.equalsIgnoreCase(word))
          .findFirst()
          .orElseThrow(() -> new IllegalArgumentException("no mount is called " + word));
    }
  }

  /** The mount of a resistor of which none is said: the most cautious one. */
  public static final Mount PRESUMED = new Mount(Kind.FREE_AIR, OptionalDouble.empty());

  private static final Words<Kind> KINDS = Words.of(List.of(Kind.values()), Kind::word);
  private static final double LEAST_KELVIN_PER_WATT = 0.001;
  private static final double MOST_KELVIN_PER_WATT = 1000;

  /** Checks that a heatsink has its figure, and nothing else has one. */
  public Mount {
    Objects.requireNonNull(kind, "kind");
    kelvinPerWatt.ifPresent(figure -> Checks.positive(figure, "kelvinPerWatt"));
    if (kelvinPerWatt.isPresent() != (kind == Kind.HEATSINK)) {
      throw new IllegalArgumentException("kelvinPerWatt belongs to a heatsink, and only to one");
    }
  }

  /** Returns a heatsink, K/W for each resistor on it. */
  public static Mount heatsink(double kelvinPerWatt) {
    return new Mount(Kind.HEATSINK, OptionalDouble.of(kelvinPerWatt));
  }

  /** Returns a mount that is no heatsink. */
  public static Mount of(Kind kind) {
    return new Mount(kind, OptionalDouble.empty());
  }

  /** Goes through the mount of a resistor, two keys among its own. */
  static Optional<Mount> shape(Shape in, Optional<Mount> mount) {
    OptionalDouble figure =
        in.number(
            "kelvinPerWatt",
            mount.map(Mount::kelvinPerWatt).orElse(OptionalDouble.empty()),
            LEAST_KELVIN_PER_WATT,
            MOST_KELVIN_PER_WATT);
    Kind before = figure.isPresent() ? Kind.HEATSINK : mount.orElse(PRESUMED).kind;
    Optional<Kind> kind =
        in.has("mount", mount.isPresent())
            ? Optional.ofNullable(in.word("mount", before, KINDS))
            : Optional.empty();
    boolean sink = kind.filter(k -> k == Kind.HEATSINK).isPresent();
    if (sink && figure.isEmpty()) {
      in.refuse("mount", "a heatsink needs «kelvinPerWatt»; where it is not known, say «metal»");
      return mount;
    }
    if (!sink && figure.isPresent()) {
      in.refuse("kelvinPerWatt", "«kelvinPerWatt» belongs to the mount «heatsink»");
      return mount;
    }
    return kind.map(k -> new Mount(k, figure));
  }

  /**
   * Returns how much hotter than the air the case gets for each watt, K/W.
   *
   * @param freeAir the same in free air, K/W; no mount is worse
   */
  double caseKelvinPerWatt(double freeAir, Tables tables) {
    return switch (kind) {
      case FREE_AIR -> freeAir;
      case FAN -> freeAir / tables.limit("resistor-fan-multiple");
      case OIL -> freeAir / tables.limit("resistor-oil-multiple");
      case METAL -> Math.min(freeAir, tables.limit("resistor-metal-kelvin-per-watt"));
      case HEATSINK -> Math.min(freeAir, kelvinPerWatt.getAsDouble());
    };
  }

  /** Returns the mount in words: "on a heatsink of 0.5 K/W", "in free air". */
  public String words() {
    return kelvinPerWatt.isPresent()
        ? Sentence.of("{} of {} K/W", kind.words, Figures.three(kelvinPerWatt.getAsDouble()))
        : kind.words;
  }
}
