package loadwalk.app.store;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import loadwalk.Needs;

/** Opens a walk and makes a new one where it may not write, in a process of its own. */
final class ReadOnlyChild {
  private ReadOnlyChild() {}

  /**
   * Returns the lines it says; even the owner of the machine has no more rights in it than others.
   */
  static List<String> said(Path home) throws Exception {
    List<String> words = new ArrayList<>();
    if (System.getProperty("user.name").equals("root")) {
      Needs.tool("setpriv");
      words.addAll(List.of("setpriv", "--bounding-set=-dac_override"));
    }
    words.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
    words.addAll(List.of("-XX:TieredStopAtLevel=1", "-cp", System.getProperty("java.class.path")));
    words.addAll(List.of(ReadOnlyChild.class.getName(), home.toString()));
    Process process = new ProcessBuilder(words).redirectErrorStream(true).start();
    String said = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    process.waitFor();
    return said.lines().toList();
  }

  public static void main(String[] args) {
    JournalFolder store = new JournalFolder(new DataHome(Path.of(args[0])));
    OpeningOutcome.Watching opened = Walks.watching(store.open(Walks.NAME));
    System.out.println(Walks.bodies(opened.read()));
    System.out.println(opened.why());
    System.out.println(Walks.refused(store.create(new WalkName("new"), Walks.HEAD)));
  }
}
