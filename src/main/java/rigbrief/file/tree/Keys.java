package rigbrief.file.tree;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import rigbrief.diagnostic.Fault;
import rigbrief.diagnostic.Faults;
import rigbrief.diagnostic.Nearest;
import rigbrief.file.cell.CellRow;
import rigbrief.file.cell.Row;
import rigbrief.part.Cells;

/**
 * One mapping of a file, read key by key.
 *
 * <p>Every key is asked for on every reading, so that {@link #finish} knows which keys there are
 * and reports the others.
 */
public final class Keys {
    private final String file;
    private final String path;
    private final Node.Mapping mapping;
    private final Faults faults;
    private final MapRow row;
    private final Cells cells;

    private Keys(String file, String path, Node.Mapping mapping, Faults faults) {
        this.file = file;
        this.path = path;
        this.mapping = mapping;
        this.faults = faults;
        this.row = new MapRow(file, path, mapping, faults, false);
        this.cells = CellRow.named("", row);
    }

    /** The keys of a whole file. */
    public static Keys of(String file, Node.Mapping root, Faults faults) {
        return new Keys(file, "", root, faults);
    }

    /** The single values, by key. */
    public Cells cells() {
        return cells;
    }

    /** The mapping as the cells of a part whose id stands elsewhere; lists may be YAML lists. */
    public DescribedPart described(String id) {
        MapRow joining = new MapRow(file, path, mapping, faults, true);
        return new DescribedPart(
                CellRow.named(id, joining), joining, () -> finish(joining.asked()));
    }

    /** Whether a key is there and states something. */
    public boolean has(String key) {
        return row.value(key) != null;
    }

    /** Whether the value of a key is a mapping. */
    public boolean hasKeys(String key) {
        return row.value(key) instanceof Node.Mapping;
    }

    /** Whether the value of a key is a list. */
    public boolean hasList(String key) {
        return row.value(key) instanceof Node.Sequence;
    }

    /** A single value; empty where there is none, with a fault where it is not single. */
    public Optional<Text> text(String key) {
        Node node = row.value(key);
        if (node == null || row.cell(key) == null) {
            return Optional.empty();
        }
        return Optional.of(new Text(file, row.path(key), node, faults));
    }

    /** A single value read by a form; empty where there is none. */
    public <T> Optional<T> maybe(String key, Cells.Form<T> form) {
        return text(key).flatMap(text -> text.read(form));
    }

    /** A single value that must be there; what is wanted is reported where it is absent. */
    public Optional<Text> oneText(String key, String expected, String advice) {
        if (!has(key)) {
            fault(key, expected, advice);
        }
        return text(key);
    }

    /**
     * A single value that must be there, read by a form; what the form says of no text is said of
     * an absent key.
     */
    public <T> Optional<T> one(String key, Cells.Form<T> form) {
        if (has(key)) {
            return maybe(key, form);
        }
        try {
            return Optional.of(form.read(""));
        } catch (Cells.Malformed absent) {
            fault(key, absent.expected(), absent.advice());
            return Optional.empty();
        }
    }

    /** The single values of a list; none where the key is absent. */
    public List<Text> texts(String key) {
        List<Text> texts = new ArrayList<>();
        List<Node> items = items(key);
        for (int i = 0; i < items.size(); i++) {
            Text text = new Text(file, row.path(key) + "[" + i + "]", items.get(i), faults);
            if (items.get(i) instanceof Node.Scalar scalar && !scalar.text().isEmpty()) {
                texts.add(text);
            } else {
                text.fault("a single value", "write one value, or take the item out");
            }
        }
        return texts;
    }

    /** The items of a list, each read by a form; what can't be read is reported and left out. */
    public <T> List<T> list(String key, Cells.Form<T> form) {
        List<T> values = new ArrayList<>();
        for (Text text : texts(key)) {
            text.read(form).ifPresent(values::add);
        }
        return values;
    }

    /**
     * A mapping under a key; empty where there is none, with a fault where it is something else.
     */
    public Optional<Keys> keys(String key) {
        Node node = row.value(key);
        if (node == null) {
            return Optional.empty();
        }
        return mapping(node, row.path(key));
    }

    /** A mapping under a key; reported, and answered with no keys at all, where it is missing. */
    public Keys required(String key) {
        if (!has(key)) {
            row.fault(key, "", "keys and values", "write them in");
        }
        return keys(key).orElseGet(() -> nothing(key));
    }

    /** The mappings of a list; none where the key is absent. */
    public List<Keys> listOfKeys(String key) {
        List<Keys> all = new ArrayList<>();
        List<Node> items = items(key);
        for (int i = 0; i < items.size(); i++) {
            mapping(items.get(i), row.path(key) + "[" + i + "]").ifPresent(all::add);
        }
        return all;
    }

    /** The mappings under names that the file chooses, in file order; none where it has none. */
    public Map<String, Keys> named(String key) {
        Map<String, Keys> named = new LinkedHashMap<>();
        keys(key)
                .ifPresent(
                        inner ->
                                inner.names()
                                        .forEach(
                                                name ->
                                                        inner.keys(name)
                                                                .ifPresent(
                                                                        it ->
                                                                                named.put(
                                                                                        name,
                                                                                        it))));
        return named;
    }

    /** All keys as they stand in the file. */
    public List<String> names() {
        return List.copyOf(mapping.entries().keySet());
    }

    /** Reports what is wrong with the value of a key, or with its absence. */
    public void fault(String key, String expected, String advice) {
        Node node = row.value(key);
        row.fault(key, node == null ? "" : node.shown(), expected, advice);
    }

    /** How many faults there are so far, in this mapping or elsewhere. */
    public int faultCount() {
        return faults.count();
    }

    /** Reports the keys that nobody asked for. */
    public void finish() {
        finish(row.asked());
    }

    private void finish(List<String> asked) {
        mapping.entries()
                .forEach(
                        (key, entry) -> {
                            if (!asked.contains(key)) {
                                faults.add(unknown(key, entry, asked));
                            }
                        });
    }

    private Fault unknown(String key, Node.Entry entry, List<String> asked) {
        List<String> free = new ArrayList<>(asked);
        free.removeAll(mapping.entries().keySet());
        String advice =
                Nearest.to(key, free)
                        .or(() -> Nearest.to(key, asked))
                        .map(near -> "did you mean " + near + "?")
                        .orElse("take it out");
        String where = path.isEmpty() ? "here" : "under " + path;
        String expected = "a key that is known " + where;
        return new Fault(file, entry.line(), entry.column(), row.path(key), key, expected, advice);
    }

    private List<Node> items(String key) {
        Node node = row.value(key);
        if (node instanceof Node.Sequence sequence) {
            return sequence.items();
        }
        if (node != null) {
            row.fault(key, node.shown(), "a list", "write [" + "first, second]");
        }
        return List.of();
    }

    private Optional<Keys> mapping(Node node, String where) {
        if (node instanceof Node.Mapping inner) {
            return Optional.of(new Keys(file, where, inner, faults));
        }
        new Text(file, where, node, faults)
                .fault("keys and values", "write {key: value}, or a key a line");
        return Optional.empty();
    }

    /** No keys, and nobody to complain to: the absence of the whole has been reported. */
    private Keys nothing(String key) {
        Node.Mapping none = new Node.Mapping(Map.of(), mapping.line(), mapping.column());
        return new Keys(file, row.path(key), none, new Faults());
    }

    /**
     * A part described by keys.
     *
     * @param cells its cells
     * @param row the same as a row, to complain to
     * @param finish reports the keys that nobody asked for
     */
    public record DescribedPart(Cells cells, Row row, Runnable finish) {}
}
