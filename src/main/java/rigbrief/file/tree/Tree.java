package rigbrief.file.tree;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonLocation;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.dataformat.yaml.YAMLFactory;
import com.fasterxml.jackson.dataformat.yaml.YAMLParser;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import org.yaml.snakeyaml.LoaderOptions;
import org.yaml.snakeyaml.error.Mark;
import org.yaml.snakeyaml.error.MarkedYAMLException;
import rigbrief.diagnostic.Fault;
import rigbrief.diagnostic.Faults;

/**
 * Reads a YAML or JSON text into nodes.
 *
 * <p>Refused are: a key that stands twice, a value more than 50 levels deep, an alias (a few lines
 * of them can stand for GB), a second document.
 */
public final class Tree {
    private static final int DEEPEST = 50;
    private static final Pattern JSON = Pattern.compile("\\s*\\{\\s*[\"}].*", Pattern.DOTALL);

    private final String file;
    private final Faults faults;
    private final JsonParser parser;

    private Tree(String file, Faults faults, JsonParser parser) {
        this.file = file;
        this.faults = faults;
        this.parser = parser;
    }

    /**
     * The mapping that the text is; empty, with a fault, when it is none or can't be read.
     *
     * @param file name for faults
     * @param text content, without a byte order mark
     */
    public static Optional<Node.Mapping> read(String file, String text, Faults faults) {
        boolean json = JSON.matcher(text).lookingAt();
        try (JsonParser parser = json ? new JsonFactory().createParser(text) : yaml(text)) {
            return new Tree(file, faults, parser).root();
        } catch (JsonProcessingException broken) {
            faults.add(malformed(file, broken, json));
            return Optional.empty();
        } catch (IOException unreadable) {
            // A string is read, no file.
            throw new UncheckedIOException(unreadable);
        }
    }

    private static JsonParser yaml(String text) throws IOException {
        LoaderOptions options = new LoaderOptions();
        options.setCodePointLimit(Integer.MAX_VALUE); // the size of the file is limited elsewhere
        return YAMLFactory.builder().loaderOptions(options).build().createParser(text);
    }

    private Optional<Node.Mapping> root() throws IOException {
        if (parser.nextToken() == null) {
            faults.add(new Fault(file, 1, 1, "file", "", "keys and values", "write them in"));
            return Optional.empty();
        }
        Node root = node(1);
        if (parser.nextToken() != null) {
            fault("document", "a second document", "one document", "put it in a file of its own");
        }
        if (root instanceof Node.Mapping mapping) {
            return Optional.of(mapping);
        }
        faults.add(
                new Fault(
                        file,
                        root.line(),
                        root.column(),
                        "file",
                        root.shown(),
                        "keys and values",
                        "begin with a key and a colon"));
        return Optional.empty();
    }

    private Node node(int depth) throws IOException {
        JsonLocation place = parser.currentTokenLocation();
        int line = place.getLineNr();
        int column = place.getColumnNr();
        JsonToken token = parser.currentToken();
        if (token.isStructStart() && depth > DEEPEST) {
            fault("file", "a value on level " + depth, "at most 50 levels", "flatten it");
            parser.skipChildren();
            return new Node.Scalar("", true, line, column);
        }
        return switch (token) {
            case START_OBJECT -> new Node.Mapping(entries(depth), line, column);
            case START_ARRAY -> new Node.Sequence(items(depth), line, column);
            default -> scalar(token, line, column);
        };
    }

    private Node scalar(JsonToken token, int line, int column) throws IOException {
        if (parser instanceof YAMLParser yaml && yaml.isCurrentAlias()) {
            fault(
                    "file",
                    "*" + parser.getText(),
                    "the value itself",
                    "write it out: aliases are not followed");
            return new Node.Scalar("", true, line, column);
        }
        boolean nothing = token == JsonToken.VALUE_NULL;
        return new Node.Scalar(nothing ? "" : parser.getText().strip(), nothing, line, column);
    }

    private List<Node> items(int depth) throws IOException {
        List<Node> items = new ArrayList<>();
        while (parser.nextToken() != JsonToken.END_ARRAY) {
            items.add(node(depth + 1));
        }
        return items;
    }

    private Map<String, Node.Entry> entries(int depth) throws IOException {
        Map<String, Node.Entry> entries = new LinkedHashMap<>();
        while (parser.nextToken() != JsonToken.END_OBJECT) {
            String key = parser.currentName();
            JsonLocation place = parser.currentTokenLocation();
            if (entries.containsKey(key)) {
                String shown = key.isEmpty() ? "\"\"" : key;
                fault(shown, key, "each key once", "put both values under one key");
            }
            parser.nextToken();
            entries.putIfAbsent(
                    key, new Node.Entry(node(depth + 1), place.getLineNr(), place.getColumnNr()));
        }
        return entries;
    }

    private void fault(String subject, String found, String expected, String advice) {
        JsonLocation place = parser.currentTokenLocation();
        faults.add(
                new Fault(
                        file,
                        place.getLineNr(),
                        place.getColumnNr(),
                        subject,
                        found,
                        expected,
                        advice));
    }

    private static Fault malformed(String file, JsonProcessingException broken, boolean json) {
        if (broken.getCause() instanceof MarkedYAMLException marked
                && marked.getProblemMark() != null) {
            Mark mark = marked.getProblemMark();
            return malformed(file, mark.getLine() + 1, mark.getColumn() + 1, marked.getProblem());
        }
        JsonLocation place = broken.getLocation();
        int line = place == null ? 1 : place.getLineNr();
        int column = place == null ? 1 : Math.max(1, place.getColumnNr());
        return malformed(file, line, column, json ? "no JSON" : broken.getOriginalMessage());
    }

    private static Fault malformed(String file, int line, int column, String found) {
        return new Fault(
                file,
                line,
                column,
                "file",
                found,
                "YAML or JSON",
                "look at this line and the one before it for a missing quote, bracket or blank");
    }
}
