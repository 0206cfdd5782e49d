/**
 * Walks without an operator at the keys.
 *
 * <p>{@link loadwalk.walk.rehearse.Rehearsal} feeds answers written in advance to the walker used
 * at the bench. {@link loadwalk.walk.rehearse.Replay} judges a kept walk by today's rules and lists
 * what differs. {@link loadwalk.walk.rehearse.PracticeAnswers} reads the meters of the practice
 * bench for the current step. Open Rehearsal first: it shows how a walk is driven.
 */
package loadwalk.walk.rehearse;
