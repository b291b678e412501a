package pondtally.intake;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The lists of corrected rows in a program folder, read before its files so that each file knows
 * which of its rows are replaced.
 */
public final class FixLists {

  private final Map<String, InputFile> files = new HashMap<>();
  private final Map<String, FixList> lists = new LinkedHashMap<>();
  private final Map<String, List<String>> refused = new HashMap<>();
  private final Map<String, List<FixRow>> accepted = new HashMap<>();

  private FixLists(List<InputFile> all) {
    all.forEach(file -> files.put(file.path(), file));
    all.parallelStream()
        .map(FixList::of)
        .flatMap(Optional::stream)
        .toList()
        .forEach(list -> lists.put(list.file().path(), list));
  }

  /** The same files; each knows what the lists among them correct in it. */
  public static List<InputFile> applied(List<InputFile> files) {
    FixLists lists = new FixLists(files);
    if (lists.lists.isEmpty()) {
      return files;
    }
    lists.distribute();
    return files.stream().map(file -> file.with(lists.share(file.path()))).toList();
  }

  private void distribute() {
    Map<FixKey, List<FixRow>> byKey = new LinkedHashMap<>();
    for (FixList list : lists.values()) {
      for (FixRow row : list.changed()) {
        if (isUsable(row)) {
          byKey.computeIfAbsent(row.key(), key -> new ArrayList<>()).add(row);
        }
      }
    }
    byKey.values().forEach(this::acceptOne);
  }

  private boolean isUsable(FixRow row) {
    if (row.isEmpty()) {
      refuse(row, "it was emptied. To take a record out, delete its row in the file itself");
    } else if (!files.containsKey(row.key().file())) {
      refuse(row, "there is no such file in the program folder");
    } else {
      return !lists.containsKey(row.key().file());
    }
    return false;
  }

  /** Of corrections of one row that say the same one is used; of others none. */
  private void acceptOne(List<FixRow> same) {
    FixRow first = same.get(0);
    Optional<FixRow> other = same.stream().filter(row -> !row.saysTheSame(first)).findFirst();
    if (other.isEmpty()) {
      accepted.computeIfAbsent(first.key().file(), file -> new ArrayList<>()).add(first);
      return;
    }
    refuse(
        first,
        "%s corrects the row in another way. Take one of them out".formatted(other.get().where()));
    refuse(
        other.get(),
        "%s corrects the row in another way. Take one of them out".formatted(first.where()));
  }

  private void refuse(FixRow row, String why) {
    refused
        .computeIfAbsent(row.list(), list -> new ArrayList<>())
        .add(
            "The correction in sheet %s, row %s, of %s is not used: %s. The row counts as it stands there."
                .formatted(row.listSheet(), row.listRow(), row.key().words(), why));
  }

  private FixShare share(String path) {
    FixList list = lists.get(path);
    List<FixRow> rows = List.copyOf(accepted.getOrDefault(path, List.of()));
    if (list == null) {
      return new FixShare(rows, null);
    }
    List<String> sentences = List.copyOf(refused.getOrDefault(path, List.of()));
    return new FixShare(
        List.of(), new FixShare.Listed(list.changed().size(), list.untouched(), sentences));
  }
}
