package loadwalk.report.page;

import java.util.List;
import java.util.Optional;
import loadwalk.chart.Chart;
import loadwalk.text.Sentence;

/**
 * A piece of a page; each format writes all kinds. Texts are as typed: the writers make them
 * harmless.
 */
public sealed interface Block {

  /** Has a format write this piece. */
  void writeTo(Writer writer);

  /** Returns the chart where this piece is one. */
  default Optional<Chart> drawnChart() {
    return Optional.empty();
  }

  /** Tells whether this piece is a picture that may stand beside another. */
  default boolean isPicture() {
    return false;
  }

  /** A format: it knows every kind of piece. */
  interface Writer {
    /** Writes running text. */
    void paragraph(Paragraph paragraph);

    /** Writes a list. */
    void bullets(Bullets bullets);

    /** Writes terms with their texts. */
    void terms(Terms terms);

    /** Writes a table. */
    void table(Table table);

    /** Writes what is read first. */
    void headline(Headline headline);

    /** Writes a chart. */
    void figure(Figure figure);

    /** Writes a photo. */
    void photo(Photo photo);

    /** Writes a drawing of signs. */
    void drawing(Drawing drawing);
  }

  /**
   * Running text.
   *
   * @param text one or more sentences
   */
  record Paragraph(String text) implements Block {
    @Override
    public void writeTo(Writer writer) {
      writer.paragraph(this);
    }
  }

  /**
   * A list without order.
   *
   * @param items the items
   */
  record Bullets(List<String> items) implements Block {
    /** Copies the items. */
    public Bullets {
      items = List.copyOf(items);
    }

    @Override
    public void writeTo(Writer writer) {
      writer.bullets(this);
    }
  }

  /**
   * Terms, each with a text.
   *
   * @param pairs the terms in order
   */
  record Terms(List<Term> pairs) implements Block {
    /** Copies the pairs. */
    public Terms {
      pairs = List.copyOf(pairs);
    }

    @Override
    public void writeTo(Writer writer) {
      writer.terms(this);
    }
  }

  /**
   * A term with a text.
   *
   * @param term the term
   * @param text its text
   */
  record Term(String term, String text) {}

  /**
   * A table.
   *
   * @param caption what it shows
   * @param columns its columns
   * @param rows its rows, each with one cell a column; the first cell names the row
   */
  record Table(String caption, List<Column> columns, List<List<String>> rows) implements Block {
    /** Copies and checks the lengths. */
    public Table {
      columns = List.copyOf(columns);
      rows = rows.stream().map(List::copyOf).toList();
      for (List<String> row : rows) {
        if (row.size() != columns.size()) {
          throw new IllegalArgumentException(
              "a row of «" + caption + "» has a cell too many or few");
        }
      }
    }

    @Override
    public void writeTo(Writer writer) {
      writer.table(this);
    }
  }

  /**
   * What a page is read for first: the rows of a table, where there is room each as a card.
   *
   * @param table the table
   */
  record Headline(Table table) implements Block {
    @Override
    public void writeTo(Writer writer) {
      writer.headline(this);
    }
  }

  /**
   * A chart.
   *
   * @param chart the chart
   * @param caption one sentence that says what to see in it
   */
  record Figure(Chart chart, String caption) implements Block {
    @Override
    public void writeTo(Writer writer) {
      writer.figure(this);
    }

    @Override
    public Optional<Chart> drawnChart() {
      return Optional.of(chart);
    }

    @Override
    public boolean isPicture() {
      return true;
    }
  }

  /**
   * A photo.
   *
   * @param caption what it shows
   * @param where when and at which step it was attached
   * @param path where it is kept, from the data home on
   * @param picture the picture, where it could be read
   */
  record Photo(String caption, String where, String path, Optional<Picture> picture)
      implements Block {
    @Override
    public void writeTo(Writer writer) {
      writer.photo(this);
    }

    @Override
    public boolean isPicture() {
      return true;
    }

    /** Says where the photo is kept, for a format or a moment without the picture. */
    String inWords() {
      return picture.isPresent()
          ? Sentence.of("{}: {} ({})", where, caption, path)
          : Sentence.of("{}: {} ({}; not shown here)", where, caption, path);
    }
  }

  /**
   * A drawing made of signs, one line under the other; its spaces count.
   *
   * @param caption what it shows
   * @param lines its lines
   * @param words what is written in its place where the lines are too long
   */
  record Drawing(String caption, List<String> lines, String words) implements Block {
    /** Copies the lines. */
    public Drawing {
      lines = List.copyOf(lines);
    }

    @Override
    public void writeTo(Writer writer) {
      writer.drawing(this);
    }
  }

  /**
   * A column of a table.
   *
   * @param name its header
   * @param numeric whether it is set to the right
   */
  record Column(String name, boolean numeric) {
    /** Returns a column of words. */
    public static Column words(String name) {
      return new Column(name, false);
    }

    /** Returns a column of numbers. */
    public static Column numbers(String name) {
      return new Column(name, true);
    }
  }
}
