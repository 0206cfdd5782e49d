package loadwalk.outside;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.stream.Stream;

/**
 * Native code that somebody else has put where the serial library's own part could be looked for:
 * it leaves a file in the working folder as soon as it is loaded.
 */
final class NativeParts {
  private static final String MARK = "planted-code-ran";
  private static final String LIBRARY = "libjSerialComm.so";
  private static final String BENCH =
      "{\"format\":\"loadwalk-bench/1\",\"meters\":[{\"label\":\"DMM\",\"reads\":\"supplyVolts\","
          + "\"percent\":1,\"connection\":{\"serial\":\"/dev/loadwalk-none\",\"query\":\"READ?\"}}]}";

  /** What the program says once its own part is loaded: it has asked the system for the port. */
  private static final String ASKED = "there is no port /dev/loadwalk-none";

  private static final String REFUSED = "(?s)not run|nothing (in|below) it is run";
  private static final int SOMEBODY = 65534;

  private NativeParts() {}

  /** Changes what is around a program; returns it as it is then started. */
  private interface Planting {
    Program in(Place place) throws IOException, InterruptedException;
  }

  /** Changes the private folder or the part in it. */
  private interface Spoiling {
    void of(Path path) throws IOException, InterruptedException;
  }

  /**
   * Where a trial takes place.
   *
   * @param home the user's home folder, in which the part lies already
   * @param temporary the shared temporary directory
   * @param elsewhere a folder of the attacker
   */
  private record Place(Program program, Path home, Path temporary, Path elsewhere) {
    static Place in(Path folder, Program launcher) throws IOException, InterruptedException {
      Path home = Files.createDirectory(folder.resolve("home"));
      Path temporary = Files.createDirectory(folder.resolve("tmp"));
      rights(temporary, "rwxrwxrwx");
      Path elsewhere = Files.createDirectory(folder.resolve("elsewhere"));
      Files.writeString(folder.resolve("bench.json"), BENCH);
      // The rights of test folders differ from one machine to the next.
      rights(folder, "rwxr-xr-x");
      rights(home, "rwxr-xr-x");
      Program program =
          new Program(launcher.launcher(), folder, List.of(), launcher.settings())
              .with("XDG_CACHE_HOME", home.resolve("cache").toString())
              .with("JAVA_TOOL_OPTIONS", options(temporary, home));
      Place place = new Place(program, home, temporary, elsewhere);
      place.tried(program).ends(2).says(ASKED);
      return place;
    }

    static String options(Path temporary, Path home) {
      return "-Djava.io.tmpdir=" + temporary + " -Duser.home=" + home;
    }

    Ran tried(Program started) throws IOException, InterruptedException {
      return started.run("", "meters", "--bench", "bench.json");
    }

    Path folder() {
      return home.resolve("cache").resolve("loadwalk");
    }

    /** Returns the part as the program has put it there. */
    Path part() throws IOException {
      try (Stream<Path> files = Files.list(folder())) {
        return files.toList().get(0);
      }
    }

    Path mark() {
      return program.folder().resolve(MARK);
    }

    /** Returns the attacker's code, under any name. */
    Path code(String name) throws IOException {
      return planted(elsewhere.resolve(name).normalize());
    }
  }

  static List<Fault> all(Learned learned, Random random) {
    List<Fault> all = new ArrayList<>();
    if (!System.getProperty("os.arch").equals("amd64")) {
      return all;
    }
    Program launcher = learned.program();
    spoiledParts(all, launcher, random);
    spoiledFolders(all, launcher);
    otherPlaces(all, launcher);
    if (System.getProperty("user.name").equals("root")) {
      ofOthers(all, launcher);
      races(all, launcher, random);
    }
    return all;
  }

  private static void spoiledParts(List<Fault> all, Program launcher, Random random) {
    for (int i = 0; i < 20; i++) {
      double at = random.nextDouble();
      all.add(part(launcher, "a bit turned at " + at, file -> turn(file, at)));
      if (i < 10) {
        all.add(part(launcher, "cut at " + at, file -> cut(file, at)));
      }
    }
    all.add(
        part(
            launcher, "longer", file -> Files.write(file, new byte[1], StandardOpenOption.APPEND)));
    all.add(part(launcher, "emptied", file -> Files.write(file, new byte[0])));
    all.add(part(launcher, "replaced", NativeParts::planted));
    all.add(part(launcher, "overwritten", file -> Files.write(file, code())));
    all.add(part(launcher, "a folder", file -> Files.createDirectory(gone(file))));
    all.add(part(launcher, "a pipe", file -> Tools.run("mkfifo", gone(file).toString())));
    all.add(part(launcher, "a link to zeros", file -> link(file, Path.of("/dev/zero"))));
    all.add(part(launcher, "a link to nothing", file -> link(file, Path.of("nothing"))));
    for (String other : List.of("copy.so", ".copy", "a b.so", "copy")) {
      all.add(
          part(
              launcher,
              "a link to a true " + other,
              file -> {
                Path copy = Files.copy(file, file.resolveSibling(other));
                link(file, copy);
              }));
      all.add(
          part(
              launcher,
              "a second name " + other,
              file -> Files.createLink(file.resolveSibling(other), file)));
    }
    for (String letters :
        List.of("rw-rw-rw-", "rw-rw----", "rw-r--r--", "rw----rw-", "rw--w----")) {
      all.add(part(launcher, "rights " + letters, file -> rights(file, letters)));
    }
  }

  private static void spoiledFolders(List<Fault> all, Program launcher) {
    for (String letters :
        List.of("rwxrwxrwx", "rwxrwx---", "rwxr-xr-x", "rwx--x--x", "rwx-w----")) {
      all.add(folder(launcher, "rights " + letters, path -> rights(path, letters)));
    }
    for (String letters : List.of("rwxrwxrwx", "rwx---rwx", "rwxr-x-w-")) {
      all.add(folder(launcher, "above, " + letters, path -> rights(path.getParent(), letters)));
      all.add(
          folder(
              launcher,
              "two above, " + letters,
              path -> rights(path.getParent().getParent(), letters)));
    }
    all.add(
        folder(
            launcher,
            "a link to a true one",
            path -> {
              Path moved = Files.move(path, path.resolveSibling("moved"));
              link(path, moved);
            }));
    all.add(folder(launcher, "a link to itself", path -> link(emptied(path), path)));
    all.add(folder(launcher, "a file", path -> Files.write(emptied(path), code())));
  }

  /** Where the library itself would look. */
  private static void otherPlaces(List<Fault> all, Program launcher) {
    for (String version : List.of("2.11.4", ".", "x/2.11.4", "loadwalk/2.11.4", "Linux/x86_64")) {
      all.add(
          unmoved(
              launcher,
              "in the shared temporary directory, " + version,
              place -> {
                planted(place.temporary.resolve("jSerialComm").resolve(version).resolve(LIBRARY));
                return place.program;
              }));
      all.add(
          unmoved(
              launcher,
              "in the home folder, " + version,
              place -> {
                planted(place.home.resolve(".jSerialComm").resolve(version).resolve(LIBRARY));
                return place.program;
              }));
    }
    for (String below : List.of(".", "Linux/x86_64")) {
      all.add(
          unmoved(
              launcher,
              "named by the library's property, " + below,
              place -> {
                place.code(below + "/" + LIBRARY);
                return option(place, "-DjSerialComm.library.path=" + place.elsewhere);
              }));
    }
    all.add(
        unmoved(
            launcher,
            "on the path of native libraries",
            place -> {
              place.code(LIBRARY);
              return option(place, "-Djava.library.path=" + place.elsewhere);
            }));
    all.add(
        unmoved(
            launcher,
            "on the system's path of libraries",
            place -> {
              Path code = place.code(LIBRARY);
              return place.program.with("LD_LIBRARY_PATH", code.getParent().toString());
            }));
    all.add(
        unmoved(
            launcher,
            "in the working folder, which an empty path names",
            place -> {
              planted(place.program.folder().resolve(LIBRARY));
              return place.program.with("LD_LIBRARY_PATH", ":");
            }));
    for (String id : List.of("id", ".", "..", "../../elsewhere")) {
      all.add(
          unmoved(
              launcher,
              "under the library's id " + id,
              place -> {
                Path old = place.temporary.resolve("jSerialComm").resolve(id).resolve("2.11.4");
                planted(old.normalize().resolve(LIBRARY));
                return option(place, "-Dfazecast.jSerialComm.appid=" + id);
              }));
    }
    for (String base : List.of("tmp", "home")) {
      all.add(swept(launcher, base));
    }
  }

  private static Program option(Place place, String word) {
    String options = Place.options(place.temporary, place.home);
    return place.program.with("JAVA_TOOL_OPTIONS", options + " " + word);
  }

  /** What belongs to another user, who may change it at any time. */
  private static void ofOthers(List<Fault> all, Program launcher) {
    all.add(part(launcher, "a true one of somebody else", file -> give(file)));
    all.add(part(launcher, "a false one of somebody else", file -> give(planted(file))));
    all.add(folder(launcher, "of somebody else", path -> give(path)));
    all.add(folder(launcher, "above, of somebody else", path -> give(path.getParent())));
    all.add(
        folder(
            launcher, "two above, of somebody else", path -> give(path.getParent().getParent())));
    all.add(
        folder(
            launcher,
            "above, open to a group of others",
            path -> {
              Files.setAttribute(path.getParent(), "unix:gid", SOMEBODY);
              rights(path.getParent(), "rwxrwx---");
            }));
    all.add(
        folder(
            launcher,
            "a link to a folder of somebody else",
            path -> {
              Path moved = Files.move(path, path.resolveSibling("moved"));
              give(moved);
              link(path, moved);
            }));
    for (String version : List.of("2.11.4", "x/2.11.4")) {
      all.add(
          unmoved(
              launcher,
              "in the shared temporary directory, of somebody else, " + version,
              place -> {
                Path old = place.temporary.resolve("jSerialComm").resolve(version);
                give(planted(old.resolve(LIBRARY)).getParent());
                rights(old, "rwxrwxrwx");
                return place.program;
              }));
    }
  }

  /** Somebody else who tries all the time, with the rights he has, while the part is loaded. */
  private static void races(List<Fault> all, Program launcher, Random random) {
    for (int i = 0; i < 10; i++) {
      boolean fresh = random.nextBoolean();
      int pause = random.nextInt(4);
      all.add(raced(launcher, "pause " + pause + ", run " + i, fresh, pause));
    }
  }

  private static Fault raced(Program launcher, String name, boolean fresh, int pause) {
    return new Fault(
        "put there by somebody else all the time, " + name,
        folder -> {
          Place place = Place.in(folder, launcher);
          if (fresh) {
            Files.delete(place.part());
          }
          Process meddler = meddler(place, pause);
          try {
            Ran ran = place.tried(place.program).isPlain();
            assertFalse(Files.exists(place.mark()), "planted code has run");
            ran.says(ASKED);
          } finally {
            meddler.descendants().forEach(ProcessHandle::destroyForcibly);
            meddler.destroyForcibly().waitFor();
          }
        });
  }

  private static Process meddler(Place place, int pause) throws IOException {
    Path code = place.code(LIBRARY);
    rights(place.elsewhere, "rwxr-xr-x");
    rights(code, "rwxr-xr-x");
    String script =
        "i=0; while [ $i -lt 400 ]; do i=$((i+1));"
            + " mkdir -p \"$1/jSerialComm/2.11.4\";"
            + " for f in \"$2\"/*/*.so \"$2\"/loadwalk/x \"$1\"/jSerialComm/*/"
            + LIBRARY
            + " \"$1\"/jSerialComm/2.11.4/"
            + LIBRARY
            + "; do cp \"$3\" \"$f\"; ln -sf \"$3\" \"$f\"; done; sleep 0.00"
            + pause
            + "; done";
    return new ProcessBuilder(
            List.of(
                "setpriv",
                "--reuid=" + SOMEBODY,
                "--regid=" + SOMEBODY,
                "--clear-groups",
                "sh",
                "-c",
                script,
                "sh",
                place.temporary.toString(),
                place.home.resolve("cache").toString(),
                code.toString()))
        .redirectError(ProcessBuilder.Redirect.DISCARD)
        .redirectOutput(ProcessBuilder.Redirect.DISCARD)
        .start();
  }

  private static Fault part(Program launcher, String name, Spoiling deed) {
    return refused(launcher, "the part: " + name, place -> deed.of(place.part()));
  }

  private static Fault folder(Program launcher, String name, Spoiling deed) {
    return refused(launcher, "its folder: " + name, place -> deed.of(place.folder()));
  }

  private interface Change {
    void of(Place place) throws IOException, InterruptedException;
  }

  /** It is refused in a sentence, and what was planted stays for the operator to look at. */
  private static Fault refused(Program launcher, String name, Change change) {
    return new Fault(
        name,
        folder -> {
          Place place = Place.in(folder, launcher);
          change.of(place);
          Ran ran = place.tried(place.program).isPlain();
          assertFalse(Files.exists(place.mark()), "planted code has run");
          assertFalse(ran.said().contains(ASKED), ran::said);
          ran.says(REFUSED);
        });
  }

  /** It is never looked at: the program's own part is loaded as ever. */
  private static Fault unmoved(Program launcher, String name, Planting planting) {
    return new Fault(
        "elsewhere: " + name,
        folder -> {
          Place place = Place.in(folder, launcher);
          Program started = planting.in(place);
          Ran ran = place.tried(started).isPlain();
          assertFalse(Files.exists(place.mark()), "planted code has run");
          ran.says(ASKED);
        });
  }

  /** The library clears its old folders, links in them and all: what they lead to must stay. */
  private static Fault swept(Program launcher, String base) {
    return new Fault(
        "a link in the library's folder, " + base,
        folder -> {
          Place place = Place.in(folder, launcher);
          Path walks = Files.createDirectory(folder.resolve("walks"));
          Path walk = Files.writeString(walks.resolve("walk.jsonl"), "kept");
          Path library =
              base.equals("tmp")
                  ? place.temporary.resolve("jSerialComm")
                  : place.home.resolve(".jSerialComm");
          Files.createDirectories(library.resolve("2.11.4"));
          link(library.resolve("old"), walks);
          place.tried(place.program).isPlain().says(ASKED);
          assertEquals("kept", Files.exists(walk) ? Files.readString(walk) : "deleted");
        });
  }

  private static byte[] code() throws IOException {
    try (InputStream in = NativeParts.class.getResourceAsStream("/native/marks-linux-amd64.so")) {
      return in.readAllBytes();
    }
  }

  /** Puts the attacker's code in place of a file, with the rights that the file had. */
  private static Path planted(Path file) throws IOException {
    Files.createDirectories(file.getParent());
    Files.deleteIfExists(file);
    Files.write(file, code());
    rights(file, "rw-------");
    return file;
  }

  private static void turn(Path file, double at) throws IOException {
    byte[] bytes = Files.readAllBytes(file);
    bytes[(int) (at * bytes.length)] ^= 1;
    Files.write(file, bytes);
  }

  private static void cut(Path file, double at) throws IOException {
    byte[] bytes = Files.readAllBytes(file);
    Files.write(file, Arrays.copyOf(bytes, (int) (at * bytes.length)));
  }

  private static Path gone(Path file) throws IOException {
    Files.delete(file);
    return file;
  }

  private static Path emptied(Path folder) throws IOException {
    try (Stream<Path> files = Files.list(folder)) {
      for (Path file : files.toList()) {
        Files.delete(file);
      }
    }
    return gone(folder);
  }

  private static void link(Path from, Path to) throws IOException {
    Files.deleteIfExists(from);
    Files.createSymbolicLink(from, to);
  }

  private static void give(Path path) throws IOException {
    Files.setOwner(
        path,
        FileSystems.getDefault()
            .getUserPrincipalLookupService()
            .lookupPrincipalByName(String.valueOf(SOMEBODY)));
  }

  private static void rights(Path path, String letters) throws IOException {
    Files.setPosixFilePermissions(path, PosixFilePermissions.fromString(letters));
  }
}
