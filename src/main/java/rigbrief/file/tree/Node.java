package rigbrief.file.tree;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/** A value of a YAML or JSON file with its place, both counted from 1. */
public sealed interface Node {
    /** Line, from 1. */
    int line();

    /** Column, from 1. */
    int column();

    /** The value in one line, as a fault shows it. */
    String shown();

    /**
     * A single value, still as text: {@code no} and {@code 1e3} are what they look like.
     *
     * @param text the text without the blanks around it
     * @param nothing whether it states that there is nothing ({@code null}, {@code ~}, no text)
     * @param line line, from 1
     * @param column column, from 1
     */
    record Scalar(String text, boolean nothing, int line, int column) implements Node {
        @Override
        public String shown() {
            return text;
        }
    }

    /**
     * A list.
     *
     * @param items its items
     * @param line line, from 1
     * @param column column, from 1
     */
    record Sequence(List<Node> items, int line, int column) implements Node {
        /** Copies the items. */
        public Sequence {
            items = List.copyOf(items);
        }

        @Override
        public String shown() {
            return items.stream().map(Node::shown).collect(Collectors.joining(", ", "[", "]"));
        }
    }

    /**
     * Keys with their values.
     *
     * @param entries the entries in file order
     * @param line line, from 1
     * @param column column, from 1
     */
    record Mapping(Map<String, Entry> entries, int line, int column) implements Node {
        /** Copies the entries. */
        public Mapping {
            entries = Collections.unmodifiableMap(new LinkedHashMap<>(entries));
        }

        @Override
        public String shown() {
            return entries.entrySet().stream()
                    .map(entry -> entry.getKey() + ": " + entry.getValue().value().shown())
                    .collect(Collectors.joining(", ", "{", "}"));
        }
    }

    /**
     * A value with the place of its key.
     *
     * @param value the value
     * @param line line of the key, from 1
     * @param column column of the key, from 1
     */
    record Entry(Node value, int line, int column) {}
}
