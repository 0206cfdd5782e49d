package loadwalk.json;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonLocation;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.core.json.JsonReadFeature;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import loadwalk.text.Sentence;
import loadwalk.text.Visible;

/**
 * Reads strict JSON into a tree that remembers the place of every key and value.
 *
 * <p>These are faults, never exceptions: duplicate keys, text after the end, NaN and Infinity,
 * nesting deeper than {@value #DEEPEST}, numbers too large for a double, more than 4 MiB, text that
 * is not UTF-8, lone surrogates. A UTF-8 byte order mark is ignored.
 *
 * @param file the name used in faults
 * @param comments whether Java-style comments are allowed and ignored
 * @param firstLine the number of the text's first line, 1 for a whole file
 */
public record JsonText(String file, boolean comments, int firstLine) {
  /** The most bytes, or characters of a text, that are read. */
  public static final int LARGEST = 4 << 20;

  /** The deepest nesting allowed. */
  public static final int DEEPEST = 64;

  private static final int LONGEST_NUMBER = 64;
  private static final JsonFactory STRICT = factory(false);
  private static final JsonFactory COMMENTED = factory(true);

  /** Returns a reader of a whole file without comments. */
  public static JsonText strict(String file) {
    return new JsonText(file, false, 1);
  }

  /** Returns a reader of a whole file that ignores comments. */
  public static JsonText commented(String file) {
    return new JsonText(file, true, 1);
  }

  private static JsonFactory factory(boolean comments) {
    return JsonFactory.builder()
        .configure(JsonReadFeature.ALLOW_JAVA_COMMENTS, comments)
        .disable(JsonFactory.Feature.INTERN_FIELD_NAMES)
        .disable(JsonFactory.Feature.CANONICALIZE_FIELD_NAMES)
        .build();
  }

  /** Reads the bytes of a file. */
  public Read<Node> read(byte[] bytes) {
    if (bytes.length > LARGEST) {
      return tooLarge();
    }
    if (bytes.length >= 2 && (bytes[0] & bytes[1] & 0xFE) == 0xFE && bytes[0] != bytes[1]) {
      return bad(start(), "the file is saved as UTF-16; save it as UTF-8");
    }
    try {
      var decoder = StandardCharsets.UTF_8.newDecoder();
      return read(decoder.decode(ByteBuffer.wrap(bytes)).toString());
    } catch (CharacterCodingException e) {
      return bad(firstBadByte(bytes), "the file is not UTF-8 from here on; save the file as UTF-8");
    }
  }

  /** Reads a text. */
  public Read<Node> read(String text) {
    if (text.length() > LARGEST) {
      return tooLarge();
    }
    String body = text.startsWith("\uFEFF") ? text.substring(1) : text;
    Faults faults = new Faults(file);
    try (JsonParser parser = (comments ? COMMENTED : STRICT).createParser(body)) {
      Node root = new Tree(parser, faults, mayHoldSurrogates(body)).whole();
      return faults.isEmpty() ? new Read.Good<>(root) : new Read.Bad<>(faults.list());
    } catch (Refused e) {
      faults.add(e.place, "", e.getMessage());
      return new Read.Bad<>(faults.list());
    } catch (JsonProcessingException e) {
      faults.add(place(e.getLocation()), "", SyntaxSentence.of(e, body));
      return new Read.Bad<>(faults.list());
    } catch (IOException e) {
      throw new UncheckedIOException("a text in memory cannot fail to be read", e);
    }
  }

  /** Tells whether a text may hold lone surrogates; the full check takes as long as reading it. */
  private static boolean mayHoldSurrogates(String body) {
    byte[] latin = body.getBytes(StandardCharsets.ISO_8859_1);
    boolean same = new String(latin, StandardCharsets.ISO_8859_1).equals(body);
    return !same || body.contains("\\u");
  }

  private Node.Place start() {
    return new Node.Place(firstLine, 1);
  }

  private Node.Place place(JsonLocation at) {
    return at == null
        ? start()
        : new Node.Place(
            Math.max(at.getLineNr(), 1) + firstLine - 1, Math.max(at.getColumnNr(), 1));
  }

  private Read<Node> tooLarge() {
    return bad(start(), "the file is larger than 4 MiB");
  }

  private Read<Node> bad(Node.Place place, String sentence) {
    return new Read.Bad<>(List.of(new Fault(file, place.line(), place.column(), "", sentence)));
  }

  private Node.Place firstBadByte(byte[] bytes) {
    ByteBuffer in = ByteBuffer.wrap(bytes);
    var out = java.nio.CharBuffer.allocate(bytes.length + 1);
    StandardCharsets.UTF_8.newDecoder().decode(in, out, true);
    int line = firstLine;
    int column = 1;
    for (int i = 0; i < out.position(); i++) {
      boolean newLine = out.get(i) == '\n';
      line += newLine ? 1 : 0;
      column = newLine ? 1 : column + 1;
    }
    return new Node.Place(line, column);
  }

  /** Stops the reading of a text that is JSON but not allowed. */
  private static final class Refused extends RuntimeException {
    private static final long serialVersionUID = 1L;
    private final transient Node.Place place;

    Refused(Node.Place place, String sentence) {
      super(sentence, null, false, false);
      this.place = place;
    }
  }

  /** Builds the tree from tokens. */
  private final class Tree {
    private final JsonParser parser;
    private final Faults faults;
    private final boolean surrogates;

    Tree(JsonParser parser, Faults faults, boolean surrogates) {
      this.parser = parser;
      this.faults = faults;
      this.surrogates = surrogates;
    }

    Node whole() throws IOException {
      if (parser.nextToken() == null) {
        throw new Refused(start(), "the file is empty");
      }
      Node root = value(1);
      if (parser.nextToken() != null) {
        throw new Refused(here(), "there is more text after the end of the first value");
      }
      return root;
    }

    private Node value(int depth) throws IOException {
      Node.Place place = here();
      if (depth > DEEPEST) {
        throw new Refused(place, Sentence.of("this is nested deeper than {} levels", DEEPEST));
      }
      return switch (parser.currentToken()) {
        case START_OBJECT -> object(place, depth);
        case START_ARRAY -> array(place, depth);
        case VALUE_STRING -> new Node.Str(place, whole(parser.getText(), place));
        case VALUE_NUMBER_INT, VALUE_NUMBER_FLOAT -> number(place, parser.getText());
        case VALUE_TRUE -> new Node.Bool(place, true);
        case VALUE_FALSE -> new Node.Bool(place, false);
        case VALUE_NULL -> new Node.Null(place);
        default -> throw new Refused(place, "a value is missing here");
      };
    }

    private Node object(Node.Place place, int depth) throws IOException {
      Map<String, Node.Member> members = new LinkedHashMap<>();
      while (parser.nextToken() != JsonToken.END_OBJECT) {
        Node.Place keyPlace = here();
        String key = whole(parser.currentName(), keyPlace);
        parser.nextToken();
        Node.Member member = new Node.Member(keyPlace, value(depth + 1));
        Node.Member first = members.putIfAbsent(key, member);
        if (first != null) {
          String sentence =
              Sentence.of(
                  "key {} appears twice, first in line {}",
                  Visible.quoted(key),
                  first.keyPlace().line());
          faults.add(keyPlace, key, sentence);
        }
      }
      return new Node.Obj(place, members);
    }

    private Node array(Node.Place place, int depth) throws IOException {
      List<Node> items = new ArrayList<>();
      while (parser.nextToken() != JsonToken.END_ARRAY) {
        items.add(value(depth + 1));
      }
      return new Node.Arr(place, items);
    }

    private Node number(Node.Place place, String text) {
      if (text.length() > LONGEST_NUMBER) {
        throw new Refused(
            place,
            Sentence.of(
                "number {} has more than {} characters", Visible.quoted(text), LONGEST_NUMBER));
      }
      double value = Double.parseDouble(text);
      boolean lost = value == 0 && !text.equals("0") && text.matches("-?[0.]*[1-9].*");
      if (Double.isInfinite(value) || lost) {
        String quoted = Visible.quoted(text);
        throw new Refused(place, Sentence.of("number {} is out of range", quoted));
      }
      return new Node.Num(place, value + 0.0);
    }

    private String whole(String text, Node.Place place) {
      for (int i = 0; surrogates && i < text.length(); i++) {
        if (Character.isSurrogate(text.charAt(i))) {
          if (Character.charCount(text.codePointAt(i)) == 1) {
            throw new Refused(place, "this text holds half a character (a lone surrogate)");
          }
          i++;
        }
      }
      return text;
    }

    private Node.Place here() {
      return place(parser.currentTokenLocation());
    }
  }
}
