package loadwalk.tui;

import java.lang.reflect.Proxy;

/**
 * Listens for signals through the class that every known Java has for it and no standard names;
 * where it is missing, nothing is heard.
 */
final class Signals {
  private Signals() {}

  /** Runs something whenever a signal comes, on a thread of its own. */
  static void on(String name, Runnable what) {
    try {
      Class<?> signal = Class.forName("sun.misc.Signal");
      Class<?> handler = Class.forName("sun.misc.SignalHandler");
      Object heard =
          Proxy.newProxyInstance(
              handler.getClassLoader(),
              new Class<?>[] {handler},
              (proxy, method, arguments) -> {
                if (method.getName().equals("handle")) {
                  what.run();
                }
                return null;
              });
      Object named = signal.getConstructor(String.class).newInstance(name);
      signal.getMethod("handle", signal, handler).invoke(null, named, heard);
    } catch (ReflectiveOperationException | IllegalArgumentException unknown) {
      // Another kind of Java, or of system: the signal does what it does there.
    }
  }
}
