package loadwalk.app;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class HolderTest {
  @Test
  void written_isOneLineOfJsonThatReadsBack() {
    Holder holder = new Holder(4711, "boot:99", "2026-03-01T10:00:00Z");
    assertEquals(
        "{\"format\":\"loadwalk-lock/1\",\"pid\":\"4711\",\"birth\":\"boot:99\","
            + "\"since\":\"2026-03-01T10:00:00Z\"}\n",
        new String(holder.written(), UTF_8));
    assertEquals(Optional.of(holder), Holder.read(holder.written()));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        "[]",
        "{\"format\":\"loadwalk-lock/1\",\"pid\":\"-1\",\"birth\":\"b\",\"since\":\"s\"}",
        "{\"format\":\"loadwalk-lock/1\",\"pid\":\"9999999999999999999\",\"birth\":\"b\",\"since\":\"s\"}",
        "{\"format\":\"loadwalk-lock/1\",\"pid\":1,\"birth\":\"b\",\"since\":\"s\"}",
        "{\"format\":\"loadwalk-lock/1\",\"pid\":\"1\",\"since\":\"s\"}",
        "{\"format\":\"loadwalk-lock/1\",\"pid\":\"1\",\"birth\":\"b\"}",
        "{\"pid\":\"1\",\"birth\":\"b\",\"since\":\"s\"}"
      })
  void read_ofAnythingElse_isEmpty(String text) {
    assertEquals(Optional.empty(), Holder.read(text.getBytes(UTF_8)));
  }
}
