package loadwalk.bench;

import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The class of an output stage. */
public enum AmplifierClass {
  A,
  AB,
  B,
  D,
  /** Linear, on rails that are switched up for the peaks; class H follows them smoothly. */
  G;

  /** The classes as people type them, for messages. */
  public static final String KNOWN = "A, AB, B, D, G, H or T";

  private static final Map<String, AmplifierClass> LETTERS =
      Map.of("a", A, "ab", AB, "b", B, "d", D, "t", D, "g", G, "h", G, "gh", G);

  /** "class" before or behind, letters parted by a sign, and a word or two that change nothing. */
  private static final Pattern WRITTEN =
      Pattern.compile(
          "(?:class[\\s:.-]*)?(a[\\s/+-]*b|g[\\s/+-]*h|[abdght])(?:[\\s-]*class)?"
              + "(?:[\\s,-]*(?:\\(.*\\)|mono(?:block)?|stereo|full[\\s-]*range|digital|amp(?:lifier)?))*");

  /** Reads a class as people write it: "class d", "A/B", "D (full range)"; empty where unknown. */
  public static Optional<AmplifierClass> of(String written) {
    Matcher found = WRITTEN.matcher(written.strip().toLowerCase(Locale.ROOT));
    return found.matches()
        ? Optional.of(LETTERS.get(found.group(1).replaceAll("[^a-z]", "")))
        : Optional.empty();
  }
}
