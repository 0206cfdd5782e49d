package loadwalk.meter;

import java.util.List;

/** What a dialogue wants done. */
public sealed interface Act {

  /** Hands itself to what does it. */
  <E extends Exception> void by(Doer<E> doer) throws E;

  /**
   * What does the acts of a dialogue.
   *
   * @param <E> what goes wrong with a line
   */
  interface Doer<E extends Exception> {
    /** Opens the line. */
    void open() throws E;

    /** Sends a question with a line feed behind it. */
    void send(String query) throws E;

    /** Closes the line. */
    void close() throws E;

    /** Tells something. */
    void tell(News news) throws E;
  }

  /** Open the line. */
  record Open() implements Act {
    @Override
    public <E extends Exception> void by(Doer<E> doer) throws E {
      doer.open();
    }
  }

  /** Send a question with a line feed behind it. */
  record Send(String query) implements Act {
    @Override
    public <E extends Exception> void by(Doer<E> doer) throws E {
      doer.send(query);
    }
  }

  /** Close the line. */
  record Close() implements Act {
    @Override
    public <E extends Exception> void by(Doer<E> doer) throws E {
      doer.close();
    }
  }

  /** What is to be told to whoever uses the meters. */
  sealed interface News extends Act {
    @Override
    default <E extends Exception> void by(Doer<E> doer) throws E {
      doer.tell(this);
    }

    /** Returns the meters it is about, of those that the line carries in the order asked. */
    <M> List<M> about(List<M> meters);

    /** Tells it. */
    void to(Listener listener);
  }

  /** Whoever uses the meters. */
  interface Listener {
    /** Hears what came of a question. */
    void heard(MeterReading reading);

    /** Hears who the instrument says it is. */
    void identified(Identity identity);
  }

  /**
   * Tell what a meter answered.
   *
   * @param question which question it was, from 0
   * @param reading what came of it
   */
  record Heard(int question, MeterReading reading) implements News {
    @Override
    public <M> List<M> about(List<M> meters) {
      return List.of(meters.get(question));
    }

    @Override
    public void to(Listener listener) {
      listener.heard(reading);
    }
  }

  /** Tell who the instrument says it is. */
  record Identified(Identity identity) implements News {
    @Override
    public <M> List<M> about(List<M> meters) {
      return meters;
    }

    @Override
    public void to(Listener listener) {
      listener.identified(identity);
    }
  }
}
