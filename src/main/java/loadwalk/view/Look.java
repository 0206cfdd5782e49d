package loadwalk.view;

/**
 * The characters the terminal can show.
 *
 * @param ascii whether only plain ASCII may be used
 */
public record Look(boolean ascii) {
  private static final String[][] ASCII = {
    {"Ω", "ohm"}, {"°C", "C"}, {"±", "+/-"}, {"²", "2"}, {"·", "-"}, {"…", "..."}, {"×", "x"},
    {"½", "1/2"}, {"–", "-"}, {"—", "-"}, {"≤", "<="}, {"≥", ">="}, {"→", "->"}, {"√", "sqrt "},
    {"τ", "tau"}, {"«", "\""}, {"»", "\""}, {"−", "-"}, {"“", "\""}, {"”", "\""}, {"’", "'"},
    {"µ", "u"}, {"η", "eta"}, {"∞", "inf"}, {"Δ", "d"}, {"π", "pi"}
  };

  /** Returns text with what the terminal cannot show put into ASCII. */
  public String text(String text) {
    if (!ascii) {
      return text;
    }
    String plain = text;
    for (String[] pair : ASCII) {
      plain = plain.replace(pair[0], pair[1]);
    }
    StringBuilder only = new StringBuilder();
    plain.codePoints().forEach(c -> only.append(c < 127 ? String.valueOf((char) c) : "?"));
    return only.toString();
  }

  char pick(char fine, char plain) {
    return ascii ? plain : fine;
  }
}
