package loadwalk.app;

import java.util.Optional;

/** The version of this Loadwalk. */
final class Version {
  private Version() {}

  /** Returns the version of the jar, or that it runs from loose classes. */
  static String text() {
    return Optional.ofNullable(Version.class.getPackage().getImplementationVersion())
        .orElse("unpackaged");
  }
}
