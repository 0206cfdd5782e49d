package loadwalk.view.canvas;

/** What a cell is, not how it looks: the terminal decides colour, and words always come first. */
public enum Style {
  TEXT,
  FAINT,
  STRONG,
  HEADING,
  /** A clear verdict, a reading within its range. */
  GOOD,
  /** A heed verdict, a doubt. */
  HEED,
  /** A halt verdict, the stop screen. */
  HALT,
  /** The field or line in focus. */
  FOCUS,
  /** The name of a key. */
  KEY
}
