package loadwalk.journal;

import java.io.IOException;
import java.util.Objects;

/** A failed disk operation, with its reason in one sentence. */
public final class StorageFault extends IOException {
  private static final long serialVersionUID = 1L;

  private final FaultKind kind;

  /** Makes a fault whose message is a whole sentence for the operator. */
  public StorageFault(FaultKind kind, String message, Throwable cause) {
    super(Objects.requireNonNull(message, "message"), cause);
    this.kind = Objects.requireNonNull(kind, "kind");
  }

  /** Returns a fault that has no cause but what the sentence says. */
  public static StorageFault broken(String sentence) {
    return new StorageFault(FaultKind.BROKEN, sentence, null);
  }

  /** Returns the reason for the failure. */
  public FaultKind kind() {
    return kind;
  }
}
