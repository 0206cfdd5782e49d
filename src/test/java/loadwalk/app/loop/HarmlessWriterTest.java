package loadwalk.app.loop;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.PrintWriter;
import java.io.StringWriter;
import org.junit.jupiter.api.Test;

class HarmlessWriterTest {
  @Test
  void controlCharacters_becomeQuestionMarks_layoutStays() {
    StringWriter to = new StringWriter();
    PrintWriter out = new PrintWriter(new HarmlessWriter(to, false));
    out.print("a\u001b[2Jb\u0007\u009b1m\u007f\tΩ 𝄞\r\n");
    out.write('\u001b');
    out.write('é');
    out.write(new char[] {'x', '\u0000', 'y', 'z'}, 1, 2);
    out.write("12\u001b45", 1, 3);
    assertEquals("a?[2Jb??1m?\tΩ 𝄞\r\n?é?y2?4", to.toString());
  }

  @Test
  void ascii_isAllThatIsWritten_whereItIsWanted() {
    StringWriter to = new StringWriter();
    PrintWriter out = new PrintWriter(new HarmlessWriter(to, true));
    out.print("«4 Ω»\u001b[2J\u0000\u202e 𝄞\ud800é\r\n");
    out.write('°');
    assertEquals("\"4 ohm\"?[2J?? ??e\ndeg", to.toString());
  }
}
