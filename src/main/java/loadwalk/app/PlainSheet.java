package loadwalk.app;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.PrintWriter;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import loadwalk.cli.ExitCode;
import loadwalk.cli.SheetCommand;

/**
 * Prints the sheet of a walk in its plain form, from the text kept last where that still counts.
 *
 * <p>The text depends on the journal's bytes and on what makes it, and on nothing else: not on the
 * width of a terminal, the locale, the time or the photos. Only a sheet without a complaint is
 * kept.
 */
final class PlainSheet {
  private final DataHome home;
  private final Optional<String> maker;

  PlainSheet(DataHome home, Optional<String> maker) {
    this.home = home;
    this.maker = maker;
  }

  /** A journal as it is now, and what is kept of its sheet. */
  private record Source(WalkName walk, byte[] journal, KeptSheet kept) {}

  /**
   * Prints the sheet.
   *
   * @param walk the walk's name; the walk changed last where there is none
   * @return the exit code
   */
  int print(Optional<String> walk, OutputStream out, PrintWriter err) {
    Optional<Source> source = source(walk);
    if (source.isPresent()) {
      Optional<byte[]> kept = source.get().kept().text(source.get().journal());
      if (kept.isPresent()) {
        write(kept.get(), out);
        return ExitCode.DONE;
      }
    }
    return printAnew(walk, source, out, err);
  }

  private int printAnew(
      Optional<String> walk, Optional<Source> source, OutputStream out, PrintWriter err) {
    ByteArrayOutputStream text = new ByteArrayOutputStream();
    Optional<String> name = source.isPresent() ? Optional.of(source.get().walk().text()) : walk;
    int code = SheetCommand.print(new SessionShelf(home), name, Main.utf8(text), err);
    write(text.toByteArray(), out);
    if (code == ExitCode.DONE && source.isPresent()) {
      keep(source.get(), text.toByteArray());
    }
    return code;
  }

  /** Empty where something is in the way; making the sheet then says what. */
  private Optional<Source> source(Optional<String> walk) {
    try {
      if (maker.isEmpty() || !home.stays(home.sessions())) {
        return Optional.empty();
      }
      Optional<WalkName> name = name(walk);
      if (name.isEmpty()) {
        return Optional.empty();
      }
      KeptSheet kept = new KeptSheet(home.sessions().resolve(name.get().sheetFile()), maker.get());
      return Optional.of(new Source(name.get(), SessionStore.bytes(home, name.get()), kept));
    } catch (IOException unreadable) {
      return Optional.empty();
    }
  }

  private Optional<WalkName> name(Optional<String> walk) throws IOException {
    if (walk.isPresent()) {
      return WalkName.fault(walk.get()).isPresent()
          ? Optional.empty()
          : Optional.of(new WalkName(walk.get()));
    }
    List<SessionStore.Listed> walks = SessionStore.list(home);
    return walks.isEmpty() ? Optional.empty() : Optional.of(walks.get(0).name());
  }

  /** A journal that has been written on meanwhile may be another than the sheet was made of. */
  private void keep(Source before, byte[] text) {
    Optional<Source> now = source(Optional.of(before.walk().text()));
    if (now.isPresent() && Arrays.equals(now.get().journal(), before.journal())) {
      before.kept().keep(before.journal(), text);
    }
  }

  private static void write(byte[] text, OutputStream out) {
    try {
      out.write(text);
      out.flush();
    } catch (IOException closed) {
      // Who reads a pipe may have had enough of it.
      return;
    }
  }
}
