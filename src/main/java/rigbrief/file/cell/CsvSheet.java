package rigbrief.file.cell;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import rigbrief.diagnostic.Faults;

/**
 * A CSV file (RFC 4180) with all its columns, known or not, to be changed row by row and written
 * again with the line ends it had.
 */
public final class CsvSheet {
    private final List<String> header;
    private final List<List<String>> rows;
    private final String lineEnd;

    private CsvSheet(List<String> header, List<List<String>> rows, String lineEnd) {
        this.header = header;
        this.rows = rows;
        this.lineEnd = lineEnd;
    }

    /** Reads a file that has been found sound; rows of the wrong length are reported. */
    public static CsvSheet read(String file, String text, List<Column> columns, Faults faults) {
        CsvTable table = CsvTable.open(file, text, columns, faults);
        List<String> header = List.copyOf(table.texts());
        List<List<String>> rows = new ArrayList<>();
        while (table.next()) {
            rows.add(new ArrayList<>(table.texts()));
        }
        return new CsvSheet(header, rows, text.contains("\r\n") ? "\r\n" : "\n");
    }

    /** A file with a header alone. */
    public static CsvSheet empty(List<String> header) {
        return new CsvSheet(List.copyOf(header), new ArrayList<>(), "\n");
    }

    /** Number of rows. */
    public int size() {
        return rows.size();
    }

    /** A cell; empty when there is no such column. */
    public String cell(int row, String column) {
        int index = header.indexOf(column);
        return index < 0 ? "" : rows.get(row).get(index);
    }

    /** Fills a cell; a column that is not there is left out. */
    public void fill(int row, String column, String text) {
        int index = header.indexOf(column);
        if (index >= 0) {
            rows.get(row).set(index, text);
        }
    }

    /** Adds a row of empty cells, and gives its number. */
    public int add() {
        rows.add(new ArrayList<>(java.util.Collections.nCopies(header.size(), "")));
        return rows.size() - 1;
    }

    /** Takes rows out. */
    public void remove(List<Integer> numbers) {
        List<List<String>> left = new ArrayList<>();
        for (int i = 0; i < rows.size(); i++) {
            if (!numbers.contains(i)) {
                left.add(rows.get(i));
            }
        }
        rows.clear();
        rows.addAll(left);
    }

    /** The file's text. */
    public String text() {
        StringBuilder text = new StringBuilder(line(header)).append(lineEnd);
        rows.forEach(row -> text.append(line(row)).append(lineEnd));
        return text.toString();
    }

    private static String line(List<String> cells) {
        return cells.stream().map(CsvSheet::quoted).collect(Collectors.joining(","));
    }

    private static String quoted(String cell) {
        boolean plain = true;
        for (int i = 0; plain && i < cell.length(); i++) {
            plain = ",\"\r\n".indexOf(cell.charAt(i)) < 0;
        }
        return plain ? cell : '"' + cell.replace("\"", "\"\"") + '"';
    }
}
