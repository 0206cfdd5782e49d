package loadwalk.journal;

import java.io.IOException;
import java.util.Objects;

/** Says in one sentence why the disk did not do what was asked. */
public final class StorageFault extends IOException {
  private static final long serialVersionUID = 1L;

  private final FaultKind kind;

  /** Makes a fault; the message is a whole sentence for the operator. */
  public StorageFault(FaultKind kind, String message, Throwable cause) {
    super(Objects.requireNonNull(message, "message"), cause);
    this.kind = Objects.requireNonNull(kind, "kind");
  }

  /** Returns why the disk refused. */
  public FaultKind kind() {
    return kind;
  }
}
