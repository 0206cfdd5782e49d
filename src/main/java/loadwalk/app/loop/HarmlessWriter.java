package loadwalk.app.loop;

import java.io.FilterWriter;
import java.io.IOException;
import java.io.Writer;
import loadwalk.text.Visible;

/**
 * Writes text with question marks for control characters, so that the name of a file or what stands
 * in it never steers the terminal.
 */
public final class HarmlessWriter extends FilterWriter {
  public HarmlessWriter(Writer out) {
    super(out);
  }

  @Override
  public void write(int c) throws IOException {
    out.write(Visible.harmless((char) c));
  }

  @Override
  public void write(char[] text, int from, int length) throws IOException {
    int plain = 0;
    while (plain < length && Visible.harmless(text[from + plain]) == text[from + plain]) {
      plain++;
    }
    out.write(text, from, plain);
    for (int i = plain; i < length; i++) {
      out.write(Visible.harmless(text[from + i]));
    }
  }

  @Override
  public void write(String text, int from, int length) throws IOException {
    write(text.toCharArray(), from, length);
  }
}
