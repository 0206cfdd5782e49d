package loadwalk.json;

import loadwalk.text.Visible;

/**
 * One fault of a file.
 *
 * @param file the file's name as given
 * @param line the line, from 1
 * @param column the column, from 1
 * @param key the key it concerns, empty where none
 * @param sentence the fault in one sentence, without a full stop
 */
public record Fault(String file, int line, int column, String key, String sentence) {

  /** Returns the fault as one line, {@code file:line:column: sentence}, safe for a terminal. */
  public String text() {
    return Visible.line(file, 300) + ":" + line + ":" + column + ": " + sentence;
  }
}
