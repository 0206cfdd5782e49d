package loadwalk.outside;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;

/** Languages, scripts and encodings that must not change a byte of a result. */
final class Locales {
  private static final List<String> OF_THE_SYSTEM =
      List.of("C", "POSIX", "C.UTF-8", "en_US.UTF-8", "tr_TR.UTF-8", "de_DE@euro", "nonsense");
  private static final List<String> OF_JAVA =
      List.of(
          "",
          "-Duser.language=tr -Duser.country=TR",
          "-Duser.language=de -Duser.country=DE",
          "-Duser.language=ar -Duser.country=EG",
          "-Duser.language=fa -Duser.country=IR",
          "-Duser.language=th -Duser.country=TH -Duser.variant=TH",
          "-Duser.language=hi -Duser.country=IN",
          "-Duser.language=ja -Duser.country=JP -Duser.variant=JP -Dfile.encoding=ISO-8859-1",
          "-Duser.timezone=Pacific/Kiritimati");

  private Locales() {}

  static List<Fault> all(Learned learned, Random random) {
    List<Fault> all = new ArrayList<>();
    for (String system : OF_THE_SYSTEM) {
      for (String java : OF_JAVA) {
        all.add(
            new Fault(
                system + " " + java, folder -> walk(learned, TinyWalk.home(folder), system, java)));
      }
    }
    return all;
  }

  private static void walk(Learned learned, Path home, String system, String java)
      throws Exception {
    Program program = learned.program().with("LC_ALL", system).with("JAVA_TOOL_OPTIONS", java);
    Ran ran = program.run(TinyWalk.lines() + "sheet\n", TinyWalk.begin(home)).ends(0);
    assertEquals(6, ran.lines("kept "), ran::said);
    boolean ascii = !system.contains("UTF-8");
    assertTrue(!ascii || ran.out().chars().allMatch(c -> c < 127), ran::said);
    String name = Journal.only(home).isWhole().file().getFileName().toString();
    assertTrue(name.matches("20\\d\\d-[01][0-9]-[0-3][0-9]-ilvik-t-2\\.jsonl"), name);
    TinyWalk.hasSheet(learned.sheet(), program, home);
  }
}
