package loadwalk.outside;

import java.util.List;
import java.util.Random;
import java.util.function.BiFunction;

/** The kinds of faults, each with all of its own. */
enum Kind {
  KILLS("kills at every fact of a walk", 2, Kills::all),
  FULL_DISK("a disk that is full at every byte", 2, FullDisk::all),
  MEDDLING("files that change and vanish", 2, Meddling::all),
  SPOILED("kept journals that are changed", 3, Spoiled::all),
  LOCALES("locales and encodings", 3, Locales::all),
  DERIVED("changes of what is derived from journals", 8, Derived::all),
  ARCHIVE("changes of the class archive", 4, ClassArchive::all),
  HOMES("journals of other names, and what stands in the way", 3, Homes::all),
  RIGHTS("folders without rights", 2, Rights::all),
  CLOCKS("clocks that jump", 1, Clocks::all),
  TERMINALS("bad terminals and closed streams", 3, Terminals::all),
  NATIVE_PARTS("planted native parts", 20, NativeParts::all),
  WAITS("files that never begin or end", 6, Waits::all);

  private final String title;
  private final int share;
  private final BiFunction<Learned, Random, List<Fault>> all;

  Kind(String title, int share, BiFunction<Learned, Random, List<Fault>> all) {
    this.title = title;
    this.share = share;
    this.all = all;
  }

  /** Returns what it is, for the table. */
  String title() {
    return title;
  }

  /** Returns how many are tried by default. */
  int share() {
    return share;
  }

  /** Returns all faults of this kind. */
  List<Fault> faults(Learned learned, Random random) {
    return all.apply(learned, random);
  }
}
