package loadwalk.json;

import java.util.ArrayList;
import java.util.List;

/** Collects everything that is wrong with one file, up to a limit. */
public final class Faults {
  /** The most faults kept of one file. */
  public static final int MOST = 100;

  private final String file;
  private final List<Fault> list = new ArrayList<>();
  private int count;

  /**
   * Starts an empty collection.
   *
   * @param file the file's name as it is to be shown
   */
  public Faults(String file) {
    this.file = file;
  }

  /**
   * Adds a fault.
   *
   * @param place where it stands
   * @param key the key it concerns, empty where none
   * @param sentence what is wrong, without a full stop
   */
  public void add(Node.Place place, String key, String sentence) {
    count++;
    if (list.size() < MOST) {
      list.add(new Fault(file, place.line(), place.column(), key, sentence));
    } else if (list.size() == MOST) {
      String more = "there are further faults after this one";
      list.add(new Fault(file, place.line(), place.column(), "", more));
    }
  }

  /** Tells whether nothing is wrong so far. */
  public boolean isEmpty() {
    return list.isEmpty();
  }

  /** Returns how many faults were found so far, those beyond the limit too. */
  public int count() {
    return count;
  }

  /** Returns the faults in the order in which they were found. */
  public List<Fault> list() {
    return List.copyOf(list);
  }
}
