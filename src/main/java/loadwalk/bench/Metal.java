package loadwalk.bench;

import java.util.List;
import loadwalk.json.Words;

/** What the conductor of a lead is made of. */
public enum Metal {
  COPPER("copper", "copper"),
  CCA("cca", "copper-clad aluminium");

  /** The metals by their words in a file. */
  static final Words<Metal> WORDS = Words.of(List.of(values()), Metal::word);

  private final String word;
  private final String text;

  Metal(String word, String text) {
    this.word = word;
    this.text = text;
  }

  /** Returns its word in a file. */
  public String word() {
    return word;
  }

  /** Returns its name as printed. */
  public String text() {
    return text;
  }

  /** Returns one of its values in the tables. */
  double value(Tables tables, String what) {
    return tables.limit(word + what);
  }
}
