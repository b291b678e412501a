package pondtally.intake;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.snakeyaml.engine.v2.api.LoadSettings;
import org.snakeyaml.engine.v2.api.lowlevel.Compose;
import org.snakeyaml.engine.v2.exceptions.Mark;
import org.snakeyaml.engine.v2.exceptions.MarkedYamlEngineException;
import org.snakeyaml.engine.v2.exceptions.YamlEngineException;
import org.snakeyaml.engine.v2.nodes.MappingNode;
import org.snakeyaml.engine.v2.nodes.Node;
import org.snakeyaml.engine.v2.nodes.NodeTuple;
import org.snakeyaml.engine.v2.nodes.ScalarNode;
import org.snakeyaml.engine.v2.nodes.SequenceNode;
import org.snakeyaml.engine.v2.nodes.Tag;
import pondtally.check.UserError;

/** A part of a YAML file that knows its line, so that what is wrong with it can be found. */
final class YamlPart {

  private final String file;
  private final Node node;

  private YamlPart(String file, Node node) {
    this.file = file;
    this.node = node;
  }

  /** The whole of a file; empty where nothing but comments stands in it. */
  static Optional<YamlPart> read(Path path, String name) {
    String text = SettingsText.of(path, name);
    try {
      Compose composer = new Compose(LoadSettings.builder().setLabel(name).build());
      String yaml = text.startsWith("\ufeff") ? text.substring(1) : text;
      return SettingsText.parsed(yaml, name, composer::composeString)
          .map(root -> new YamlPart(name, root));
    } catch (MarkedYamlEngineException e) {
      throw at(name, e.getProblemMark(), "this is not valid YAML (%s)".formatted(e.getProblem()));
    } catch (YamlEngineException e) {
      throw UserError.input("%s is not valid YAML: %s".formatted(name, e.getMessage()));
    }
  }

  private static UserError at(String file, Optional<Mark> mark, String problem) {
    String line = mark.map(m -> ", line " + (m.getLine() + 1)).orElse("");
    return UserError.input(
        "%s%s: %s%s".formatted(file, line, problem, problem.matches("(?s).*[.?]") ? "" : "."));
  }

  /** What is wrong here, and what was expected. */
  UserError wrong(String problem, Object... words) {
    return at(file, node.getStartMark(), problem.formatted(words));
  }

  int line() {
    return node.getStartMark().map(mark -> mark.getLine() + 1).orElse(0);
  }

  boolean isMapping() {
    return node instanceof MappingNode;
  }

  /** The text of a single value; empty for {@code ~} or none. */
  String text() {
    if (!(node instanceof ScalarNode scalar)) {
      throw wrong("a single value is expected here");
    }
    boolean isTilde = scalar.isPlain() && scalar.getValue().equals("~");
    return isTilde || scalar.getTag().equals(Tag.NULL) ? "" : scalar.getValue().strip();
  }

  /** The items of a list. */
  List<YamlPart> items() {
    if (!(node instanceof SequenceNode list)) {
      throw wrong("a list is expected here, each item after `- `");
    }
    List<YamlPart> items = new ArrayList<>();
    list.getValue().forEach(item -> items.add(new YamlPart(file, item)));
    return items;
  }

  /** The keys of a mapping and what stands behind them, in the order of the file. */
  Map<YamlPart, YamlPart> entries() {
    if (!(node instanceof MappingNode mapping)) {
      throw wrong("`key: value` lines are expected here");
    }
    Map<YamlPart, YamlPart> entries = new LinkedHashMap<>();
    Map<String, Integer> lines = new LinkedHashMap<>();
    for (NodeTuple tuple : mapping.getValue()) {
      YamlPart key = new YamlPart(file, tuple.getKeyNode());
      Integer before = lines.putIfAbsent(key.text(), key.line());
      if (before != null) {
        throw key.wrong("`%s` stands in line %s already", key.text(), before);
      }
      entries.put(key, new YamlPart(file, tuple.getValueNode()));
    }
    return entries;
  }

  /** The same, by the text of keys that must be among {@code known}. */
  Map<String, YamlPart> entries(List<String> known) {
    Map<String, YamlPart> byKey = new LinkedHashMap<>();
    entries().forEach((key, value) -> byKey.put(key.oneOf("key", known), value));
    return byKey;
  }

  /** The text, which must be one of {@code known}. */
  String oneOf(String what, List<String> known) {
    String text = text();
    if (known.contains(text)) {
      return text;
    }
    List<String> dashed = known.stream().map(word -> word.replace('_', '-')).toList();
    int near = dashed.indexOf(Likeness.nearest(text, dashed));
    throw wrong(
        "`%s` is no %s here. %sExpected one of: %s",
        text,
        what,
        near < 0 ? "" : "Did you mean `%s`? ".formatted(known.get(near)),
        String.join(", ", known));
  }
}
