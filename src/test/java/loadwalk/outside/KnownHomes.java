package loadwalk.outside;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.Deque;

/**
 * Data homes of three walks whose ledger has been read, lent to one fault at a time: the index lies
 * in the folder that it was made in, without which it would not be looked at.
 */
final class KnownHomes {
  private final Program program;
  private final Deque<Known> free = new ArrayDeque<>();

  KnownHomes(Program program) {
    this.program = program;
  }

  /** What is done with a home. */
  interface Use {
    void of(Known home) throws Exception;
  }

  /**
   * A home, with what was true of it when it was made.
   *
   * @param path the home
   * @param ledger its ledger as JSON
   * @param index the bytes of its index
   */
  record Known(Path path, String ledger, byte[] index) {
    Path indexFile() {
      return path.resolve("sessions/.ledger-index");
    }

    /** Puts the index back as it was. */
    void restore() throws IOException {
      Files.write(indexFile(), index);
    }
  }

  /** Returns what the ledger of a home prints. */
  Ran ledger(Known home) throws IOException, InterruptedException {
    return program.run("", "ledger", "--json", "-", "--home", home.path().toString());
  }

  /** Lends a home, made in the folder where none is free. */
  void lend(Path folder, Use use) throws Exception {
    Known home = taken(folder);
    try {
      use.of(home);
    } finally {
      home.restore();
      synchronized (free) {
        free.push(home);
      }
    }
  }

  private Known taken(Path folder) throws IOException, InterruptedException {
    synchronized (free) {
      if (!free.isEmpty()) {
        return free.pop();
      }
    }
    Path home = TinyWalk.home(folder.resolve("home"));
    program.run(TinyWalk.lines(), TinyWalk.begin(home)).ends(0);
    for (String seed : new String[] {"1", "2"}) {
      program
          .run("", "walk", "full-walk", "--practice", seed, "--fill", "--home", home.toString())
          .ends(0);
    }
    Known unread = new Known(home, "", new byte[0]);
    String ledger = ledger(unread).ends(0).out();
    assertEquals(3, ledger.split("\"finished\" :", -1).length - 1, ledger);
    byte[] index = Files.readAllBytes(unread.indexFile());
    Object key = Files.getAttribute(unread.indexFile(), "fileKey");
    assertEquals(ledger, ledger(unread).ends(0).out());
    assertEquals(
        key, Files.getAttribute(unread.indexFile(), "fileKey"), "the index was not believed");
    Files.writeString(unread.indexFile(), "");
    assertEquals(ledger, ledger(unread).ends(0).out());
    assertArrayEquals(index, Files.readAllBytes(unread.indexFile()));
    assertNotEquals(0, index.length);
    return new Known(home, ledger, index);
  }
}
