package loadwalk.report.page;

import java.util.List;
import java.util.Optional;
import loadwalk.chart.Chart;
import loadwalk.quantity.Unit;
import loadwalk.text.Sentence;

/**
 * A piece of a page; each format writes all kinds. Texts are kept as typed; the writers make them
 * harmless.
 */
public sealed interface Block {

  /** Writes this piece in a format. */
  void writeTo(Writer writer);

  /** Returns the chart if this piece is one. */
  default Optional<Chart> drawnChart() {
    return Optional.empty();
  }

  /** Tells whether this piece is a picture that may be set beside another. */
  default boolean isPicture() {
    return false;
  }

  /** A format, with a method for every kind of piece. */
  interface Writer {
    /** Writes running text. */
    void paragraph(Paragraph paragraph);

    /** Writes a list. */
    void bullets(Bullets bullets);

    /** Writes terms with their texts. */
    void terms(Terms terms);

    /** Writes a table. */
    void table(Table table);

    /** Writes the headline, which is read first. */
    void headline(Headline headline);

    /** Writes a chart. */
    void figure(Figure figure);

    /** Writes a photo. */
    void photo(Photo photo);

    /** Writes a drawing made of characters. */
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
   * A bulleted list.
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
   * A table of texts.
   *
   * @param caption what it shows
   * @param columns its columns
   * @param rows its rows, each with one cell a column; the first cell names the row
   */
  record Table(String caption, List<Column> columns, List<List<String>> rows) implements Block {
    /** Copies the lists and checks that every row has one cell a column. */
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
   * The headline, the part of a page that is read first: the rows of a table, each as a card if
   * there is room.
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
   * @param where the step and time at which it was attached
   * @param path where it is kept, relative to the data home
   * @param picture the picture, if it could be read
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

    /** Says where a photo is kept that cannot be shown. */
    String inWords() {
      return Sentence.of("{}: {} ({}; not shown here)", where, caption, path);
    }
  }

  /**
   * A drawing made of lines of characters; its spaces count.
   *
   * @param caption what it shows
   * @param lines its lines
   * @param words the text written instead if the lines are too long
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
   * @param numeric whether it is right-aligned
   * @param unit the symbol that ends its numbers, if all have the same; else empty
   */
  record Column(String name, boolean numeric, String unit) {
    /** Returns a column of words. */
    public static Column words(String name) {
      return new Column(name, false, "");
    }

    /** Returns a column of numbers. */
    public static Column numbers(String name) {
      return new Column(name, true, "");
    }

    /** Returns a column of numbers in one unit, which stands in the header where room is short. */
    public static Column numbers(String name, Unit unit) {
      return new Column(name, true, unit.symbol());
    }

    /** Returns the header with the unit, if all numbers have the same. */
    String heading() {
      return unit.isEmpty() ? name : Sentence.of("{}, {}", name, unit);
    }

    /** Returns a cell without the unit that stands in the header. */
    String bare(String cell) {
      String end = " " + unit;
      boolean ends = !unit.isEmpty() && cell.endsWith(end);
      return ends ? cell.substring(0, cell.length() - end.length()) : cell;
    }
  }
}
