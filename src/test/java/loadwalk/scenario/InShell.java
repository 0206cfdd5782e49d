package loadwalk.scenario;

import java.nio.file.Path;
import loadwalk.Needs;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.io.TempDir;

/** Opens a shell in a real pseudo-terminal for each test, its settings noted before. */
abstract class InShell {
  @TempDir Path folder;

  Pane pane;

  @BeforeEach
  void openShell() throws Exception {
    Needs.tool("tmux");
    pane = Pane.open(folder);
    pane.line("stty -a > " + folder.resolve("before") + "; echo rea''dy").sees("ready");
  }

  @AfterEach
  void closeShell() throws Exception {
    if (pane != null) {
      pane.close();
    }
  }
}
