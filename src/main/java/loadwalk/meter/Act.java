package loadwalk.meter;

import java.util.List;

/** An action that a dialogue requests. */
public sealed interface Act {

  /** Passes this act to the matching method of a doer. */
  <E extends Exception> void by(Doer<E> doer) throws E;

  /**
   * Performs the acts of a dialogue.
   *
   * @param <E> the exception for a failure of the line
   */
  interface Doer<E extends Exception> {
    /** Opens the line. */
    void open() throws E;

    /** Sends a question followed by a line feed. */
    void send(String query) throws E;

    /** Closes the line. */
    void close() throws E;

    /** Passes on some news. */
    void tell(News news) throws E;
  }

  /** Open the line. */
  record Open() implements Act {
    @Override
    public <E extends Exception> void by(Doer<E> doer) throws E {
      doer.open();
    }
  }

  /** Send a question followed by a line feed. */
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

  /** News for the user of the meters. */
  sealed interface News extends Act {
    @Override
    default <E extends Exception> void by(Doer<E> doer) throws E {
      doer.tell(this);
    }

    /**
     * Returns the meters concerned, given the meters on the line in the order of their questions.
     */
    <M> List<M> about(List<M> meters);

    /** Passes this news to a listener. */
    void to(Listener listener);
  }

  /** The user of the meters. */
  interface Listener {
    /** Receives the outcome of a question. */
    void heard(MeterReading reading);

    /** Receives the identity that the instrument reports. */
    void identified(Identity identity);
  }

  /**
   * Report the answer of a meter.
   *
   * @param question the index of the question, from 0
   * @param reading its outcome
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

  /** Report the identity that the instrument gives. */
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
