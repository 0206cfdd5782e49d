package loadwalk.outside;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/**
 * What a walk without faults leaves.
 *
 * @param program the launcher
 * @param sheet its sheet
 * @param records how many records its journal holds
 * @param bytes how long its journal is
 */
record Learned(Program program, String sheet, int records, long bytes) {
  /** Walks once, in an empty folder. */
  static Learned by(Path folder) throws IOException, InterruptedException {
    Program program = Program.shipped(folder);
    Path home = TinyWalk.home(folder);
    Ran ran = program.run(TinyWalk.lines() + "sheet\n", TinyWalk.begin(home)).ends(0);
    Journal journal = Journal.only(home).isWhole().holdsWhatWasCalledKept(ran.out());
    assertTrue(TinyWalk.isWhole(journal), ran::said);
    assertEquals(6, ran.lines("kept "), ran.out());
    long bytes = Files.size(journal.file());
    return new Learned(
        program, TinyWalk.sheet(program, home), Journal.count(journal.file()), bytes);
  }
}
