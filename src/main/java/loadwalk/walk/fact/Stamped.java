package loadwalk.walk.fact;

/**
 * A fact with the wall clock of its moment.
 *
 * @param fact the fact
 * @param wallMillis the wall clock, ms since 1970; shown to people, never used to measure time
 */
public record Stamped(Fact fact, long wallMillis) {}
