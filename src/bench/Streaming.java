import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonParser;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

/** Reads every journal of a folder with Jackson's streaming parser and keeps nothing. */
final class Streaming {
  private Streaming() {}

  /** Takes the folder. */
  public static void main(String[] arguments) throws IOException {
    JsonFactory factory = new JsonFactory();
    long tokens = 0;
    List<Path> journals;
    try (var files = Files.list(Path.of(arguments[0]))) {
      journals = files.filter(f -> f.toString().endsWith(".jsonl")).toList();
    }
    for (Path journal : journals) {
      try (JsonParser parser = factory.createParser(Files.readAllBytes(journal))) {
        while (parser.nextToken() != null) {
          tokens++;
        }
      }
    }
    System.out.println(tokens);
  }
}
