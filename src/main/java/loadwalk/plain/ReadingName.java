package loadwalk.plain;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import loadwalk.bench.ReadingId;

/**
 * A reading at the start of a line: by its id, or by its name on the screens.
 *
 * @param id the reading
 * @param rest what stands behind the name
 */
record ReadingName(ReadingId id, String rest) {
  private static final Pattern LABEL =
      Pattern.compile(
          Stream.of(ReadingId.values())
              .map(id -> Pattern.quote(id.label()))
              .collect(Collectors.joining("|", "(", ")(?:\\s+(.*))?")),
          Pattern.CASE_INSENSITIVE);

  /** Finds the reading that a line begins with. */
  static Optional<ReadingName> at(String line) {
    String text = line.strip();
    String word = text.split("\\s+", 2)[0];
    Optional<ReadingId> byKey = ReadingId.ofKey(word);
    if (byKey.isPresent()) {
      return Optional.of(new ReadingName(byKey.get(), text.substring(word.length()).strip()));
    }
    Matcher label = LABEL.matcher(text);
    return label.matches()
        ? Stream.of(ReadingId.values())
            .filter(id -> id.label().equalsIgnoreCase(label.group(1)))
            .findFirst()
            .map(id -> new ReadingName(id, Optional.ofNullable(label.group(2)).orElse("")))
        : Optional.empty();
  }
}
