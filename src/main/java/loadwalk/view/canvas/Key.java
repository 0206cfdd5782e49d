package loadwalk.view.canvas;

/**
 * What a hand does at the keyboard, free of any terminal library.
 *
 * @param kind which key
 * @param character the character, for {@link Kind#CHARACTER} alone
 */
public record Key(Kind kind, char character) {

  /** The keys that mean something. */
  public enum Kind {
    CHARACTER,
    ENTER,
    TAB,
    BACK_TAB,
    BACKSPACE,
    DELETE,
    UP,
    DOWN,
    LEFT,
    RIGHT,
    HOME,
    END,
    PAGE_UP,
    PAGE_DOWN,
    /** Escape: stops a walk at once; elsewhere goes back. */
    ESCAPE,
    F1,
    F2,
    F3,
    F4,
    F5,
    F6,
    F7,
    F8,
    F9,
    F10,
    /** Also Ctrl-R, where the window keeps F11 for itself. */
    F11,
    F12,
    /** Ctrl-W: a captured wave. */
    WAVE,
    /** Ctrl-L: listens to the sound input, or ends it. */
    LISTEN,
    /** Ctrl-T: holds the live input, or lets it go on. */
    HOLD,
    /** A pasted text begins; sent by the terminal, not typed. */
    PASTE_BEGIN,
    /** A pasted text ends. */
    PASTE_END,
    /** Ctrl-C or Ctrl-\\: stops a step that runs; elsewhere leaves. */
    INTERRUPT,
    /** The keyboard is gone: leaves now. */
    LEAVE,
    /** Ctrl-Z: suspends the program. */
    SUSPEND,
    /** A key without meaning here. */
    NOTHING
  }

  /** Returns the key of a kind that carries no character. */
  public static Key of(Kind kind) {
    return new Key(kind, '\0');
  }

  /** Returns the key of a character. */
  public static Key of(char character) {
    return new Key(Kind.CHARACTER, character);
  }

  /** Tells whether it is a key of this kind. */
  public boolean is(Kind other) {
    return kind == other;
  }
}
