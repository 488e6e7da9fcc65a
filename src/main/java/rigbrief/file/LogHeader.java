package rigbrief.file;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rigbrief.diagnostic.Fault;
import rigbrief.diagnostic.Nearest;

/**
 * The first row of a frame-time log: what separates its columns, and which holds the times.
 *
 * @param columns headers, or the first row's cells where the log has no header
 * @param separator what separates them
 * @param index the column of the times; -1 where it was not found
 * @param named whether the row is a header rather than the first time
 */
record LogHeader(List<String> columns, char separator, int index, boolean named) {
    private static final String USUAL = "frame_ms";

    LogHeader {
        columns = List.copyOf(columns);
    }

    static LogHeader of(String line, Optional<String> wanted) {
        char separator =
                line.indexOf('\t') >= 0
                        ? '\t'
                        : line.indexOf(';') >= 0 && !quoted(line) ? ';' : ',';
        List<String> columns = cells(line, separator);
        int index = index(columns, wanted);
        boolean number = index >= 0 && !Double.isNaN(parsed(columns.get(index), separator));
        return new LogHeader(columns, separator, index, !number);
    }

    private static int index(List<String> columns, Optional<String> wanted) {
        if (columns.size() == 1 && wanted.isEmpty()) {
            return 0;
        }
        String name = wanted.orElse(USUAL);
        for (int i = 0; i < columns.size(); i++) {
            if (columns.get(i).equalsIgnoreCase(name)) {
                return i;
            }
        }
        return -1;
    }

    boolean found() {
        return index >= 0;
    }

    /** The column's name. */
    String name() {
        return named ? columns.get(index) : "row";
    }

    Fault fault(String file, int line, Optional<String> wanted) {
        String advice =
                Nearest.to(wanted.orElse(USUAL), columns)
                        .map(near -> "name it with --frame-column " + near)
                        .orElse("name it with --frame-column");
        return new Fault(
                file,
                line,
                1,
                "header",
                String.join(", ", columns),
                wanted.map(name -> "a column " + name)
                        .orElse("one column alone, or one called " + USUAL),
                advice);
    }

    /** The cell of the times in a row; empty where the row is too short. */
    String cell(String line) {
        return cell(line, separator, index);
    }

    /** What a cell says; not a number where it says none. */
    double number(String cell) {
        return parsed(cell, separator);
    }

    private static double parsed(String cell, char separator) {
        String figure = separator == ',' ? cell : cell.replace(',', '.');
        if (figure.isEmpty() || "0123456789.".indexOf(figure.charAt(0)) < 0) {
            return Double.NaN;
        }
        // Java alone would read 0x1p3, 5d and 5f too.
        char last = figure.charAt(figure.length() - 1);
        if (figure.indexOf('x') >= 0 || figure.indexOf('X') >= 0 || Character.isLetter(last)) {
            return Double.NaN;
        }
        try {
            return Double.parseDouble(figure);
        } catch (NumberFormatException noNumber) {
            return Double.NaN;
        }
    }

    private static boolean quoted(String line) {
        return line.startsWith("\"") && line.indexOf(',') >= 0;
    }

    private static List<String> cells(String line, char separator) {
        List<String> cells = new ArrayList<>();
        int start = 0;
        boolean inside = false;
        for (int i = 0; i < line.length(); i++) {
            char c = line.charAt(i);
            inside ^= c == '"';
            if (c == separator && !inside) {
                cells.add(bare(line.substring(start, i)));
                start = i + 1;
            }
        }
        cells.add(bare(line.substring(start)));
        return cells;
    }

    /** The text between two separators outside quotes, without the quotes around it. */
    private static String cell(String line, char separator, int index) {
        int start = 0;
        int at = 0;
        boolean inside = false;
        for (int i = 0; i < line.length(); i++) {
            char c = line.charAt(i);
            inside ^= c == '"';
            if (c == separator && !inside) {
                if (at == index) {
                    return bare(line.substring(start, i));
                }
                at++;
                start = i + 1;
            }
        }
        return at == index ? bare(line.substring(start)) : "";
    }

    private static String bare(String cell) {
        String stripped = cell.strip();
        boolean quoted =
                stripped.length() > 1 && stripped.startsWith("\"") && stripped.endsWith("\"");
        return quoted ? stripped.substring(1, stripped.length() - 1).strip() : stripped;
    }
}
