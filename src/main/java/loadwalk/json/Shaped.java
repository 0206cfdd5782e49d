package loadwalk.json;

/**
 * A record that describes its form in a file once: key, limits and default of each field.
 *
 * @param <T> the record, or the sealed type it belongs to
 */
public interface Shaped<T> {
  /**
   * Goes through the fields in the order of the file and makes a record from what the calls return.
   * Reading calls this on a blank record, which holds the defaults; writing calls it on the record
   * to write.
   */
  T shape(Shape in);
}
