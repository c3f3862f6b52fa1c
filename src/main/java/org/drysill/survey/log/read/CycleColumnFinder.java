package org.drysill.survey.log.read;

import java.text.Normalizer;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.drysill.survey.CycleColumns;
import org.drysill.survey.log.LogCode;
import org.drysill.survey.log.LogQuantity;
import org.drysill.yaml.Nearest;

/**
 * Finds the columns of a log of cycles: by the names that the survey gives, else by words in their
 * names. Where the survey names one of them, no other is guessed.
 */
final class CycleColumnFinder {
  private static final Map<LogQuantity, Set<String>> WORDS =
      Map.of(
          LogQuantity.INDOOR_TEMPERATURE,
          words("indoor indoors inside room innen raum raumluft interieur binnen inne interno"),
          LogQuantity.OUTDOOR_TEMPERATURE,
          words("outdoor outdoors outside ambient aussen aussenluft exterieur buiten ute esterno"),
          LogQuantity.SUPPLY_TEMPERATURE,
          words("supply grille grill zuluft soufflage toevoer tilluft mandata"),
          LogQuantity.EXHAUST_TEMPERATURE,
          words("exhaust fortluft rejet afvoer avluft espulsione"),
          LogQuantity.FLOW,
          words("flow airflow volumenstrom debit debiet luftflode portata"));

  private final Table table;
  private final Refusals refusals;

  CycleColumnFinder(Table table, Refusals refusals) {
    this.table = table;
    this.refusals = refusals;
  }

  private static Set<String> words(String words) {
    return Set.of(words.split(" "));
  }

  /** The columns by what they hold; the air at the grille is among them. */
  Map<LogQuantity, Integer> find(Optional<CycleColumns> named) throws LogRefused {
    Map<LogQuantity, Optional<String>> names = new EnumMap<>(LogQuantity.class);
    names.put(LogQuantity.INDOOR_TEMPERATURE, name(named, CycleColumns::indoor));
    names.put(LogQuantity.OUTDOOR_TEMPERATURE, name(named, CycleColumns::outdoor));
    names.put(LogQuantity.SUPPLY_TEMPERATURE, name(named, CycleColumns::supply));
    names.put(LogQuantity.EXHAUST_TEMPERATURE, name(named, CycleColumns::exhaust));
    names.put(LogQuantity.FLOW, name(named, CycleColumns::flow));
    boolean guess = names.values().stream().allMatch(Optional::isEmpty);
    Map<LogQuantity, Integer> found = new EnumMap<>(LogQuantity.class);
    for (Map.Entry<LogQuantity, Optional<String>> entry : names.entrySet()) {
      if (entry.getValue().isPresent()) {
        found.put(entry.getKey(), byName(entry.getValue().get()));
      } else if (guess) {
        byWords(entry.getKey()).ifPresent(column -> found.put(entry.getKey(), column));
      }
    }
    if (!found.containsKey(LogQuantity.SUPPLY_TEMPERATURE)) {
      throw refusals.at(
          Math.max(1, table.headerLine()),
          LogCode.COLUMN_NOT_FOUND,
          "columns named " + quoted(table.names()),
          "a column with the air at the grille in the room, such as \"Supply\", or its name in the"
              + " survey (columns: supply)");
    }
    return found;
  }

  private static Optional<String> name(
      Optional<CycleColumns> named, Function<CycleColumns, Optional<String>> column) {
    return named.flatMap(column);
  }

  private int byName(String name) throws LogRefused {
    List<Integer> found = columns(column -> column.strip().equalsIgnoreCase(name.strip()));
    if (found.size() == 1) {
      return found.get(0);
    }
    if (found.isEmpty()) {
      throw refusals.at(
          Math.max(1, table.headerLine()),
          LogCode.NO_SUCH_COLUMN,
          "no column \"" + name + '"',
          "one of the columns " + quoted(table.names()),
          Nearest.of(name, table.names().stream().map(String::strip).toList()));
    }
    throw several(found, "a name of its own for each column");
  }

  private Optional<Integer> byWords(LogQuantity quantity) throws LogRefused {
    Set<String> words = WORDS.get(quantity);
    List<Integer> found =
        columns(column -> Arrays.stream(plain(column).split("[^a-z]+")).anyMatch(words::contains));
    if (found.size() > 1) {
      throw several(found, "one column of " + quantity.word() + ", or its name in the survey");
    }
    return found.stream().findFirst();
  }

  private LogRefused several(List<Integer> found, String expected) {
    return refusals.at(
        table.headerLine(),
        LogCode.SEVERAL_COLUMNS,
        quoted(found.stream().map(table.names()::get).toList()),
        expected);
  }

  private List<Integer> columns(java.util.function.Predicate<String> fits) {
    return IntStream.range(0, table.names().size())
        .filter(i -> fits.test(table.names().get(i)))
        .boxed()
        .toList();
  }

  private static String quoted(List<String> names) {
    return names.stream()
        .map(String::strip)
        .filter(name -> !name.isEmpty())
        .map(name -> '"' + name + '"')
        .collect(Collectors.joining(", "));
  }

  private static String plain(String name) {
    return Normalizer.normalize(name, Normalizer.Form.NFKD)
        .replaceAll("\\p{M}+", "")
        .toLowerCase(Locale.ROOT);
  }
}
