package loadwalk.journal;

import java.io.IOException;
import java.util.Objects;

/** Says in one sentence why the disk did not do what was asked. */
public final class StorageFault extends IOException {
  private static final long serialVersionUID = 1L;

  private final Trouble trouble;

  /** Makes a fault; the message is a whole sentence for the operator. */
  public StorageFault(Trouble trouble, String message, Throwable cause) {
    super(Objects.requireNonNull(message, "message"), cause);
    this.trouble = Objects.requireNonNull(trouble, "trouble");
  }

  /** Returns the kind of trouble. */
  public Trouble trouble() {
    return trouble;
  }
}
