package rigbrief.file.tree;

import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Collectors;
import rigbrief.diagnostic.Quotation;

/**
 * Writes YAML key by key: a key a line, lists of single values in brackets, texts quoted wherever
 * some reader of YAML could take them for something else.
 */
public final class YamlText {
    /** What YAML 1.1 or 1.2 readers take for a truth value or for nothing. */
    private static final Set<String> TAKEN =
            Set.of("null", "true", "false", "yes", "no", "on", "off", "y", "n");

    private static final String STEP = "  ";

    private final StringBuilder text = new StringBuilder();
    private String indent = "";
    private boolean first;

    /** Writes a text, in quotes where it needs them. */
    public YamlText text(String key, String value) {
        return line(key, scalar(value));
    }

    /** Writes a number, a percentage, a word, yes or no: what needs no quotes. */
    public YamlText plain(String key, Object value) {
        return line(key, value.toString());
    }

    /** Writes yes or no. */
    public YamlText yes(String key, boolean value) {
        return line(key, value ? "yes" : "no");
    }

    /** Writes single values in brackets. */
    public YamlText list(String key, List<String> values) {
        return line(
                key,
                values.stream().map(YamlText::scalar).collect(Collectors.joining(", ", "[", "]")));
    }

    /** Begins a mapping under a key. */
    public YamlText begin(String key) {
        line(key, "");
        indent += STEP;
        return this;
    }

    /** Begins the first or next item of a list; what follows are the keys of the item. */
    public YamlText item() {
        text.append(indent).append("- ");
        indent += STEP;
        first = true;
        return this;
    }

    /** Ends what was begun last. */
    public YamlText end() {
        indent = indent.substring(STEP.length());
        return this;
    }

    /** Writes a remark. */
    public YamlText remark(String remark) {
        text.append(indent).append("# ").append(Quotation.visible(remark)).append('\n');
        return this;
    }

    /** All that was written. */
    @Override
    public String toString() {
        return text.toString();
    }

    private YamlText line(String key, String value) {
        text.append(first ? "" : indent).append(scalar(key)).append(':');
        text.append(value.isEmpty() ? "" : " ").append(value).append('\n');
        first = false;
        return this;
    }

    /** A text as one value. */
    static String scalar(String value) {
        return bare(value) ? value : quoted(value);
    }

    private static boolean bare(String value) {
        boolean bare =
                !value.isEmpty()
                        && isLetter(value.charAt(0))
                        && !value.endsWith(" ")
                        && !TAKEN.contains(value.toLowerCase(Locale.ROOT));
        for (int i = 0; bare && i < value.length(); i++) {
            char c = value.charAt(i);
            bare = isLetter(c) || c >= '0' && c <= '9' || " ._-/+".indexOf(c) >= 0;
        }
        return bare;
    }

    private static boolean isLetter(char c) {
        return c >= 'a' && c <= 'z' || c >= 'A' && c <= 'Z';
    }

    private static String quoted(String value) {
        String escaped = value.replace("\\", "\\\\").replace("\"", "\\\"");
        return "\"" + Quotation.visible(escaped) + "\"";
    }
}
