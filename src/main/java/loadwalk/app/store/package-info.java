/**
 * The data home on the disk: journals and their locks, sequences, photos. Nothing leads out of it.
 *
 * <pre>
 *  WalkFolder ──> JournalFolder ──> WalkLock      .NAME.lock, locked while the walk is open
 *  (a state)      (records)    └──> FileStorage   NAME.jsonl, appended and forced
 *       └──> OpeningOutcome: Writing (a HeldWalk), Watching, Refused, NameTaken
 *
 *  PhotoBox, AtomicFile ──> files beside the journals, whole or not at all
 *  IOException ──DiskFaults──> StorageFault: its kind, and one sentence that says what to do
 * </pre>
 *
 * <p>In: names, typed paths, records as text. Out: walks, sequences, pictures, or one sentence why
 * not. Open {@link loadwalk.app.store.JournalFolder} first.
 */
package loadwalk.app.store;
