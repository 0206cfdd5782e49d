package loadwalk.json;

/**
 * A record that says once how it looks in a file: key, limits and default of each field.
 *
 * @param <T> the record, or the sealed type that it is one of
 */
public interface Shaped<T> {
  /**
   * Goes through the fields in the order of the file, and makes the record of what each call gives
   * back. Reading asks this of a blank record, whose values are the defaults of the fields; writing
   * asks it of the record to be written.
   */
  T shape(Shape in);
}
