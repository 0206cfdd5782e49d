package loadwalk.app.loop;

import java.io.FilterWriter;
import java.io.IOException;
import java.io.Writer;
import loadwalk.text.Ascii;
import loadwalk.text.Visible;

/**
 * Writes text with question marks for control characters, so that the name of a file or what stands
 * in it never steers the terminal; where ASCII is wanted, everything is put into ASCII.
 */
public final class HarmlessWriter extends FilterWriter {
  private final boolean ascii;

  /**
   * Makes a writer.
   *
   * @param out where the text goes
   * @param ascii whether only ASCII may be written
   */
  public HarmlessWriter(Writer out, boolean ascii) {
    super(out);
    this.ascii = ascii;
  }

  @Override
  public void write(int c) throws IOException {
    write(new char[] {(char) c}, 0, 1);
  }

  @Override
  public void write(char[] text, int from, int length) throws IOException {
    if (ascii) {
      out.write(Ascii.of(new String(text, from, length).replace("\r\n", "\n")));
      return;
    }
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
