package loadwalk.app;

/** The two clocks of the machine; tests give their own. */
interface Clocks {

  /** Returns a clock that only goes forward, ns. */
  long monoNanos();

  /** Returns the wall clock, ms since 1970. */
  long wallMillis();

  /** The clocks of the machine. */
  Clocks MACHINE =
      new Clocks() {
        @Override
        public long monoNanos() {
          return System.nanoTime();
        }

        @Override
        public long wallMillis() {
          return System.currentTimeMillis();
        }
      };
}
