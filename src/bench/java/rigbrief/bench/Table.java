package rigbrief.bench;

import com.fasterxml.jackson.dataformat.csv.CsvMapper;
import com.fasterxml.jackson.dataformat.csv.CsvSchema;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** A table of results, written as CSV and as Markdown. */
public final class Table {
    private final String name;
    private final List<String> head;
    private final List<List<String>> rows = new ArrayList<>();
    private final List<String> remarks = new ArrayList<>();

    /**
     * An empty table.
     *
     * @param name file name without ending
     */
    public Table(String name, String... head) {
        this.name = name;
        this.head = List.of(head);
    }

    /** Adds a row; one cell for each column. */
    public void row(Object... cells) {
        List<String> row = new ArrayList<>();
        for (Object cell : cells) {
            row.add(cell instanceof Double number ? number(number) : String.valueOf(cell));
        }
        if (row.size() != head.size()) {
            throw new IllegalArgumentException(
                    "found %d cells, expected %d".formatted(row.size(), head.size()));
        }
        rows.add(row);
    }

    /** Adds a line below the table. */
    public void remark(String text) {
        remarks.add(text);
    }

    /** Three significant digits at most. */
    public static String number(double value) {
        if (Double.isNaN(value)) {
            return "-";
        }
        double size = Math.abs(value);
        String form = size >= 100 ? "%.0f" : size >= 10 ? "%.1f" : size >= 1 ? "%.2f" : "%.3f";
        return String.format(Locale.ROOT, form, value);
    }

    /** The table as Markdown. */
    public String markdown() {
        StringBuilder text = new StringBuilder();
        text.append("| ").append(String.join(" | ", head)).append(" |\n|");
        text.append("---|".repeat(head.size())).append('\n');
        for (List<String> row : rows) {
            text.append("| ").append(String.join(" | ", row)).append(" |\n");
        }
        for (String remark : remarks) {
            text.append('\n').append(remark).append('\n');
        }
        return text.toString();
    }

    /** Writes both forms, and prints the Markdown. */
    public void write(Path folder) throws IOException {
        save(folder);
        System.out.println(markdown());
    }

    /**
     * Writes both forms; may be done again when rows are added, so that a broken-off run counts.
     */
    public void save(Path folder) throws IOException {
        Files.createDirectories(folder);
        Files.writeString(folder.resolve(name + ".md"), markdown());
        CsvSchema.Builder schema = CsvSchema.builder();
        head.forEach(schema::addColumn);
        String csv =
                new CsvMapper().writer(schema.setUseHeader(true).build()).writeValueAsString(rows);
        Files.writeString(folder.resolve(name + ".csv"), csv);
    }
}
