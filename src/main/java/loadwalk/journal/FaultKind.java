package loadwalk.journal;

/** The reason why a disk did not accept a write, so that the screen can say what to do. */
public enum FaultKind {
  /** The disk is full. */
  FULL,
  /** The disk or folder is read-only. */
  READ_ONLY,
  /** The file or its folder no longer exists. */
  GONE,
  /** Another program changed the file. */
  CHANGED,
  /** Any other fault of the disk. */
  BROKEN
}
