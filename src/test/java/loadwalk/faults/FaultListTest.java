package loadwalk.faults;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Holds the list of deliberate faults to its form, so that each can be tried. */
class FaultListTest {
  private static final String ENTRY =
      """
      # lead-by-current
      The lead burns before the fuse opens.
      caught by loadwalk.plan.LeadTest, loadwalk.plan.FuseTest
      in src/main/java/loadwalk/plan/Lead.java
        context {
      - old line
      + new line
      """;

  @Test
  void everyEntry_fitsTheTreeInOnePlace() throws IOException {
    FaultList list = FaultList.of(Path.of(""));
    assertEquals(
        List.of(),
        list.faults().stream().flatMap(f -> f.complaints(Path.of("")).stream()).toList());
  }

  @Test
  void list_isLongEnough() throws IOException {
    assertTrue(FaultList.of(Path.of("")).faults().size() >= 150);
  }

  @Test
  void entry_isReadWhole() {
    Fault fault = FaultReader.read("plan", ENTRY).get(0);
    assertEquals("lead-by-current", fault.name());
    assertEquals("The lead burns before the fuse opens.", fault.harm());
    assertEquals(List.of("loadwalk.plan.LeadTest", "loadwalk.plan.FuseTest"), fault.caughtBy());
    assertEquals("src/main/java/loadwalk/plan/Lead.java", fault.file());
    assertEquals("loadwalk.plan", fault.testedPackage());
    assertEquals(
        "class {\n  context {\n new line\n  }\n",
        fault.patch().applied("class {\n  context {\n    old line\n  }\n"));
  }

  @Test
  void patch_thatFitsTwice_isRefused() {
    Patch patch = FaultReader.read("plan", ENTRY).get(0).patch();
    String twice = "context {\nold line\ncontext {\nold line\n";
    String said = assertThrows(BadFault.class, () -> patch.applied(twice)).getMessage();
    assertEquals("its old lines stand in 2 places of the file", said);
  }

  @Test
  void spoiledEntry_isNamedWithItsLine() {
    assertSays("plan.faults:1: expected that \"# \" brings the name of a fault", "lead\n" + ENTRY);
    assertSays(
        "plan.faults:9: expected that a name is in kebab case, not \"Lead\"", ENTRY + "\n# Lead\n");
    assertSays(
        "plan.faults:3: expected that before this a sentence says what it would do to a person",
        ENTRY.replace("opens.", "opens"));
    assertSays(
        "plan.faults:3: expected that a test is named in full, not \"LeadTest\"",
        ENTRY.replace("loadwalk.plan.LeadTest", "LeadTest"));
    assertSays(
        "plan.faults:4: expected that \"in \" brings the file it spoils",
        ENTRY.replace("in src", "at src"));
    assertSays(
        "plan.faults:6: expected that a patch has lines with blank, - or +",
        ENTRY.replace("- old", "old"));
    assertSays(
        "plan.faults:8: expected that before this a patch names old lines and changes something",
        ENTRY.replace("+ new", "+ old"));
  }

  @Test
  void secondFaultOfOneName_isRefused() {
    List<Fault> twice = FaultReader.read("plan", ENTRY + "\n" + ENTRY);
    String said = assertThrows(BadFault.class, () -> new FaultList(twice)).getMessage();
    assertEquals("plan.faults: a second fault is called lead-by-current", said);
  }

  @Test
  void draw_isTheSameForTheSameCommit() throws IOException {
    FaultList all = FaultList.of(Path.of(""));
    String commit = "2cdfe0e8a5d1f2b7c9e3a4d5f6b7c8d9e0f1a2b3";
    assertEquals(all.drawn(5, commit), all.drawn(5, commit));
    assertTrue(!all.drawn(5, commit).equals(all.drawn(5, commit.replace('2', '7'))));
  }

  private static void assertSays(String expected, String text) {
    assertEquals(
        expected, assertThrows(BadFault.class, () -> FaultReader.read("plan", text)).getMessage());
  }
}
