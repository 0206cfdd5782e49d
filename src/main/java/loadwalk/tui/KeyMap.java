package loadwalk.tui;

import com.googlecode.lanterna.input.KeyStroke;
import com.googlecode.lanterna.input.KeyType;
import java.util.EnumMap;
import java.util.Map;
import loadwalk.view.canvas.Key;

/** Translates Lanterna's names of keys, so that no other class needs them. */
public final class KeyMap {
  private static final Map<KeyType, Key.Kind> KINDS = new EnumMap<>(KeyType.class);

  private static final Map<Character, Key.Kind> WITH_CTRL =
      Map.of('r', Key.Kind.F11, 'w', Key.Kind.WAVE, 'l', Key.Kind.LISTEN, 't', Key.Kind.HOLD);

  static {
    KINDS.put(KeyType.Enter, Key.Kind.ENTER);
    KINDS.put(KeyType.Tab, Key.Kind.TAB);
    KINDS.put(KeyType.ReverseTab, Key.Kind.BACK_TAB);
    KINDS.put(KeyType.Backspace, Key.Kind.BACKSPACE);
    KINDS.put(KeyType.Delete, Key.Kind.DELETE);
    KINDS.put(KeyType.ArrowUp, Key.Kind.UP);
    KINDS.put(KeyType.ArrowDown, Key.Kind.DOWN);
    KINDS.put(KeyType.ArrowLeft, Key.Kind.LEFT);
    KINDS.put(KeyType.ArrowRight, Key.Kind.RIGHT);
    KINDS.put(KeyType.Home, Key.Kind.HOME);
    KINDS.put(KeyType.End, Key.Kind.END);
    KINDS.put(KeyType.PageUp, Key.Kind.PAGE_UP);
    KINDS.put(KeyType.PageDown, Key.Kind.PAGE_DOWN);
    KINDS.put(KeyType.Escape, Key.Kind.ESCAPE);
    KINDS.put(KeyType.F1, Key.Kind.F1);
    KINDS.put(KeyType.F2, Key.Kind.F2);
    KINDS.put(KeyType.F3, Key.Kind.F3);
    KINDS.put(KeyType.F4, Key.Kind.F4);
    KINDS.put(KeyType.F5, Key.Kind.F5);
    KINDS.put(KeyType.F6, Key.Kind.F6);
    KINDS.put(KeyType.F7, Key.Kind.F7);
    KINDS.put(KeyType.F8, Key.Kind.F8);
    KINDS.put(KeyType.F9, Key.Kind.F9);
    KINDS.put(KeyType.F10, Key.Kind.F10);
    KINDS.put(KeyType.F11, Key.Kind.F11);
    KINDS.put(KeyType.F12, Key.Kind.F12);
  }

  private KeyMap() {}

  /** Returns what a keystroke means. */
  public static Key of(KeyStroke stroke) {
    KeyType type = stroke.getKeyType();
    if (type == KeyType.EOF) {
      return Key.of(Key.Kind.LEAVE);
    }
    if (stroke.equals(TtyTerminal.PASTE_BEGIN)) {
      return Key.of(Key.Kind.PASTE_BEGIN);
    }
    if (stroke.equals(TtyTerminal.PASTE_END)) {
      return Key.of(Key.Kind.PASTE_END);
    }
    if (type == KeyType.Character) {
      return character(stroke);
    }
    return Key.of(KINDS.getOrDefault(type, Key.Kind.NOTHING));
  }

  private static Key character(KeyStroke stroke) {
    char c = stroke.getCharacter();
    if (stroke.isCtrlDown()) {
      if (c == 'c' || c == '\\' || c == '4') {
        return Key.of(Key.Kind.INTERRUPT);
      }
      if (WITH_CTRL.containsKey(c)) {
        return Key.of(WITH_CTRL.get(c));
      }
      return c == 'z' ? Key.of(Key.Kind.SUSPEND) : Key.of(Key.Kind.NOTHING);
    }
    if (c == 0x1c || c == 0x03) {
      return Key.of(Key.Kind.INTERRUPT);
    }
    return stroke.isAltDown() || Character.isISOControl(c) ? Key.of(Key.Kind.NOTHING) : Key.of(c);
  }
}
