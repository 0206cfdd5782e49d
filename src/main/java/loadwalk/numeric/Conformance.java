package loadwalk.numeric;

/** What a measured value shows about a requirement, at a stated level. */
public enum Conformance {
  SHOWN_TO_MEET,
  SHOWN_TO_MISS,
  TOO_CLOSE
}
