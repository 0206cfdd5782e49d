package loadwalk.walk.fact;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** No fact can be added without a name and a shape in the journal. */
class FactKindsTest {

  @Test
  void everyFact_hasANameInTheJournal() {
    Set<String> named =
        FactKinds.ALL.all().values().stream()
            .map(blank -> blank.getClass().getSimpleName())
            .collect(Collectors.toCollection(TreeSet::new));
    assertEquals(new TreeSet<>(kinds(Fact.class)), named);
  }

  @Test
  void everyFact_isWrittenUnderItsName() {
    FactKinds.ALL
        .all()
        .forEach((word, blank) -> assertEquals(word, FactKinds.ALL.word().apply(blank)));
  }

  private static List<String> kinds(Class<?> sealed) {
    List<String> kinds = new ArrayList<>();
    for (Class<?> kind : sealed.getPermittedSubclasses()) {
      if (kind.isSealed()) {
        kinds.addAll(kinds(kind));
      } else {
        kinds.add(kind.getSimpleName());
      }
    }
    return kinds;
  }
}
