package loadwalk.app.meter;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Path;
import java.util.UUID;
import loadwalk.app.store.PrivateFolder;
import loadwalk.cli.BadInput;
import loadwalk.text.Sentence;

/**
 * Loads the serial library, with its native part from a private folder and from nowhere else.
 *
 * <p>Left to itself, the library asks a property, then the system's library path, then takes what
 * lies in a folder of a known name in the shared temporary directory, which anybody may have made,
 * and also empties that folder, through links. A loader of its own answers for the library path; a
 * name that nobody can guess keeps it away from the rest.
 */
final class SerialLibrary extends ClassLoader {
  private static final String PACKAGE = "com.fazecast.jSerialComm.";
  private static final String LINE = "loadwalk.app.meter.LibraryLine";

  private static SerialLibrary loaded;

  private final Path part;

  private SerialLibrary(Path part) {
    super(SerialLibrary.class.getClassLoader());
    this.part = part;
  }

  /**
   * Returns a line that is not open; the first one loads the library.
   *
   * @throws IOException with a clause that says why the library cannot be loaded
   */
  static synchronized SerialLine line() throws IOException {
    SerialLibrary library = loaded == null ? fromPrivateFolder() : loaded;
    SerialLine line = library.made();
    loaded = library;
    return line;
  }

  private static SerialLibrary fromPrivateFolder() throws IOException {
    NativePart part = NativePart.ofThisMachine();
    System.clearProperty("jSerialComm.library.path");
    System.setProperty("fazecast.jSerialComm.appid", UUID.randomUUID().toString());
    try {
      return new SerialLibrary(PrivateFolder.ofThisUser().file(part.fileName(), part.bytes()));
    } catch (BadInput unwritableName) {
      throw new IOException(unwritableName.getMessage(), unwritableName);
    }
  }

  private SerialLine made() throws IOException {
    try {
      return (SerialLine) loadClass(LINE).getDeclaredConstructor().newInstance();
    } catch (ReflectiveOperationException | LinkageError e) {
      throw new IOException(
          Sentence.of("the serial library's native part {} cannot be loaded", part), e);
    }
  }

  @Override
  protected Class<?> loadClass(String name, boolean resolve) throws ClassNotFoundException {
    if (!name.startsWith(PACKAGE) && !name.equals(LINE)) {
      return super.loadClass(name, resolve);
    }
    synchronized (getClassLoadingLock(name)) {
      Class<?> known = findLoadedClass(name);
      return known == null ? defined(name) : known;
    }
  }

  private Class<?> defined(String name) throws ClassNotFoundException {
    String file = name.replace('.', '/') + ".class";
    try (InputStream in = getParent().getResourceAsStream(file)) {
      if (in == null) {
        throw new ClassNotFoundException(name);
      }
      byte[] bytes = in.readAllBytes();
      return defineClass(name, bytes, 0, bytes.length);
    } catch (IOException e) {
      throw new ClassNotFoundException(name, e);
    }
  }

  /** Answers whatever native library is asked for with the one part that was looked at. */
  @Override
  protected String findLibrary(String name) {
    return part.toString();
  }

  /** Gives nothing, or the library would write its native part elsewhere and load it from there. */
  @Override
  public InputStream getResourceAsStream(String name) {
    return null;
  }
}
