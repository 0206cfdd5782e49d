/**
 * Proves what the program asks of a real system, where a killed process proves nothing: the system
 * keeps what was written and not forced.
 *
 * <pre>
 *  the program ──strace──> Call by Call ──┬──> forces counted, in order  (ForcedFilesTest)
 *      ^                                  └──> Platter: what is sure ──> images of the disk
 *      └── one call refused (FailedCallCrashTest)              Reopened by the program's recovery
 * </pre>
 *
 * <p>An image takes from the platter what was not forced: bytes lost, torn at a byte, in sectors
 * that came in any order, as zeros; names lost, early or late. So it proves that nothing is said
 * before the system was asked to force it, and that every such rest can be read. It does not prove
 * that a disk which says forced has it: one that lies about its cache loses what it likes.
 */
package loadwalk.disk;
