package loadwalk.tui;

import static org.junit.jupiter.api.Assertions.assertEquals;

import com.googlecode.lanterna.input.KeyStroke;
import com.googlecode.lanterna.input.KeyType;
import loadwalk.view.canvas.Key;
import org.junit.jupiter.api.Test;

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
  void ctrlKeys_leaveSuspend_orDoNothing() {
    assertEquals(Key.of(Key.Kind.LEAVE), KeyMap.of(new KeyStroke('c', true, false)));
    assertEquals(Key.of(Key.Kind.SUSPEND), KeyMap.of(new KeyStroke('z', true, false)));
    assertEquals(Key.of(Key.Kind.NOTHING), KeyMap.of(new KeyStroke('q', true, false)));
    assertEquals(Key.of(Key.Kind.LEAVE), KeyMap.of(new KeyStroke(KeyType.EOF)));
  }

  private static Key pressed(Key.Kind kind) {
    return Key.of(kind);
  }
}
