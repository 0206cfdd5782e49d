package loadwalk.cautions;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.fail;

import java.util.List;
import java.util.stream.Stream;
import loadwalk.forecast.Forecast;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;

/** Holds every situation of the tables to the brief that the program gives. */
class SituationTableTest {
  private final Situations situations = Situations.kept();

  @TestFactory
  Stream<DynamicTest> situation_isBriefedAsItsRowSays() {
    return situations.all().stream()
        .map(situation -> DynamicTest.dynamicTest(situation.name(), () -> check(situation)));
  }

  private void check(Situations.Situation situation) {
    Forecast brief = situations.brief(situation);
    List<String> found = brief.cautions().stream().map(Situations::words).toList();
    boolean same =
        found.equals(situation.cautions()) && brief.verdict().word().equals(situation.verdict());
    if (!same) {
      fail(Situations.difference(situation, brief));
    }
    assertEquals(situation.row().cell("verdict"), brief.verdict().word());
  }
}
