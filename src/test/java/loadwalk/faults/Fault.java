package loadwalk.faults;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A small fault that a tired developer could make.
 *
 * @param area the list it stands in, {@code plan} of {@code plan.faults}
 * @param name its name in kebab case, unique in all lists
 * @param harm what it would do to a person, a sentence
 * @param caughtBy the test classes that catch it, by full name
 * @param file the file it spoils, from the root of the tree
 * @param patch the lines it changes
 */
record Fault(
    String area, String name, String harm, List<String> caughtBy, String file, Patch patch) {
  private static final Pattern PACKAGE = Pattern.compile("loadwalk\\.[a-z]+(?=\\.)");

  Fault {
    caughtBy = List.copyOf(caughtBy);
  }

  boolean isCalled(String nameOrArea) {
    return name.equals(nameOrArea) || area.equals(nameOrArea);
  }

  /** Returns the package whose tests are asked when the named ones catch nothing. */
  String testedPackage() {
    Matcher java = PACKAGE.matcher(file.replace('/', '.'));
    Matcher test = PACKAGE.matcher(caughtBy.get(0));
    return java.find() ? java.group() : test.find() ? test.group() : "loadwalk";
  }

  /** Says what keeps it from being tried on this tree; nothing if it can be. */
  List<String> complaints(Path tree) {
    List<String> found = new ArrayList<>();
    try {
      int places = patch.places(Files.readString(tree.resolve(file)));
      if (places != 1) {
        found.add(name + ": its old lines stand in " + places + " places of " + file);
      }
    } catch (IOException e) {
      found.add(name + ": there is no " + file);
    }
    for (String test : caughtBy) {
      if (!Files.exists(tree.resolve("src/test/java/" + test.replace('.', '/') + ".java"))) {
        found.add(name + ": there is no test " + test);
      }
    }
    return found;
  }
}
