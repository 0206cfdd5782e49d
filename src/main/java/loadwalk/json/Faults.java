package loadwalk.json;

import java.util.ArrayList;
import java.util.List;

/** Collects the faults of one file, up to a limit. */
public final class Faults {
  /** The most faults kept for one file. */
  public static final int MOST = 100;

  private final String file;
  private final List<Fault> list = new ArrayList<>();
  private int count;

  /**
   * Starts an empty collection.
   *
   * @param file the file's name as shown to people
   */
  public Faults(String file) {
    this.file = file;
  }

  /**
   * Adds a fault.
   *
   * @param place where it is in the file
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

  /** Tells whether no fault has been found so far. */
  public boolean isEmpty() {
    return list.isEmpty();
  }

  /** Returns how many faults have been found so far, including those beyond the limit. */
  public int count() {
    return count;
  }

  /** Returns the faults in the order they were found. */
  public List<Fault> list() {
    return List.copyOf(list);
  }
}
