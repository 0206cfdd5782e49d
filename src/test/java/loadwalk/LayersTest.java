package loadwalk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** Holds the table of layers in DEVELOPERS.md: imports go down only. */
class LayersTest {
  private static final Map<String, Integer> ROWS =
      Map.ofEntries(
          Map.entry("app", 6),
          Map.entry("cli", 5),
          Map.entry("tui", 5),
          Map.entry("plain", 5),
          Map.entry("view", 4),
          Map.entry("report", 4),
          Map.entry("walk", 3),
          Map.entry("plan", 3),
          Map.entry("sequence", 2),
          Map.entry("forecast", 2),
          Map.entry("journal", 2),
          Map.entry("meter", 2),
          Map.entry("practice", 2),
          Map.entry("result", 2),
          Map.entry("wave", 2),
          Map.entry("bench", 1),
          Map.entry("numeric", 1),
          Map.entry("chart", 1),
          Map.entry("quantity", 0),
          Map.entry("json", 0),
          Map.entry("text", -1));

  /** The rooms of a package that has some, from the bottom up; "" is the package itself. */
  private static final Map<String, List<String>> ROOMS =
      Map.of(
          "app", List.of("loop", "store", "meter", "sound", ""),
          "forecast", List.of("", "caution", "model", "doubt", "standard"),
          "plan", List.of("wiring", ""),
          "report", List.of("page", "sheet", "rehearsal", "ledger", "plan", "wave"),
          "view", List.of("canvas", "state", "form", "screen", "home", "walk", ""),
          "walk", List.of("fact", "", "rehearse"),
          "wave", List.of("", "file", "tone", "spectrum", "analysis"));

  private static final Set<String> WORLD =
      Set.of(
          "java.io.File",
          "java.io.FileInputStream",
          "java.io.FileOutputStream",
          "java.io.RandomAccessFile",
          "java.lang.Thread",
          "java.time.Clock",
          "java.nio.file.Files",
          "java.nio.channels.FileChannel",
          "java.util.concurrent.ThreadLocalRandom");

  private static JavaClasses classes;

  @BeforeAll
  static void readClasses() {
    classes =
        new ClassFileImporter()
            .withImportOption(new ImportOption.DoNotIncludeTests())
            .importPackages("loadwalk");
    assertTrue(classes.size() > 20, "the class files were not found");
  }

  @Test
  void imports_goDownOnly() {
    Set<String> wrong = new TreeSet<>();
    forEachDependency(
        (from, to) -> {
          String source = topPackage(from);
          String target = topPackage(to.getName());
          boolean inside = to.getName().startsWith("loadwalk.") && !source.equals(target);
          if (inside && ROWS.get(source) <= ROWS.get(target)) {
            wrong.add(from + " -> " + to.getName());
          }
        });
    assertEquals(Set.of(), wrong);
  }

  @Test
  void imports_goDownOnlyAmongTheRoomsOfAPackage() {
    Set<String> wrong = new TreeSet<>();
    forEachDependency(
        (from, to) -> {
          String top = topPackage(from);
          boolean inside =
              to.getName().startsWith("loadwalk.") && top.equals(topPackage(to.getName()));
          if (inside && floor(from) < floor(to.getName())) {
            wrong.add(from + " -> " + to.getName());
          }
        });
    assertEquals(Set.of(), wrong);
  }

  @Test
  void everyRoom_isNamed_andEveryNamedRoomIsThere() {
    Set<String> found = new TreeSet<>();
    classes.stream()
        .filter(c -> !c.getSimpleName().equals("package-info"))
        .forEach(c -> found.add(topPackage(c.getName()) + "/" + room(c.getName())));
    Set<String> named = new TreeSet<>();
    ROWS.keySet()
        .forEach(
            top ->
                ROOMS.getOrDefault(top, List.of("")).forEach(room -> named.add(top + "/" + room)));
    assertEquals(named, found);
  }

  @Test
  void everyPackage_hasARow() {
    Set<String> packages = new TreeSet<>();
    classes.forEach(c -> packages.add(topPackage(c.getName())));
    packages.removeAll(ROWS.keySet());
    assertEquals(Set.of(), packages);
  }

  @Test
  void filesClocksThreadsAndLanterna_stayAboveRowFour() {
    Set<String> wrong = new TreeSet<>();
    forEachDependency(
        (from, to) -> {
          boolean world =
              WORLD.contains(to.getName()) || to.getName().startsWith("com.googlecode.lanterna");
          if (world && ROWS.get(topPackage(from)) <= 4) {
            wrong.add(from + " -> " + to.getName());
          }
        });
    assertEquals(Set.of(), wrong);
  }

  @Test
  void clocksAndRandomSeeds_areReadInAppOnly() {
    Set<String> wrong = new TreeSet<>();
    Map<String, List<String>> banned = new TreeMap<>();
    banned.put("java.lang.System", List.of("currentTimeMillis", "nanoTime"));
    banned.put("java.time.Instant", List.of("now"));
    banned.put("java.time.LocalDate", List.of("now"));
    banned.put("java.lang.Math", List.of("random"));
    for (JavaClass from : classes) {
      if (ROWS.get(topPackage(from.getName())) > 4) {
        continue;
      }
      from.getMethodCallsFromSelf().stream()
          .filter(
              call ->
                  banned
                      .getOrDefault(call.getTargetOwner().getName(), List.of())
                      .contains(call.getTarget().getName()))
          .forEach(call -> wrong.add(call.getDescription()));
    }
    assertEquals(Set.of(), wrong);
  }

  @Test
  void stockTables_areAskedForByTheRulesAlone() {
    Set<String> asking = new TreeSet<>();
    for (JavaClass from : classes) {
      from.getMethodCallsFromSelf().stream()
          .filter(call -> call.getTargetOwner().getName().equals("loadwalk.bench.Tables"))
          .filter(call -> call.getTarget().getName().equals("stock"))
          .forEach(call -> asking.add(from.getName().replaceAll("\\$.*", "")));
    }
    assertEquals(Set.of("loadwalk.plan.Rules"), asking);
  }

  private interface Visit {
    void of(String from, JavaClass to);
  }

  private static void forEachDependency(Visit visit) {
    for (JavaClass from : classes) {
      from.getDirectDependenciesFromSelf()
          .forEach(d -> visit.of(from.getName(), d.getTargetClass().getBaseComponentType()));
    }
  }

  private static String topPackage(String className) {
    String[] parts = className.split("\\.");
    return parts.length > 1 ? parts[1] : className;
  }

  private static int floor(String className) {
    return ROOMS.getOrDefault(topPackage(className), List.of("")).indexOf(room(className));
  }

  private static String room(String className) {
    String[] parts = className.split("\\.");
    return parts.length > 3 ? parts[2] : "";
  }
}
