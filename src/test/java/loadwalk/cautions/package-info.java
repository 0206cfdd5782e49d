/**
 * Pins what the brief of a step says in some three hundred situations, kept as tables of the trade
 * in {@code src/test/resources/cautions}: amplifier, bench, what was read, the step, and the exact
 * cautions with their levels.
 *
 * <p>The tables are read strictly and there is no command that renews them: a row that differs has
 * to be thought about. Open {@link loadwalk.cautions.SituationTableTest} first.
 */
package loadwalk.cautions;
