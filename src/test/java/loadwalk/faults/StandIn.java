package loadwalk.faults;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.jar.Attributes;
import java.util.jar.JarOutputStream;
import java.util.jar.Manifest;
import java.util.stream.Collectors;

/** Stands in for what a build ships: the launcher, beside a jar that leads to the classes. */
final class StandIn {
  private static final Path LAUNCHER = Path.of("src/main/launcher/loadwalk");

  private StandIn() {}

  /** Puts both into the target folder of a copy, where tests of the shipped program look. */
  static void into(WorkCopy copy) throws IOException {
    Path target = copy.root().resolve("target");
    Path launcher = target.resolve("loadwalk");
    Files.copy(copy.root().resolve(LAUNCHER), launcher, StandardCopyOption.REPLACE_EXISTING);
    if (!launcher.toFile().setExecutable(true)) {
      throw new IOException(launcher + " cannot be made executable");
    }
    Manifest manifest = new Manifest();
    Attributes main = manifest.getMainAttributes();
    main.put(Attributes.Name.MANIFEST_VERSION, "1.0");
    main.put(Attributes.Name.MAIN_CLASS, "loadwalk.app.Main");
    main.put(
        Attributes.Name.CLASS_PATH,
        copy.classPath().stream()
            .map(path -> path.toAbsolutePath().toUri().toString())
            .collect(Collectors.joining(" ")));
    new JarOutputStream(Files.newOutputStream(target.resolve("loadwalk.jar")), manifest).close();
  }
}
