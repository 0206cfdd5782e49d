package loadwalk.cautions;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Holds the tables to what the program can say: no caution is without its situations. */
class CautionCodesTest {
  private static final int LEAST_ROWS = 120;

  /** A code where a caution or a stress is made, or where a constant keeps it. */
  private static final Pattern CODE =
      Pattern.compile(
          "(?:new Caution|Caution\\.giving|Caution\\.once|\\bcaution|new"
              + " Stress)\\(\\s*\"([a-z-]+)\"|static final String \\w+ ="
              + " \"([a-z]+(?:-[a-z]+)*)\";");

  private static final Pattern MAKES =
      Pattern.compile("new Caution\\(|Caution\\.giving\\(|Caution\\.once\\(|new Stress\\(");

  private final Situations situations = Situations.kept();

  @Test
  void codes_areThoseOfTheCode() throws IOException {
    Set<String> found = new TreeSet<>();
    for (Path file : files()) {
      String text = Files.readString(file);
      if (MAKES.matcher(text).find()) {
        Matcher matcher = CODE.matcher(text);
        while (matcher.find()) {
          found.add(matcher.group(1) == null ? matcher.group(2) : matcher.group(1));
        }
      }
    }
    assertEquals(found, new TreeSet<>(situations.codes().levels().keySet()));
  }

  private static List<Path> files() throws IOException {
    try (Stream<Path> files = Files.walk(Path.of("src/main/java"))) {
      return files.filter(file -> file.toString().endsWith(".java")).toList();
    }
  }

  @Test
  void everyCaution_standsInTwoSituationsAtEachLevel() {
    Map<String, Integer> rows = new LinkedHashMap<>();
    situations.codes().all().forEach(caution -> rows.put(caution, 0));
    for (Situations.Situation situation : situations.all()) {
      new TreeSet<>(situation.cautions()).forEach(caution -> rows.merge(caution, 1, Integer::sum));
    }
    assertEquals(
        Map.of(),
        rows.entrySet().stream()
            .filter(each -> each.getValue() < 2)
            .collect(Collectors.toMap(Map.Entry::getKey, Map.Entry::getValue)));
  }

  @Test
  void situations_areManyAndOfEveryKindOfStep() {
    List<Situations.Situation> all = situations.all();
    assertTrue(all.size() >= LEAST_ROWS, "only " + all.size() + " situations");
    Set<String> kinds =
        all.stream()
            .map(each -> each.row().cell("step"))
            .map(step -> step.replaceFirst(".*/", "").replaceFirst("[ #,].*", ""))
            .map(step -> step.replaceFirst("^(stereo|bridged)-.*", "measure"))
            .collect(Collectors.toCollection(TreeSet::new));
    assertEquals(
        Set.of("idle", "measure", "music", "note", "open-load", "recheck", "warm-up"), kinds);
  }

  @Test
  void situation_hasANameOfItsOwn() {
    Set<String> names = new TreeSet<>();
    for (Situations.Situation each : situations.all()) {
      String name =
          String.join(
              " ",
              each.row().cells().values().stream().limit(Situations.COLUMNS.size() - 3).toList());
      assertTrue(names.add(name), each.name() + " stands twice");
    }
  }
}
