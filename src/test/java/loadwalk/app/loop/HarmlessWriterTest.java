package loadwalk.app.loop;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.PrintWriter;
import java.io.StringWriter;
import org.junit.jupiter.api.Test;

class HarmlessWriterTest {
  @Test
  void controlCharacters_becomeQuestionMarks_layoutStays() {
    StringWriter to = new StringWriter();
    PrintWriter out = new PrintWriter(new HarmlessWriter(to));
    out.print("a\u001b[2Jb\u0007\u009b1m\u007f\tΩ 𝄞\r\n");
    out.write('\u001b');
    out.write('é');
    out.write(new char[] {'x', '\u0000', 'y', 'z'}, 1, 2);
    out.write("12\u001b45", 1, 3);
    assertEquals("a?[2Jb??1m?\tΩ 𝄞\r\n?é?y2?4", to.toString());
  }
}
