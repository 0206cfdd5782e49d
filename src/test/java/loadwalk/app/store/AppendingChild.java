package loadwalk.app.store;

import java.io.IOException;
import java.io.PrintStream;
import java.nio.file.Path;
import loadwalk.journal.KeepResult.Kept;
import loadwalk.shipped.Shipped;

/** Runs in a process of its own: adds records to a walk for ever and says which were kept. */
final class AppendingChild {
  private AppendingChild() {}

  /** Starts the process; the first record it adds holds a number. */
  static Process start(Path home, WalkName name, long first) throws IOException {
    return Shipped.limited(
        new ProcessBuilder(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-XX:TieredStopAtLevel=1",
                "-XX:+UseSerialGC",
                "-Xmx64m",
                "-cp",
                System.getProperty("java.class.path"),
                AppendingChild.class.getName(),
                home.toString(),
                name.text(),
                Long.toString(first))
            .redirectError(ProcessBuilder.Redirect.INHERIT));
  }

  /** Takes the data home, the name of the walk and a first number; prints one line a record. */
  public static void main(String[] arguments) {
    JournalFolder store = new JournalFolder(new DataHome(Path.of(arguments[0])));
    WalkName name = new WalkName(arguments[1]);
    PrintStream out = System.out;
    OpeningOutcome opening = store.open(name);
    if (opening instanceof OpeningOutcome.Refused) {
      opening = store.create(name, Walks.HEAD);
    }
    if (!(opening instanceof OpeningOutcome.Writing writing)) {
      out.println("cannot write: " + opening);
      out.flush();
      return;
    }
    for (long n = Long.parseLong(arguments[2]); ; n++) {
      String body = "{\"n\":" + n + ",\"pad\":\"" + "p".repeat((int) (n * 7919 % 5000)) + "\"}";
      if (!(writing.walk().append(body) instanceof Kept)) {
        out.println("not kept: " + n);
      }
      out.println("kept " + n);
      out.flush();
    }
  }
}
