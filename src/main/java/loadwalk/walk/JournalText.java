package loadwalk.walk;

/** Makes typed text fit for a journal, which is Unicode and bounded. */
final class JournalText {
  /** The most characters kept, more than any reason or note needs; the rest is cut, with a mark. */
  static final int MOST = 4000;

  private JournalText() {}

  /** Returns the text with half characters replaced by question marks, cut if it is too long. */
  static String text(String typed) {
    String cut = typed.length() <= MOST ? typed : typed.substring(0, MOST) + "…";
    return cut.replaceAll("\\p{Cs}", "?");
  }
}
