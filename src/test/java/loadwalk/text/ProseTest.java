package loadwalk.text;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Holds that what people read stands in the source as whole sentences. */
class ProseTest {
  /** Packages whose sentences are still glued together; a package leaves once and for all. */
  private static final Set<String> STILL_GLUED = Set.of();

  private static ProseScan main;

  @BeforeAll
  static void scan() throws IOException {
    main = ProseScan.of(Path.of("src/main/java"));
    assertTrue(main.sentences().size() > 1000, "the sources were not found");
  }

  @Test
  void slots_areAsManyAsTheirFillings() {
    assertEquals(List.of(), main.misfits());
  }

  @Test
  void sentences_standWhole() {
    List<ProseScan.Found> glued =
        main.glued().stream().filter(found -> !STILL_GLUED.contains(hall(found))).toList();
    assertEquals(
        "", glued.stream().map(ProseScan.Found::toString).collect(Collectors.joining("\n")));
  }

  @Test
  void stillGlued_shrinks() {
    Set<String> whole = new TreeSet<>(STILL_GLUED);
    main.glued().forEach(found -> whole.remove(hall(found)));
    assertEquals(Set.of(), whole, "these are whole now: take them off the list");
  }

  private static String hall(ProseScan.Found found) {
    String[] parts = found.owner().split("\\.");
    return parts[0] + "." + parts[1];
  }

  @Test
  void scan_findsWhatIsGluedAndWhatDoesNotFit(@TempDir Path folder) throws IOException {
    ProseScan scan =
        scanned(
            folder,
            "String a(int n) { return \"It is \" + n + \" long.\"; }",
            "String b(int n) { return String.format(\"It has %d ends.\", n); }",
            "void c(StringBuilder out) { out.append(\" and more\"); }",
            "String d(int n) { return Sentence.of(\"One {} of \" + \"{}.\", n); }",
            "String e(boolean is) { return Sentence.of(is ? \"Yes, {}.\" : \"No.\", 1); }",
            "String f(String t) { return Sentence.of(t, 1); }",
            "String g(int n) { return Sentence.plural(n, \"1 walk\", \"walks\"); }");
    assertEquals(
        List.of("It is {} long.", "It has {} ends.", " and more"),
        scan.glued().stream().map(ProseScan.Found::text).toList());
    assertEquals(
        List.of("6", "7", "8", "9"),
        scan.misfits().stream().map(found -> found.where().replaceAll(".*:", "")).toList());
  }

  @Test
  void scan_leavesMarkupCommandsAndBugsAlone(@TempDir Path folder) throws IOException {
    ProseScan scan =
        scanned(
            folder,
            "String a(int n) { return \"<line class='grid' x1='\" + n + \"'>\"; }",
            "void b(int n) { throw new IllegalArgumentException(\"must be above 0, got \" + n); }",
            "String c(int n) { return \"a long sentence, \" + \"in two literals.\"; }",
            "String d(int n) { return Sentence.of(\"It is {} \" + \"long.\", n); }",
            "String e(int n) { return \"step-\" + n; }",
            "String f(boolean is) { return Sentence.of(is ? \"Yes, {}.\" : \"No, {}.\", 1); }");
    assertEquals(List.of(), scan.glued());
    assertEquals(List.of(), scan.misfits());
    assertEquals(
        List.of("a long sentence, in two literals.", "It is {} long.", "Yes, {}.", "No, {}."),
        scan.sentences().stream().map(ProseScan.Found::text).toList());
  }

  private static ProseScan scanned(Path folder, String... members) throws IOException {
    String code = "package loadwalk.said;\nclass Said {\n" + String.join("\n", members) + "\n}\n";
    Files.writeString(folder.resolve("Said.java"), code);
    return ProseScan.of(folder);
  }
}
