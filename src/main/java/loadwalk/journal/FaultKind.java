package loadwalk.journal;

/** Tells apart why a disk does not take what is written, so that the screen can say what to do. */
public enum FaultKind {
  /** There is no room left. */
  FULL,
  /** The disk or folder may only be read. */
  READ_ONLY,
  /** The file or its folder is no longer there. */
  GONE,
  /** Another program changed the file. */
  CHANGED,
  /** Any other fault of the disk. */
  BROKEN
}
