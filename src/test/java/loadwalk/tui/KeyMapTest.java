package loadwalk.tui;

import static org.junit.jupiter.api.Assertions.assertEquals;

import com.googlecode.lanterna.input.KeyStroke;
import com.googlecode.lanterna.input.KeyType;
import loadwalk.view.canvas.Key;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class KeyMapTest {

  @Test
  void fieldKey_isF11_andCtrlR_whereTheWindowKeepsF11() {
    Key field = pressed(Key.Kind.F11);
    assertEquals(field, KeyMap.of(new KeyStroke(KeyType.F11)));
    assertEquals(field, KeyMap.of(new KeyStroke('r', true, false)));
    assertEquals(Key.of('r'), KeyMap.of(new KeyStroke('r', false, false)));
    assertEquals(Key.of(Key.Kind.NOTHING), KeyMap.of(new KeyStroke('r', false, true)));
  }

  @Test
  void ctrlKeys_ofTheWave() {
    assertEquals(pressed(Key.Kind.WAVE), KeyMap.of(new KeyStroke('w', true, false)));
    assertEquals(pressed(Key.Kind.LISTEN), KeyMap.of(new KeyStroke('l', true, false)));
    assertEquals(pressed(Key.Kind.HOLD), KeyMap.of(new KeyStroke('t', true, false)));
  }

  @Test
  void ctrlKeys_interruptSuspend_orDoNothing() {
    assertEquals(Key.of(Key.Kind.INTERRUPT), KeyMap.of(new KeyStroke('c', true, false)));
    assertEquals(Key.of(Key.Kind.SUSPEND), KeyMap.of(new KeyStroke('z', true, false)));
    assertEquals(Key.of(Key.Kind.NOTHING), KeyMap.of(new KeyStroke('q', true, false)));
    assertEquals(Key.of(Key.Kind.LEAVE), KeyMap.of(new KeyStroke(KeyType.EOF)));
  }

  @ParameterizedTest
  @CsvSource({
    "Escape, ESCAPE",
    "Enter, ENTER",
    "Tab, TAB",
    "ReverseTab, BACK_TAB",
    "Backspace, BACKSPACE",
    "Delete, DELETE",
    "ArrowUp, UP",
    "ArrowDown, DOWN",
    "ArrowLeft, LEFT",
    "ArrowRight, RIGHT",
    "Home, HOME",
    "End, END",
    "PageUp, PAGE_UP",
    "PageDown, PAGE_DOWN",
    "F1, F1",
    "F2, F2",
    "F3, F3",
    "F4, F4",
    "F5, F5",
    "F6, F6",
    "F7, F7",
    "F8, F8",
    "F9, F9",
    "F10, F10",
    "F12, F12",
    "F18, PASTE_BEGIN",
    "F19, PASTE_END",
    "Insert, NOTHING"
  })
  void namedKey_isTheOneThatItsNameSays(KeyType type, Key.Kind kind) {
    assertEquals(pressed(kind), KeyMap.of(new KeyStroke(type)));
  }

  @Test
  void controlCharacters_areNeverTyped() {
    for (char c = 0; c < ' '; c++) {
      Key.Kind kind = KeyMap.of(new KeyStroke(c, false, false)).kind();
      boolean interrupts = c == 0x03 || c == 0x1c;
      assertEquals(
          interrupts ? Key.Kind.INTERRUPT : Key.Kind.NOTHING, kind, "character " + (int) c);
    }
    assertEquals(Key.of('Ω'), KeyMap.of(new KeyStroke('Ω', false, false)));
    assertEquals(Key.of(' '), KeyMap.of(new KeyStroke(' ', false, false)));
    assertEquals(pressed(Key.Kind.INTERRUPT), KeyMap.of(new KeyStroke('\\', true, false)));
  }

  private static Key pressed(Key.Kind kind) {
    return Key.of(kind);
  }
}
