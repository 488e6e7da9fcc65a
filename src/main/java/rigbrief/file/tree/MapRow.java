package rigbrief.file.tree;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import rigbrief.diagnostic.Fault;
import rigbrief.diagnostic.Faults;
import rigbrief.file.cell.Row;

/** The keys of one mapping, read as the cells of a row. */
final class MapRow implements Row {
    private static final int LONGEST_VALUE = 10_000;

    private final String file;
    private final String path;
    private final Node.Mapping mapping;
    private final Faults faults;
    private final boolean joins;
    private final Set<String> asked = new LinkedHashSet<>();

    /**
     * A mapping.
     *
     * @param path what leads to it, empty for the whole file
     * @param joins whether a list of single values is taken as one cell with semicolons
     */
    MapRow(String file, String path, Node.Mapping mapping, Faults faults, boolean joins) {
        this.file = file;
        this.path = path;
        this.mapping = mapping;
        this.faults = faults;
        this.joins = joins;
    }

    /** The value of a key; null where it is absent or states nothing. */
    Node value(String key) {
        asked.add(key);
        Node.Entry entry = mapping.entries().get(key);
        boolean absent = entry == null || entry.value() instanceof Node.Scalar s && s.nothing();
        return absent ? null : entry.value();
    }

    /** The keys asked for so far. */
    List<String> asked() {
        return List.copyOf(asked);
    }

    String path(String key) {
        String shown = key.isEmpty() ? "\"\"" : key;
        return path.isEmpty() ? shown : path + "." + shown;
    }

    @Override
    public String cell(String column) {
        Node node = value(column);
        if (node == null) {
            return "";
        }
        String text = text(node);
        if (text == null) {
            fault(column, node.shown(), "a single value", "write one value behind the colon");
        } else if (text.length() > LONGEST_VALUE) {
            fault(column, text, "at most 10000 characters", "shorten the value");
            return null;
        }
        return text;
    }

    private String text(Node node) {
        if (node instanceof Node.Scalar scalar) {
            return scalar.text();
        }
        boolean joined =
                joins
                        && node instanceof Node.Sequence sequence
                        && sequence.items().stream().allMatch(Node.Scalar.class::isInstance);
        return joined
                ? ((Node.Sequence) node)
                        .items().stream().map(Node::shown).collect(Collectors.joining(";"))
                : null;
    }

    @Override
    public void fault(String column, String found, String expected, String advice) {
        Node.Entry entry = mapping.entries().get(column);
        int line = entry == null ? mapping.line() : entry.value().line();
        int at = entry == null ? mapping.column() : entry.value().column();
        faults.add(new Fault(file, line, at, path(column), found, expected, advice));
    }

    @Override
    public String leaveOut() {
        return "leave the key out";
    }

    @Override
    public boolean knows(String column) {
        return true;
    }
}
