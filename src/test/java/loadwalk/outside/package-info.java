/**
 * Faults from outside: drives the launcher as a black box, and knows nothing of Loadwalk's code.
 *
 * <p>{@code OutsideIT} runs a share of each {@link loadwalk.outside.Kind} of faults, {@code
 * .ci/outside} all of them. What Loadwalk wrote is read by {@link loadwalk.outside.Journal}, with a
 * JSON library of somebody else and by the form that is written down. {@link
 * loadwalk.outside.Program} says how it is started.
 */
package loadwalk.outside;
